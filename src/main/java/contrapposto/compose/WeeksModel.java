package contrapposto.compose;

import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.wording.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The week tables: one for all days that do the same, or one for them and a run of eight weeks. Widths are finished, in mm.
 *
 * @param unit       of the weights
 * @param shortUntil the last of the first weeks whose sessions leave many minutes over, where they do
 */
record WeeksModel(String unit, Optional<String> shortUntil, List<Table> tables) {
    private static final int MOST_WEEKS = 8;
    private static final double MEASURE = 178;
    private static final double NAME = 51;
    private static final double BADGE = 11;
    private static final double WIDEST = 23.2;

    /** @param key of the first of its days, as {@code mon} */
    record Table(String day, String key, String nameWidth, String badgeWidth, List<Column> columns, List<Exercise> exercises) { }

    record Column(String number, String date, String spare, boolean easy, String width) { }

    /**
     * @param spare  repeats to spare, the same in all weeks of this table, where they are not the weeks'; empty otherwise
     * @param spares rows of them where they change and are not the weeks', one for a side where the sides differ
     */
    record Exercise(String id, String number, String name, String rest, Optional<String> spare, List<Spares> spares, List<Row> rows) { }

    /** @param badge empty for all sides; {@code cells} one a column, empty where it is not done */
    record Spares(String badge, List<String> cells) { }

    /** @param cells one a column; an absent dose is an exercise not done that week */
    record Row(String badge, List<DoseModel> cells) {
        Row withoutSpare() {
            return new Row(badge, cells.stream().map(DoseModel::withoutSpare).toList());
        }
    }

    /**
     * What one side does in one week.
     *
     * @param kind   weight, none (no weight), find (the client finds it) or off (not done that week)
     * @param amount sets and repeats
     * @param weight with its unit; {@code bare} without
     * @param spare  where it is another number than the week's
     */
    record DoseModel(String kind, String amount, String weight, String bare, boolean heavier, Optional<String> spare, String rest) {
        static final DoseModel OFF = new DoseModel("off", "", "", "", false, Optional.empty(), "");

        DoseModel withoutSpare() {
            return new DoseModel(kind, amount, weight, bare, heavier, Optional.empty(), rest);
        }

        static DoseModel of(Plan.Dose dose, int weekSpare, Units units) {
            boolean loaded = dose.load().isPresent() && dose.load().getAsDouble() > 0;
            return new DoseModel(dose.byEffort() ? "find" : loaded ? "weight" : "none", units.amount(dose.sets(), dose.reps(), dose.seconds()),
                    loaded ? units.mass(dose.load().getAsDouble()) : "", loaded ? units.bareMass(dose.load().getAsDouble()) : "",
                    dose.heavier(), dose.inReserve() == weekSpare ? Optional.empty() : Optional.of(Integer.toString(dose.inReserve())),
                    units.seconds(dose.rest()));
        }
    }

    static WeeksModel of(PlanWords words) {
        var weeks = words.plan().weeks();
        int tables = Math.ceilDiv(weeks.size(), MOST_WEEKS);
        int each = tables == 0 ? 1 : Math.ceilDiv(weeks.size(), tables);
        var made = new ArrayList<Table>();
        for (int from = 0; from < weeks.size(); from += each) {
            var run = weeks.subList(from, Math.min(weeks.size(), from + each));
            alike(words.plan().days()).forEach(days -> table(words, days, run).ifPresent(made::add));
        }
        return new WeeksModel(words.units().massUnit(), words.plan().shortUntil().map(String::valueOf), made);
    }

    /** Days that do the same exercises, in the order of their first day. */
    private static List<List<Plan.Day>> alike(List<Plan.Day> days) {
        var byNumbers = new LinkedHashMap<List<Integer>, List<Plan.Day>>();
        days.forEach(day -> byNumbers.computeIfAbsent(day.numbers(), key -> new ArrayList<>()).add(day));
        return List.copyOf(byNumbers.values());
    }

    private static String named(PlanWords words, List<Plan.Day> days) {
        return days.size() == 1 ? words.units().weekday(days.getFirst().day())
                : days.stream().map(day -> words.units().shortWeekday(day.day())).collect(Collectors.joining(", "));
    }

    private static Optional<Table> table(PlanWords words, List<Plan.Day> days, List<Plan.Week> run) {
        var day = days.getFirst();
        double width = Math.min(WIDEST, (MEASURE - NAME - BADGE) / run.size());
        double name = MEASURE - BADGE - width * run.size();
        var columns = run.stream().map(w -> new Column(Integer.toString(w.number()), words.units().shortDay(w.starts()),
                Integer.toString(w.inReserve()), w.easy(), millimetres(width))).toList();
        var exercises = day.numbers().stream().map(words::exercise).map(e -> exercise(words, e, run))
                .filter(e -> e.rows().stream().flatMap(r -> r.cells().stream()).anyMatch(c -> c != DoseModel.OFF)).toList();
        return exercises.isEmpty() ? Optional.empty() : Optional.of(new Table(named(words, days), PlanWords.dayKey(day.day()),
                millimetres(name), millimetres(BADGE), columns, exercises));
    }

    private static Exercise exercise(PlanWords words, Plan.Exercise exercise, List<Plan.Week> run) {
        var sides = exercise.sides();
        var rows = PlanWords.rows(sides).stream().map(side -> new Row(PlanWords.badge(sides, side),
                run.stream().map(week -> dose(words, exercise, side, week)).toList())).toList();
        int rest = sides.values().getFirst().doses().getFirst().rest();
        boolean differ = rows.stream().flatMap(r -> r.cells().stream()).anyMatch(c -> c.spare().isPresent());
        var spares = PlanWords.rows(sides).stream().map(side -> new Spares(PlanWords.badge(sides, side), own(sides.on(side), run))).toList();
        var numbers = spares.stream().flatMap(s -> s.cells().stream()).filter(s -> !s.isEmpty()).distinct().toList();
        boolean alike = spares.stream().map(Spares::cells).distinct().count() == 1;
        return new Exercise(exercise.id(), Integer.toString(exercise.number()), words.name(exercise.id()), words.units().seconds(rest),
                differ && numbers.size() == 1 ? Optional.of(numbers.getFirst()) : Optional.empty(),
                !differ || numbers.size() == 1 ? List.of() : alike ? List.of(new Spares("", spares.getFirst().cells())) : spares,
                rows.stream().map(Row::withoutSpare).toList());
    }

    /** Repeats to spare of that side in each week. */
    private static List<String> own(Plan.SidePlan side, List<Plan.Week> run) {
        return run.stream().map(week -> side.doses().stream().filter(d -> d.week() == week.number()).findFirst()
                .map(d -> Integer.toString(d.inReserve())).orElse("")).toList();
    }

    /** What that side does that week; {@link DoseModel#OFF} when it is not in it. */
    static DoseModel dose(PlanWords words, Plan.Exercise exercise, Side side, Plan.Week week) {
        return exercise.sides().on(side).doses().stream().filter(d -> d.week() == week.number()).findFirst()
                .map(d -> DoseModel.of(d, week.inReserve(), words.units())).orElse(DoseModel.OFF);
    }

    static String millimetres(double width) {
        return new java.math.BigDecimal(width).setScale(2, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
