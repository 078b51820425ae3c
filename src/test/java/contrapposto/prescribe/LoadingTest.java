package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Reason;
import contrapposto.catalogue.HouseRules.Range;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The first weight, by hand: an arm of 20 kg 1RM that is to work at 60 % wants 12 kg; rounding goes down (G1.21). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LoadingTest {
    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

    private static Weights weights(double... existing) {
        return new Weights(DoubleStream.of(existing).boxed().toList(), NO_LIMIT);
    }

    private static Optional<Loading> loading(double most, double... existing) {
        return Loading.of(new Asking.LoadOnly(20), weights(existing), new Range(0.60, 0.72), 0.60, most);
    }

    private static List<String> rules(Loading loading) {
        return loading.reasons().stream().map(Reason::rule).toList();
    }

    @Test
    void a_weight_that_exists_is_taken_as_it_is() {
        var taken = loading(NO_LIMIT, 0, 5, 10, 12, 14).orElseThrow();
        assertEquals(12, taken.load(), 1e-9);
        assertEquals(12, taken.exact(), 1e-9);
        assertEquals(List.of("load-exact", "load-rounded"), rules(taken));
        assertTrue(taken.warning().isEmpty() && !taken.held());
    }

    @Test
    void others_are_rounded_down_never_up() {
        assertEquals(11.9, loading(NO_LIMIT, 0, 11.9, 12.1).orElseThrow().load());
    }

    @Test
    void nobody_begins_heavier_than_tested() {
        var taken = loading(10, 0, 5, 10, 12).orElseThrow();
        assertEquals(10, taken.load());
        assertEquals(12, taken.exact(), 1e-9);
        assertFalse(taken.held());
    }

    @Test
    void a_share_far_under_the_wanted_one_holds_the_weight_and_says_so() {
        var taken = loading(8, 0, 8, 12).orElseThrow();
        assertTrue(taken.held() && taken.warning().isPresent());
        assertEquals(List.of("load-exact", "load-rounded", "far-under"), rules(taken));
        assertFalse(loading(NO_LIMIT, 0, 8).orElseThrow().held(), "where nothing but the weights that exist is in the way");
        assertFalse(loading(8, 0, 4, 12).orElseThrow().held(), "4 of 8 kg is not more than half");
    }

    @Test
    void where_the_lightest_is_too_heavy_none_is_taken_and_the_coach_is_told() {
        var none = loading(NO_LIMIT, 0, 15).orElseThrow();
        assertEquals(0, none.load());
        assertEquals(12, none.exact(), 1e-9);
        assertEquals(List.of("lightest-too-heavy"), rules(none));
        assertTrue(none.warning().isPresent());
    }

    @Test
    void without_weights_the_body_is_the_load() {
        var body = loading(NO_LIMIT, 0).orElseThrow();
        assertEquals(0, body.load());
        assertEquals(List.of("body-weight"), rules(body));
        assertTrue(body.warning().isEmpty());
    }

    @Test
    void where_nothing_more_is_wanted_the_body_is_enough() {
        var body = Loading.of(new Asking.LoadOnly(20), weights(0, 5), new Range(0, 0.1), 0, NO_LIMIT).orElseThrow();
        assertEquals(List.of("body-weight"), rules(body));
        assertTrue(body.warning().isEmpty());
    }

    @Test
    void where_a_heavier_weight_asks_no_more_no_share_can_say_how_much() {
        assertTrue(Loading.of(new Asking.LoadOnly(NO_LIMIT), weights(0, 5), new Range(0.6, 0.72), 0.6, NO_LIMIT).isEmpty());
    }

    @Test
    void weights_round_down_and_are_told_apart_at_their_edges() {
        var weights = weights(0, 2, 4, 6);
        assertEquals(List.of(0.0, 2.0, 4.0, 4.0, 6.0), DoubleStream.of(1.9, 2, 4, 5.99, 100).mapToObj(weights::roundedDown).toList());
        assertEquals(List.of(0.0, 2.0, 4.0), weights.upTo(4).existing());
        assertEquals(List.of(6.0), weights.above(4));
        assertEquals(OptionalDouble.of(2), weights.lightest());
        assertEquals(OptionalDouble.empty(), weights(0).lightest());
    }
}
