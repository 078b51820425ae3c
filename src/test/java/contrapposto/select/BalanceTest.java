package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.check.Condition;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUpChooser;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Balance first: common practice; for weak bones the texts also ask for balance work as such (reference E2.9). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BalanceTest {
    private static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());

    private static Selection selected(Specs specs) {
        return new Selector().select(new SetUpChooser().choose(new Assessor().assess(specs.spec(), CATALOGUE.rules()), CATALOGUE));
    }

    /** The gym with a bare wall. */
    private static Specs seventy() {
        var gym = Specs.gym();
        return Specs.turned(Turned.RIGHT).aged(OptionalInt.of(70)).equipped(new CheckedSpec.Equipment(gym.dumbbells(), false, gym.kettlebells(), gym.bars(),
                gym.cable(), gym.boxes(), gym.bench(), gym.wedges(), Set.of("wall")));
    }

    private static boolean first(Specs specs) {
        return Balance.first(new Assessor().assess(specs.spec(), CATALOGUE.rules()));
    }

    /** Written down a second time: what trains balance, by the catalogue's words. */
    private static boolean balances(Family family) {
        return List.of("wall-one-leg-stand", "wall-drive", "slow-march", "one-leg-squat", "one-leg-hinge", "one-leg-calf-raise", "step-down", "step-up-press",
                "walking-lunge", "overhead-carry").contains(family.id());
    }

    @Test
    void what_trains_balance_stands_on_one_leg_or_is_hard_to_balance() {
        CATALOGUE.families().forEach(family -> assertEquals(balances(family), Balance.trainedBy(family), family.id()));
    }

    @Test
    void it_comes_first_from_65_on_for_the_young_and_where_the_age_is_unknown_and_for_weak_bones() {
        var someone = Specs.turned(Turned.RIGHT);
        assertFalse(first(someone.aged(OptionalInt.of(64))));
        assertTrue(first(someone.aged(OptionalInt.of(65))));
        assertTrue(first(someone.aged(OptionalInt.empty())));
        assertTrue(first(someone.aged(OptionalInt.of(17))));
        assertFalse(first(someone.aged(OptionalInt.of(18))));
        assertTrue(first(someone.having(new Condition(Condition.Kind.OSTEOPOROSIS, Optional.empty(), Optional.empty(), EnumSet.allOf(Side.class)))));
    }

    @Test
    void every_session_of_someone_of_seventy_has_it_before_all_other_work_on_the_feet() {
        var seventy = selected(seventy());
        for (var day : seventy.days()) {
            boolean begun = false;
            boolean balanced = false;
            for (int number : day.numbers()) {
                var family = seventy.exercises().get(number - 1).sides().values().getFirst().family();
                if (balances(family)) {
                    assertFalse(begun, () -> family.id() + " comes after other work: " + seventy.exercises());
                    balanced = true;
                } else {
                    begun |= family.stage() != Stage.FLOOR;
                }
            }
            assertTrue(balanced, () -> day + ": " + seventy.leftOut().get("wall-one-leg-stand") + seventy.leftOut().get("slow-march"));
        }
        var stand = seventy.exercises().stream().filter(c -> c.id().equals("wall-one-leg-stand")).findFirst().orElseThrow();
        assertEquals(List.of(1, 8), List.of(stand.firstWeek(), stand.lastWeek()));
        assertTrue(stand.reasons().stream().anyMatch(r -> r.rule().equals("balance-first")));
        assertTrue(stand.reasons().stream().noneMatch(r -> r.rule().equals("included")));
    }

    @Test
    void it_is_not_put_in_where_it_may_not_be_done() {
        var oneLeg = new Restriction.Avoid(RestrictionTag.SINGLE_LEG.word(), EnumSet.allOf(Side.class), Optional.empty(), "");
        var restricted = selected(seventy().restricted(oneLeg));
        assertTrue(restricted.exercises().stream().noneMatch(c -> c.id().equals("wall-one-leg-stand")));
    }

    @Test
    void others_keep_their_order() {
        var order = TrainingOrder.families(false);
        assertTrue(order.compare(CATALOGUE.family("supported-curl").orElseThrow(), CATALOGUE.family("one-leg-hinge").orElseThrow()) < 0);
        var older = TrainingOrder.families(true);
        assertTrue(older.compare(CATALOGUE.family("supported-curl").orElseThrow(), CATALOGUE.family("one-leg-hinge").orElseThrow()) > 0);
        assertTrue(older.compare(CATALOGUE.family("floor-bridge").orElseThrow(), CATALOGUE.family("one-leg-hinge").orElseThrow()) < 0);
    }
}
