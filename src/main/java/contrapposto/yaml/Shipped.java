package contrapposto.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The YAML files that are part of this program: catalogue, phrasebooks, house rules. A packaged program has their trees in one
 * file ({@code mvn package} makes it, see {@link #main}), since parsing three hundred files took half a second of each start; where
 * that file is absent, as in tests, the YAML itself is read. A test holds the two to be the same.
 */
public final class Shipped {
    static final String TREES = "/contrapposto/trees.bin";
    /** Folders and files of YAML in the program, below {@code contrapposto}. */
    private static final List<String> HELD = List.of("catalogue", "templates", "house-rules.yaml");
    private static final Optional<TreeFile> COMPILED = bytes(TREES).map(TreeFile::read);

    private Shipped() { }

    /**
     * The tree of a file of the program; empty if there is none of that name.
     *
     * @param resource from the root of the class path, such as {@code /contrapposto/catalogue/index.yaml}
     * @throws IllegalStateException if it is no sound YAML (a bug: tests read all of them)
     */
    public static Optional<YamlNode> tree(String resource) {
        return COMPILED.flatMap(trees -> trees.tree(resource))
                .or(() -> bytes(resource).map(bytes -> YamlReader.shipped(resource.substring(1), bytes)));
    }

    private static Optional<byte[]> bytes(String resource) {
        try (InputStream in = Shipped.class.getResourceAsStream(resource)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The class path does not read at " + resource, unreadable);
        }
    }

    /** The trees of all YAML files below {@code classes}, by resource. */
    static Map<String, YamlNode> all(Path classes) throws IOException {
        var trees = new TreeMap<String, YamlNode>();
        for (var held : HELD) {
            try (Stream<Path> files = Files.walk(classes.resolve("contrapposto").resolve(held))) {
                for (var file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
                    var resource = "/" + classes.relativize(file).toString().replace('\\', '/');
                    trees.put(resource, YamlReader.shipped(resource.substring(1), Files.readAllBytes(file)));
                }
            }
        }
        return trees;
    }

    /** For the build. @param args the folder of the compiled program, and the folder to put the trees in */
    public static void main(String[] args) throws IOException {
        var to = Path.of(args[1] + TREES);
        Files.createDirectories(to.getParent());
        Files.write(to, TreeFile.of(all(Path.of(args[0]))));
    }
}
