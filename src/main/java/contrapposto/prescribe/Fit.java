package contrapposto.prescribe;

import contrapposto.assess.Reason.Source;
import contrapposto.assess.Reason;
import contrapposto.prescribe.Plan.Day;
import contrapposto.select.Selection.Chosen;
import contrapposto.select.Selection;
import contrapposto.wording.Said;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What had to give so that every session of every week fits the minutes: first the longer rest of heavy lifts, then
 * the further sets of symmetric exercises, then a set
 * of the exercise that comes last, down to two, then the last exercise of that day. Each step is said.
 */
final class Fit {
    /** Sets are not cut below this: house. */
    private static final int LEAST_SETS = 2;

    private final Selection selection;
    private final int minutes;
    private final Map<Integer, Integer> cut = new TreeMap<>();
    private final Map<DayOfWeek, List<Integer>> numbers = new EnumMap<>(DayOfWeek.class);
    private final List<Said> said = new ArrayList<>();
    private boolean longRest = true;
    private boolean moreSets = true;

    Fit(Selection selection, int minutes) {
        this.selection = selection;
        this.minutes = minutes;
        selection.days().forEach(day -> numbers.put(day.day(), new ArrayList<>(day.numbers())));
    }

    boolean longRest() {
        return longRest;
    }

    /** Whether exercises that are the same on both sides may get a further set. */
    boolean moreSets() {
        return moreSets;
    }

    int sets(Chosen chosen) {
        return cut.getOrDefault(chosen.number(), chosen.sets());
    }

    List<Integer> numbers(Selection.Day day) {
        return List.copyOf(numbers.get(day.day()));
    }

    /** Takes one step if a session is too long; whether it did. */
    boolean tighten(List<Day> days) {
        var longest = days.stream().filter(day -> longest(day) > minutes).max(Comparator.comparingInt(Fit::longest));
        if (longest.isEmpty()) {
            return false;
        }
        if (longRest) {
            longRest = false;
            return true;
        }
        if (moreSets) {
            moreSets = false;
            return true;
        }
        return shorter(longest.get());
    }

    private static int longest(Day day) {
        return day.minutes().stream().mapToInt(minute -> minute).max().orElse(0);
    }

    private boolean shorter(Day day) {
        var own = numbers.get(day.day());
        Optional<Chosen> last = own.reversed().stream().map(this::chosen).filter(chosen -> sets(chosen) > LEAST_SETS).findFirst();
        if (last.isPresent()) {
            cut.put(last.get().number(), sets(last.get()) - 1);
            said.add(Said.of("minutes/sets").exercise("exercise", last.get().id()).count("sets", sets(last.get()))
                    .count("before", last.get().sets()).count("minutes", minutes).word("day", name(day)));
            return true;
        }
        if (own.size() <= 1) {
            said.add(Said.of("minutes/too-long").word("day", name(day)).count("takes", longest(day)).count("minutes", minutes));
            return false;
        }
        said.add(Said.of("minutes/not-done").exercise("exercise", chosen(own.removeLast()).id()).word("day", name(day)).count("minutes", minutes));
        return true;
    }

    private Chosen chosen(int number) {
        return selection.exercises().stream().filter(chosen -> chosen.number() == number).findFirst().orElseThrow();
    }

    private static String name(Day day) {
        return day.day().name().toLowerCase(java.util.Locale.ROOT);
    }

    /** What was dropped, for the coach, in order. */
    List<Said> said() {
        return List.copyOf(said);
    }

    List<Reason> reasons() {
        return said.stream().map(line -> Reason.of("minutes", line, Source.SOLVED)).toList();
    }
}
