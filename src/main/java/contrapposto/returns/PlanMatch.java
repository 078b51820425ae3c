package contrapposto.returns;

import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import contrapposto.prescribe.Plan;
import contrapposto.prescribe.Plan.Day;
import contrapposto.quantity.Side;
import contrapposto.returns.Log.Line;
import contrapposto.returns.Log.Slot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Holds a log against the plan that asked for it: no line may answer what was not asked, none may answer twice. */
final class PlanMatch {
    private final Plan plan;
    private final List<Asked> asked;

    PlanMatch(Plan plan) {
        this.plan = plan;
        asked = Asked.all(plan);
    }

    List<Notice> problems(Log log, String file) {
        var notices = new ArrayList<Notice>();
        var seen = new LinkedHashMap<String, Line>();
        for (var line : log.lines()) {
            strange(line).ifPresent(notices::add);
            var before = seen.putIfAbsent(line.word(), line);
            if (before != null && !before.says(line)) {
                notices.add(Notice.error("log-twice", line.span(), "`" + line.word() + "` is answered twice, and not alike",
                        "keep the answer that is right"));
            }
        }
        log.days().stream().filter(note -> day(note.slot()).isEmpty()).forEach(note -> notices.add(notInPlan(note.span(),
                "`" + note.slot().word() + "` is no training day of this plan")));
        if (notices.isEmpty() && log.lines().isEmpty() && log.recheck().isEmpty()) {
            notices.add(Notice.error("log-empty", Span.whole(file), "nothing is filled in", "fill the boxes, or give another file"));
        }
        if (notices.isEmpty()) {
            halfLines(log).ifPresent(notices::add);
            emptyWeeks(log, file).ifPresent(notices::add);
        }
        return notices;
    }

    private Optional<Notice> strange(Line line) {
        var one = asked.stream().filter(a -> a.answeredBy(line)).findFirst();
        if (one.isEmpty()) {
            var others = asked.stream().filter(a -> a.exercise().id().equals(line.exercise())).map(a -> "`" + a.side().map(Side::word)
                    .orElse("both") + "`").collect(Collectors.joining(" and "));
            return Optional.of(notInPlan(line.span(), others.isEmpty() ? "`" + line.exercise() + "` is not in this plan"
                    : "`" + line.exercise() + "` is done " + others + " in this plan, not `" + line.side().map(Side::word).orElse("both") + "`"));
        }
        var day = day(line.slot());
        if (day.isEmpty() || !day.get().numbers().contains(one.get().exercise().number())) {
            return Optional.of(notInPlan(line.span(), "`" + line.exercise() + "` is not done on `" + line.slot().word() + "`"));
        }
        var dose = one.get().dose(line.slot().week());
        return dose.isPresent() ? Optional.empty()
                : Optional.of(notInPlan(line.span(), "`" + line.exercise() + "` is not done in week " + line.slot().week()));
    }

    private Optional<Day> day(Slot slot) {
        return slot.week() > plan.weeks().size() ? Optional.empty()
                : plan.days().stream().filter(day -> day.day() == slot.day()).findFirst();
    }

    private static Notice notInPlan(Span at, String what) {
        return Notice.error("log-not-in-plan", at, what, "check week, day, exercise and side; give the spec the log belongs to");
    }

    /** Lines that count as done but say nothing about strength, in one warning at the first of them. */
    private Optional<Notice> halfLines(Log log) {
        var half = log.lines().stream().filter(this::half).toList();
        return half.stream().findFirst().map(first -> Notice.warning("log-lines-half", first.span(), half.size() + " of " + log.lines().size()
                + " lines have repeats but no weight, or no number to spare, such as `" + first.word()
                + "`: they count as done, but say nothing about strength", "fill them, if somebody knows"));
    }

    private boolean half(Line line) {
        var dose = asked.stream().filter(a -> a.answeredBy(line)).findFirst().flatMap(a -> a.dose(line.slot().week()));
        boolean weighed = dose.filter(d -> d.load().isPresent() || d.byEffort()).isPresent();
        return !line.sets().isEmpty() && (line.spare().isEmpty() || weighed && line.kilograms().isEmpty());
    }

    private Optional<Notice> emptyWeeks(Log log, String file) {
        var empty = plan.weeks().stream().map(Plan.Week::number)
                .filter(week -> log.lines().stream().noneMatch(line -> line.slot().week() == week)).map(String::valueOf).toList();
        return log.lines().isEmpty() || empty.isEmpty() ? Optional.empty() : Optional.of(Notice.warning("log-weeks-empty", Span.whole(file),
                (empty.size() == 1 ? "week " : "weeks ") + String.join(", ", empty) + " of " + plan.weeks().size()
                        + ": nothing is filled in; counted as not done", "fill them, if they were done"));
    }
}
