package contrapposto.cli;

import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.Pack;
import contrapposto.compose.PackIndex;
import contrapposto.deliver.Delivery;
import contrapposto.deliver.FileNames;
import contrapposto.deliver.Ledger;
import contrapposto.deliver.Manifest;
import contrapposto.notice.Outcome;
import contrapposto.press.Press;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The index pages of the packs of one run: notes what became of each handout, then prints a page for each pack. */
final class PackPages {
    private final Press press;
    private final Delivery delivery;
    private final Map<String, Optional<Manifest.Entry>> fates = new LinkedHashMap<>();

    PackPages(Press press, Delivery delivery, List<Inputs.Packed> packs) {
        this.press = press;
        this.delivery = delivery;
        packs.forEach(packed -> packed.pack().sheets().forEach(sheet -> fates.put(packed.inputOf(sheet), Optional.empty())));
    }

    /** Keeps what became of an input if it is a handout of a pack. */
    void note(Manifest.Entry entry) {
        fates.computeIfPresent(entry.spec(), (input, before) -> Optional.of(entry));
    }

    /** Puts the index page of a pack in its place; empty when no handout of it is sound. */
    Optional<Outcome<Run.Result>> print(Inputs.Packed packed, Ledger ledger, String fingerprint) {
        var lines = packed.pack().sheets().stream().map(sheet -> new PackIndex.Line(sheet.number(), name(sheet), fate(packed, sheet))).toList();
        if (lines.stream().allMatch(line -> line.fate() instanceof PackIndex.Fate.Failed)) {
            return Optional.empty();
        }
        String name = packed.file().getFileName().toString().replaceFirst("\\.[^.]*$", "");
        String claim = FileNames.index(name, "index").toLowerCase(Locale.ROOT);
        String key = Fingerprint.key(fingerprint, identity(packed.pack(), lines), claim);
        var there = ledger.unchanged(claim, key);
        return Optional.of(there.isPresent() ? Outcome.done(new Run.Result(there.get(), true))
                : press.index(packed.pack().title(), lines).then(files -> delivered(name, files)).map(made -> {
                    ledger.add(claim, key, made);
                    return new Run.Result(made, false);
                }));
    }

    private Outcome<Ledger.Made> delivered(String pack, List<Press.Finished> files) {
        var bytes = new LinkedHashMap<String, byte[]>();
        files.forEach(file -> bytes.put(FileNames.index(pack, file.ending()), file.bytes()));
        return delivery.deliver(new Delivery.Parcel(Delivery.ROOT, bytes, List.of())).map(paths -> {
            var facts = new ArrayList<Manifest.FileFact>();
            for (int i = 0; i < paths.size(); i++) {
                facts.add(Manifest.FileFact.of(paths.get(i), files.get(i).bytes(), files.get(i).pages()));
            }
            return new Ledger.Made(Manifest.Result.DONE, facts);
        });
    }

    private static String name(Pack.Sheet sheet) {
        return String.join(", ", sheet.chosen().values());
    }

    private PackIndex.Fate fate(Inputs.Packed packed, Pack.Sheet sheet) {
        var entry = fates.get(packed.inputOf(sheet)).filter(known -> known.result() != Manifest.Result.FAILED);
        return entry.isPresent() && sheet.outcome() instanceof Outcome.Done<CheckedSpec>(var spec, var notices)
                ? entry.get().result() == Manifest.Result.WITHHELD ? new PackIndex.Fate.Withheld(spec) : new PackIndex.Fate.Made(spec, printed(entry.get()))
                : new PackIndex.Fate.Failed();
    }

    private static List<PackIndex.Printed> printed(Manifest.Entry entry) {
        return entry.files().stream().flatMap(file -> Arrays.stream(Edition.values())
                .filter(edition -> file.path().endsWith("-" + edition.name().toLowerCase(Locale.ROOT) + ".pdf"))
                .map(edition -> new PackIndex.Printed(edition, file.pages()))).toList();
    }

    /** What the page is made from, as text. */
    private static String identity(Pack pack, List<PackIndex.Line> lines) {
        var text = new StringBuilder(pack.title());
        lines.forEach(line -> text.append('\n').append(line.number()).append(' ').append(line.name()).append(' ').append(switch (line.fate()) {
            case PackIndex.Fate.Made(var spec, var printed) -> spec.sha256() + printed;
            case PackIndex.Fate.Withheld(var spec) -> spec.sha256() + " withheld";
            case PackIndex.Fate.Failed failed -> "failed";
        }));
        return text.toString();
    }
}
