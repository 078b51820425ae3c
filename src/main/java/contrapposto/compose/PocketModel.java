package contrapposto.compose;

import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The pocket sheet: for each run of at most eight weeks all exercises, as short as they can be told. Widths are
 * finished, in mm.
 *
 * @param unit of the weights
 */
record PocketModel(String unit, List<DayLine> days, List<Run> runs) {
    private static final int MOST_WEEKS = 8;
    private static final double MEASURE = 90;
    private static final double MAP = 15.4;
    private static final double BADGE = 12.6;
    private static final double WIDEST = 11;
    /** Kinds of set-up lines that tell of feet about level. */
    private static final List<String> LEVEL = List.of("heels", "overlap", "one-leg");
    /** Of the small map where one foot or knee stands before the other, and where they are level. */
    private static final String LONG_MAP = "23.5";
    private static final String SHORT_MAP = "16.5";

    record DayLine(String day, String numbers) { }

    /**
     * @param rest  width of the first two columns together with what the weeks leave; {@code map} and {@code badge} of them
     */
    record Run(List<Column> weeks, String map, String badge, String rest, String week, List<Exercise> exercises) { }

    record Column(String number, String spare, boolean easy) { }

    /** @param lines sets, repeats and, where they are not the weeks', repeats to spare: one row, or one a side */
    record Exercise(String id, String number, String name, String rest, List<Half> halves, List<Line> lines) { }

    /**
     * @param drawing key of the small map; {@code height} of it, empty where no foot stands
     * @param weights one a week: a number, {@code find}, {@code none} or empty
     */
    record Half(String badge, String drawing, String height, List<MeasureModel> measures, List<String> cues, CardModel.HalfModel told,
                List<String> weights) { }

    /** @param kind sets, repeats or spare; {@code badge} empty for all sides */
    record Line(String kind, String badge, List<String> cells) { }

    static PocketModel of(PlanWords words, Set<String> drawings, List<CardModel> cards) {
        var weeks = words.plan().weeks();
        int runs = Math.max(1, Math.ceilDiv(weeks.size(), MOST_WEEKS));
        int each = Math.max(1, Math.ceilDiv(weeks.size(), runs));
        var made = new ArrayList<Run>();
        for (int from = 0; from < weeks.size(); from += each) {
            made.add(run(words, drawings, cards, weeks.subList(from, Math.min(weeks.size(), from + each))));
        }
        return new PocketModel(words.units().massUnit(), words.plan().days().stream().map(d ->
                new DayLine(words.units().shortWeekday(d.day()), words.units().numbers(d.numbers()))).toList(), made);
    }

    private static Run run(PlanWords words, Set<String> drawings, List<CardModel> cards, List<Plan.Week> run) {
        double width = Math.min(WIDEST, (MEASURE - MAP - BADGE) / run.size());
        double badge = MEASURE - MAP - width * run.size();
        var exercises = new ArrayList<Exercise>();
        for (int i = 0; i < cards.size(); i++) {
            var exercise = exercise(words, drawings, words.plan().exercises().get(i), cards.get(i), run);
            if (exercise.lines().stream().flatMap(l -> l.cells().stream()).anyMatch(c -> !c.isEmpty())) {
                exercises.add(exercise);
            }
        }
        return new Run(run.stream().map(w -> new Column(Integer.toString(w.number()), Integer.toString(w.inReserve()), w.easy())).toList(),
                WeeksModel.millimetres(MAP), WeeksModel.millimetres(badge), WeeksModel.millimetres(MAP + badge),
                WeeksModel.millimetres(width), exercises);
    }

    private static Exercise exercise(PlanWords words, Set<String> drawings, Plan.Exercise exercise, CardModel card, List<Plan.Week> run) {
        var lines = new ArrayList<Line>();
        lines.addAll(lines("sets", exercise, run, dose -> Integer.toString(dose.sets())));
        lines.addAll(lines("repeats", exercise, run, dose -> words.units().repeats(dose.reps(), dose.seconds())));
        boolean own = exercise.sides().values().stream().flatMap(s -> s.doses().stream()).anyMatch(dose -> run.stream()
                .anyMatch(week -> week.number() == dose.week() && week.inReserve() != dose.inReserve()));
        if (own) {
            lines.addAll(lines("spare", exercise, run, dose -> Integer.toString(dose.inReserve())));
        }
        return new Exercise(card.id(), card.number(), card.name(), card.rest(), PlanWords.rows(exercise.sides()).stream()
                .map(side -> half(words, drawings, exercise, side, card, run)).toList(), lines);
    }

    private static Half half(PlanWords words, Set<String> drawings, Plan.Exercise exercise, Side side, CardModel card, List<Plan.Week> run) {
        var told = card.halves().get(PlanWords.badge(exercise.sides(), side));
        String key = told.drawing() + "/small";
        boolean level = told.measures().stream().anyMatch(m -> LEVEL.contains(m.kind()));
        return new Half(told.side(), key, !drawings.contains(key) ? "" : level ? SHORT_MAP : LONG_MAP, told.measures(), told.cues(), told,
                run.stream().map(week -> weight(WeeksModel.dose(words, exercise, side, week))).toList());
    }

    private static String weight(WeeksModel.DoseModel dose) {
        return switch (dose.kind()) {
            case "off" -> "";
            case "weight" -> dose.bare();
            default -> dose.kind();
        };
    }

    /** One row where the sides agree, else one for each. */
    private static List<Line> lines(String kind, Plan.Exercise exercise, List<Plan.Week> run, Function<Plan.Dose, String> told) {
        var lines = PlanWords.rows(exercise.sides()).stream().map(side -> new Line(kind, PlanWords.badge(exercise.sides(), side),
                run.stream().map(week -> exercise.sides().on(side).doses().stream().filter(d -> d.week() == week.number())
                        .findFirst().map(told).orElse("")).toList())).toList();
        return lines.stream().map(Line::cells).distinct().count() == 1 ? List.of(new Line(kind, "", lines.getFirst().cells())) : lines;
    }
}
