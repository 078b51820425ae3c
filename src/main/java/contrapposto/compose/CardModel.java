package contrapposto.compose;

import contrapposto.catalogue.Family;
import contrapposto.catalogue.FamilyWords;
import contrapposto.illustrate.FootMap;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Units;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * One exercise card as finished words.
 *
 * @param kind    pair, single or both
 * @param rest    of the first week
 * @param from    the first and the last week it is done in, empty when it is done in all
 * @param halves  left, right or both → what that half says
 * @param single  the side of a one-sided exercise
 * @param instead what the other side of a one-sided exercise gets; empty when nothing answers it
 * @param taken   what to do when its things are in use; empty when it needs none
 * @param hurts   what to do when it hurts; empty when it is then left out
 * @param turned  whether doing it on the other side would turn the client the way they already turn
 */
record CardModel(String id, String number, String name, String kind, String rest, String tempo, Optional<Weeks> from,
                 Map<String, HalfModel> halves, Optional<String> single, Optional<NamedExercise> instead, Optional<NamedExercise> taken,
                 Optional<NamedExercise> hurts,
                 List<FamilyWords.Mistake> mistakes, List<String> easier, List<String> harder, List<String> cautions,
                 Optional<String> ownWords, boolean turned) {
    record Weeks(String first, String last) { }

    /** @param number empty when the exercise is not in the plan */
    record NamedExercise(Optional<String> number, String name) { }

    /**
     * @param side     left, right or both
     * @param order    first, second, only or together
     * @param drawing  the beginning of the keys of its drawings
     * @param apart    whether start and working position have a drawing each
     * @param map      whether a picture from above stands beside the sketches
     * @param feet     whether that is a map of the feet, not of a turn
     * @param shares   of the weight on the feet at the working position; empty where feet do not carry
     * @param shin     back, upright or forward at the working position; empty where no leg works
     */
    record HalfModel(String side, String other, String role, String heading, String order, String drawing, boolean apart,
                     List<MeasureModel> measures, List<String> cues, Optional<String> feel, Optional<String> arrow,
                     boolean map, boolean feet, Optional<Shares> shares, Optional<String> shin) { }

    record Shares(String left, String right) { }

    static List<CardModel> all(PlanWords words, Set<String> drawings) {
        return words.plan().exercises().stream().map(e -> of(words, e, drawings)).toList();
    }

    private static CardModel of(PlanWords words, Plan.Exercise exercise, Set<String> drawings) {
        var family = words.family(exercise.id());
        var told = words.words(exercise.id());
        var sides = exercise.sides();
        var sample = sides.values().getFirst();
        var dose = sample.doses().getFirst();
        var halves = new LinkedHashMap<String, HalfModel>();
        for (Side side : PlanWords.rows(sides)) {
            halves.put(PlanWords.badge(sides, side), half(words, exercise, side, drawings));
        }
        boolean always = sample.doses().size() == words.plan().weeks().size();
        return new CardModel(exercise.id(), Integer.toString(exercise.number()), told.name(), kind(sides), words.units().seconds(dose.rest()),
                dose.tempo(), always ? Optional.empty() : Optional.of(new Weeks(Integer.toString(dose.week()),
                        Integer.toString(sample.doses().getLast().week()))),
                halves, sides instanceof Sided.Only<Plan.SidePlan> only ? Optional.of(only.side().word()) : Optional.empty(),
                counterpart(words, exercise).map(e -> named(words, e.id())),
                exercise.instead().taken().map(id -> named(words, id)), exercise.instead().hurts().map(id -> named(words, id)),
                told.mistakes().stream().map(m -> new FamilyWords.Mistake(words.forAll(m.what(), sides), words.forAll(m.fix(), sides))).toList(),
                links(words, family.easier(), told.easier(), sample.solved()), links(words, family.harder(), told.harder(), sample.solved()),
                told.cautions().stream().map(c -> words.forAll(c, sides)).filter(c -> !c.isEmpty()).toList(),
                Optional.ofNullable(words.spec().choices().ownWords().get(exercise.id())),
                words.plan().assessed().landing().isPresent() && family.turn().toward() != Family.Toward.NONE);
    }

    private static String kind(Sided<?> sides) {
        return switch (sides) {
            case Sided.Whole<?> whole -> "both";
            case Sided.Each<?> each -> "pair";
            case Sided.Only<?> only -> "single";
        };
    }

    private static NamedExercise named(PlanWords words, String id) {
        return new NamedExercise(words.numberOf(id), words.name(id));
    }

    private static List<String> links(PlanWords words, List<Family.Link> links, Map<String, String> told, SolvedSetUp solved) {
        return links.stream().flatMap(l -> Optional.ofNullable(told.get(l.change())).stream()).map(t -> words.filled(t, solved)).toList();
    }

    /**
     * What the other side does in place of a one-sided exercise: one for that side alone, with the same limb, in every week
     * of this one; of several the one with the nearest number.
     */
    private static Optional<Plan.Exercise> counterpart(PlanWords words, Plan.Exercise exercise) {
        if (!(exercise.sides() instanceof Sided.Only<Plan.SidePlan> own)) {
            return Optional.empty();
        }
        return words.plan().exercises().stream()
                .filter(e -> e.sides() instanceof Sided.Only<Plan.SidePlan> only && only.side() != own.side())
                .filter(e -> words.family(e.id()).works() == words.family(exercise.id()).works())
                .filter(e -> weeks(e).containsAll(weeks(exercise)))
                .min(Comparator.comparingInt(e -> Math.abs(e.number() - exercise.number())));
    }

    private static Set<Integer> weeks(Plan.Exercise exercise) {
        return exercise.sides().values().stream().flatMap(s -> s.doses().stream()).map(Plan.Dose::week).collect(Collectors.toCollection(TreeSet::new));
    }

    private static HalfModel half(PlanWords words, Plan.Exercise exercise, Side side, Set<String> drawings) {
        var sides = exercise.sides();
        SolvedSetUp solved = sides.on(side).solved();
        String badge = PlanWords.badge(sides, side);
        return new HalfModel(badge, side.other().word(), solved.role().word(), heading(words, solved, badge),
                order(words.plan(), sides, side), exercise.id() + "/" + badge,
                drawings.contains(exercise.id() + "/" + badge + "/start"), MeasureModel.of(solved, words.units()), words.cues(solved),
                words.byRole(words.words(exercise.id()).feel(), solved), words.byRole(words.words(exercise.id()).arrow(), solved),
                drawings.contains(exercise.id() + "/" + badge + "/map"), FootMap.of(solved, words.units()::length).isPresent(),
                shares(solved, words.units()), shin(words, solved));
    }

    private static String order(Plan plan, Sided<?> sides, Side side) {
        return switch (sides) {
            case Sided.Whole<?> whole -> "together";
            case Sided.Only<?> only -> "only";
            case Sided.Each<?> each -> side == plan.firstSide() ? "first" : "second";
        };
    }

    private static String heading(PlanWords words, SolvedSetUp solved, String badge) {
        var headings = words.words(solved.family().id()).heading();
        String key = badge.equals("both") ? "both"
                : solved.setUp().frontFoot().map(foot -> foot == solved.side() ? "ahead" : "behind").orElse("each");
        String text = headings.containsKey(key) ? headings.get(key) : headings.values().stream().findFirst().orElse("");
        return words.filled(text, solved);
    }

    private static Optional<Shares> shares(SolvedSetUp solved, Units units) {
        OptionalDouble left = Units.known(solved.pose().mechanics().leftShare());
        return left.isEmpty() ? Optional.empty()
                : Optional.of(new Shares(units.percent(left.getAsDouble(), 5), units.percent(1 - left.getAsDouble(), 5)));
    }

    private static Optional<String> shin(PlanWords words, SolvedSetUp solved) {
        OptionalDouble angle = Units.known(solved.pose().mechanics().shinWorking());
        double upright = words.plan().catalogue().rules().shinVertical();
        return angle.isEmpty() || solved.setUp().workingLeg().isEmpty() ? Optional.empty()
                : Optional.of(angle.getAsDouble() > upright ? "forward" : angle.getAsDouble() < -upright ? "back" : "upright");
    }
}
