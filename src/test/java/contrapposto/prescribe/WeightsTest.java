package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.assess.Specs;
import contrapposto.body.Load;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Angle;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Which of the dumbbells from 2 to 24 kg a client may hold whose hand bears 6 kg. What a hand feels of a load is plain statics; the day of the end counts in: house. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WeightsTest {
    private static Restriction hand(double kilograms, Optional<LocalDate> until) {
        return new Restriction.LimitLoad(Mass.ofKilograms(kilograms), until, "a sore wrist");
    }

    private static Weights weights(Load load, Restriction... restrictions) {
        return Weights.of(Specs.turned(Turned.RIGHT).restricted(restrictions).spec(), Implement.DUMBBELL, load);
    }

    private static double heaviest(Load load, Restriction... restrictions) {
        return weights(load, restrictions).existing().getLast();
    }

    @Test
    void a_hand_feels_all_of_its_own_weight_and_half_of_one_that_both_hold() {
        var limit = hand(6, Optional.empty());
        assertEquals(6, heaviest(new Load.InHand(Side.LEFT, 8), limit));
        assertEquals(6, heaviest(new Load.InEachHand(8), limit));
        assertEquals(12, heaviest(new Load.InBothHands(8), limit));
        assertEquals(18, heaviest(new Load.Cable(Side.LEFT, 5, 3, 1.8, 1, false, 0), limit), "a pulley of 3 to 1");
    }

    @Test
    void what_no_hand_holds_no_hand_limits() {
        var limit = hand(6, Optional.empty());
        assertEquals(24, heaviest(new Load.OnHips(8), limit));
        assertEquals(24, heaviest(new Load.None(), limit));
        assertEquals(24, heaviest(new Load.Band(Side.LEFT, 1, 1, true), limit));
    }

    @Test
    void the_lowest_limit_that_still_holds_at_the_start_counts() {
        var held = new Load.InHand(Side.LEFT, 8);
        assertEquals(24, heaviest(held));
        assertEquals(Double.POSITIVE_INFINITY, weights(held).perHand());
        assertEquals(6, heaviest(held, hand(10, Optional.empty()), hand(6, Optional.empty())));
        assertEquals(6, heaviest(held, hand(6, Optional.of(Specs.START))), "until the very day of the start");
        assertEquals(24, heaviest(held, hand(6, Optional.of(Specs.START.minusDays(1)))), "over the day before");
        assertEquals(6, weights(held, hand(6, Optional.empty())).perHand());
    }

    @Test
    void other_restrictions_limit_no_weight() {
        assertEquals(24, heaviest(new Load.InHand(Side.LEFT, 8), new Restriction.Avoid("grip", EnumSet.allOf(Side.class), Optional.empty(), ""),
                new Restriction.LimitRange("knee-flexion", EnumSet.allOf(Side.class), Angle.ofDegrees(60), Optional.empty(), "")));
    }

    @Test
    void nothing_at_all_comes_first_then_the_lightest() {
        assertEquals(java.util.List.of(0.0, 2.0, 4.0), weights(new Load.InHand(Side.LEFT, 8)).existing().subList(0, 3));
        assertEquals(java.util.List.of(0.0), Weights.of(Specs.turned(Turned.RIGHT).spec(), Implement.BODY_WEIGHT, new Load.None()).existing());
    }
}
