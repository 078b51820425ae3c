package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import contrapposto.select.Selector;
import contrapposto.setup.SetUpChooser;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a program lacks is said: over every restriction there is, on a bare floor and in a gym. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GapsTest {
    private static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());
    private static final SetUpChooser CHOOSER = new SetUpChooser();
    private static final List<Gaps.Pattern> LIFTS = List.of(Gaps.Pattern.PUSH, Gaps.Pattern.PULL, Gaps.Pattern.SQUAT, Gaps.Pattern.HINGE);
    /** The family groups of the four, by the words of the catalogue's files. */
    private static final Map<Gaps.Pattern, String> GROUPS = Map.of(Gaps.Pattern.PUSH, "PRESS", Gaps.Pattern.PULL, "PULL", Gaps.Pattern.SQUAT, "KNEE_BEND",
            Gaps.Pattern.HINGE, "HINGE");

    private static Plan plan(Specs specs) {
        return Programs.PRESCRIBER.prescribe(new Selector().select(CHOOSER.choose(new Assessor().assess(specs.spec(), CATALOGUE.rules()), CATALOGUE)));
    }

    private static Specs avoiding(RestrictionTag... tags) {
        return Specs.turned(Turned.RIGHT).restricted(Arrays.stream(tags).map(tag -> (Restriction) new Restriction.Avoid(tag.word(), EnumSet.allOf(Side.class),
                Optional.empty(), "")).toArray(Restriction[]::new));
    }

    @ParameterizedTest
    @EnumSource(RestrictionTag.class)
    void under_every_restriction_each_pattern_is_in_the_program_or_named_as_missing(RestrictionTag tag) {
        var plan = plan(avoiding(tag));
        var groups = new TreeSet<String>();
        plan.exercises().forEach(e -> groups.add(CATALOGUE.family(e.id()).orElseThrow().group().name()));
        var missing = LIFTS.stream().filter(pattern -> !groups.contains(GROUPS.get(pattern))).toList();
        assertEquals(missing, Gaps.of(plan).stream().map(Gaps.Missing::pattern).toList());
        assertEquals(missing.size(), plan.warnings().stream().filter(w -> w.key().equals("gap/pattern")).count());
        for (var gap : Gaps.of(plan)) {
            assertEquals(CATALOGUE.families().stream().filter(f -> f.group().name().equals(GROUPS.get(gap.pattern()))).count(),
                    gap.left().values().stream().mapToInt(Integer::intValue).sum(), () -> "every family of it has a cause: " + gap);
        }
        everyRemovalLeavesAReason(plan, tag);
        for (var side : Side.values()) {
            var wanted = plan.assessed().target(side).muscles();
            boolean all = wanted.stream().allMatch(muscle -> plan.exercises().stream().anyMatch(e -> e.sides().has(side)
                    && e.sides().on(side).solved().muscles().containsKey(muscle) || e.sides().has(side.other())
                    && e.sides().on(side.other()).solved().otherSideMuscles().containsKey(muscle)));
            assertTrue(all || plan.warnings().stream().anyMatch(w -> w.key().equals("gap/muscles")), () -> tag + ": " + side);
        }
    }

    /** Of all families that fall under the tag, none is in the program but in a set-up without a weight, and each says why. */
    private static void everyRemovalLeavesAReason(Plan plan, RestrictionTag tag) {
        boolean byWeight = tag == RestrictionTag.GRIP || tag != tag.movement();
        for (var family : CATALOGUE.families()) {
            if (family.tags().contains(tag.movement().word()) && !byWeight) {
                assertTrue(plan.exercises().stream().noneMatch(e -> e.id().equals(family.id())), () -> tag + ": " + family.id());
                assertTrue(plan.leftOut().get(family.id()).stream().anyMatch(r -> List.of("restriction", "equipment").contains(r.rule())
                        && !r.because().isBlank()), () -> tag + ": " + family.id() + " " + plan.leftOut().get(family.id()));
            }
        }
    }

    /** Of one side, or of a weight: what is left says what it lost. */
    @ParameterizedTest
    @EnumSource(value = RestrictionTag.class, names = {"GRIP", "LOADED_TWISTING", "KNEELING", "SINGLE_LEG", "SHOULDER"})
    void a_family_that_keeps_a_side_or_a_set_up_says_what_it_lost(RestrictionTag tag) {
        boolean byWeight = tag == RestrictionTag.GRIP || tag != tag.movement();
        var sides = byWeight ? EnumSet.allOf(Side.class) : EnumSet.of(Side.RIGHT);
        var free = CHOOSER.choose(new Assessor().assess(Specs.turned(Turned.RIGHT).spec(), CATALOGUE.rules()), CATALOGUE);
        var bound = CHOOSER.choose(new Assessor().assess(Specs.turned(Turned.RIGHT).restricted(new Restriction.Avoid(tag.word(), sides, Optional.empty(), ""))
                .spec(), CATALOGUE.rules()), CATALOGUE);
        int found = 0;
        for (var family : CATALOGUE.families()) {
            for (var side : Side.values()) {
                var before = Optional.ofNullable(free.usable().get(family.id())).filter(s -> s.has(side)).map(s -> s.on(side));
                var after = Optional.ofNullable(bound.usable().get(family.id())).filter(s -> s.has(side)).map(s -> s.on(side));
                if (before.isPresent() && !before.map(s -> s.setUp()).equals(after.map(s -> s.setUp()))) {
                    found++;
                    var why = after.map(s -> s.reasons()).or(() -> Optional.ofNullable(bound.leftOut().get(family.id())))
                            .orElseGet(() -> bound.refused().get(family.id()).get(side));
                    assertTrue(why.stream().anyMatch(r -> r.rule().equals("restriction")), () -> tag + ": " + family.id() + " " + side + " " + why);
                }
            }
        }
        assertTrue(found > 0, tag + " changes something");
    }

    @Test
    void what_restrictions_took_away_is_told_from_what_was_not_chosen() {
        var plan = plan(avoiding(RestrictionTag.SHOULDER, RestrictionTag.ELBOW, RestrictionTag.WRIST));
        var push = Gaps.of(plan).stream().filter(m -> m.pattern() == Gaps.Pattern.PUSH).findFirst().orElseThrow();
        assertTrue(push.restricted(), push::toString);
        assertTrue(plan.warnings().stream().map(contrapposto.wording.Teller.PLAIN::plain).anyMatch(line ->
                line.startsWith("nothing in the whole program is a push: ") && line.contains("kept out by restrictions")), () -> "" + plan.warnings());
    }

    @Test
    void a_full_gym_without_restrictions_leaves_no_gap_that_restrictions_made() {
        assertTrue(Gaps.of(plan(Specs.turned(Turned.RIGHT))).stream().noneMatch(Gaps.Missing::restricted));
    }
}
