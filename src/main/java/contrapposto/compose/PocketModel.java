package contrapposto.compose;

import contrapposto.figure.Mark;
import contrapposto.figure.TextWidth;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The pocket sheet: for each run of weeks all exercises, as short as they can be told. Widths are finished, in mm.
 *
 * @param unit of the weights
 */
record PocketModel(String unit, List<DayLine> days, List<Run> runs) {
    private static final int MOST_WEEKS = 8;
    private static final double MEASURE = 90;
    private static final double MARK = 9;
    private static final double MAP = 15.2;
    /** Between map and weeks; words begin here and run on over the weeks. */
    private static final double GAP = 0.8;
    private static final double WIDEST = 9;
    private static final double BETWEEN_NUMBERS = 0.3;
    private static final double SIZE = 11;
    /** Kinds of set-up lines that tell of feet about level. */
    private static final List<String> LEVEL = List.of("heels", "overlap", "one-leg");
    /** Of the small map where one foot or knee stands before the other, and where they are level. */
    private static final String LONG_MAP = "19";
    private static final String SHORT_MAP = "15.5";
    /** What one line beside the map holds, a little less for pairs of letters that are set wider than alone. */
    private static final double LINE = MEASURE - MARK - MAP - 0.3;

    record DayLine(String day, String numbers) { }

    /** @param mark width of the marks' column; {@code gap} what the map and the weeks leave between them */
    record Run(List<Column> weeks, String mark, String map, String gap, String week, List<Exercise> exercises) { }

    /** @param sets of most exercises in that week; {@code spare} repeats to spare of the week */
    record Column(String number, String sets, String spare) { }

    /** @param lines sets and repeats to spare where they are not the week's: one row, or one a side */
    record Exercise(String id, String number, String name, List<Line> lines, List<Half> halves) { }

    /**
     * @param drawing key of the small map; {@code height} of it, empty where no foot stands
     * @param cue     the first that takes one line, else the first
     * @param weights one a week: a number, {@code find}, {@code none} or empty; no rows at all where no weight is used
     */
    record Half(String badge, String drawing, String height, List<MeasureModel> measures, String cue, CardModel.HalfModel told,
                List<String> weights, List<String> repeats) { }

    /** @param kind sets or spare; {@code badge} empty for all sides */
    record Line(String kind, String badge, List<String> cells) { }

    static PocketModel of(PlanWords words, Set<String> drawings, List<CardModel> cards) {
        var weeks = words.plan().weeks();
        int most = Math.clamp((int) (room() / widest(words)), 1, MOST_WEEKS);
        int each = Math.max(1, Math.ceilDiv(weeks.size(), Math.max(1, Math.ceilDiv(weeks.size(), most))));
        var made = new ArrayList<Run>();
        for (int from = 0; from < weeks.size(); from += each) {
            made.add(run(words, drawings, cards, weeks.subList(from, Math.min(weeks.size(), from + each))));
        }
        return new PocketModel(words.units().massUnit(), words.plan().days().stream().map(d ->
                new DayLine(words.units().shortWeekday(d.day()), words.units().numbers(d.numbers()))).toList(), made);
    }

    private static double room() {
        return MEASURE - MARK - MAP - GAP;
    }

    /** What the widest number of the plan takes. */
    private static double widest(PlanWords words) {
        return BETWEEN_NUMBERS + words.plan().exercises().stream().flatMap(e -> e.sides().values().stream()).flatMap(s -> s.doses().stream())
                .flatMap(dose -> Stream.of(TextWidth.of(weight(WeeksModel.DoseModel.of(dose, 0, words.units())).replace("none", "–"), SIZE, Mark.Weight.BOLD),
                        TextWidth.of(words.units().repeats(dose.reps(), dose.seconds()), SIZE, Mark.Weight.REGULAR)))
                .mapToDouble(width -> width).max().orElse(1);
    }

