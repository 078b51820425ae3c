package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import contrapposto.select.Selection.StageWeeks;
import contrapposto.setup.SetUps;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * A day of rest between hard days for one muscle, for each of the 127 sets of training days; the week goes round, so Monday
 * follows Sunday. That a muscle wants about two days between hard sessions is common practice here, no source.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RecoveryDaysTest {
    private static final SetUps RIGHT = Invented.setUps(Specs.turned(Turned.RIGHT).spec());

    /** Every set of one to seven days, in week order. */
    static List<List<DayOfWeek>> weeks() {
        return IntStream.range(1, 128).mapToObj(set -> List.of(DayOfWeek.values()).stream()
                .filter(day -> (set >> day.ordinal() & 1) == 1).toList()).toList();
    }

    @Test
    void no_muscle_works_hard_on_two_days_running_whatever_the_training_days() {
        assertEquals(127, weeks().size());
        int spread = 0;
        for (var days : weeks()) {
            for (int seed = 0; seed < 4; seed++) {
                var random = new Random(seed * 1000 + weeks().indexOf(days));
                var frame = frame(days);
                var duties = Days.spread(frame, SearchTest.items(random, 5));
                spread += duties.isPresent() ? 1 : 0;
                duties.ifPresent(found -> {
                    for (int i = 0; i < days.size(); i++) {
                        int next = (i + 1) % days.size();
                        if (days.size() > 1 && days.get(i).plus(1) == days.get(next)) {
                            var both = hard(found, frame.turns().get(i));
                            both.retainAll(hard(found, frame.turns().get(next)));
                            assertEquals(Set.of(), both, days + ": " + days.get(i));
                        }
                    }
                });
            }
        }
        assertTrue(spread > 400, "weeks that could be spread: " + spread);
    }

    private static EnumSet<Muscle> hard(Map<Item, Duty> duties, int session) {
        var hard = EnumSet.noneOf(Muscle.class);
        duties.forEach((item, duty) -> hard.addAll(duty.in(session) ? item.hard() : Set.of()));
        return hard;
    }

    private static Frame frame(List<DayOfWeek> days) {
        return new Frame(List.of(new StageWeeks(Stage.STANDING, 1, 8)), days, 3000, 5, 5, 8, 1, List.of(),
                Map.of(Side.LEFT, Map.of(), Side.RIGHT, Map.of()));
    }

    /** Rest must not be had by leaving out: each day keeps exercises, and each week hard work. Weeks that go round, in the real catalogue. */
    @Test
    void nor_over_the_week_s_end_in_whole_plans() {
        var round = weeks().stream().filter(days -> days.contains(DayOfWeek.MONDAY) && days.contains(DayOfWeek.SUNDAY)).toList();
        assertEquals(32, round.size());
        for (var days : round) {
            var selection = new Selector().select(on(RIGHT, days));
            assertEquals(days, selection.days().stream().map(Selection.Day::day).toList());
            selection.days().forEach(day -> assertTrue(day.numbers().size() >= 2, () -> days + " " + day));
            assertTrue(IntStream.range(0, days.size()).anyMatch(d -> !hard(selection, d).isEmpty()), days::toString);
            for (int i = 0; i < days.size(); i++) {
                int next = (i + 1) % days.size();
                if (days.size() > 1 && days.get(i).plus(1) == days.get(next)) {
                    var both = hard(selection, i);
                    both.retainAll(hard(selection, next));
                    assertEquals(Set.of(), both, days + ": " + days.get(i));
                }
            }
        }
    }

    /** The two sessions take turns all round the week, but for the one pair that seven days cannot avoid. */
    @Test
    void sessions_differ_on_neighbouring_days() {
        for (var days : weeks()) {
            var frame = frame(days);
            var turns = frame.turns();
            int same = 0;
            for (int i = 0; i < days.size(); i++) {
                int next = (i + 1) % days.size();
                same += days.size() > 1 && days.get(i).plus(1) == days.get(next) && turns.get(i).equals(turns.get(next)) ? 1 : 0;
            }
            assertEquals(days.size() == 7 ? 1 : 0, same, days::toString);
            assertEquals(days.size(), frame.daysOf(0) + frame.daysOf(1));
            assertTrue(Math.abs(frame.daysOf(0) - frame.daysOf(1)) <= 1);
        }
    }

    private static EnumSet<Muscle> hard(Selection selection, int day) {
        var hard = EnumSet.noneOf(Muscle.class);
        for (int number : selection.days().get(day).numbers()) {
            for (var solved : selection.exercises().get(number - 1).sides().values()) {
                boolean loaded = solved.setUp().count() > 0 && solved.setUp().implement() != Implement.BODY_WEIGHT;
                boolean onFeet = solved.family().stage().compareTo(Stage.STANDING) >= 0;
                solved.muscles().forEach((muscle, share) -> {
                    if (loaded && onFeet && share >= 1) {
                        hard.add(muscle);
                    }
                });
            }
        }
        return hard;
    }

    private static SetUps on(SetUps setUps, List<DayOfWeek> days) {
        var spec = setUps.assessed().spec();
        var was = spec.schedule();
        return Invented.with(setUps, new CheckedSpec.Schedule(was.start(), was.weeks(), new ArrayList<>(days), was.minutes(),
                was.startStage(), was.gate()));
    }
}
