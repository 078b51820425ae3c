package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Does what the documents say: every command line of this program in a shell block of README, DEVELOPERS and docs is run in process, in the
 * order of the documents, in one folder, and must end with the code it states. A line that stands in several places is run once. In the
 * folder stand beforehand, in small, what the documents take for granted: a roster, a folder of specs, a pack, the mail file; and when a
 * filled log is asked for, PDFBox fills the one that was built. What README's own client printed must be what docs/transcript.md shows,
 * but for the numbers.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the mail file wants permissions of another kind")
class DocumentsTest {
    private static final String SMALL = """
            format: 1
            client: {name: Ada Quill, height: 171 cm, mass: 64 kg}
            practice: {name: Invented Practice, contact: "+00 555 0100"}
            assessment: {date: 2026-03-02, pelvis: {turned: right}}
            schedule: {start: 2026-03-09, weeks: 1, days: [mon], minutes: 15}
            handout: {editions: [client]}
            """;
    private static final int LINES_SHOWN = 6;
    private static final Pattern FILE = Pattern.compile("<!-- file: (\\S+) -->\\n```\\w*\\n(.*?)```", Pattern.DOTALL);
    private static final Pattern MENTION = Pattern.compile("`contrapposto ([a-z]+)((?: [^`]*)?)`");

    /** What a line printed, and its exit code. */
    private record Result(int exit, String printed) { }

    @TempDir
    static Path here;

    private static final Map<List<String>, Result> RESULTS = new LinkedHashMap<>();

    @BeforeAll
    static void run_them_all() throws IOException {
        Files.writeString(here.resolve("small.yaml"), SMALL);
        Files.writeString(here.resolve("clients.csv"), "spec,client.name,client.code\nsmall.yaml,Ada Quill,EX-1\n");
        Files.createDirectories(here.resolve("clients"));
        Files.writeString(here.resolve("clients/bo.yaml"), SMALL.replace("Ada Quill", "Bo Quill"));
        Files.createDirectories(here.resolve("programs/packs"));
        Files.writeString(here.resolve("programs/packs/standard.yaml"), "pack: 1\nspec: base.yaml\nvary: {direction: {turned left: {assessment.pelvis.turned: left}}}\n");
        Files.writeString(here.resolve("programs/packs/base.yaml"), SMALL);
        Files.writeString(here.resolve("mail.yaml"), "mail: 1\nfrom: Invented Practice <plans@example.org>\naddresses: {EX-1: ada@example.org}\n");
        Files.setPosixFilePermissions(here.resolve("mail.yaml"), PosixFilePermissions.fromString("rw-------"));
        filesOfTheDocuments();
        for (var command : DocumentedCommand.all()) {
            if (command.notRun().isEmpty() && !RESULTS.containsKey(command.words())) {
                fillWhatIsAskedFor(command);
                RESULTS.put(command.words(), run(command.words()));
            }
        }
    }

    /** A block after {@code <!-- file: NAME -->} is that file; of the templates that a practice changes, one with other words. */
    private static void filesOfTheDocuments() throws IOException {
        for (var page : DocumentedCommand.documents()) {
            for (var file : FILE.matcher(Files.readString(page)).results().toList()) {
                Files.createDirectories(here.resolve(file.group(1)).getParent());
                Files.writeString(here.resolve(file.group(1)), file.group(2));
            }
        }
        Files.createDirectories(here.resolve("mine/en"));
        Files.createDirectories(here.resolve("dots"));
        var dots = new BufferedImage(240, 60, BufferedImage.TYPE_INT_ARGB);
        dots.createGraphics().fillRect(20, 10, 60, 40);
        ImageIO.write(dots, "png", here.resolve("dots/logo.png").toFile());
        Files.writeString(here.resolve("mine/en/opening.ftlx"), Files.readString(Path.of("templates/en/opening.ftlx")).replace("an exercise plan for", "a plan made for"));
    }

