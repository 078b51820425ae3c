package contrapposto.assess;

import contrapposto.assess.ConditionTable.Row;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.Condition;
import contrapposto.check.Condition.Kind;
import contrapposto.quantity.Angle;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Reads the conditions of a spec against {@link ConditionTable}, and says what keeps the plan within bounds. */
final class Conditions {
    /** Weeks from the first day that counts to the day a birth is due. */
    private static final int TERM = 40;

    private Conditions() { }

    /** A condition and the row that holds for it. */
    record Held(Condition condition, Row row) { }

    /** Every condition that a row holds for, in the order of the spec; a pregnancy that is only answered counts as one. */
    static List<Held> of(CheckedSpec spec) {
        var held = new ArrayList<Held>();
        for (var condition : spec.screening().conditions()) {
            row(spec, condition).ifPresent(row -> held.add(new Held(condition, row)));
        }
        return List.copyOf(held);
    }

    /** Whether a pregnancy is described, so that the bare answer has nothing to add. */
    static boolean describesPregnancy(CheckedSpec spec) {
        return spec.screening().conditions().stream().anyMatch(c -> c.kind() == Kind.PREGNANCY);
    }

    private static Optional<Row> row(CheckedSpec spec, Condition condition) {
        var place = condition.where().<Set<Condition.Where>>map(EnumSet::of).orElseGet(Set::of);
        long week = week(spec, condition);
        return ConditionTable.ROWS.stream().filter(row -> row.fits(condition.kind(), place, week)).findFirst();
    }

    /** Whole weeks since at the start; of a pregnancy, its week when the program ends; as late as can be where not known. */
    static long week(CheckedSpec spec, Condition condition) {
        var start = spec.schedule().start();
        if (condition.date().isEmpty()) {
            return condition.kind() == Kind.PREGNANCY ? TERM : 0;
        }
        var date = condition.date().get();
        return condition.kind() == Kind.PREGNANCY
                ? Math.floorDiv(7 * TERM - ChronoUnit.DAYS.between(start.plusWeeks(spec.schedule().weeks()), date), 7)
                : ChronoUnit.WEEKS.between(date, start);
    }

    /** What binds the plan: the coach's restrictions that hold at its start, then those that conditions bring. */
    static List<Restrained> restrained(CheckedSpec spec) {
        var all = new ArrayList<Restrained>();
        spec.restrictions().stream().filter(r -> r.until().isEmpty() || !r.until().get().isBefore(spec.schedule().start()))
                .forEach(r -> all.add(new Restrained(r, Reason.of("restriction", words(r), Source.COACH))));
        for (var held : of(spec)) {
            var row = held.row();
            var why = new Reason("condition-" + held.condition().kind().word(), row.because(),
                    row.reference().isEmpty() ? Source.PRACTICE : Source.PUBLISHED, row.reference());
            row.avoid().forEach(tag -> all.add(new Restrained(new Restriction.Avoid(tag.word(), held.condition().sides(),
                    Optional.empty(), ""), why)));
            new TreeMap<>(row.ranges()).forEach((joint, most) -> all.add(new Restrained(new Restriction.LimitRange(joint,
                    held.condition().sides(), Angle.ofDegrees(most), Optional.empty(), ""), why)));
        }
        return List.copyOf(all);
    }

    private static Said words(Restriction restriction) {
        var said = switch (restriction) {
            case Restriction.Avoid avoid -> what(Said.of("restriction/avoid"), avoid.what()).side("side", one(avoid.sides()));
            case Restriction.LimitLoad load -> Said.of("restriction/hand-load").side("side", Optional.empty());
            case Restriction.LimitRange range -> Said.of("restriction/range").word("what", range.what()).side("side", one(range.sides()));
        };
        var because = said.text("because", restriction.because());
        return restriction.until().map(day -> because.day("until", day)).orElse(because.text("until", ""));
    }

    /** What is avoided is a tag or an exercise. */
    private static Said what(Said said, String what) {
        return RestrictionTag.of(what).isPresent() ? said.word("what", what) : said.exercise("what", what);
    }

    private static Optional<Side> one(Set<Side> sides) {
        return Optional.of(sides).filter(s -> s.size() == 1).map(s -> s.iterator().next());
    }
}
