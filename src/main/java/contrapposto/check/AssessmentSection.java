package contrapposto.check;

import contrapposto.check.CheckedSpec.Assessment;
import contrapposto.check.CheckedSpec.Degree;
import contrapposto.check.CheckedSpec.Measure;
import contrapposto.check.CheckedSpec.Test;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.notice.Notice;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.spec.Digits;
import contrapposto.spec.Written;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Consumer;

/** The finding, measures and tests: their rules and their records. */
final class AssessmentSection {
    /** Repetitions to the limit up to which estimates hold: Reynolds 2006, reference A1.10. */
    private static final int SURE_REPETITIONS = 10;

    private AssessmentSection() { }

    static void measuresInTheirUnit(Written.Fields spec, Consumer<Notice> found) {
        for (var measure : spec.fields("assessment").eachFields("measures")) {
            measure.text("what").map(MeasureKind::of).ifPresent(kind -> {
                inItsUnit(kind, measure, "left", found);
                inItsUnit(kind, measure, "right", found);
            });
        }
    }

    /** That {@code key} of {@code fields} holds an amount that {@code kind} can have. */
    static void inItsUnit(MeasureKind kind, Written.Fields fields, String key, Consumer<Notice> found) {
        fields.amount(key).ifPresent(amount -> {
            if (amount.unit().dimension() != kind.dimension()) {
                found.accept(Notice.error("measure-unit", amount.span(), kind.word() + " is measured in " + kind.unit().word()
                        + ", not in " + amount.unit().word(), "write `" + Digits.of(amount.number()) + " " + kind.unit().word()
                        + "`, if that is meant"));
            } else if (!kind.range().holds(kind.unit().fromStandard(amount.standard()))) {
                found.accept(Notice.error("out-of-range", amount.span(), "`" + Digits.of(amount.number()) + " "
                        + amount.unit().word() + "` is out of range: " + kind.word() + " goes from "
                        + Digits.of(kind.range().low()) + " to " + Digits.of(kind.range().high()) + " " + kind.unit().word(),
                        kind.range().wayOut()));
            }
        });
    }

    static void measuresOnce(Written.Fields spec, Consumer<Notice> found) {
        var seen = new TreeSet<String>();
        for (var measure : spec.fields("assessment").eachFields("measures")) {
            measure.text("what").filter(what -> !seen.add(what)).ifPresent(what -> found.accept(Notice.error("measured-twice",
                    ClientSection.span(measure, "what"), what + " is given twice", "keep the pair that counts")));
        }
    }

    static void testsBeforeStart(Written.Fields spec, Consumer<Notice> found) {
        spec.fields("schedule").day("start").ifPresent(start -> {
            for (var test : spec.fields("assessment").eachFields("tests")) {
                test.day("date").filter(start::isBefore).ifPresent(date -> found.accept(Notice.error("test-after-start",
                        ClientSection.span(test, "date"), "a test on `" + date + "` comes after the program starts on " + start,
                        "check both dates; later tests belong in the next block's spec")));
            }
        });
    }

    static void testsNearTheLimit(Written.Fields spec, Consumer<Notice> found) {
        for (var test : spec.fields("assessment").eachFields("tests")) {
            test.number("reps").ifPresent(reps -> {
                int possible = (int) (reps + test.number("in-reserve").orElse(0.0));
                if (possible > SURE_REPETITIONS) {
                    found.accept(Notice.warning("rough-test", ClientSection.span(test, "reps"), Digits.of(reps) + " done and "
                            + Digits.of(possible - reps) + " in reserve make " + possible
                            + " repetitions, but estimates are sure up to " + SURE_REPETITIONS + " only",
                            "test with a heavier weight when you can (Reynolds 2006)"));
                }
            });
        }
    }

    static Assessment assessment(Written.Fields spec) {
        var assessment = spec.fields("assessment");
        var day = ClientSection.assessed(spec).orElseThrow();
        var pelvis = assessment.fields("pelvis");
        return new Assessment(day, Turned.valueOf(ClientSection.upper(pelvis.text("turned").orElseThrow())),
                Degree.valueOf(ClientSection.upper(pelvis.text("degree").orElse("clear"))),
                assessment.text("weight-habit").flatMap(AssessmentSection::side),
                assessment.text("low-shoulder").flatMap(AssessmentSection::side),
                assessment.eachFields("measures").stream().map(AssessmentSection::measure).toList(),
                assessment.eachFields("tests").stream().map(test -> test(test, day)).toList(),
                assessment.number("bilateral-index").map(OptionalDouble::of).orElseGet(OptionalDouble::empty));
    }

    static Measure measure(Written.Fields fields) {
        var kind = MeasureKind.of(fields.text("what").orElseThrow());
        return new Measure(kind.word(), kept(kind, fields, "left"), kept(kind, fields, "right"), kind.unit().word());
    }

    /** The amount at {@code key} in the unit in which {@code kind} is kept; as written where it was written in that unit. */
    static double kept(MeasureKind kind, Written.Fields fields, String key) {
        var amount = fields.amount(key).orElseThrow();
        return amount.unit() == kind.unit() ? amount.number() : kind.unit().fromStandard(amount.standard());
    }

    private static Test test(Written.Fields test, LocalDate assessed) {
        return new Test(test.text("exercise").orElseThrow(), test.text("side").flatMap(AssessmentSection::side),
                Mass.ofKilograms(test.amount("load").orElseThrow().standard()), test.number("reps").orElseThrow().intValue(),
                test.number("in-reserve").orElse(0.0).intValue(), ChoiceSection.wish(test.fields("setup")),
                test.day("date").orElse(assessed), test.number("error").map(OptionalDouble::of).orElseGet(OptionalDouble::empty));
    }

    /** The side of a word; {@code both} is none. */
    static Optional<Side> side(String word) {
        return switch (word) {
            case "left" -> Optional.of(Side.LEFT);
            case "right" -> Optional.of(Side.RIGHT);
            default -> Optional.empty();
        };
    }
}
