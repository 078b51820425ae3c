package contrapposto.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A command line of this program in a shell block of a document.
 *
 * @param words  after the program's name
 * @param notRun why it is not run here, from {@code <!-- not run: … -->} before its block
 * @param exit   the exit code its comment states, {@code # exit 1 …}; 0 without
 */
record DocumentedCommand(Path document, int line, List<String> words, Optional<String> notRun, int exit) {
    private static final Pattern CALL = Pattern.compile("(?:.*&& )?(?:\\S*bin/)?contrapposto ([^#]*?)\\s*(?:#(.*))?");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final Pattern NOT_RUN = Pattern.compile("<!-- not run: (.+) -->");
    private static final Pattern EXIT = Pattern.compile("\\bexit (\\d)\\b");

    /** README, the walk, and the other documents by name, in this order. */
    static List<Path> documents() throws IOException {
        try (var pages = Files.list(Path.of("docs"))) {
            var rest = pages.filter(page -> page.toString().endsWith(".md") && !page.endsWith("transcript.md") && !page.endsWith("walk.md")).sorted();
            return Stream.concat(Stream.of(Path.of("README.md"), Path.of("docs/walk.md"), Path.of("DEVELOPERS.md")), rest).toList();
        }
    }

    /** Of all documents. */
    static List<DocumentedCommand> all() throws IOException {
        var commands = new ArrayList<DocumentedCommand>();
        for (var page : documents()) {
            commands.addAll(in(page));
        }
        return commands;
    }

    static List<DocumentedCommand> in(Path document) throws IOException {
        var commands = new ArrayList<DocumentedCommand>();
        var lines = Files.readAllLines(document);
        Optional<String> reason = Optional.empty();
        boolean shell = false;
        for (int i = 0; i < lines.size(); i++) {
            var line = lines.get(i).strip();
            var note = NOT_RUN.matcher(line);
            if (note.matches()) {
                reason = Optional.of(note.group(1));
            } else if (line.startsWith("```")) {
                reason = shell ? Optional.empty() : reason;
                shell = !shell && line.equals("```sh");
            } else if (shell) {
                var call = CALL.matcher(line);
                if (call.matches()) {
                    commands.add(new DocumentedCommand(document, i + 1, words(call.group(1)), reason, exit(Optional.ofNullable(call.group(2)))));
                }
            }
        }
        return commands;
    }

    private static List<String> words(String text) {
        return WORD.matcher(text).results().map(found -> Optional.ofNullable(found.group(1)).orElseGet(found::group)).toList();
    }

    private static int exit(Optional<String> comment) {
        return comment.map(EXIT::matcher).filter(java.util.regex.Matcher::find).map(found -> Integer.parseInt(found.group(1))).orElse(0);
    }

    @Override
    public String toString() {
        return document + ":" + line + " contrapposto " + String.join(" ", words);
    }
}