    @Test
    void a_practices_words_and_logo_are_on_its_paper() throws IOException {
        var page = Files.readString(Demos.file(here.resolve("out-mine"), "bo-client.html"));
        assertTrue(page.contains("a plan made for") && page.contains("Logo: Invented Practice"), page);
        assertFalse(Files.readString(Demos.file(here.resolve("out"), "bo-plan.yaml")).contains("Logo"));
        try (var pdf = Loader.loadPDF(Demos.file(here.resolve("out-mine"), "bo-client.pdf").toFile())) {
            assertTrue(new org.apache.pdfbox.text.PDFTextStripper().getText(pdf).contains("a plan made for"));
        }
    }

    @Test
    void a_practices_colour_is_on_its_heads_and_its_logo_on_page_1_of_both_editions() throws IOException {
        for (var edition : List.of("client", "coach")) {
            var page = Files.readString(Demos.file(here.resolve("out-house"), "house-" + edition + ".html"));
            assertTrue(page.contains("h1, h2, h3, .title { color: #1f4e5f;") && page.indexOf("Logo: Invented Practice") < page.indexOf("<h1"), page);
            try (var pdf = Loader.loadPDF(Demos.file(here.resolve("out-house"), "house-" + edition + ".pdf").toFile())) {
                var ink = new String(pdf.getPage(0).getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
                assertTrue(Pattern.compile("0\\.12\\d* 0\\.30\\d* 0\\.37\\d* rg").matcher(ink).find(), () -> edition + " has no ink of #1f4e5f");
            }
        }
    }

    /** The same page with a picture of dots. */
    @Test
    void a_logo_of_dots_is_on_page_1_too() throws IOException {
        assertEquals(0, run(List.of("build", "house.yaml", "--templates", "dots", "-o", "out-dots", "--html")).exit());
        assertTrue(Files.readString(Demos.file(here.resolve("out-dots"), "house-client.html")).contains("<image x=\"0\" y="));
        try (var pdf = Loader.loadPDF(Demos.file(here.resolve("out-dots"), "house-client.pdf").toFile())) {
            assertEquals(1, StreamSupport.stream(pdf.getPage(0).getResources().getXObjectNames().spliterator(), false).count());
        }
    }

    /** The client's part: between the build and {@code next}, somebody fills the log. */
    private static void fillWhatIsAskedFor(DocumentedCommand command) throws IOException {
        for (var word : command.words()) {
            if (word.endsWith("-filled.pdf") && !Files.exists(here.resolve(word))) {
                var stem = word.replace("-filled.pdf", "");
                assertTrue(FilledLog.of(Demos.file(here, stem + "-client.pdf"), Demos.file(here, stem + "-plan.yaml"), here.resolve(word)) > 100, command.toString());
            }
        }
    }

    private static Result run(List<String> words) {
        var said = new ByteArrayOutputStream();
        var stream = new PrintStream(said, true, StandardCharsets.UTF_8);
        int exit = new Console(new Streams(new BufferedReader(Reader.nullReader()), stream, stream, here, false)).run(words.toArray(String[]::new));
        return new Result(exit, said.toString(StandardCharsets.UTF_8));
    }

    @Test
    void every_command_line_ends_with_the_code_it_states() throws IOException {
        var commands = DocumentedCommand.all();
        assertTrue(commands.size() > 10, commands::toString);
        var wrong = new ArrayList<String>();
        for (var command : commands) {
            var result = RESULTS.get(command.words());
            if (command.notRun().isEmpty() && result.exit() != command.exit()) {
                wrong.add(command + " ended with " + result.exit() + ": " + result.printed());
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void the_transcript_shows_what_a_reader_of_README_sees() throws IOException {
        var committed = Path.of("docs/transcript.md");
        var received = transcript();
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target/transcript.received.md"), received);
        assertEquals(plain(Files.exists(committed) ? Files.readString(committed) : ""), plain(received), "if this is right, copy target/transcript.received.md over " + committed);
    }

    /** Numbers change with every better default; that a line says what it says must not. */
    private static String plain(String transcript) {
        return transcript.replaceAll("\\d+([.,]\\d+)?", "0");
    }

    private static String transcript() throws IOException {
        var page = new StringBuilder("""
                # What the commands of README print

                Made by `DocumentsTest`, which runs README's commands in their order in an empty folder, and compared with every test run but for the numbers.
                Nobody sits at the terminal, so `new` writes its commented spec as it stands; before `next`, PDFBox fills the log that `build` made,
                as the plan asks with one repeat more in every last set. Output and messages stand together; long ones are cut.
                """);
        for (var command : DocumentedCommand.in(Path.of("README.md"))) {
            page.append("\n```\n$ contrapposto ").append(String.join(" ", command.words())).append('\n');
            if (command.notRun().isPresent()) {
                page.append("… not run here: ").append(command.notRun().get()).append("\n```\n");
                continue;
            }
            var result = RESULTS.get(command.words());
            var lines = result.printed().lines().toList();
            lines.stream().limit(LINES_SHOWN).forEach(line -> page.append(line.stripTrailing()).append('\n'));
            page.append(lines.size() > LINES_SHOWN ? "… " + (lines.size() - LINES_SHOWN) + " more lines\n" : "").append("```\n")
                    .append(result.exit() == 0 ? "" : "exit " + result.exit() + "\n");
        }
        return page.toString();
    }

    @Test
    void every_command_and_option_that_a_document_mentions_exists() throws IOException {
        var wrong = new TreeSet<String>();
        for (var page : DocumentedCommand.documents()) {
            MENTION.matcher(Files.readString(page)).results().forEach(found -> {
                var help = run(List.of(found.group(1), "--help"));
                if (help.exit() != 0) {
                    wrong.add(page + ": no command " + found.group(1));
                }
                Pattern.compile("--[a-z-]+").matcher(found.group(2)).results().map(java.util.regex.MatchResult::group)
                        .filter(option -> !help.printed().contains(option)).forEach(option -> wrong.add(page + ": " + found.group(1) + " has no " + option));
            });
        }
        assertEquals(new TreeSet<>(), wrong);
    }

    /** {@code mvn -q -B test -Dtest=DocumentsTest -Dwalk=docs/walk} makes the pictures of docs/walk.md anew. */
    @Test
    void the_pictures_of_the_walk_can_be_made_from_what_its_commands_built() throws IOException {
        var into = Pictures.folder("walk", here.resolve("walk"));
        var pictures = new Pictures(64);
        var client = Demos.file(here, "ines-client.pdf");
        try (var pdf = Loader.loadPDF(client.toFile())) {
            for (var part : Map.of("Your plan", "plan.png", "Exercises", "card.png", "Weeks", "weeks.png").entrySet()) {
                pictures.page(pdf, Pictures.parts(pdf).get(part.getKey()), into.resolve(part.getValue()));
            }
        }
        try (var filled = Loader.loadPDF(here.resolve("ines-filled.pdf").toFile())) {
            pictures.page(filled, Pictures.parts(filled).get("Log"), into.resolve("log-filled.png"));
        }
        pictures.page(here.resolve("ines-next-changes.pdf"), 0, into.resolve("changes.png"));
        for (var family : List.of("split-squat", "staggered-deadlift")) {
            pictures.page(here.resolve(family + ".pdf"), 0, into.resolve("set-up-" + family + ".png"));
        }
        assertEquals(Pictures.in(Path.of("docs/walk")), Pictures.in(into), "docs/walk holds what the command makes");
    }

    @Test
    void the_next_block_is_not_the_first_again() throws IOException {
        var next = Files.readString(here.resolve("ines-next.yaml"));
        assertTrue(next.contains("tests:"), next);
        assertFalse(Files.readString(here.resolve("ines.yaml")).equals(next));
    }
}
