package contrapposto.deliver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FileNamesTest {
    @ParameterizedTest
    @CsvSource({"HS-0142, HS-0142", "ines calloway, ines-calloway", "zoë müller-çelik, zoe-muller-celik", "a  b, a-b", "'x: y/z', x-y-z"})
    void what_can_be_kept_is_kept(String text, String name) {
        assertEquals(name, FileNames.safe(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"..", "../../etc/passwd", "/etc/passwd", "C:\\Windows", ".hidden", "a\u0000b", "a\nb", "-rf", "…", "con", "NUL.txt", "\u202egnp.exe", "~"})
    void a_hostile_name_stays_one_plain_name_in_its_folder(String text) {
        String name = FileNames.safe(text);
        Path root = Path.of("/somewhere/out");
        assertTrue(name.matches("[A-Za-z0-9_][A-Za-z0-9._-]*"), name);
        assertEquals(root, root.resolve(name).normalize().getParent());
        assertTrue(!name.matches("(?i)(con|nul)(\\..*)?"), name);
    }

    @Test
    void names_without_a_latin_letter_are_told_apart() {
        assertNotEquals(FileNames.safe("Ελένη"), FileNames.safe("Νίκος"));
    }

    @Test
    void a_long_name_is_cut() {
        assertEquals(60, FileNames.safe("a".repeat(300)).length());
    }
}
