package contrapposto.prescribe;

import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.THURSDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.catalogue.HouseRules.Range;
import contrapposto.catalogue.Muscle;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.prescribe.Plan.LeftRight;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.wording.Said;
import contrapposto.wording.Term;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days a week, weekly sets and short sessions, at their edges. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SmallRulesTest {
    private static Optional<Said> frequency(int age, double years, int weeks, int days) {
        var spec = Specs.turned(Turned.RIGHT).aged(age < 0 ? OptionalInt.empty() : OptionalInt.of(age)).trained(years).spec();
        var s = spec.schedule();
        return Frequency.warning(spec.scheduled(new CheckedSpec.Schedule(s.start(), weeks, List.of(DayOfWeek.values()).subList(0, days), s.minutes(), s.startStage(), s.gate())));
    }

    /**
     * Least: two days (WHO 2020, B3.1), three from 65 (B3.2) and under 18 (B3.4). Most: three for novices, four from half a year, five from three
     * years of training on (ACSM 2009, B1.2, B1.15; three years: house).
     */
    @ParameterizedTest
    @CsvSource({"34, 0, 2, 3", "34, 0.49, 2, 3", "34, 0.5, 2, 4", "34, 2.9, 2, 4", "34, 3, 2, 5", "64, 0, 2, 3", "65, 0, 3, 3", "65, 1, 3, 4", "18, 1, 2, 4", "17, 1, 3, 4", "-1, 1, 2, 4"})
    void days_a_week_are_held_against_what_is_published(int age, double years, int least, int most) {
        for (int days = 1; days <= 7; days++) {
            var said = frequency(age, years, 8, days);
            assertEquals(days < least ? Optional.of("frequency/under") : days > most ? Optional.of("frequency/over") : Optional.empty(), said.map(Said::key), days + " days");
            if (said.isPresent()) {
                assertEquals(List.of((double) days, (double) least, (double) most), List.of(Terms.number(said.get(), "days"), Terms.number(said.get(), "least"), Terms.number(said.get(), "most")));
            }
        }
    }

    @Test
    void a_single_session_is_no_program() {
        assertEquals(Optional.empty(), frequency(34, 1, 1, 1));
        assertTrue(frequency(34, 1, 2, 1).isPresent());
        assertTrue(frequency(34, 1, 1, 5).isPresent());
    }

    private static Optional<Said> brief(List<Plan.Day> days) {
        return ShortSessions.reason(days, 50).map(reason -> reason.said());
    }

    /** Short is under 60 % of 50 minutes, 30 (house), on every day of a week, from the first week on. */
    @Test
    void the_first_weeks_are_short_until_one_day_fills_its_share() {
        var days = List.of(Handmade.day(MONDAY, List.of(), 29, 25, 20, 29), Handmade.day(THURSDAY, List.of(), 22, 29, 30, 21));
        var said = brief(days).orElseThrow();
        assertEquals(List.of(2.0, 22.0, 29.0, 50.0), List.of(Terms.number(said, "last"), Terms.number(said, "from"), Terms.number(said, "to"), Terms.number(said, "minutes")));
        var all = brief(List.of(Handmade.day(MONDAY, List.of(), 29, 25))).orElseThrow();
        assertEquals(2, Terms.number(all, "last"));
    }

    @Test
    void the_last_short_week_is_read_back_from_the_reason_and_from_no_other() {
        var reason = ShortSessions.reason(List.of(Handmade.day(MONDAY, List.of(), 29, 25, 40)), 50).orElseThrow();
        var other = contrapposto.assess.Reason.of("expiry", Said.of("short-sessions").count("last", 7), contrapposto.assess.Reason.Source.HOUSE);
        assertEquals(Optional.of(2L), ShortSessions.last(List.of(other, reason)));
        assertEquals(Optional.empty(), ShortSessions.last(List.of(other)));
    }

    @Test
    void a_full_first_week_and_a_program_without_days_have_nothing_to_explain() {
        assertEquals(Optional.empty(), brief(List.of(Handmade.day(MONDAY, List.of(), 30, 10))));
        assertEquals(Optional.empty(), brief(List.of()));
    }

    /** 4.9, 5, 20 and 20.1 sets against the published classes, under 5 and over 20 (B3.8 and on); none at all is a gap, said elsewhere. */
    @Test
    void weekly_sets_under_and_over_the_classes_are_told_by_muscle_and_side() {
        var volume = new TreeMap<Muscle, LeftRight>(Map.of(Muscle.GLUTEUS_MAXIMUS, new LeftRight(4.9, 5), Muscle.QUADRICEPS, new LeftRight(20.1, 20),
                Muscle.OBLIQUES_TRANSVERSUS, new LeftRight(0, 1)));
        var lines = Volume.warnings(volume, new Range(5, 20));
        assertEquals(List.of("volume/under", "volume/over"), Terms.keys(lines));
        assertEquals(List.of(5.0, 20.0), List.of(Terms.number(lines.getFirst(), "limit"), Terms.number(lines.getLast(), "limit")));
        assertEquals(List.of("gluteus-maximus left 4.9", "obliques-transversus right 1.0"), muscles(lines.getFirst()).sorted().toList());
        assertEquals(List.of("quadriceps left 20.1"), muscles(lines.getLast()).toList());
        assertEquals(List.of(), Volume.warnings(Map.of(Muscle.QUADRICEPS, new LeftRight(5, 20)), new Range(5, 20)));
    }

    private static java.util.stream.Stream<String> muscles(Said line) {
        return ((Term.Listed) line.terms().get("muscles")).inside().map(said -> Terms.word(said, "muscle") + " " + Terms.word(said, "side") + " " + Terms.number(said, "sets"));
    }

    /** Pelland et al. 2024 (B3.15): a direct set counts one, an indirect one half; each side its own and what the other side's work does for it. */
    @Test
    void sets_of_the_first_week_are_counted_on_the_side_that_does_them() {
        var left = Handmade.training(Handmade.setUps("split-squat").on(Side.LEFT), Map.of(Muscle.QUADRICEPS, 1.0), Map.of(Muscle.GLUTEUS_MAXIMUS, 0.5));
        var right = Handmade.training(Handmade.setUps("split-squat").on(Side.RIGHT), Map.of(Muscle.QUADRICEPS, 0.5), Map.of());
        var both = Handmade.training(Handmade.setUps("goblet-squat").on(Side.LEFT), Map.of(Muscle.UPPER_ADDUCTORS, 1.0), Map.of(Muscle.HAMSTRINGS, 1.0));
        var each = Handmade.exercise(1, "split-squat", new Sided.Each<>(Handmade.side(left, Handmade.dose(1, 3, 8, 0), Handmade.dose(2, 9, 8, 0)),
                Handmade.side(right, Handmade.dose(1, 2, 8, 0))));
        var whole = Handmade.exercise(2, "goblet-squat", new Sided.Whole<>(Handmade.side(both, Handmade.dose(1, 4, 8, 0))));
        var only = Handmade.exercise(3, "split-squat", new Sided.Only<>(Side.LEFT, Handmade.side(left, Handmade.dose(1, 2, 8, 0))));
        var later = Handmade.exercise(4, "split-squat", new Sided.Only<>(Side.LEFT, Handmade.side(left, Handmade.dose(2, 2, 8, 0))));
        var days = List.of(Handmade.day(MONDAY, List.of(1, 2, 4), 30), Handmade.day(THURSDAY, List.of(1, 3), 30));
        assertEquals(Map.of(Muscle.QUADRICEPS, new LeftRight(3 + 3 + 2, 1 + 1), Muscle.GLUTEUS_MAXIMUS, new LeftRight(0, 1.5 + 1.5 + 1), Muscle.UPPER_ADDUCTORS, new LeftRight(4, 4)),
                Volume.of(List.of(each, whole, only, later), days));
    }
}
