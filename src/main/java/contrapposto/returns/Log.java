package contrapposto.returns;

import contrapposto.notice.Span;
import contrapposto.quantity.Side;
import contrapposto.spec.Written;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What came back, as it was written: empty boxes are absent.
 *
 * @param recheck the assessment of a YAML return, keys as in a spec; empty where nobody measured again
 * @param told    what the client wrote for the re-check
 */
public record Log(List<Line> lines, List<DayNote> days, Optional<Written.Fields> recheck, Told told) {
    public Log {
        lines = List.copyOf(lines);
        days = List.copyOf(days);
    }

    static final Log EMPTY = new Log(List.of(), List.of(), Optional.empty(), Told.NOTHING);

    /** @param week of the plan, from 1 */
    public record Slot(int week, DayOfWeek day) implements Comparable<Slot> {
        @Override
        public int compareTo(Slot other) {
            return week == other.week ? day.compareTo(other.day) : Integer.compare(week, other.week);
        }

        /** As boxes are named: {@code w3/mon}. */
        String word() {
            return "w" + week + "/" + dayWord(day);
        }
    }

    /**
     * One exercise and side on one day.
     *
     * @param side      empty: both at once
     * @param kilograms on each implement; empty where none was written
     * @param sets      number of the set, from 1 → repeats, or seconds of a hold
     * @param spare     repeats that would still have gone after the last set
     * @param pain      the worst, 0 to 10
     */
    public record Line(Span span, Slot slot, String exercise, Optional<Side> side, OptionalDouble kilograms,
                       SortedMap<Integer, Integer> sets, OptionalInt spare, OptionalInt pain) {
        public Line {
            sets = Collections.unmodifiableSortedMap(new TreeMap<>(sets));
        }

        /** As boxes are named: {@code w3/mon/split-squat/left}. */
        String word() {
            return slot.word() + "/" + exercise + "/" + side.map(Side::word).orElse("both");
        }

        /** Whether it says the same as another, wherever both stand. */
        boolean says(Line other) {
            return slot.equals(other.slot) && kilograms.equals(other.kilograms) && sets.equals(other.sets)
                    && spare.equals(other.spare) && pain.equals(other.pain);
        }
    }

    /** What is noted once a day. @param morningPain the next morning, 0 to 10 */
    public record DayNote(Span span, Slot slot, Optional<LocalDate> date, OptionalInt minutes, OptionalInt morningPain) { }

    /** In the client's own words, for the coach to read: {@code notes}, and of which weeks went as planned or otherwise. */
    public record Told(Optional<String> notes, Optional<String> weeks, Optional<String> changes) {
        static final Told NOTHING = new Told(Optional.empty(), Optional.empty(), Optional.empty());

        private Told or(Told other) {
            return new Told(notes.or(other::notes), weeks.or(other::weeks), changes.or(other::changes));
        }
    }

    static String dayWord(DayOfWeek day) {
        return day.name().substring(0, 3).toLowerCase(java.util.Locale.ROOT);
    }

    /** Both together; the later re-check counts. */
    Log and(Log other) {
        var all = new ArrayList<>(lines);
        all.addAll(other.lines);
        var notes = new ArrayList<>(days);
        notes.addAll(other.days);
        return new Log(all, notes, other.recheck.or(() -> recheck), other.told.or(told));
    }
}
