package contrapposto.check;

import contrapposto.check.Condition.Date;
import contrapposto.check.Condition.Kind;
import contrapposto.check.Condition.Where;
import contrapposto.notice.Notice;
import contrapposto.quantity.Side;
import contrapposto.spec.Written;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Conditions of the screening: their rules and their records. */
final class ConditionSection {
    /** A pregnancy is due at most this long after the assessment, days: 40 weeks and two to spare. */
    private static final int LONGEST = 7 * 42;

    private ConditionSection() { }

    static List<Condition> conditions(Written.Fields screening) {
        return screening.eachFields("conditions").stream().map(given -> new Condition(kind(given).orElseThrow(), given.day("date"),
                where(given), sides(given))).toList();
    }

    /** An operation needs its day and place, a birth its day. */
    static void conditionsAreWhole(Written.Fields spec, Consumer<Notice> found) {
        each(spec, (given, kind) -> {
            if (kind.date() == Date.PAST && !given.has("date")) {
                found.accept(Notice.error("condition-without-date", given.span(), "`" + kind.word() + "` needs a `date`: its rules "
                        + "hang on the weeks since", "give the day, such as `date: 2026-03-09`"));
            }
            if (!kind.places().isEmpty() && !given.has("where")) {
                found.accept(Notice.error("condition-without-place", given.span(), "`" + kind.word() + "` needs `where`: its rules "
                        + "hang on the part of the body", "places here: " + places(kind)));
            }
        });
    }

    static void conditionsHaveTheirPlace(Written.Fields spec, Consumer<Notice> found) {
        each(spec, (given, kind) -> where(given).filter(where -> !kind.places().contains(where)).ifPresent(where ->
                found.accept(Notice.error("condition-place", ClientSection.span(given, "where"), "`" + kind.word()
                        + "` cannot be at the `" + where.word() + "`", kind.places().isEmpty() ? "leave `where` out"
                        : "places here: " + places(kind)))));
    }

    static void conditionsHaveTheirTime(Written.Fields spec, Consumer<Notice> found) {
        var start = spec.fields("schedule").day("start");
        each(spec, (given, kind) -> given.day("date").ifPresent(date -> {
            boolean late = kind.date() == Date.PAST && start.filter(date::isAfter).isPresent();
            boolean notDue = kind.date() == Date.DUE && ClientSection.assessed(spec).filter(day -> date.isBefore(day)
                    || date.isAfter(day.plusDays(LONGEST))).isPresent();
            if (late || notDue || kind.date() == Date.NONE) {
                found.accept(Notice.error("condition-date", ClientSection.span(given, "date"), "`" + date + "` cannot be the day of `"
                        + kind.word() + "`", switch (kind.date()) {
                            case PAST -> "give a day before the program starts; for what is still to come, start a program after it";
                            case DUE -> "give the day it is due, at most 42 weeks after the assessment";
                            case NONE -> "leave `date` out: nothing hangs on it";
                        }));
            }
        }));
    }

    static void conditionsAgreeWithTheAnswers(Written.Fields spec, Consumer<Notice> found) {
        boolean answeredNo = spec.fields("screening").truth("pregnant").filter(yes -> !yes).isPresent();
        each(spec, (given, kind) -> {
            if (kind == Kind.PREGNANCY && answeredNo) {
                found.accept(Notice.error("condition-against-answer", given.span(), "`" + kind.word()
                        + "` is listed, but `pregnant` is answered `no`", "correct one of the two"));
            }
        });
    }

    private interface Rule {
        void hold(Written.Fields given, Kind kind);
    }

    private static void each(Written.Fields spec, Rule rule) {
        spec.fields("screening").eachFields("conditions").forEach(given -> kind(given).ifPresent(kind -> rule.hold(given, kind)));
    }

    private static Optional<Kind> kind(Written.Fields given) {
        return given.text("what").map(ClientSection::upper).map(Kind::valueOf);
    }

    private static Optional<Where> where(Written.Fields given) {
        return given.text("where").map(ClientSection::upper).map(Where::valueOf);
    }

    private static String places(Kind kind) {
        return String.join(", ", kind.places().stream().map(Where::word).toList());
    }

    /** Left before right. */
    private static Set<Side> sides(Written.Fields given) {
        var side = given.text("side").flatMap(AssessmentSection::side);
        return Collections.unmodifiableSet(side.map(EnumSet::of).orElseGet(() -> EnumSet.allOf(Side.class)));
    }
}
