package contrapposto.select;

import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Schedule;
import contrapposto.select.Item.Window;
import contrapposto.select.Selection.StageWeeks;
import java.util.ArrayList;
import java.util.List;

/**
 * How stages map onto weeks (house defaults). From the start stage on, each stage leads a run of weeks: from the floor,
 * the supported stage opens after a quarter of the plan, standing work after half, integrated work after seven eighths;
 * from a supported start, standing work opens after two fifths. Floor work, and work of the legs
 * without a weight, stops when standing work leads, unless the client began beyond it. All other work stays to the end.
 */
record Stages(List<StageWeeks> blocks, Stage start, int weeks) {
    static Stages of(Schedule schedule) {
        return of(schedule, schedule.startStage());
    }

    /** @param start the stage that leads week 1, in place of the one the schedule asks for */
    static Stages of(Schedule schedule, Stage start) {
        double[] opens = switch (start) {
            case FLOOR -> new double[] {0, 0.25, 0.5, 0.875};
            case SUPPORTED -> new double[] {0, 0, 0.4, 0.85};
            case STANDING -> new double[] {0, 0, 0, 0.5};
            case INTEGRATED -> new double[] {0, 0, 0, 0};
        };
        int weeks = schedule.weeks();
        var blocks = new ArrayList<StageWeeks>();
        for (var stage : Stage.values()) {
            int first = 1 + (int) StrictMath.floor(opens[stage.ordinal()] * weeks);
            boolean comesAtAll = stage.compareTo(start) >= 0 && first <= weeks;
            if (comesAtAll) {
                if (!blocks.isEmpty()) {
                    var last = blocks.removeLast();
                    if (last.firstWeek() < first) {
                        blocks.add(new StageWeeks(last.stage(), last.firstWeek(), first - 1));
                    }
                }
                blocks.add(new StageWeeks(stage, first, weeks));
            }
        }
        return new Stages(List.copyOf(blocks), start, weeks);
    }

    /**
     * When work of this stage may be done.
     *
     * @param atOnce the coach has tested or asked for it
     * @param passes it makes way for standing work: floor work, and work of the legs without a weight
     */
    Window window(Stage stage, boolean atOnce, boolean passes) {
        int standing = first(Stage.STANDING);
        int last = passes && stage.compareTo(Stage.STANDING) < 0 && stage.compareTo(start) >= 0 && standing > 1
                ? standing - 1 : weeks;
        int opens = stage.compareTo(start) <= 0 ? 1 : first(stage);
        return new Window(atOnce ? 1 : opens, atOnce ? weeks : Math.max(last, opens));
    }

    /** First week of the run led by this stage or a later one: the last always leads some. */
    private int first(Stage stage) {
        return blocks.stream().filter(b -> b.stage().compareTo(stage) >= 0).mapToInt(StageWeeks::firstWeek).findFirst().orElseThrow();
    }
}
