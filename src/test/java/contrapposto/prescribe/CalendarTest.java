package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.HouseRules.Range;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.check.Condition;
import contrapposto.check.Condition.Kind;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Week;
import contrapposto.quantity.Side;
import contrapposto.select.Selection.StageWeeks;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Eight weeks by the house rules, by hand: easy weeks, repeats to spare, doses without a weight, bands. All of it house but where a test says more. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CalendarTest {
    private static final HouseRules RULES = HouseRulesReader.house();

    private static List<Week> weeks(double trained, boolean slower) {
        return new Calendar(Specs.turned(Turned.RIGHT).trained(trained).spec(), RULES, slower).weeks(List.of(new StageWeeks(Stage.SUPPORTED, 2, 3)));
    }

    @Test
    void every_fourth_week_is_easy_and_effort_rises_once_after_the_first() {
        assertEquals(List.of(3, 3, 3, 4, 2, 2, 2, 4), weeks(0.5, false).stream().map(Week::inReserve).toList());
        assertEquals(List.of(3, 2, 2, 4, 2, 2, 2, 4), weeks(2, false).stream().map(Week::inReserve).toList());
        assertEquals(List.of(3, 3, 3, 4, 3, 3, 3, 4), weeks(0.5, true).stream().map(Week::inReserve).toList());
        assertEquals(List.of(4, 8), weeks(2, false).stream().filter(Week::easy).map(Week::number).toList());
    }

    @Test
    void weeks_follow_each_other_and_each_has_its_stage_or_the_first_one() {
        var weeks = weeks(2, false);
        assertEquals(List.of(LocalDate.of(2026, 3, 9), LocalDate.of(2026, 3, 16)), weeks.subList(0, 2).stream().map(Week::starts).toList());
        assertEquals(List.of(Stage.STANDING, Stage.SUPPORTED, Stage.SUPPORTED, Stage.STANDING), weeks.subList(0, 4).stream().map(Week::stage).toList());
    }

    @Test
    void the_plan_is_good_until_four_weeks_after_its_last_day() {
        assertEquals(LocalDate.of(2026, 5, 31), new Calendar(Specs.turned(Turned.RIGHT).spec(), RULES, false).expires());
    }

    private static List<contrapposto.assess.Reason> reasons(int lasting) {
        return new Calendar(Specs.turned(Turned.RIGHT).lasting(lasting, 60).spec(), RULES, false).reasons();
    }

    @Test
    void the_reasons_name_the_end_and_easy_weeks_only_where_there_is_one() {
        assertEquals(List.of("expiry", "missed-week", "reserve"), Terms.rules(reasons(3)));
        assertEquals(List.of("expiry", "easy-weeks", "missed-week", "reserve"), Terms.rules(reasons(4)));
        var easy = Terms.of(reasons(4), "easy-weeks");
        assertEquals(List.of(4.0, 4.0, 5.8, 3.4), List.of("every", "reserve", "reported", "spread").stream().map(name -> Terms.number(easy.said(), name)).toList(),
                "every 5.8 ± 3.4 weeks: Rogerson et al. 2024, B3.16");
        assertEquals(contrapposto.assess.Reason.Source.HOUSE, easy.source());
        assertEquals(List.of(4.0), List.of(Terms.number(Terms.of(reasons(3), "expiry").said(), "weeks")));
        assertEquals(new contrapposto.wording.Term.Day(LocalDate.of(2026, 4, 26)), Terms.of(reasons(3), "expiry").said().terms().get("until"));
    }

    @Test
    void a_stage_leads_from_its_first_week_to_its_last() {
        var weeks = new Calendar(Specs.turned(Turned.RIGHT).spec(), RULES, false).weeks(List.of(new StageWeeks(Stage.FLOOR, 1, 2), new StageWeeks(Stage.INTEGRATED, 3, 8)));
        assertEquals(List.of(Stage.FLOOR, Stage.FLOOR, Stage.INTEGRATED, Stage.INTEGRATED), weeks.subList(0, 4).stream().map(Week::stage).toList());
        assertEquals(Stage.INTEGRATED, weeks.getLast().stage());
    }

    @Test
    void an_exercise_that_comes_in_later_begins_with_three_to_spare_all_the_same() {
        var week = new Week(5, LocalDate.of(2026, 4, 6), false, 2, Stage.STANDING);
        assertEquals(List.of(3, 2), List.of(Frame.reserve(week, true), Frame.reserve(week, false)));
        var easy = new Week(4, LocalDate.of(2026, 4, 6), true, 4, Stage.STANDING);
        assertEquals(List.of(4, 4), List.of(Frame.reserve(easy, true), Frame.reserve(easy, false)));
        var frame = new Frame(new Family.Dose(3, 8, 12, 0, "2-0-2", 60, 1), any -> 1, 60, new RepCurve(RepFormula.EPLEY, 10, 5), new Range(0.02, 0.1), false);
        assertEquals(1, frame.sets(easy), "never no set at all");
    }

    private static List<Dose> steady(Family.Dose dose, boolean byEffort) {
        return new SteadyRise(new Frame(dose, week -> 3, 60, new RepCurve(RepFormula.EPLEY, 10, 5), new Range(0.02, 0.1), false)).doses(weeks(0.5, false), byEffort);
    }

    @Test
    void without_a_weight_repeats_rise_by_one_and_an_easy_week_goes_back() {
        var dose = new Family.Dose(3, 8, 12, 0, "2-0-2", 60, 1);
        assertEquals(List.of(8, 9, 10, 8, 11, 12, 12, 8), steady(dose, false).stream().map(Dose::reps).toList());
        assertEquals(List.of(10, 11, 12, 10, 12, 12, 12, 10), steady(dose, true).stream().map(Dose::reps).toList());
        assertEquals(List.of(3, 3, 3, 2, 3, 3, 3, 2), steady(dose, true).stream().map(Dose::sets).toList());
    }

    @Test
    void holds_get_five_seconds_longer_and_half_as_long_again_at_most() {
        var doses = steady(new Family.Dose(2, 0, 0, 20, "0-0-0", 60, 1), false);
        assertEquals(List.of(20, 25, 30, 20, 30, 30, 30, 20), doses.stream().map(Dose::seconds).toList());
        assertEquals(List.of(0, 0), doses.subList(0, 2).stream().map(Dose::reps).toList());
    }

    private static Range band(Specs specs, boolean legs) {
        return ShareBand.of(new Assessor().assess(specs.spec(), RULES), RULES, legs).range();
    }

    @Test
    void the_band_follows_training_age_first_aim_and_limb() {
        var newcomer = Specs.turned(Turned.RIGHT).trained(0.5);
        assertEquals(new Range(0.68, 0.76), band(newcomer, true));
        assertEquals(new Range(0.60, 0.72), band(newcomer, false));
        assertEquals(new Range(0.70, 0.80), band(newcomer.aiming(Aim.STRENGTH), true));
        assertEquals(new Range(0.65, 0.75), band(newcomer.aiming(Aim.STRENGTH), false));
        assertEquals(new Range(0.68, 0.76), band(newcomer.aiming(), true), "without an aim");
        assertEquals(new Range(0.64, 0.72), band(newcomer.trained(1), true), "from one year on the second line");
        assertEquals(new Range(0.80, 0.90), band(newcomer.trained(4).aiming(Aim.STRENGTH, Aim.SIDE_TO_SIDE_MOVEMENT), true));
    }

    @Test
    void the_band_is_told_with_its_ends() {
        var said = ShareBand.of(new Assessor().assess(Specs.turned(Turned.RIGHT).trained(0.5).aiming(Aim.STRENGTH).spec(), RULES), RULES, false).reason().said();
        assertEquals(List.of(0.5, 65.0, 0.75), List.of("years", "low", "high").stream().map(name -> Terms.number(said, name)).toList());
        assertEquals(List.of("aim-strength", "arms", "no"), List.of("aim", "of", "moderate").stream().map(name -> Terms.word(said, name)).toList());
        var moderate = ShareBand.of(new Assessor().assess(Specs.turned(Turned.RIGHT).having(new Condition(Kind.HIGH_BLOOD_PRESSURE, Optional.empty(), Optional.empty(),
                EnumSet.allOf(Side.class))).spec(), RULES), RULES, true).reason().said();
        assertEquals(List.of("aim-movement", "legs", "yes"), List.of("aim", "of", "moderate").stream().map(name -> Terms.word(moderate, name)).toList());
    }

    @Test
    void whoever_keeps_the_load_moderate_stays_at_the_low_end_for_movement() {
        var pressure = new Condition(Kind.HIGH_BLOOD_PRESSURE, Optional.empty(), Optional.empty(), EnumSet.allOf(Side.class));
        assertEquals(new Range(0.68, 0.68), band(Specs.turned(Turned.RIGHT).aiming(Aim.STRENGTH).having(pressure), true));
    }
}
