package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each pair in {@code rejected-catalogue} is a file that a practice might give (its first line says which one it stands
 * for) and what is said about it. The folder doubles as the list of everything the catalogue can refuse.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RejectedCatalogueTest {
    private static final Path FOLDER = Path.of("src/test/resources/rejected-catalogue");
    private static final Pattern ID = Pattern.compile("\"((?:catalogue|words)-[a-z-]+)\"");

    static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(p -> p.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void is_refused_as_its_pair_says(Path file) throws IOException {
        var expected = Files.readString(Path.of(file.toString().replace(".yaml", ".notices")));
        assertEquals(expected.strip(), said(file).stream().map(RejectedCatalogueTest::line)
                .collect(Collectors.joining("\n")).strip());
    }

    @Test
    void every_notice_of_the_catalogue_has_a_pair() throws IOException {
        var inCode = new TreeSet<String>();
        try (Stream<Path> code = Files.list(Path.of("src/main/java/contrapposto/catalogue"))) {
            for (var source : code.toList()) {
                ID.matcher(Files.readString(source)).results().forEach(m -> inCode.add(m.group(1)));
            }
        }
        var said = new TreeSet<String>();
        for (var file : files()) {
            said(file).forEach(n -> said.add(n.id()));
        }
        inCode.removeAll(said);
        // shown by AddAFamilyTest: it is about a folder, not a file
        inCode.remove("catalogue-no-folder");
        assertTrue(inCode.isEmpty(), () -> "no pair for " + inCode);
    }

    private static final Map<Path, List<Notice>> SAID = new TreeMap<>();

    private static List<Notice> said(Path file) throws IOException {
        if (!SAID.containsKey(file)) {
            SAID.put(file, read(file));
        }
        return SAID.get(file);
    }

    private static List<Notice> read(Path file) throws IOException {
        var text = Files.readString(file);
        var as = text.lines().findFirst().orElseThrow().replace("# file: ", "");
        var bytes = text.getBytes(StandardCharsets.UTF_8);
        Outcome<?> outcome = as.equals("house-rules.yaml") ? HouseRulesReader.read(as, bytes)
                : CatalogueReader.read("mine", Map.of(as, bytes), CatalogueTest.RULES);
        assertTrue(outcome instanceof Outcome.Refused<?>, "refused");
        outcome.notices().forEach(n -> assertTrue(!n.hints().isEmpty(), "a way out"));
        return outcome.notices();
    }

    private static String line(Notice n) {
        return String.format(Locale.ROOT, "%s[%s] %d:%d %s", n.severity().name().toLowerCase(Locale.ROOT), n.id(),
                n.span().line(), n.span().column(), n.message());
    }
}
