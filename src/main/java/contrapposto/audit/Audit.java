package contrapposto.audit;

import contrapposto.audit.Finding.Verdict;
import contrapposto.document.Block;
import contrapposto.document.Cell;
import contrapposto.document.Document;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Three lists held against a handout. Their words are our own; the items are those of Slade et al. 2016 (reporting of
 * exercise, 19), of PEMAT-P (AHRQ 14-0002-EF, 24) and of the CDC Clear Communication Index (20).
 */
public final class Audit {
    private static final int MOST_ITEMS = 7;

    private final Reader client;
    private final Reader coach;

    public Audit(Document client, Document coach) {
        this.client = new Reader(client);
        this.coach = new Reader(coach);
    }

    /**
     * The reporting consensus, by the coach edition: met where its table of the report says the item in words; where that row
     * ends in a box to fill, a person has to.
     */
    public List<Finding> reporting() {
        var rows = new LinkedHashMap<String, Block.Table.Row>();
        coach.all(Block.Table.class).stream().flatMap(t -> t.groups().stream()).flatMap(g -> g.rows().stream())
                .filter(r -> r.cells().size() > 1).forEach(row -> rows.putIfAbsent(Reader.words(row.cells().getFirst()), row));
        String place = coach.document().parts().getLast().name();
        return Items.REPORTING.entrySet().stream().map(item -> {
            var row = Optional.ofNullable(rows.get(item.getKey())).filter(r -> !Reader.words(r.cells().get(1)).isBlank());
            return row.map(r -> new Finding(item.getKey(), item.getValue(), r.cells().stream().anyMatch(Cell.Entry.class::isInstance)
                    ? Verdict.NEEDS_A_PERSON : Verdict.MET, place + ": " + Reader.words(r.cells().get(1)))).orElseGet(() -> new Finding(item.getKey(), item.getValue(), Verdict.NOT_MET, ""));
        }).toList();
    }

    /** PEMAT-P, by the client edition. */
    public List<Finding> patientMaterial() {
        String start = client.place(Block.Opening.class);
        String cards = client.place(Block.Card.class);
        String tables = client.place(Block.Table.class);
        var look = Map.ofEntries(Map.entry("1", start), Map.entry("2", start), Map.entry("3", cards), Map.entry("4", cards), Map.entry("5", cards),
                Map.entry("6", tables), Map.entry("7", tables), Map.entry("9", start), Map.entry("10", start), Map.entry("16", cards), Map.entry("18", cards),
                Map.entry("21", cards), Map.entry("24", tables), Map.entry("25", tables));
        return judged(Items.PATIENT_MATERIAL, look, Map.ofEntries(Map.entry("8", headed()), Map.entry("11", summary()),
                Map.entry("12", cues()), Map.entry("15", pictures()), Map.entry("17", captions()), Map.entry("19", heads()),
                Map.entry("20", actions()), Map.entry("22", actions()), Map.entry("23", log()), Map.entry("26", pictures())));
    }

    /** The CDC index, by the client edition. */
    public List<Finding> clearCommunication() {
        String start = client.place(Block.Opening.class);
        String cards = client.place(Block.Card.class);
        String tables = client.place(Block.Table.class);
        var look = Map.of("6", start, "7", cards, "11", client.document().parts().getLast().name(), "13", start, "15", tables, "16", tables, "17", tables,
                "19", start, "20", start);
        return judged(Items.CLEAR_COMMUNICATION, look, Map.ofEntries(Map.entry("1", summary()), Map.entry("2", summary()), Map.entry("3", cues()),
                Map.entry("4", captions()), Map.entry("5", actions()), Map.entry("8", shortLists()), Map.entry("9", headed()),
                Map.entry("10", summary()), Map.entry("12", actions()), Map.entry("14", actions()), Map.entry("18", risks())));
    }

    /** How hard each part of the client edition reads. */
    public Wording wording() {
        return Wording.of(client.document());
    }

    /** What a machine found, and where. */
    private record Proof(boolean met, String place) { }

