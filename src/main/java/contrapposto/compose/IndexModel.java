package contrapposto.compose;

import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec;
import contrapposto.quantity.Length;
import contrapposto.wording.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the index page of a pack says, as finished words.
 *
 * @param common the equipment of all handouts where it is the same; else each row has its own
 */
record IndexModel(String title, String practice, String maker, String contact, String made, String count, Optional<List<NeedsModel.Need>> common, List<Row> rows) {
    /**
     * @param fate    made, withheld or failed; {@code facts} only where the spec is sound
     * @param printed edition and pages, of what was printed
     */
    record Row(String number, String name, String fate, Optional<Facts> facts, List<Printed> printed) { }

    /**
     * @param turned left, right or square
     * @param years  of training
     * @param paper  a4 or letter; {@code print} plain or large
     */
    record Facts(String turned, String years, String paper, String print, String language, List<NeedsModel.Need> equipment) { }

    record Printed(String edition, String pages) { }

    /** @param lead the spec that gives the page its practice and date */
    static IndexModel of(PackIndex index, CheckedSpec lead, Units units) {
        var practice = lead.practice();
        var rows = index.lines().stream().map(line -> row(index, line, units)).toList();
        var equipment = rows.stream().flatMap(row -> row.facts().stream()).map(Facts::equipment).distinct().toList();
        return new IndexModel(index.title(), practice.name(), practice.preparedBy(), practice.contact(), units.date(lead.assessment().date()),
                Integer.toString(rows.size()), equipment.size() == 1 ? Optional.of(equipment.getFirst()) : Optional.empty(), rows);
    }

    private static Row row(PackIndex index, PackIndex.Line line, Units units) {
        return switch (line.fate()) {
            case PackIndex.Fate.Made(var spec, var printed) -> new Row(line.number(), line.name(), "made", Optional.of(facts(index, spec, units)),
                    printed.stream().map(p -> new Printed(Values.word(p.edition()), Integer.toString(p.pages()))).toList());
            case PackIndex.Fate.Withheld(var spec) -> new Row(line.number(), line.name(), "withheld", Optional.of(facts(index, spec, units)), List.of());
            case PackIndex.Fate.Failed failed -> new Row(line.number(), line.name(), "failed", Optional.empty(), List.of());
        };
    }

    private static Facts facts(PackIndex index, CheckedSpec spec, Units units) {
        var handout = spec.handout();
        return new Facts(Values.word(spec.assessment().turned()), units.count(spec.client().trainingYears()),
                Values.word(index.paper().orElse(handout.paper())), Values.word(index.print().orElse(handout.print())),
                index.language().orElse(spec.client().language()), equipment(spec.equipment(), units));
    }

    /** Everything the spec says is there, not only what its exercises use. */
    private static List<NeedsModel.Need> equipment(CheckedSpec.Equipment equipment, Units units) {
        var things = new ArrayList<NeedsModel.Need>();
        for (Implement implement : Implement.values()) {
            var weights = equipment.weights(implement);
            if (!weights.isEmpty()) {
                things.add(new NeedsModel.Need(implement.word(), Stream.of(weights.getFirst(), weights.getLast()).distinct()
                        .map(weight -> units.mass(weight.kilograms())).toList()));
            }
        }
        add(things, "box", equipment.boxes(), units);
        add(things, "bench", equipment.bench().stream().toList(), units);
        add(things, "wedge", equipment.wedges(), units);
        equipment.also().forEach(thing -> things.add(new NeedsModel.Need(thing, List.of())));
        return things;
    }

    private static void add(List<NeedsModel.Need> things, String kind, List<Length> heights, Units units) {
        if (!heights.isEmpty()) {
            things.add(new NeedsModel.Need(kind, heights.stream().map(units::length).toList()));
        }
    }
}
