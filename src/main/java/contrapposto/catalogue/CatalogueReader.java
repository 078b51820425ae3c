package contrapposto.catalogue;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import contrapposto.yaml.Shipped;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads the catalogue: one file a family for the mechanics ({@code <id>.yaml}), one a family and language for the words
 * ({@code en/<id>.yaml}), and {@code index.yaml}, which lists them, for a class path cannot be listed. A practice may
 * lay files of its own over them; a file of the same name takes the place of ours.
 */
public final class CatalogueReader {
    static final String ON_CLASS_PATH = "/contrapposto/catalogue/";
    /** The language that every family must have. */
    private static final String FIRST = "en";

    private final Map<String, byte[]> overlay;
    private final String overlayName;
    private final List<Notice> notices = new ArrayList<>();

    private CatalogueReader(String overlayName, Map<String, byte[]> overlay) {
        this.overlayName = overlayName;
        this.overlay = overlay;
    }

    /** The catalogue of the house. */
    public static Catalogue house(HouseRules rules) {
        return switch (read("", Map.of(), rules)) {
            case Outcome.Done<Catalogue>(var catalogue, var notices) -> catalogue;
            case Outcome.Refused<Catalogue>(var notices) ->
                    throw new IllegalStateException("The catalogue does not read: " + notices.getFirst());
        };
    }

    /**
     * The catalogue of the house with a practice's own files over it.
     *
     * @param folder  how notices name the place of the files
     * @param overlay path inside the folder ({@code my-lunge.yaml}, {@code en/my-lunge.yaml}) → bytes, in the order in
     *                which new families are to be listed
     */
    public static Outcome<Catalogue> read(String folder, Map<String, byte[]> overlay, HouseRules rules) {
        var reader = new CatalogueReader(folder, new LinkedHashMap<>(overlay));
        return reader.catalogue(rules);
    }

    /** The catalogue of the house with the files of {@code folder} and of its language folders over it. */
    public static Outcome<Catalogue> withFolder(Path folder, HouseRules rules) {
        var overlay = new LinkedHashMap<String, byte[]>();
        try (Stream<Path> files = Files.walk(folder, 2)) {
            for (var file : files.filter(f -> f.toString().endsWith(".yaml")).filter(Files::isRegularFile).sorted().toList()) {
                overlay.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        } catch (IOException unreadable) {
            return new Outcome.Refused<>(List.of(Notice.error("catalogue-no-folder", Span.whole(folder.toString()),
                    "the folder `" + folder + "` cannot be read", "give a folder of family files")));
        }
        return read(folder.toString(), overlay, rules);
    }

    private Outcome<Catalogue> catalogue(HouseRules rules) {
        var index = index();
        var ids = new LinkedHashSet<>(index.families());
        overlay.keySet().stream().filter(path -> !path.contains("/") && path.endsWith(".yaml"))
                .map(path -> path.substring(0, path.length() - ".yaml".length()))
                .filter(id -> !id.equals("index")).forEach(ids::add);
        // each family reads by itself; the results keep the order of the ids
        var entries = List.copyOf(ids).parallelStream().map(id -> entry(id, ids, index.languages())).toList();
        var families = new ArrayList<Family>();
        for (var entry : entries) {
            notices.addAll(entry.notices());
            entry.family().ifPresent(families::add);
        }
        var words = new LinkedHashMap<String, Map<String, FamilyWords>>();
        var byId = entries.stream().filter(e -> e.family().isPresent())
                .collect(Collectors.toMap(e -> e.family().orElseThrow().id(), e -> e, (a, b) -> a, LinkedHashMap::new));
        index.languages().forEach(language -> words.put(language, new LaterWords(List.copyOf(byId.keySet()), id -> later(byId.get(id), language))));
        return Outcome.of(new Catalogue(families, words, rules), notices.stream().distinct().toList());
    }

    private record Index(List<String> families, Set<String> languages) { }

    /** All there is to one id. */
    private record Entry(Optional<Family> family, Map<String, FamilyWords> words, List<Notice> notices) { }

    private Entry entry(String id, Set<String> ids, Set<String> languages) {
        var found = new ArrayList<Notice>();
        var family = file(id + ".yaml", found).map(node -> new FamilyReader(id, ids, found).read(node));
        var words = new LinkedHashMap<String, FamilyWords>();
        if (family.isPresent() && found.isEmpty()) {
            languages.stream().filter(language -> language.equals(FIRST) || overlay.containsKey(path(language, id))).forEach(language ->
                    file(path(language, id), found).ifPresent(node -> words.put(language, new WordsReader(family.get(), language, found).read(node))));
        }
        return new Entry(family, words, found);
    }

    private static String path(String language, String id) {
        return language + "/" + id + ".yaml";
    }

    /** Words in another language than the first; those of the first for a practice's own family that has none. */
    private static FamilyWords later(Entry entry, String language) {
        var family = entry.family().orElseThrow();
        return Optional.ofNullable(entry.words().get(language)).or(() -> Shipped.tree(ON_CLASS_PATH + path(language, family.id()))
                .map(tree -> new WordsReader(family, language, new ArrayList<>()).read(tree)))
                .orElseGet(() -> entry.words().get(FIRST));
    }

    private Index index() {
        var node = file("index.yaml", notices).orElseThrow(() -> new IllegalStateException("The catalogue has no index."));
        try (var f = new Fields(node, notices)) {
            return new Index(f.texts("families", true), new LinkedHashSet<>(f.texts("languages", true)));
        }
    }

    /** The file at {@code path}, the practice's before ours; a notice if there is none or it cannot be read. */
    private Optional<YamlNode> file(String path, List<Notice> found) {
        if (overlay.containsKey(path)) {
            var reading = YamlReader.readOn(overlayName + "/" + path, overlay.get(path));
            found.addAll(reading.notices());
            return reading.root();
        }
        var ours = Shipped.tree(ON_CLASS_PATH + path);
        if (ours.isEmpty()) {
            found.add(Notice.error("catalogue-no-file", Span.whole(overlayName + "/" + path),
                    "the catalogue has no file `" + path + "`", "write one; `docs/add-a-family.md` shows how"));
        }
        return ours;
    }
}
