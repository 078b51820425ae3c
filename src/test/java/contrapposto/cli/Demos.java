package contrapposto.cli;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.yaml.snakeyaml.Yaml;

/** Builds specs through the command line, as a user would, and reads the plan file back with a parser of another project. */
final class Demos {
    private Demos() { }

    /** Builds {@code specs} into {@code out} and returns what was said on both streams; the exit code is the first line. */
    static String build(Path out, String... specs) {
        var said = new ByteArrayOutputStream();
        var stream = new PrintStream(said, true, StandardCharsets.UTF_8);
        var args = new java.util.ArrayList<>(java.util.List.of("build"));
        args.addAll(java.util.List.of(specs));
        args.addAll(java.util.List.of("-o", out.toString()));
        int code = new Console(new Streams(new BufferedReader(Reader.nullReader()), stream, stream, Path.of(""), false)).run(args.toArray(String[]::new));
        return code + "\n" + said.toString(StandardCharsets.UTF_8);
    }

    /** The file below {@code out} that ends so. */
    static Path file(Path out, String ending) throws IOException {
        try (var files = Files.walk(out)) {
            return files.filter(f -> f.toString().endsWith(ending)).findFirst()
                    .orElseThrow(() -> new AssertionError("no file *" + ending));
        }
    }

    static Map<String, Object> plan(Path file) throws IOException {
        return new Yaml().load(Files.readString(file));
    }
}
