package contrapposto.prescribe;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.prescribe.Plan.Day;
import contrapposto.wording.Said;
import contrapposto.wording.Term;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Why the first weeks leave minutes over: without weights there is little to do, and sets are not added to fill time. */
final class ShortSessions {
    /** Sessions under this share of the minutes are told of: house. */
    private static final double SHORT = 0.6;

    private ShortSessions() { }

    /** The last of the weeks that a plan's reason tells of; empty where there is none. */
    static Optional<Long> last(List<Reason> reasons) {
        return reasons.stream().filter(reason -> reason.rule().equals("short-sessions")).map(reason -> reason.said().terms().get("last"))
                .flatMap(term -> term instanceof Term.Count(var week) ? Stream.of(week) : Stream.empty()).findFirst();
    }

    /** Said where every session of the first weeks is short. */
    static Optional<Reason> reason(List<Day> days, int minutes) {
        int weeks = days.isEmpty() ? 0 : days.getFirst().minutes().size();
        int last = 0;
        while (last < weeks && isShort(days, last, minutes)) {
            last++;
        }
        if (last == 0) {
            return Optional.empty();
        }
        int end = last;
        int least = days.stream().flatMap(day -> day.minutes().subList(0, end).stream()).mapToInt(taken -> taken).min().orElse(0);
        int most = days.stream().flatMap(day -> day.minutes().subList(0, end).stream()).mapToInt(taken -> taken).max().orElse(0);
        return Optional.of(new Reason("short-sessions", Said.of("short-sessions").count("last", last).count("from", least).count("to", most)
                .count("minutes", minutes), Source.HOUSE, "B1.5: ACSM 2009"));
    }

    private static boolean isShort(List<Day> days, int week, int minutes) {
        return days.stream().allMatch(day -> day.minutes().get(week) < SHORT * minutes);
    }
}
