package contrapposto.check;

import contrapposto.check.CheckedSpec.Clearance;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.Screening;
import contrapposto.notice.Notice;
import contrapposto.quantity.Angle;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.spec.Written;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;

/** Screening, clearance and restrictions: their rules and their records. */
final class SafetySection {
    private SafetySection() { }

    static void restrictionsStillHold(Written.Fields spec, Consumer<Notice> found) {
        ClientSection.assessed(spec).ifPresent(day -> {
            for (var restriction : spec.eachFields("restrictions")) {
                restriction.day("until").filter(day::isAfter).ifPresent(until -> found.accept(Notice.error("until-over",
                        ClientSection.span(restriction, "until"), "this restriction ended on `" + until
                        + "`, before the assessment on " + day, "delete it, or give the day up to which it holds")));
            }
        });
    }

    static Screening screening(Written.Fields spec) {
        var screening = spec.fields("screening");
        var answers = new LinkedHashMap<String, Boolean>();
        for (var question : ScreeningQuestion.inOrder()) {
            screening.truth(question.word()).ifPresent(yes -> answers.put(question.word(), yes));
        }
        var pressure = screening.at("resting-blood-pressure", Written.Pressure.class);
        return new Screening(Collections.unmodifiableMap(answers),
                pressure.map(p -> OptionalInt.of(p.systolic())).orElseGet(OptionalInt::empty),
                pressure.map(p -> OptionalInt.of(p.diastolic())).orElseGet(OptionalInt::empty), ConditionSection.conditions(screening));
    }

    static Optional<Clearance> clearance(Written.Fields spec) {
        return spec.at("clearance", Written.Fields.class).map(given -> new Clearance(given.text("by").orElseThrow(),
                given.day("date").orElseThrow(), given.text("limits").orElse("none")));
    }

    static List<Restriction> restrictions(Written.Fields spec) {
        return spec.eachFields("restrictions").stream().map(SafetySection::restriction).toList();
    }

    private static Restriction restriction(Written.Fields given) {
        var until = given.day("until");
        var because = given.text("because").orElse("");
        var avoided = given.text("avoid");
        if (avoided.isPresent()) {
            return new Restriction.Avoid(avoided.get(), sides(given), until, because);
        }
        var limited = given.text("limit").orElseThrow();
        double to = given.amount("to").orElseThrow().standard();
        return limited.equals("hand-load") ? new Restriction.LimitLoad(Mass.ofKilograms(to), until, because)
                : new Restriction.LimitRange(limited, sides(given), Angle.ofDegrees(to), until, because);
    }

    /** Left before right. */
    private static Set<Side> sides(Written.Fields given) {
        var side = given.text("side").flatMap(AssessmentSection::side);
        return Collections.unmodifiableSet(side.map(EnumSet::of).orElseGet(() -> EnumSet.allOf(Side.class)));
    }
}
