package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The help that stands ready is the help that the library makes; a command built alone says the same as among all. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HelpTest {
    @TempDir
    private Path folder;

    @Test
    void the_text_that_stands_ready_is_what_the_library_makes() throws IOException {
        var terminal = new Terminal(folder);
        var made = new Console(terminal.streams("")).helpMade();
        assertEquals(0, terminal.run("--help"));
        if (!made.equals(terminal.out())) {
            Files.writeString(Path.of("target", "help.received.txt"), made);
        }
        assertEquals(made, terminal.out(), "copy target/help.received.txt to src/main/resources/contrapposto/cli/help.txt");
    }

    @ParameterizedTest
    @ValueSource(strings = {"build", "check", "explain", "audit", "next", "new", "exercises", "mail"})
    void a_command_says_the_same_by_its_own_help_and_by_the_command_help(String command) {
        var terminal = new Terminal(folder);
        assertEquals(0, terminal.run(command, "--help"));
        var own = terminal.out();
        assertTrue(own.startsWith("Usage: contrapposto " + command), own);
        assertEquals(0, terminal.run("help", command));
        assertEquals(terminal.out(), own);
    }

    @Test
    void a_word_that_is_no_command_is_met_with_those_near_it() {
        var terminal = new Terminal(folder);
        assertEquals(2, terminal.run("biuld"));
        assertTrue(terminal.err().contains("build"), terminal.err());
    }
}
