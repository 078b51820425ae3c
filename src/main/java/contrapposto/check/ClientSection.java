package contrapposto.check;

import contrapposto.check.CheckedSpec.Client;
import contrapposto.check.CheckedSpec.Practice;
import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import contrapposto.quantity.Colour;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Sex;
import contrapposto.quantity.UnitSystem;
import contrapposto.spec.Digits;
import contrapposto.spec.Written;
import java.time.LocalDate;
import java.time.Period;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;

/** Client and practice: their rules and their records. */
final class ClientSection {
    /** Outside these a stature is real but rare: reference C7.7, common practice. */
    private static final Length USUAL_LOW = Length.ofMetres(1.45);
    private static final Length USUAL_HIGH = Length.ofMetres(2.05);
    /** Body mass over stature squared, kg/m²; outside, a unit is more likely wrong than right (common practice, no source). */
    private static final double LEAN = 14;
    private static final double HEAVY = 60;

    private ClientSection() { }

    static void hasNameOrCode(Written.Fields spec, Consumer<Notice> found) {
        spec.at("client", Written.Fields.class).filter(client -> !client.has("name") && !client.has("code"))
                .ifPresent(client -> found.accept(Notice.error("no-name-or-code", client.span(),
                        "`client` has neither `name` nor `code`", "give at least one; footers and file names need it")));
    }

    static void saysAgeOnce(Written.Fields spec, Consumer<Notice> found) {
        var client = spec.fields("client");
        if (client.has("age") && client.has("born")) {
            found.accept(Notice.error("age-and-born", span(client, "age"), "`client` has both `age` and `born`",
                    "keep one; `born` stays right from block to block"));
        }
    }

    static void wasBornBefore(Written.Fields spec, Consumer<Notice> found) {
        var client = spec.fields("client");
        client.day("born").ifPresent(born -> assessed(spec).ifPresent(day -> {
            if (born.isAfter(day)) {
                found.accept(Notice.error("born-later", span(client, "born"), "`" + born + "` as date of birth comes after "
                        + day + ", the day of the assessment", "check both dates"));
            } else if (years(born, day) < ProgramKeys.LEAST_AGE || years(born, day) > ProgramKeys.MOST_AGE) {
                found.accept(Notice.error("impossible-age", span(client, "born"), "born `" + born + "`, the client is "
                        + years(born, day) + " on " + day + ", but ages go from " + Digits.of(ProgramKeys.LEAST_AGE) + " to "
                        + Digits.of(ProgramKeys.MOST_AGE), "check the year of birth"));
            }
        }));
    }

    static void hasLikelyBody(Written.Fields spec, Consumer<Notice> found) {
        var client = spec.fields("client");
        client.amount("height").ifPresent(height -> {
            double metres = height.standard();
            if (metres < USUAL_LOW.metres() || metres > USUAL_HIGH.metres()) {
                found.accept(Notice.warning("unusual-height", height.span(), "a height of "
                        + Digits.of(metres, height.unit()) + " is rare: few adults are outside "
                        + Digits.of(USUAL_LOW.metres(), height.unit()) + " to " + Digits.of(USUAL_HIGH.metres(), height.unit()),
                        "check it; if it is right, go on"));
            }
            client.amount("mass").ifPresent(mass -> {
                double ratio = mass.standard() / (metres * metres);
                if (ratio < LEAN || ratio > HEAVY) {
                    found.accept(Notice.warning("unusual-mass", mass.span(), "a mass of " + Digits.of(mass.standard(), mass.unit())
                            + " is rare at this height: " + Digits.of(ratio) + " kg per square metre, usual are "
                            + Digits.of(LEAN) + " to " + Digits.of(HEAVY), "check number and unit; if it is right, go on"));
                }
            });
        });
    }

    static void trainedWithinLife(Written.Fields spec, Consumer<Notice> found) {
        var client = spec.fields("client");
        client.number("training-years").ifPresent(trained -> age(spec).ifPresent(age -> {
            if (trained > age) {
                found.accept(Notice.error("trained-longer-than-alive", span(client, "training-years"), "`"
                        + Digits.of(trained) + "` training years are more than the client's age, " + age, "check both"));
            }
        }));
    }

    /** The day of the assessment, else of the start. */
    static Optional<LocalDate> assessed(Written.Fields spec) {
        return spec.fields("assessment").day("date").or(() -> spec.fields("schedule").day("start"));
    }

    static Client client(Written.Fields spec) {
        var client = spec.fields("client");
        return new Client(client.text("name").orElse(""), client.text("code").orElse(""), age(spec),
                client.text("sex").map(ClientSection::upper).map(Sex::valueOf).orElse(Sex.UNSTATED),
                Length.ofMetres(client.amount("height").orElseThrow().standard()),
                Mass.ofKilograms(client.amount("mass").orElseThrow().standard()),
                client.number("training-years").orElse(0.0), client.text("language").orElse("en"),
                client.text("units").map(ClientSection::upper).map(UnitSystem::valueOf).orElse(UnitSystem.METRIC),
                BodySection.body(client));
    }

    static void ownColourIsDark(Written.Fields spec, Consumer<Notice> found) {
        var practice = spec.fields("practice");
        practice.text("colour").flatMap(Colour::of).filter(colour -> colour.contrastOnWhite() < Colour.READABLE)
                .ifPresent(colour -> found.accept(Notice.error("pale-colour", span(practice, "colour"), String.format(Locale.ROOT,
                        "heads in this colour would be hard to read: its contrast against white paper is %.1f to 1, but must be %.0f to 1",
                        StrictMath.floor(colour.contrastOnWhite() * 10) / 10, Colour.READABLE), "take a darker shade of it")));
    }

    static Practice practice(Written.Fields spec) {
        var practice = spec.fields("practice");
        return new Practice(practice.text("name").orElse(""), practice.text("prepared-by").orElse(""),
                practice.text("contact").orElse(""), practice.text("emergency").orElse(""),
                practice.text("qualification").orElse(""), practice.text("setting").orElse(""),
                practice.text("colour").flatMap(Colour::of));
    }

    /** The name of the constant that stands for a word of the table. */
    static String upper(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    }

    static Span span(Written.Fields fields, String key) {
        return fields.spanOf(key).orElse(fields.span());
    }

    private static OptionalInt age(Written.Fields spec) {
        var client = spec.fields("client");
        return client.number("age").map(Double::intValue)
                .or(() -> client.day("born").flatMap(born -> assessed(spec).map(day -> years(born, day))))
                .map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }

    private static int years(LocalDate born, LocalDate day) {
        return Period.between(born, day).getYears();
    }
}
