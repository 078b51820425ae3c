package contrapposto.compose;

import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The log: boxes per exercise and side. Widths are finished, in mm. */
record LogModel(String unit, List<WeekPage> weeks) {
    private static final double MEASURE = 178;
    private static final double NARROW = 11.6;
    private static final double WIDE = 12.5;
    private static final int FEWEST_SETS = 3;

    /**
     * @param from   the first day, as short as {@code to} allows
     * @param others whether some exercise is to be stopped with another number to spare
     */
    record WeekPage(String number, String from, String to, String spare, boolean others, boolean easy, List<Day> days) { }

    /**
     * @param sets   heads of the set columns
     * @param name   width of the first column; {@code box} of a set column
     */
    record Day(String name, String key, List<String> sets, String nameWidth, String boxWidth, List<Exercise> exercises) { }

    record Exercise(String id, String number, String name, List<Row> rows) { }

    /** @param asked one a set column: whether that set is asked for */
    record Row(String badge, WeeksModel.DoseModel dose, List<Boolean> asked) { }

    static LogModel of(PlanWords words) {
        var pages = words.plan().weeks().stream().map(week -> page(words, week)).toList();
        return new LogModel(words.units().massUnit(), pages);
    }

    private static WeekPage page(PlanWords words, Plan.Week week) {
        var last = week.starts().plusDays(6);
        var days = new ArrayList<Day>();
        words.plan().days().forEach(day -> {
            var done = day.numbers().stream().map(words::exercise).filter(e -> isDone(e, week)).toList();
            if (!done.isEmpty()) {
                days.add(day(words, day, done, week));
            }
        });
        return new WeekPage(Integer.toString(week.number()), words.units().from(week.starts(), last), words.units().date(last),
                Integer.toString(week.inReserve()), days.stream().flatMap(d -> d.exercises().stream()).flatMap(e -> e.rows().stream())
                        .anyMatch(r -> r.dose().spare().isPresent()), week.easy(), days);
    }

    private static boolean isDone(Plan.Exercise exercise, Plan.Week week) {
        return exercise.sides().values().stream().anyMatch(s -> s.doses().stream().anyMatch(d -> d.week() == week.number()));
    }

    private static Day day(PlanWords words, Plan.Day day, List<Plan.Exercise> done, Plan.Week week) {
        int sets = Math.max(FEWEST_SETS, done.stream().flatMap(e -> e.sides().values().stream()).flatMap(s -> s.doses().stream())
                .filter(d -> d.week() == week.number()).mapToInt(Plan.Dose::sets).max().orElse(FEWEST_SETS));
        double box = sets > FEWEST_SETS ? NARROW : WIDE;
        double name = MEASURE - FIXED - box * (sets + 2);
        return new Day(words.units().weekday(day.day()), PlanWords.dayKey(day.day()),
                IntStream.rangeClosed(1, sets).mapToObj(Integer::toString).toList(), WeeksModel.millimetres(name),
                WeeksModel.millimetres(box), done.stream().map(e -> exercise(words, e, week, sets)).toList());
    }

    /** Badge, amount, weight, rest and the box for the weight used. */
    private static final double FIXED = 12.6 + 15 + 14.4 + 14 + 17;

    private static Exercise exercise(PlanWords words, Plan.Exercise exercise, Plan.Week week, int sets) {
        var sides = exercise.sides();
        return new Exercise(exercise.id(), Integer.toString(exercise.number()), words.name(exercise.id()),
                PlanWords.rows(sides).stream().map(side -> row(words, exercise, side, week, sets)).toList());
    }

    private static Row row(PlanWords words, Plan.Exercise exercise, Side side, Plan.Week week, int sets) {
        int asked = exercise.sides().on(side).doses().stream().filter(d -> d.week() == week.number()).mapToInt(Plan.Dose::sets)
                .findFirst().orElse(0);
        return new Row(PlanWords.badge(exercise.sides(), side), WeeksModel.dose(words, exercise, side, week),
                IntStream.rangeClosed(1, sets).mapToObj(set -> set <= asked).toList());
    }
}
