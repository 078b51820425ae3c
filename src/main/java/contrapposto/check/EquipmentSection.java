package contrapposto.check;

import contrapposto.check.CheckedSpec.Band;
import contrapposto.check.CheckedSpec.Cable;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.check.CheckedSpec.Pull;
import contrapposto.notice.Notice;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.spec.Digits;
import contrapposto.spec.Written;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/** What the client has: its rules, and the record with every weight that exists. */
final class EquipmentSection {
    private static final Length PULLEY_LOW = Length.ofMetres(0.2);
    private static final Length PULLEY_HIGH = Length.ofMetres(2.0);

    private EquipmentSection() { }

    static void runsReachTheirEnd(Written.Fields spec, Consumer<Notice> found) {
        var equipment = spec.fields("equipment");
        for (var key : List.of("dumbbells", "kettlebells", "cable")) {
            Optional.ofNullable(equipment.values().get(key)).flatMap(Run::in).ifPresent(run -> run.problem(key)
                    .ifPresent(found));
        }
    }

    static void platesComeInPairs(Written.Fields spec, Consumer<Notice> found) {
        for (var pair : spec.fields("equipment").fields("barbell").pairs("plates")) {
            var count = (Written.Number) pair.value();
            if (count.number() % 2 != 0) {
                var plate = (Written.Amount) pair.key();
                found.accept(Notice.error("odd-plates", count.span(), "`" + Digits.of(count.number()) + "` plates of "
                        + Digits.of(plate.number()) + " " + plate.unit().word() + " make no pairs, but a bar takes one on each end",
                        "count whole pairs"));
            }
        }
    }

    static void barbellIsSane(Written.Fields spec, Consumer<Notice> found) {
        var barbell = spec.fields("equipment").fields("barbell");
        if (barbell.pairs("plates").size() > 12 || Barbell.loads(barbell).size() > Barbell.MOST_LOADS) {
            found.accept(Notice.error("too-many-weights", ClientSection.span(barbell, "plates"),
                    "these plates make more than " + Barbell.MOST_LOADS + " loads", "give the plates that are used, at most 12 sizes"));
        }
    }

    static void pulleyGoesUp(Written.Fields spec, Consumer<Notice> found) {
        var pulley = spec.fields("equipment").fields("cable").fields("pulley");
        pulley.amount("from").ifPresent(from -> pulley.amount("to").filter(to -> to.standard() < from.standard())
                .ifPresent(to -> found.accept(Notice.error("from-above-to", from.span(), "the pulley goes from `"
                        + Digits.of(from.number()) + " " + from.unit().word() + "` to a lower `" + Digits.of(to.number()) + " "
                        + to.unit().word() + "`", "give the lowest place as `from`, the highest as `to`"))));
    }

    static Equipment equipment(Written.Fields spec) {
        var equipment = spec.fields("equipment");
        return new Equipment(weights(equipment, "dumbbells"), single(equipment), weights(equipment, "kettlebells"),
                Barbell.loads(equipment.fields("barbell")), cable(equipment), lengths(equipment, "boxes"),
                equipment.amount("bench").map(a -> Length.ofMetres(a.standard())), lengths(equipment, "wedges"),
                also(equipment), equipment.eachFields("bands").stream().map(EquipmentSection::band).toList());
    }

    private static Band band(Written.Fields band) {
        return new Band(band.text("name").orElseThrow(), band.at("measured", Written.Fields.class).map(measured -> new Pull(
                Mass.ofKilograms(measured.amount("pull").orElseThrow().standard()), Length.ofMetres(measured.amount("at").orElseThrow().standard()))));
    }

    private static List<Mass> weights(Written.Fields equipment, String key) {
        return Optional.ofNullable(equipment.values().get(key)).map(EquipmentSection::weights).orElse(List.of());
    }

    private static List<Mass> weights(Written given) {
        var listed = switch (given) {
            case Written.Many many -> many.items();
            case Written.Fields fields -> fields.many("weights");
            default -> throw new IllegalStateException("Weights are a list or a map, but was (" + given + ").");
        };
        return Run.in(given).map(Run::weights).orElseGet(() -> listed.stream()
                .map(weight -> Mass.ofKilograms(((Written.Amount) weight).standard())).sorted().toList());
    }

    private static boolean single(Written.Fields equipment) {
        return equipment.values().get("dumbbells") instanceof Written.Fields fields && fields.truth("single").orElse(false);
    }

    private static Optional<Cable> cable(Written.Fields equipment) {
        return equipment.at("cable", Written.Fields.class).map(cable -> new Cable(Run.in(cable).orElseThrow().weights(),
                cable.number("ratio").orElse(1.0),
                cable.fields("pulley").amount("from").map(a -> Length.ofMetres(a.standard())).orElse(PULLEY_LOW),
                cable.fields("pulley").amount("to").map(a -> Length.ofMetres(a.standard())).orElse(PULLEY_HIGH)));
    }

    private static List<Length> lengths(Written.Fields equipment, String key) {
        return equipment.many(key).stream().map(length -> Length.ofMetres(((Written.Amount) length).standard())).sorted().toList();
    }

    /** In alphabetical order; a wall where nothing is said, and a band where one is named. */
    private static Set<String> also(Written.Fields equipment) {
        var words = new TreeSet<>(equipment.has("also") ? equipment.texts("also").stream().map(Written.Text::text).toList() : List.of("wall"));
        if (!equipment.eachFields("bands").isEmpty()) {
            words.add("band");
        }
        return Collections.unmodifiableSet(words);
    }
}