    private static Run run(PlanWords words, Set<String> drawings, List<CardModel> cards, List<Plan.Week> run) {
        double width = Math.min(WIDEST, room() / run.size());
        double gap = MEASURE - MARK - MAP - width * run.size();
        var sets = run.stream().map(week -> usual(words.plan(), week)).toList();
        var spare = run.stream().map(Plan.Week::inReserve).toList();
        var columns = new ArrayList<Column>();
        for (int i = 0; i < run.size(); i++) {
            columns.add(new Column(Integer.toString(run.get(i).number()), sets.get(i).toString(), spare.get(i).toString()));
        }
        var exercises = new ArrayList<Exercise>();
        for (int i = 0; i < cards.size(); i++) {
            var planned = words.plan().exercises().get(i);
            var card = cards.get(i);
            var halves = PlanWords.rows(planned.sides()).stream().map(side -> half(words, drawings, planned, side, card, run)).toList();
            var lines = new ArrayList<Line>();
            lines.addAll(own("sets", planned, run, sets, Plan.Dose::sets));
            lines.addAll(own("spare", planned, run, spare, Plan.Dose::inReserve));
            if (halves.stream().flatMap(h -> h.repeats().stream()).anyMatch(c -> !c.isEmpty())) {
                exercises.add(new Exercise(card.id(), card.number(), card.name(), lines, halves));
            }
        }
        return new Run(columns, WeeksModel.millimetres(MARK), WeeksModel.millimetres(MAP), WeeksModel.millimetres(gap),
                WeeksModel.millimetres(width), exercises);
    }

    /** Sets of the most exercises and sides in that week, the most sets where two numbers are as frequent. */
    private static int usual(Plan plan, Plan.Week week) {
        var counts = new LinkedHashMap<Integer, Integer>();
        plan.exercises().stream().flatMap(e -> e.sides().values().stream()).flatMap(s -> s.doses().stream())
                .filter(d -> d.week() == week.number()).forEach(d -> counts.merge(d.sets(), 1, Integer::sum));
        return counts.entrySet().stream().max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey(
                Comparator.naturalOrder()))).map(Map.Entry::getKey).orElse(0);
    }

    private static Half half(PlanWords words, Set<String> drawings, Plan.Exercise exercise, Side side, CardModel card, List<Plan.Week> run) {
        var told = card.halves().get(PlanWords.badge(exercise.sides(), side));
        String key = told.drawing() + "/small";
        boolean level = told.measures().stream().anyMatch(m -> LEVEL.contains(m.kind()));
        var weights = run.stream().map(week -> weight(WeeksModel.dose(words, exercise, side, week))).toList();
        return new Half(told.side(), key, !drawings.contains(key) ? "" : level ? SHORT_MAP : LONG_MAP, told.measures(),
                told.cues().stream().filter(cue -> TextWidth.of(cue, SIZE, Mark.Weight.REGULAR) <= LINE).findFirst().orElse(told.cues().getFirst()), told,
                weights.stream().allMatch(w -> w.isEmpty() || w.equals("none")) ? List.of() : weights,
                cells(exercise, side, run, dose -> words.units().repeats(dose.reps(), dose.seconds())));
    }

    private static String weight(WeeksModel.DoseModel dose) {
        return switch (dose.kind()) {
            case "off" -> "";
            case "weight" -> dose.bare();
            default -> dose.kind();
        };
    }

    /** No row where the exercise does what {@code usual} says, one where its sides agree, else one for each. */
    private static List<Line> own(String kind, Plan.Exercise exercise, List<Plan.Week> run, List<Integer> usual, Function<Plan.Dose, Integer> told) {
        var lines = PlanWords.rows(exercise.sides()).stream().map(side -> new Line(kind, PlanWords.badge(exercise.sides(), side),
                cells(exercise, side, run, dose -> told.apply(dose).toString()))).toList();
        boolean differs = lines.stream().anyMatch(line -> {
            for (int i = 0; i < run.size(); i++) {
                if (!line.cells().get(i).isEmpty() && !line.cells().get(i).equals(usual.get(i).toString())) {
                    return true;
                }
            }
            return false;
        });
        return !differs ? List.of() : lines.stream().map(Line::cells).distinct().count() == 1
                ? List.of(new Line(kind, "", lines.getFirst().cells())) : lines;
    }

    private static List<String> cells(Plan.Exercise exercise, Side side, List<Plan.Week> run, Function<Plan.Dose, String> told) {
        return run.stream().map(week -> exercise.sides().on(side).doses().stream().filter(d -> d.week() == week.number())
                .findFirst().map(told).orElse("")).toList();
    }
}
