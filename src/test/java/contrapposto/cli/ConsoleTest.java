package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The command line, run in process: exit codes, output against messages, what lies on disk afterwards. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ConsoleTest {
    /** Held back by chest pain, so that nothing has to be solved. */
    private static final String WITHHELD = """
            format: 1
            client: {name: Invented Example, code: EX-7, height: 171 cm, mass: 64 kg}
            assessment: {date: 2026-03-02, pelvis: {turned: right, degree: clear}}
            screening: {chest-pain: yes}
            schedule: {start: 2026-03-09, weeks: 2, days: [mon], minutes: 30}
            """;

    @TempDir
    Path here;

    private Terminal terminal;

    @BeforeEach
    void open() {
        terminal = new Terminal(here);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "build", "check", "explain", "exercises", "new", "mail", "next"})
    void help_is_output_and_shows_an_example(String command) {
        assertEquals(0, terminal.run((command + " --help").strip().split(" ")));
        assertTrue(terminal.out().contains("Example: contrapposto "), terminal.out());
        assertEquals("", terminal.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "bild", "build", "build x.yaml --edition poster", "build x.yaml --paper a3", "build x.yaml --jobs 0", "build x.yaml --jobs many",
        "check --nothing x.yaml", "explain", "explain x.yaml --side middle", "build missing.yaml", "check missing.yaml", "explain missing.yaml", "next", "next x.yaml", "next missing.yaml log.csv",
        "exercises no-such-thing", "exercises --stage lying", "exercises split-squat --stage floor", "exercises --pdf x.pdf", "exercises split-squat --for x.yaml",
        "exercises split-squat --pdf no/such/folder/x.pdf", "build x.yaml --templates nowhere", "build x.yaml --catalogue nowhere", "build x.yaml --rules nowhere.yaml", "build ."})
    void a_call_that_cannot_be_carried_out_ends_with_2_and_says_why(String call) {
        assertEquals(Console.NOTHING, terminal.run(call.isEmpty() ? new String[0] : call.split(" ")));
        assertFalse((terminal.err() + terminal.out()).isBlank());
        assertFalse(terminal.err().contains("fault of the program"), terminal.err());
        assertFalse(Files.exists(here.resolve("out/manifest.json")));
    }

    @Test
    void a_near_exercise_is_offered() {
        terminal.run("exercises", "split-squad");
        assertTrue(terminal.err().contains("did you mean `split-squat`?"), terminal.err());
    }

    @Test
    void problems_of_a_spec_are_the_output_of_check() throws IOException {
        Files.writeString(here.resolve("bad.yaml"), WITHHELD.replace("171 cm", "71 cm").replace("weeks: 2", "weks: 2"));
        assertEquals(Console.PARTLY, terminal.run("check", "bad.yaml"));
        assertTrue(terminal.out().contains("bad.yaml:2:"), terminal.out());
        assertTrue(terminal.out().contains("did you mean") || terminal.out().contains("`weeks`"), terminal.out());
    }

    @Test
    void problems_can_be_had_as_json() throws IOException {
        Files.writeString(here.resolve("bad.yaml"), WITHHELD.replace("171 cm", "71 cm"));
        assertEquals(Console.PARTLY, terminal.run("check", "--json", "bad.yaml"));
        List<Map<String, Object>> problems = new Yaml(new SafeConstructor(new LoaderOptions())).load(terminal.out());
        assertEquals(List.of("bad.yaml", 2), List.of(problems.getFirst().get("file"), problems.getFirst().get("line")));
    }

    @Test
    void a_withheld_program_leaves_a_referral_page_its_reasons_and_code_1() throws IOException {
        Files.writeString(here.resolve("ex.yaml"), WITHHELD);
        Files.createDirectories(here.resolve("out/EX-7"));
        Files.writeString(here.resolve("out/EX-7/ex-client.pdf"), "an older program");
        assertEquals(Console.PARTLY, terminal.run("build", "ex.yaml", "-o", "out"));
        assertEquals(List.of("ex-plan.yaml", "ex-referral.pdf"), names("out/EX-7"));
        assertTrue(terminal.err().contains("ex.yaml: withheld"), terminal.err());
        assertEquals("", terminal.out());
        var entry = manifest().getFirst();
        assertEquals(List.of("ex.yaml", "withheld", 1), List.of(entry.get("spec"), entry.get("outcome"), entry.get("pages")));
    }

    @Test
    void one_bad_spec_costs_the_others_nothing() throws IOException {
        Files.createDirectories(here.resolve("specs"));
        Files.writeString(here.resolve("specs/a.yaml"), "format: 1\n");
        Files.writeString(here.resolve("specs/b.yaml"), WITHHELD);
        Files.writeString(here.resolve("specs/house-rules.yaml"), "not: a spec\n");
        assertEquals(Console.PARTLY, terminal.run("build", "specs", "--jobs", "2", "--quiet"));
        assertEquals(List.of("failed", "withheld"), manifest().stream().map(e -> e.get("outcome")).toList());
        assertEquals(List.of("b-plan.yaml", "b-referral.pdf"), names("out/EX-7"));
    }

    @Test
    void two_specs_may_not_write_the_same_files() throws IOException {
        for (String folder : List.of("one", "two")) {
            Files.createDirectories(here.resolve(folder));
            Files.writeString(here.resolve(folder + "/ex.yaml"), WITHHELD);
        }
        assertEquals(Console.PARTLY, terminal.run("build", "one", "two"));
        assertEquals(List.of("withheld", "failed"), manifest().stream().map(e -> e.get("outcome")).toList());
        assertTrue(terminal.err().contains("error[same-files]"), terminal.err());
    }

    @Test
    void the_same_spec_gives_the_same_bytes_and_the_same_manifest_but_for_seconds() throws IOException {
        Files.writeString(here.resolve("ex.yaml"), WITHHELD);
        terminal.run("build", "ex.yaml", "-o", "first");
        terminal.run("build", "ex.yaml", "-o", "second");
        for (String name : names("first/EX-7")) {
            assertEquals(-1, Files.mismatch(here.resolve("first/EX-7/" + name), here.resolve("second/EX-7/" + name)), name);
        }
        assertEquals(timeless("first"), timeless("second"));
    }

    @Test
    void a_new_spec_checks_without_a_problem_and_is_never_written_over() throws IOException {
        assertEquals(Console.DONE, terminal.run("new", "mine.yaml"));
        assertEquals(Console.DONE, terminal.run("check", "mine.yaml"));
        assertEquals("", terminal.out());
        Files.writeString(here.resolve("mine.yaml"), "precious");
        assertEquals(Console.NOTHING, terminal.run("new", "mine.yaml"));
        assertEquals("precious", Files.readString(here.resolve("mine.yaml")));
    }

    @Test
    void facts_given_as_options_stand_in_the_new_spec_and_keep_their_comments() throws IOException {
        assertEquals(Console.DONE, terminal.run("new", "ines.yaml", "--code", "HS-0142", "--height", "5 ft 7 in", "--mass", "141 lb", "--units", "us", "--turned", "left",
                "--days", "tue, fri", "--dumbbells", "10 lb, 20 lb", "--boxes", "4 in", "--bench", "17 in", "--age", ""));
        assertEquals(Console.DONE, terminal.run("check", "ines.yaml"));
        var text = Files.readString(here.resolve("ines.yaml"));
        for (var line : List.of("  # name: First Last ", "  code: HS-0142 ", "  # age: 40 ", "  height: 5 ft 7 in              # needed", "  days: [tue, fri]",
                "  pelvis: {turned: left, degree: clear} ", "  dumbbells: [10 lb, 20 lb] ", "  boxes: [4 in]", "  bench: 17 in")) {
            assertTrue(text.lines().anyMatch(l -> l.startsWith(line)), line + "\n" + text);
        }
    }

    @Test
    void a_fact_that_cannot_be_is_refused_before_anything_is_written() throws IOException {
        assertEquals(Console.NOTHING, terminal.run("new", "ines.yaml", "--name", "Ines", "--height", "71 cm"));
        assertTrue(terminal.err().contains("out-of-range"), terminal.err());
        assertTrue(Files.notExists(here.resolve("ines.yaml")));
    }

    @Test
    void a_person_is_asked_fact_by_fact_and_again_when_the_answer_cannot_be() throws IOException {
        assertEquals(Console.DONE, terminal.answering("Ines: \"Nes\" Calloway #1\n\n34\nfemale\n171\n171 cm\n64 kg\n", "new", "ines.yaml"));
        assertTrue(terminal.err().contains("has no unit: write `171 cm`"), terminal.err());
        assertEquals(Console.DONE, terminal.run("check", "ines.yaml"));
        var client = new Yaml(new SafeConstructor(new LoaderOptions())).<Map<String, Map<String, Object>>>load(
                Files.readString(here.resolve("ines.yaml")).replace("format: 1 ", "format: {} ").replace("title: Block 1", "title: {}")).get("client");
        assertEquals("Ines: \"Nes\" Calloway #1", client.get("name"));
        assertEquals(34, client.get("age"));
        assertEquals("171 cm", client.get("height"));
    }

    @Test
    void explain_says_why_a_program_is_withheld() throws IOException {
        Files.writeString(here.resolve("ex.yaml"), WITHHELD);
        assertEquals(Console.PARTLY, terminal.run("explain", "ex.yaml"));
        assertTrue(terminal.out().contains("landing side left, drive side right"), terminal.out());
        assertTrue(terminal.out().contains("chest pain: yes"), terminal.out());
    }

    @Test
    void the_catalogue_is_listed_as_text_and_as_json() {
        assertEquals(Console.DONE, terminal.run("exercises"));
        assertTrue(terminal.out().lines().anyMatch(l -> l.startsWith("split-squat ") && l.contains("standing") && l.endsWith("Split squat")), terminal.out());
        assertEquals(Console.DONE, terminal.run("exercises", "split-squat", "--json"));
        Map<String, Object> family = new Yaml(new SafeConstructor(new LoaderOptions())).load(terminal.out());
        assertEquals("split-squat", family.get("id"));
    }


    @Test
    void the_catalogue_is_filtered_by_stage_muscle_implement_and_restriction() {
        assertEquals(Console.DONE, terminal.run("exercises", "--stage", "standing", "--muscle", "serratus-anterior", "--implement", "cable"));
        assertEquals(List.of("high-to-low-press", "low-to-high-press", "standing-row"), terminal.out().lines().map(l -> l.split(" ")[0]).toList());
        assertEquals(Console.DONE, terminal.run("exercises", "--avoid", "kneeling,grip", "--stage", "supported"));
        assertTrue(terminal.out().contains("wall-squat ") && !terminal.out().contains("half-kneeling"), terminal.out());
        assertEquals(Console.NOTHING, terminal.run("exercises", "--muscle", "hamstring"));
        assertTrue(terminal.err().contains("did you mean `hamstrings`?"), terminal.err());
    }

    @Test
    void one_exercise_is_drawn_on_a_card_for_anyone_or_for_a_person() throws IOException {
        assertEquals(Console.DONE, terminal.run("exercises", "step-down", "--pdf", "card.pdf"));
        assertEquals(1, pages("card.pdf"));
        assertEquals(Console.DONE, terminal.run("exercises", "seated-turn", "--pdf", "hers.pdf", "--for", Files.writeString(here.resolve("her.yaml"),
                WITHHELD.replace("{chest-pain: yes}", "{}\nequipment: {bench: 43 cm}")).getFileName().toString()));
        assertEquals(1, pages("hers.pdf"));
        Files.writeString(here.resolve("held.yaml"), WITHHELD);
        assertEquals(Console.NOTHING, terminal.run("exercises", "seated-turn", "--pdf", "none.pdf", "--for", "held.yaml"));
        assertTrue(terminal.err().contains("error[no-card]"), terminal.err());
        assertFalse(Files.exists(here.resolve("none.pdf")));
    }

    private int pages(String name) throws IOException {
        try (var document = org.apache.pdfbox.Loader.loadPDF(here.resolve(name).toFile())) {
            return document.getNumberOfPages();
        }
    }

    private List<String> names(String folder) throws IOException {
        try (var inside = Files.list(here.resolve(folder))) {
            return inside.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    private List<Map<String, Object>> manifest() throws IOException {
        Map<String, List<Map<String, Object>>> read = new Yaml(new SafeConstructor(new LoaderOptions())).load(Files.readString(here.resolve("out/manifest.json")));
        return read.get("specs");
    }

    private String timeless(String folder) throws IOException {
        return Files.readString(here.resolve(folder + "/manifest.json")).replaceAll("\"seconds\": [0-9.]+", "");
    }
}
