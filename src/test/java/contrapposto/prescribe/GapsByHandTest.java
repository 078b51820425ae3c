package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessor;
import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Muscle;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.prescribe.Gaps.Cause;
import contrapposto.prescribe.Gaps.Pattern;
import contrapposto.prescribe.Plan.Exercise;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.wording.Said;
import contrapposto.wording.Term;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a small program of our making lacks: a push, a pull, a squat and a hinge belong to a balanced one, balance work where it comes first (common practice, no source). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GapsByHandTest {
    private static final List<String> LIFTS = List.of("high-to-low-press", "standing-row", "split-squat", "staggered-deadlift");

    private static Assessed assessed(int age) {
        return new Assessor().assess(Specs.turned(Turned.RIGHT).aged(OptionalInt.of(age)).spec(), Programs.CATALOGUE.rules());
    }

    private static List<Exercise> exercises(List<String> ids) {
        return ids.stream().map(id -> Handmade.exercise(ids.indexOf(id) + 1, id)).toList();
    }

    private static List<Said> said(int age, List<String> ids, Map<String, List<Reason>> leftOut) {
        return Gaps.said(assessed(age), Programs.CATALOGUE, exercises(ids), leftOut);
    }

    private static List<String> patterns(List<Said> lines) {
        return lines.stream().filter(line -> line.key().equals("gap/pattern")).map(line -> Terms.word(line, "pattern")).toList();
    }

    private static List<Reason> because(String... rules) {
        return Stream.of(rules).map(rule -> Reason.of(rule, Said.of("own-weight"), Source.COACH)).toList();
    }

    @Test
    void each_of_four_patterns_is_missed_when_its_exercise_goes() {
        assertEquals(List.of(), patterns(said(34, LIFTS, Map.of())));
        for (int i = 0; i < LIFTS.size(); i++) {
            var less = new java.util.ArrayList<>(LIFTS);
            less.remove(i);
            assertEquals(List.of(List.of("pattern-push", "pattern-pull", "pattern-squat", "pattern-hinge").get(i)), patterns(said(34, less, Map.of())));
        }
    }

    /** House: from 65 on balance comes first, and is missed. */
    @Test
    void balance_is_missed_only_by_those_for_whom_it_comes_first() {
        var steady = List.of("high-to-low-press", "standing-row", "goblet-squat", "staggered-deadlift");
        assertEquals(List.of(), patterns(said(34, steady, Map.of())));
        assertEquals(List.of("pattern-balance"), patterns(said(70, steady, Map.of())));
        var onOneLeg = Programs.CATALOGUE.families().stream().filter(f -> f.base() == contrapposto.catalogue.Family.BaseKind.ONE_LEG).findFirst().orElseThrow().id();
        assertEquals(List.of(), patterns(said(70, Stream.concat(steady.stream(), Stream.of(onOneLeg)).toList(), Map.of())));
    }

    private static Map<Cause, Integer> causes(Map<String, List<Reason>> leftOut) {
        return pulling(leftOut).left();
    }

    private static Gaps.Missing pulling(Map<String, List<Reason>> leftOut) {
        var whole = Programs.plan(Specs.turned(Turned.RIGHT));
        var plan = new Plan(whole.assessed(), whole.catalogue(), whole.firstSide(), whole.expires(), whole.weeks(), exercises(List.of("high-to-low-press", "split-squat", "staggered-deadlift")),
                whole.days(), Map.of(), leftOut, List.of(), List.of());
        var missing = Gaps.of(plan);
        assertEquals(List.of(Pattern.PULL), missing.stream().map(Gaps.Missing::pattern).toList());
        return missing.getFirst();
    }

    @Test
    void families_that_fell_away_are_counted_by_what_took_them() {
        for (var rule : List.of("restriction", "screening-limit", "hand-support", "condition-osteoporosis")) {
            assertEquals(Map.of(Cause.RESTRICTION, 1), causes(Map.of("standing-row", because("equipment", rule))), rule + " before equipment");
        }
        assertEquals(Map.of(Cause.EQUIPMENT, 1), causes(Map.of("standing-row", because("skill", "equipment"))));
        assertEquals(Map.of(Cause.CHOICE, 1), causes(Map.of("standing-row", because("skill"))));
        var all = new LinkedHashMap<String, List<Reason>>();
        all.put("standing-row", because("restriction"));
        all.put("one-arm-row", because("equipment"));
        all.put("kneeling-row", because("restriction"));
        all.put("half-kneeling-pulldown", because("minutes"));
        all.put("goblet-squat", because("equipment"));
        assertEquals(Map.of(Cause.RESTRICTION, 2, Cause.EQUIPMENT, 1, Cause.CHOICE, 1), causes(all), "a squat is no pull");
        var line = said(34, List.of("high-to-low-press", "split-squat", "staggered-deadlift"), all).getFirst();
        assertEquals(List.of("gap/restricted 2", "gap/equipment 1", "gap/choice 1"),
                ((Term.Listed) line.terms().get("causes")).inside().map(cause -> cause.key() + " " + (int) Terms.number(cause, "count")).toList());
    }

    @Test
    void a_pattern_counts_as_restricted_only_where_nothing_of_it_was_merely_not_chosen() {
        assertTrue(pulling(Map.of("standing-row", because("restriction"), "one-arm-row", because("equipment"))).restricted());
        assertFalse(pulling(Map.of("standing-row", because("restriction"), "one-arm-row", because("skill"))).restricted());
        assertFalse(pulling(Map.of("one-arm-row", because("equipment"))).restricted());
        assertFalse(pulling(Map.of()).restricted());
    }

    @Test
    void a_withheld_program_lacks_nothing() {
        assertEquals(List.of(), Gaps.of(Programs.plan(Specs.turned(Turned.RIGHT).answering("chest-pain", true))));
    }

    private static List<String> muscles(List<Exercise> exercises) {
        var lines = Gaps.said(assessed(34), Programs.CATALOGUE, exercises, Map.of()).stream().filter(line -> line.key().equals("gap/muscles")).toList();
        return lines.isEmpty() ? List.of() : ((Term.Listed) lines.getFirst().terms().get("muscles")).inside().map(one -> Terms.word(one, "muscle") + " " + Terms.word(one, "side")).toList();
    }

    private static List<String> wanted(Side side) {
        return assessed(34).target(side).muscles().stream().map(muscle -> muscle.word() + " " + side.word()).toList();
    }

    private static Map<Muscle, Double> all(Side side) {
        return assessed(34).target(side).muscles().stream().collect(Collectors.toMap(muscle -> muscle, muscle -> 0.5));
    }

    private static Plan.SidePlan training(Side worked, Map<Muscle, Double> own, Map<Muscle, Double> other) {
        return Handmade.side(Handmade.training(Handmade.setUps("split-squat").on(worked), own, other));
    }

    @Test
    void every_wanted_muscle_that_no_exercise_trains_is_named_for_its_side() {
        assertEquals(Stream.concat(wanted(Side.LEFT).stream(), wanted(Side.RIGHT).stream()).toList(), muscles(List.of()));
        var first = assessed(34).target(Side.LEFT).muscles().getFirst();
        var one = Handmade.exercise(1, "split-squat", new Sided.Only<>(Side.LEFT, training(Side.LEFT, Map.of(first, 1.0), Map.of())));
        assertFalse(muscles(List.of(one)).contains(first.word() + " left"));
        assertEquals(wanted(Side.LEFT).size() + wanted(Side.RIGHT).size() - 1, muscles(List.of(one)).size());
    }

    @Test
    void a_side_is_trained_by_its_own_work_and_by_what_the_others_does_for_it() {
        var leftOnly = Handmade.exercise(1, "split-squat", new Sided.Only<>(Side.LEFT, training(Side.LEFT, all(Side.LEFT), all(Side.RIGHT))));
        assertEquals(List.of(), muscles(List.of(leftOnly)));
        var both = new java.util.EnumMap<Muscle, Double>(all(Side.LEFT));
        both.putAll(all(Side.RIGHT));
        var whole = Handmade.exercise(1, "goblet-squat", new Sided.Whole<>(training(Side.LEFT, both, Map.of())));
        assertEquals(List.of(), muscles(List.of(whole)));
        var own = Handmade.exercise(1, "split-squat", new Sided.Each<>(training(Side.LEFT, all(Side.LEFT), Map.of()), training(Side.RIGHT, all(Side.RIGHT), Map.of())));
        assertEquals(List.of(), muscles(List.of(own)));
        var across = Handmade.exercise(1, "split-squat", new Sided.Each<>(training(Side.LEFT, Map.of(), all(Side.RIGHT)), training(Side.RIGHT, Map.of(), all(Side.LEFT))));
        assertEquals(List.of(), muscles(List.of(across)));
    }
}
