package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.check.PublishedSchema;
import contrapposto.deliver.Json;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.yaml.YamlReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The published schema and the readers of catalogue and house rules give the same verdict, but for what a schema has no words for. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CatalogueSchemaTest {
    private static final Path CATALOGUE = Path.of("src/main/resources/contrapposto/catalogue");
    /** About another file or the words as printed, or about two numbers of which one must be greater. */
    private static final Set<String> BETWEEN_VALUES = Set.of("dead-link", "other-file-name", "harder-without-words", "new-family-without-words",
            "cue-too-long", "side-by-name", "unknown-placeholder", "range-upside-down", "direction-without-length");

    static List<Path> rejected() throws IOException {
        return RejectedCatalogueTest.files();
    }

    @ParameterizedTest
    @MethodSource("rejected")
    void what_the_reader_refuses_the_schema_refuses(Path file) throws IOException {
        boolean said = !PublishedSchema.refusals(Files.readString(file)).isEmpty();
        assertEquals(!BETWEEN_VALUES.contains(file.getFileName().toString().replace(".yaml", "")), said);
    }

    @Test
    void the_schema_accepts_every_file_of_the_catalogue_and_the_house_rules() throws IOException {
        var said = new ArrayList<String>();
        try (var all = Files.walk(CATALOGUE)) {
            for (var file : Stream.concat(all, Stream.of(Path.of("programs/house-rules.yaml"))).filter(f -> f.toString().endsWith(".yaml")).toList()) {
                PublishedSchema.refusals(Files.readString(file)).forEach(refusal -> said.add(file + " " + refusal));
            }
        }
        assertEquals(List.of(), said);
    }

    /** A file, and its reader's verdict on a text in its place. */
    record Sample(String name, Path file, Reader reader) {
        @Override
        public String toString() {
            return name;
        }
    }

    interface Reader {
        List<Notice> read(byte[] bytes);
    }

    static List<Sample> samples() {
        return List.of(family("split-squat"), family("high-to-low-press"), words("split-squat"),
                new Sample("house rules", Path.of("programs/house-rules.yaml"), bytes -> {
                    Outcome<HouseRules> outcome = HouseRulesReader.read("rules.yaml", bytes);
                    return outcome.notices();
                }));
    }

    private static Sample family(String id) {
        var ids = Set.copyOf(CatalogueTest.CATALOGUE.families().stream().map(Family::id).toList());
        return new Sample(id, CATALOGUE.resolve(id + ".yaml"), bytes -> {
            var notices = new ArrayList<Notice>();
            new FamilyReader(id, ids, notices).read(YamlReader.shipped(id, bytes));
            return notices;
        });
    }

    private static Sample words(String id) {
        var family = CatalogueTest.CATALOGUE.families().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
        return new Sample("words of " + id, CATALOGUE.resolve("en/" + id + ".yaml"), bytes -> {
            var notices = new ArrayList<Notice>();
            new WordsReader(family, "en", notices).read(YamlReader.shipped(id, bytes));
            return notices;
        });
    }

    /** The last line of the bands has no upper end, the others must have one: a schema has no word for the last of a list. */
    private static final String NOT_THE_LAST = ".bands.lines[0].under-years taken away";

    /** Whether a notice rests on more than one file. */
    private static boolean ofSeveralFiles(Notice notice) {
        return Set.of("catalogue-dead-link", "catalogue-file-name").contains(notice.id()) || notice.message().contains("has no words for");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void reader_and_schema_agree_on_every_key_taken_away_added_or_spoilt(Sample sample) throws IOException {
        var differences = new ArrayList<String>();
        var tried = new TreeSet<String>();
        spoil(new Load(LoadSettings.builder().build()).loadFromString(Files.readString(sample.file())), "", (what, tree) -> {
            tried.add(what);
            var text = Json.of(tree);
            boolean read = sample.reader().read(text.getBytes(StandardCharsets.UTF_8)).stream().allMatch(CatalogueSchemaTest::ofSeveralFiles);
            var said = PublishedSchema.refusals(text);
            if (read != said.isEmpty() && !what.equals(NOT_THE_LAST)) {
                differences.add(what + (read ? ": only the schema refuses it, " + said : ": only the reader refuses it"));
            }
        }, new ArrayList<>());
        assertTrue(tried.size() > 30, tried::toString);
        assertEquals(List.of(), differences);
    }

    /** Calls {@code with} for each way in which one place of the tree can be spoilt; the tree is whole again afterwards. */
    @SuppressWarnings("unchecked")
    private static void spoil(Object root, String path, BiConsumer<String, Object> with, List<Object> way) {
        var here = at(root, way);
        if (here instanceof Map<?, ?> anyMap) {
            var map = (Map<String, Object>) anyMap;
            var before = new LinkedHashMap<>(map);
            map.put("no-such-key", "word");
            with.accept(path + ": a key added", root);
            restore(map, before);
            for (var key : List.copyOf(before.keySet())) {
                map.remove(key);
                with.accept(path + "." + key + " taken away", root);
                for (var other : List.of(Map.of(), "no such word")) {
                    restore(map, before);
                    map.put(key, other);
                    with.accept(path + "." + key + " as " + other, root);
                }
                restore(map, before);
                way.add(key);
                spoil(root, path + "." + key, with, way);
                way.removeLast();
            }
        } else if (here instanceof List<?> list && !list.isEmpty()) {
            way.add(0);
            spoil(root, path + "[0]", with, way);
            way.removeLast();
        }
    }

    private static void restore(Map<String, Object> map, Map<String, Object> before) {
        map.clear();
        map.putAll(before);
    }

    private static Object at(Object root, List<Object> way) {
        var here = root;
        for (var step : way) {
            here = here instanceof Map<?, ?> map ? map.get(step) : ((List<?>) here).get((Integer) step);
        }
        return here;
    }
}
