package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.HouseRules.Range;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * What the first weight says of itself, by hand. An arm of 20 kg 1RM; a leg whose body asks a share by itself and each kilogram 2 % more, so
 * that from 29 % a wanted 60 % is 15.5 kg. The share wanted is 60 %, the band ends at 72 %.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FirstWeightTest {
    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;
    private static final Range BAND = new Range(0.60, 0.72);
    private static final double WANTED = 0.60;

    /** Its hip bears all of it. @param joint how much more of its own than the leg's share the hip bears */
    private static Asking leg(double body, double joint, double heaviestPosed) {
        return new Asking.BodyAndLoad(Handmade.demand(load -> 100 * (body + 0.02 * load), load -> 0, 0, heaviestPosed), 100, BindingJoint.HIP, 100 / joint);
    }

    private static Optional<Loading> first(Asking asking, double perHand, double most, double... existing) {
        return Loading.of(asking, new Weights(DoubleStream.of(existing).boxed().toList(), perHand), BAND, WANTED, most);
    }

    private static Loading arm(double perHand, double most, double... existing) {
        return first(new Asking.LoadOnly(20), perHand, most, existing).orElseThrow();
    }

    private static Loading body(double body, double... existing) {
        return first(leg(body, 1, NO_LIMIT), NO_LIMIT, NO_LIMIT, existing).orElseThrow();
    }

    private static String why(Loading loading) {
        return Terms.word(Terms.of(loading.reasons(), "load-rounded").said(), "why");
    }

    /** G1.21: both are printed, before and after rounding. */
    @Test
    void the_sum_is_told_with_what_rounding_took() {
        var said = Terms.of(arm(NO_LIMIT, NO_LIMIT, 0, 5, 11, 14).reasons(), "load-rounded").said();
        assertEquals(List.of(11.0, 1.0, 0.55, 0.60), List.of(Terms.number(said, "load"), Terms.number(said, "less"), Terms.number(said, "share"), Terms.number(said, "wanted")));
        var exact = Terms.of(arm(NO_LIMIT, NO_LIMIT, 0, 5, 11, 14).reasons(), "load-exact").said();
        assertEquals(List.of(0.60, 12.0), List.of(Terms.number(exact, "share"), Terms.number(exact, "load")));
    }

    @Test
    void what_kept_the_weight_under_the_exact_one_is_named() {
        assertEquals("exists", why(arm(NO_LIMIT, NO_LIMIT, 0, 5, 11, 14)));
        assertEquals("heaviest", why(arm(NO_LIMIT, NO_LIMIT, 0, 5, 11)), "12 kg is wanted and 11 the most there is");
        assertEquals("heaviest-for-a-hand", why(arm(11, NO_LIMIT, 0, 5, 11)), "the hand holds no more, so heavier ones are not in the list");
        assertEquals("exists", why(arm(14, NO_LIMIT, 0, 5, 11, 14)), "14 kg may be held and is too heavy");
        assertEquals("exists", why(arm(NO_LIMIT, NO_LIMIT, 0, 5, 12)), "the heaviest is just what is wanted");
    }

    @Test
    void the_tested_weight_is_named_only_where_it_was_in_the_way() {
        assertEquals("as-tested", why(arm(NO_LIMIT, 11.5, 0, 5, 11, 14)));
        assertEquals("exists", why(arm(NO_LIMIT, 12, 0, 5, 11, 14)), "as much as wanted was tested");
        var joint = first(leg(0.29, 1.3, NO_LIMIT), NO_LIMIT, 14.5, 0, 5, 13, 14, 15).orElseThrow();
        assertEquals(13, joint.load());
        assertEquals("exists", why(joint), "14 kg was tested: the joint was in the way, not the test");
    }

    /** The joint bears 1.3 times the leg's share: for 72 % of it no more than 55.4 % of the leg, 13.2 kg. */
    @Test
    void where_one_joint_alone_would_pass_the_band_a_lighter_weight_is_taken_and_says_which() {
        var loading = first(leg(0.29, 1.3, NO_LIMIT), NO_LIMIT, NO_LIMIT, 0, 5, 10, 13, 14, 15, 16).orElseThrow();
        assertEquals(13, loading.load());
        assertEquals(15.5, loading.exact(), 0.05);
        assertEquals(List.of("load-exact", "binding-joint", "load-rounded"), Terms.rules(loading.reasons()));
        var said = Terms.of(loading.reasons(), "binding-joint").said();
        assertEquals(List.of(15.0, 0.72), List.of(Terms.number(said, "load"), Terms.number(said, "limit")));
        assertEquals(1.3 * 0.59, Terms.number(said, "share"), 1e-9);
    }

    @Test
    void where_the_body_asks_enough_nothing_is_held() {
        for (double body : new double[] {0.60, 0.65, 0.72}) {
            var loading = body(body, 0, 5, 10);
            var said = Terms.of(loading.reasons(), "body-weight").said();
            assertEquals("body-weight/enough", said.key(), body + " is inside the band");
            assertEquals(List.of(body, 0.60), List.of(Terms.number(said, "share"), Terms.number(said, "limit")));
            assertTrue(loading.load() == 0 && loading.exact() == 0 && loading.warning().isEmpty());
        }
    }

    @Test
    void where_the_body_alone_asks_more_than_the_band_the_coach_is_told() {
        var loading = body(0.80, 0, 5, 10);
        var said = Terms.of(loading.reasons(), "body-weight").said();
        assertEquals("body-weight/over", said.key());
        assertEquals(0.72, Terms.number(said, "limit"));
        assertEquals(Optional.of(said), loading.warning());
    }

    @Test
    void without_any_weight_the_body_is_all_or_enough() {
        assertEquals("body-weight/only", body(0.3, 0).reasons().getFirst().said().key());
        assertEquals(0.3, Terms.number(body(0.3, 0).reasons().getFirst().said(), "share"));
        assertEquals("body-weight/enough", body(0.6, 0).reasons().getFirst().said().key());
    }

    @Test
    void a_leg_that_no_pose_carries_has_no_first_weight() {
        assertTrue(first(leg(0.3, 1, -1), NO_LIMIT, NO_LIMIT, 0, 5).isEmpty());
    }

    /** A heavier weight that asks the same share says nothing about how heavy it should be; one without a pose is heavy enough. */
    @Test
    void a_share_that_does_not_grow_gives_no_weight_and_one_weight_needs_no_growth() {
        var flat = new Asking.LoadOnly(NO_LIMIT);
        assertTrue(first(flat, NO_LIMIT, NO_LIMIT, 0, 5).isEmpty());
        assertEquals("body-weight/only", first(flat, NO_LIMIT, NO_LIMIT, 0).orElseThrow().reasons().getFirst().said().key());
        assertTrue(first(leg(0.3, 1, 10), NO_LIMIT, NO_LIMIT, 0, 5, 40).isPresent());
    }

    /** From 30 %, 60 % would be 15 kg, but poses end at 12 kg: the heaviest that still has one, whatever lies beyond. */
    @Test
    void where_poses_end_before_the_wanted_share_the_heaviest_posed_weight_is_taken() {
        var loading = first(leg(0.3, 1, 12), NO_LIMIT, NO_LIMIT, 0, 5, 10, 14, 20).orElseThrow();
        assertEquals(10, loading.load());
        assertEquals(10, loading.exact());
    }

    /** Should a middle weight ever ask more than a heavier one, as 8 kg here with 65 %, it is passed over, not taken on trust. */
    @Test
    void a_weight_that_would_ask_more_than_wanted_is_passed_over() {
        var bent = new Asking.BodyAndLoad(Handmade.demand(load -> load == 8 ? 65 : 30 + load, load -> 0, 0, NO_LIMIT), 100, BindingJoint.HIP, 100);
        assertEquals(5, first(bent, NO_LIMIT, 9, 0, 5, 8, 40).orElseThrow().load());
    }

    /** Far under is more than 15 points: 9 kg of 20 is 45 %, 8 kg is 40 %. */
    @Test
    void far_under_is_more_than_fifteen_points_under_the_wanted_share() {
        assertFalse(arm(NO_LIMIT, 9.1, 0, 9.1, 12).held());
        var far = arm(NO_LIMIT, 8, 0, 8, 12);
        var said = Terms.of(far.reasons(), "far-under").said();
        assertEquals(List.of(8.0, 0.40), List.of(Terms.number(said, "load"), Terms.number(said, "share")));
        assertEquals(Optional.of(said), far.warning());
    }

    @Test
    void a_lightest_weight_that_is_too_heavy_is_told_with_the_sum() {
        var none = first(leg(0.29, 1, NO_LIMIT), NO_LIMIT, NO_LIMIT, 0, 16, 20).orElseThrow();
        var said = Terms.of(none.reasons(), "lightest-too-heavy").said();
        assertEquals(List.of(0.60, 16.0, 0.29), List.of(Terms.number(said, "wanted"), Terms.number(said, "lightest"), Terms.number(said, "alone")));
        assertEquals(15.5, Terms.number(said, "exact"), 0.05);
        assertEquals(Optional.of(said), none.warning());
        assertFalse(none.held());
    }
}
