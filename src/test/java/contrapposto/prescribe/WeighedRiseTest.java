package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRules.Range;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Scheme;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Week;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Double progression worked out by hand, for an arm of 20 kg 1RM, so that a load's share is load ÷ 20 and the repeats it allows are
 * 30 × (20 ÷ load − 1) by Epley (A1.1); family of 8 to 12 repeats, steps of 2 to 10 % (B1.1).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WeighedRiseTest {
    private static final Range BAND = new Range(0.60, 0.72);

    private static Frame frame(int from, int to, boolean slower) {
        return new Frame(new Family.Dose(3, from, to, 0, "2-0-2", 60, 1), week -> 3, 60, new RepCurve(RepFormula.EPLEY, 10, 5), new Range(0.02, 0.10), slower);
    }

    private static WeighedRise rise(boolean slower, double... weights) {
        return new WeighedRise(frame(8, 12, slower), new Asking.LoadOnly(20), new Weights(DoubleStream.of(weights).boxed().toList(), Double.POSITIVE_INFINITY), BAND);
    }

    /** Reserve 3 in the first week, 2 later; `e` marks an easy week of 4. */
    private static List<Week> weeks(String marks) {
        var weeks = new ArrayList<Week>();
        for (int i = 0; i < marks.length(); i++) {
            boolean easy = marks.charAt(i) == 'e';
            weeks.add(new Week(i + 1, LocalDate.of(2026, 3, 9).plusWeeks(i), easy, easy ? 4 : i == 0 ? 3 : 2, Stage.STANDING));
        }
        return weeks;
    }

    /** kg×repeats, with ▲ where the weight is heavier than ever. */
    private static String said(List<Dose> doses) {
        return doses.stream().map(d -> (int) d.load().orElse(0) + "×" + d.reps() + (d.heavier() ? "▲" : "")).collect(Collectors.joining(" "));
    }

    @Test
    void repeats_rise_for_two_weeks_then_the_next_weight_with_two_fewer() {
        var doses = rise(false, 0, 10, 11, 12, 13, 14, 15, 16).doses(weeks("---e-----"), 12);
        assertEquals("12×10 12×11 13×9▲ 11×9 13×10 14×8▲ 14×9 14×10 14×10", said(doses));
        assertEquals(List.of(3, 3, 3, 2, 3, 3, 3, 3, 3), doses.stream().map(Dose::sets).toList());
        assertEquals(List.of(5, 5, 5, 5, 5, 4, 3, 2, 2), doses.stream().map(Dose::inReserve).toList());
        assertEquals(0.7, doses.getLast().share().getAsDouble(), 1e-12);
    }

    @Test
    void whoever_goes_slowly_keeps_a_weight_for_four_weeks() {
        assertEquals("12×10 12×11 12×12 12×12 13×10▲", said(rise(true, 0, 12, 13).doses(weeks("-----"), 12)));
    }

    @Test
    void without_a_heavier_weight_up_to_three_more_repeats_are_done() {
        assertEquals("12×10 12×11 12×12 12×13 12×14 12×15 12×15", said(rise(false, 0, 12).doses(weeks("-------"), 12)));
    }

    @Test
    void a_step_over_ten_percent_or_out_of_the_band_is_no_step() {
        assertEquals("12×10 12×11 12×12 12×13", said(rise(false, 0, 12, 13.3).doses(weeks("----"), 12)));
        assertEquals("14×8 14×9 14×10 14×10", said(rise(false, 0, 14, 15).doses(weeks("----"), 14)));
    }

    @Test
    void a_step_under_two_percent_is_passed_over() {
        assertEquals("12×10 12×11 13×9▲", said(rise(false, 0, 12, 12.2, 13).doses(weeks("---"), 12)));
    }

    @Test
    void a_plan_that_begins_with_an_easy_week_begins_again_after_it() {
        assertEquals("10×10 12×10 12×11 13×9▲", said(rise(false, 0, 10, 12, 13).doses(weeks("e---"), 12)));
    }

    @Test
    void an_arm_without_a_lighter_weight_keeps_its_own_in_an_easy_week() {
        assertEquals("12×10 12×10", said(rise(false, 0, 12).doses(weeks("-e"), 12)));
    }

    private static WeighedRise waves(int from, int to, boolean slower, double... weights) {
        var frame = new Frame(new Family.Dose(3, from, to, 0, "2-0-2", 60, 1), week -> 3, 60, new RepCurve(RepFormula.EPLEY, 10, 5), new Range(0.02, 0.10), slower, Scheme.WAVE);
        return new WeighedRise(frame, new Asking.LoadOnly(20), new Weights(DoubleStream.of(weights).boxed().toList(), Double.POSITIVE_INFINITY), BAND);
    }

    /** Waves of three weeks (house): most repeats, then a step up with the middle of the range, then two with the fewest; the next wave begins a step higher. */
    @Test
    void a_wave_goes_up_twice_and_the_next_begins_a_step_higher() {
        assertEquals("10×10 11×10▲ 12×8▲ 11×12 12×10 13×8▲ 12×12 13×10 14×8▲ 13×12", said(waves(8, 12, false, 0, 10, 11, 12, 13, 14).doses(weeks("----------"), 10)));
    }

    /** 14 kg of 20 allow 12.9 repeats, 10 with 2 to spare: 12 are not asked, and 14.4 kg, the end of the band, is not passed. */
    @Test
    void a_wave_keeps_to_the_curve_and_to_the_band() {
        assertEquals("13×10 14×10▲ 14×8 14×10 14×10 14×8", said(waves(8, 12, false, 0, 13, 14, 15).doses(weeks("------"), 13)));
    }

    @Test
    void easy_weeks_stand_outside_the_wave_and_whoever_goes_slowly_has_none() {
        assertEquals("10×10 11×10▲ 9×10 12×8▲ 11×12", said(waves(8, 12, false, 0, 9, 10, 11, 12, 13).doses(weeks("--e--"), 10)));
        assertEquals("10×10 10×11 10×12 10×12 11×10▲", said(waves(8, 12, true, 0, 10, 11, 12).doses(weeks("-----"), 10)));
    }

    /** The rule is 2 to 10 %, both ends included (B1.1). */
    @Test
    void where_the_next_step_is_too_long_the_heaviest_short_of_it_must_be_two_percent_heavier() {
        assertEquals("12×10 12×11 12×12 12×13", said(rise(false, 0, 12, 12.2, 13.3).doses(weeks("----"), 12)), "12.2 kg is 1.7 %, 13.3 kg 10.8 %");
        assertEquals("10×10 10×11 11×9▲", said(rise(false, 0, 10, 10.1, 11, 12).doses(weeks("---"), 10)), "10 % is inside the rule");
    }

    /** A leg whose body asks 60 % and each kilogram 0.1 %: 10 kg to 12 is 0.3 % of the leg, but a fifth of the weight; 40 kg would pass the band, 72 %, by 0.1. */
    @Test
    void a_leg_counts_its_body_and_takes_what_is_clearly_heavier_by_itself() {
        var leg = new Asking.BodyAndLoad(Handmade.demand(load -> 60 + 0.1 * load, load -> 0, 0, 1000), 100, BindingJoint.HIP, 100);
        assertEquals("10×10 10×11 12×9▲", said(new WeighedRise(frame(8, 12, false), leg, new Weights(List.of(0.0, 10.0, 12.0), Double.POSITIVE_INFINITY), BAND).doses(weeks("---"), 10)));
        assertEquals("10×10 10×11 22×9▲", said(new WeighedRise(frame(8, 12, false), leg, new Weights(List.of(0.0, 10.0, 12.0, 22.2), Double.POSITIVE_INFINITY), BAND).doses(weeks("---"), 10)),
                "61 to 62.22 % is the first step of 2 %");
        assertEquals("100×8 100×9 120×8▲", said(new WeighedRise(frame(8, 12, false), leg, new Weights(List.of(0.0, 100.0, 120.0, 121.0), Double.POSITIVE_INFINITY), BAND).doses(weeks("---"), 100)),
                "121 kg would pass the band");
    }

    /** Body weight of a leg, 60 %: 20 repeats, 10 asked first; an easy week has no lighter weight than none. */
    @Test
    void a_leg_without_a_weight_has_repeats_alone() {
        var leg = new Asking.BodyAndLoad(Handmade.demand(load -> 60 + load, load -> 0, 0, 1000), 100, BindingJoint.HIP, 100);
        var doses = new WeighedRise(frame(8, 12, false), leg, new Weights(List.of(0.0), Double.POSITIVE_INFINITY), BAND).doses(weeks("---e-"), 0);
        assertEquals("0×10 0×11 0×12 0×10 0×13", said(doses));
        assertEquals(java.util.OptionalDouble.empty(), doses.getFirst().load());
        var loaded = new WeighedRise(frame(8, 12, false), leg, new Weights(List.of(0.0, 4.0), Double.POSITIVE_INFINITY), BAND).doses(weeks("-e"), 4);
        assertEquals("4×10 0×10", said(loaded), "90 % of the lightest weight is none");
    }

    /** 12 of 20 kg allow 20 repeats; a family of 25 to 30 cannot be had, so what the curve allows with the reserve is done, at least one. */
    @Test
    void where_the_curve_allows_fewer_than_the_family_asks_it_has_the_last_word() {
        var few = new WeighedRise(frame(25, 30, false), new Asking.LoadOnly(20), new Weights(List.of(0.0, 12.0), Double.POSITIVE_INFINITY), BAND);
        assertEquals("12×17 12×18 12×18", said(few.doses(weeks("---"), 12)));
        var one = new WeighedRise(frame(8, 12, false), new Asking.LoadOnly(12.1), new Weights(List.of(0.0, 12.0), Double.POSITIVE_INFINITY), BAND).doses(weeks("--"), 12);
        assertEquals("12×1 12×1", said(one));
        assertEquals(0, one.getFirst().inReserve(), "one repeat is all there is");
    }

    @Test
    void the_first_share_is_the_low_end_or_what_the_fewest_repeats_allow() {
        assertEquals(0.60, rise(false, 0, 12).firstShare(), 1e-12);
        var many = new WeighedRise(frame(20, 24, false), new Asking.LoadOnly(20), new Weights(List.of(0.0, 12.0), Double.POSITIVE_INFINITY), BAND);
        assertEquals(30.0 / 53, many.firstShare(), 1e-12);
    }
}