    private static List<Finding> judged(Map<String, String> items, Map<String, String> look, Map<String, Proof> proofs) {
        var findings = new ArrayList<Finding>();
        items.forEach((item, words) -> {
            if (proofs.containsKey(item)) {
                var proof = proofs.get(item);
                findings.add(new Finding(item, words, proof.met() ? Verdict.MET : Verdict.NOT_MET, proof.met() ? proof.place() : ""));
            } else {
                findings.add(new Finding(item, words, Verdict.NEEDS_A_PERSON, look.get(item)));
            }
        });
        return List.copyOf(findings);
    }

    private Proof summary() {
        boolean first = client.document().parts().getFirst().blocks().getFirst() instanceof Block.Opening opening && opening.sentences().size() >= 2;
        return new Proof(first, client.place(Block.Opening.class));
    }

    private Proof cues() {
        boolean panel = client.all(client.document().parts().getFirst(), Block.Panel.class).stream().anyMatch(p -> !p.heading().isBlank());
        return new Proof(panel, client.place(Block.Panel.class));
    }

    private Proof risks() {
        boolean stated = client.all(client.document().parts().getFirst(), Block.Panel.class).stream().anyMatch(p -> p.groups().size() >= 2
                && p.groups().stream().allMatch(g -> !g.points().isEmpty()));
        return new Proof(stated, client.place(Block.Panel.class));
    }

    private Proof pictures() {
        boolean each = client.all(Block.Card.class).stream().allMatch(card -> Reader.halves(card.halves()).stream().allMatch(half ->
                half.blocks().stream().anyMatch(b -> b instanceof Block.FigureRow || b instanceof Block.Plate)));
        return new Proof(each && !client.all(Block.Card.class).isEmpty(), client.place(Block.Card.class));
    }

    private Proof captions() {
        boolean plates = client.all(Block.Plate.class).stream().allMatch(p -> !p.alt().isBlank() && !p.caption().isEmpty());
        boolean rows = client.all(Block.FigureRow.class).stream().flatMap(r -> r.parts().stream()).allMatch(p -> !p.alt().isBlank());
        return new Proof(plates && rows, client.place(Block.Plate.class));
    }

    private Proof heads() {
        boolean all = client.all(Block.Table.class).stream().allMatch(t -> !t.head().isEmpty());
        return new Proof(all, client.place(Block.Table.class));
    }

    /** Every exercise says what to do, step by step. */
    private Proof actions() {
        boolean each = client.all(Block.Card.class).stream().allMatch(card -> Reader.halves(card.halves()).stream().allMatch(half ->
                half.blocks().stream().anyMatch(b -> b instanceof Block.Steps || b instanceof Block.Bullets)));
        return new Proof(each && !client.all(Block.Card.class).isEmpty(), client.place(Block.Card.class));
    }

    private Proof log() {
        boolean boxes = client.all(Block.Table.class).stream().flatMap(t -> t.groups().stream()).flatMap(g -> g.rows().stream())
                .flatMap(r -> r.cells().stream()).anyMatch(Cell.Entry.class::isInstance);
        return new Proof(boxes, client.document().parts().stream().filter(Document.Part::freshSheet).map(Document.Part::name).findFirst().orElse(""));
    }

    private Proof headed() {
        boolean each = client.document().parts().stream().allMatch(part -> client.all(part, Block.class).stream().anyMatch(b ->
                b instanceof Block.Opening || b instanceof Block.Title || b instanceof Block.Heading || b instanceof Block.Card
                || b instanceof Block.FieldLine || b instanceof Block.Table t && !t.title().isBlank()));
        return new Proof(each, client.document().parts().getFirst().name());
    }

    private Proof shortLists() {
        boolean all = client.all(Block.Bullets.class).stream().allMatch(b -> b.items().size() <= MOST_ITEMS)
                && client.all(Block.Steps.class).stream().allMatch(s -> s.items().size() <= MOST_ITEMS)
                && client.all(Block.Panel.class).stream().flatMap(p -> p.groups().stream()).allMatch(g -> g.points().size() <= MOST_ITEMS);
        return new Proof(all, client.document().parts().getFirst().name());
    }
}
