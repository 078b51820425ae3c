package contrapposto.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every restriction of the catalogue against every family: each candidate set-up of both sides, none of them solved. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RestrictionTableTest {
    private static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());
    private static final Set<Side> BOTH = EnumSet.allOf(Side.class);

    private static Assessed avoiding(RestrictionTag tag, Set<Side> sides) {
        return new Assessor().assess(Specs.turned(Turned.SQUARE).restricted(new Restriction.Avoid(tag.word(), sides, Optional.empty(), ""))
                .spec(), CATALOGUE.rules());
    }

    private static Question question(Assessed assessed, Family family, Side side) {
        var person = assessed.spec().client().person();
        return new Question(assessed, CATALOGUE.rules(), family, side, assessed.target(side), person, Restraints.of(assessed, CATALOGUE.rules()),
                assessed.spec().equipment(), SetUpWish.NONE);
    }

    private static List<Boolean> removed(RestrictionTag tag, Set<Side> avoided, Family family, Side working) {
        var q = question(avoiding(tag, avoided), family, working);
        return Candidates.of(q).stream().map(c -> q.restraints().against(family, c, working).isPresent()).toList();
    }

    /** Written down a second time: what a tag means, apart from its side. */
    private static boolean concerns(RestrictionTag tag, Family family, SetUp setUp) {
        boolean weight = setUp.implement() != Implement.BODY_WEIGHT;
        return switch (tag.word()) {
            case "loaded-twisting" -> family.tags().contains("twisting") && weight;
            case "loaded-spine-flexion" -> family.tags().contains("spine-flexion") && weight;
            case "grip" -> family.tags().contains("grip") && weight;
            default -> family.tags().contains(tag.word());
        };
    }

    @ParameterizedTest
    @EnumSource(RestrictionTag.class)
    void a_restriction_of_both_sides_removes_what_falls_under_it_and_nothing_else(RestrictionTag tag) {
        for (var family : CATALOGUE.families()) {
            for (var side : Side.values()) {
                var q = question(avoiding(tag, BOTH), family, side);
                for (var candidate : Candidates.of(q)) {
                    var reason = q.restraints().against(family, candidate, side);
                    assertEquals(concerns(tag, family, candidate), reason.isPresent(), () -> tag.word() + ": " + family.id() + " " + candidate);
                    assertTrue(reason.filter(r -> r.because().isBlank()).isEmpty(), family.id());
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(RestrictionTag.class)
    void a_restriction_of_one_side_is_the_other_in_the_mirror_and_both_together_are_both(RestrictionTag tag) {
        for (var family : CATALOGUE.families()) {
            for (var side : Side.values()) {
                var here = removed(tag, EnumSet.of(side), family, side);
                var there = removed(tag, EnumSet.of(side.other()), family, side);
                assertEquals(here, removed(tag, EnumSet.of(side.other()), family, side.other()), () -> tag.word() + ": " + family.id());
                assertEquals(there, removed(tag, EnumSet.of(side), family, side.other()), () -> tag.word() + ": " + family.id());
                var both = removed(tag, BOTH, family, side);
                for (int i = 0; i < both.size(); i++) {
                    assertEquals(both.get(i), here.get(i) || there.get(i), tag.word() + ": " + family.id());
                }
                if (family.sides() == Family.Sides.BOTH) {
                    assertEquals(here, there, family.id());
                }
            }
        }
    }
}
