package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Rules;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.compose.Composer;
import contrapposto.compose.Templates;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import contrapposto.press.Press;
import contrapposto.press.Wanted;
import contrapposto.quantity.Mass;
import contrapposto.quantity.UnitSystem;
import contrapposto.returns.Log;
import contrapposto.returns.Returns;
import contrapposto.typeset.Proof;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** There and back: a handout is built, every box of its log is filled by PDFBox, and {@code next} reads them all. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NextCommandTest {
    private static final Catalogue CATALOGUE = CatalogueReader.house(Rules.house());
    private static final Pattern BOX = Pattern.compile("(w\\d+/[a-z]{3})/(?:([a-z0-9-]+/(?:left|right|both))/)?([a-z-]+\\d?)");

    private static final String NOTES = "The left foot slips on the box.";

    @TempDir
    static Path here;

    private static Plan plan;
    /** Box → what is typed into it. */
    private static final Map<String, String> TYPED = new TreeMap<>();

    @BeforeAll
    static void build_a_handout_and_fill_it() throws IOException {
        var spec = Files.readString(Path.of("programs/veteran-left.yaml")).replace("weeks: 6", "weeks: 2").replace("[mon, tue, thu, fri]", "[mon, thu]");
        Files.writeString(here.resolve("lifter.yaml"), spec);
        var pressed = pressed("lifter.yaml", spec);
        plan = pressed.plan();
        Files.write(here.resolve("filled.pdf"), filled(pressed.files().getFirst().bytes(), TYPED, ""));
    }

    private static Press.Pressed pressed(String name, String spec) {
        var press = new Press(CATALOGUE, new Composer(Templates.own()), new Wanted(List.of(CheckedSpec.Edition.CLIENT), Optional.empty(),
                Optional.empty(), false));
        return done(Checks.check(name, spec.getBytes(StandardCharsets.UTF_8), CATALOGUE).then(press::press));
    }

    /** Fills every box of the log, and the notes for the re-check; what was typed goes into {@code typed}. */
    private static byte[] filled(byte[] handout, Map<String, String> typed, String notes) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(handout); var out = new ByteArrayOutputStream()) {
            for (PDField field : pdf.getDocumentCatalog().getAcroForm().getFieldTree()) {
                if (field instanceof PDTextField && field.getFullyQualifiedName().matches("w\\d+/.*")) {
                    String text = typed(field.getFullyQualifiedName());
                    typed.put(field.getFullyQualifiedName(), text);
                    field.setValue(text);
                } else if (field.getFullyQualifiedName().equals("recheck/notes")) {
                    field.setValue(notes);
                }
            }
            pdf.save(out);
            return out.toByteArray();
        }
    }

    /** Every demo as it is shipped: each box of its log and its notes come back as they were typed. */
    @ParameterizedTest
    @ValueSource(strings = {"newcomer-right", "seventy-bare-room", "square-steady", "veteran-left"})
    void every_box_of_every_demo_is_read(String demo) throws IOException {
        var typed = new TreeMap<String, String>();
        var pressed = pressed(demo + ".yaml", Files.readString(Path.of("programs/" + demo + ".yaml")));
        var log = done(Returns.read(pressed.plan(), List.of(new Returns.Returned("filled.pdf", filled(pressed.files().getFirst().bytes(), typed, NOTES)))));
        assertEquals(typed, read(log, pressed.plan().spec().client().units() == UnitSystem.US));
        assertEquals(Optional.of(NOTES), log.told().notes());
        assertTrue(typed.size() > 300, typed.size() + " boxes");
    }

    /** Something different for most boxes, and always something that can be. */
    private static String typed(String box) {
        int some = Math.floorMod(box.hashCode(), 5);
        var parts = BOX.matcher(box);
        assertTrue(parts.matches(), box);
        return switch (parts.group(3)) {
            case "date" -> "2026-12-0" + (1 + some);
            case "minutes" -> "" + (45 + some);
            case "morning-pain", "pain" -> "" + some;
            case "kg" -> some + 20 + ".5";
            case "spare" -> "" + (1 + some % 3);
            default -> "" + (6 + some);
        };
    }

    private static <T> T done(Outcome<T> outcome) {
        return switch (outcome) {
            case Outcome.Done<T>(var value, var notices) -> value;
            case Outcome.Refused<T>(var notices) -> throw new AssertionError(notices);
        };
    }

    @Test
    void every_box_that_was_filled_is_read() throws IOException {
        var log = done(Returns.read(plan, List.of(new Returns.Returned("filled.pdf", Files.readAllBytes(here.resolve("filled.pdf"))))));
        var read = read(log, true);
        assertEquals(TYPED, read);
        assertTrue(read.size() > 100, read.size() + " boxes");
    }

    private static Map<String, String> read(Log log, boolean pounds) {
        var read = new TreeMap<String, String>();
        for (Log.Line line : log.lines()) {
            String at = "w" + line.slot().week() + "/" + day(line.slot()) + "/" + line.exercise() + "/" + line.side().map(s -> s.word()).orElse("both") + "/";
            line.kilograms().ifPresent(kg -> read.put(at + "kg", String.valueOf(Math.round((pounds ? Mass.ofKilograms(kg).pounds() : kg) * 10) / 10.0)));
            line.sets().forEach((set, reps) -> read.put(at + "set" + set, reps.toString()));
            line.spare().ifPresent(spare -> read.put(at + "spare", String.valueOf(spare)));
            line.pain().ifPresent(pain -> read.put(at + "pain", String.valueOf(pain)));
        }
        for (Log.DayNote note : log.days()) {
            String at = "w" + note.slot().week() + "/" + day(note.slot()) + "/";
            note.date().ifPresent(date -> read.put(at + "date", date.toString()));
            note.minutes().ifPresent(minutes -> read.put(at + "minutes", String.valueOf(minutes)));
            note.morningPain().ifPresent(pain -> read.put(at + "morning-pain", String.valueOf(pain)));
        }
        return read;
    }

    private static String day(Log.Slot slot) {
        return slot.day().name().substring(0, 3).toLowerCase(java.util.Locale.ROOT);
    }

    @Test
    void the_next_spec_and_one_clean_page_are_written_and_nothing_is_overwritten() throws IOException {
        var terminal = new Terminal(here);
        assertEquals(Console.DONE, terminal.run("next", "lifter.yaml", "filled.pdf", "-o", "block-2.yaml"), terminal.err());
        var spec = Files.readAllBytes(here.resolve("block-2.yaml"));
        var next = done(Checks.check("block-2.yaml", spec, CATALOGUE));
        assertEquals("2026-12-14", next.schedule().start().toString());
        assertTrue(next.assessment().tests().stream().anyMatch(t -> t.error().isPresent()));
        byte[] page = Files.readAllBytes(here.resolve("block-2-changes.pdf"));
        Proof.passes("ua1", page);
        Proof.passes("2a", page);
        try (PDDocument pdf = Loader.loadPDF(page)) {
            assertEquals(1, pdf.getNumberOfPages());
            assertTrue(new PDFTextStripper().getText(pdf).contains("What changed"));
        }
        assertEquals(Console.NOTHING, terminal.run("next", "lifter.yaml", "filled.pdf", "-o", "block-2.yaml"));
        assertEquals(new String(spec, StandardCharsets.UTF_8), Files.readString(here.resolve("block-2.yaml")));
    }

    @Test
    void a_return_that_cannot_be_read_leaves_nothing_behind() throws IOException {
        Files.writeString(here.resolve("bad.csv"), "week,day,exercise,side,kg,set1,spare\n1,mon,split-squat,left,heavy,8,3\n");
        var terminal = new Terminal(here);
        assertEquals(Console.NOTHING, terminal.run("next", "lifter.yaml", "bad.csv", "-o", "never.yaml"));
        assertTrue(terminal.err().contains("`heavy` is no number"), terminal.err());
        assertFalse(Files.exists(here.resolve("never.yaml")) || Files.exists(here.resolve("never-changes.pdf")));
    }
}
