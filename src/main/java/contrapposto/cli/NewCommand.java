package contrapposto.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "new", mixinStandardHelpOptions = true, description = "Writes a commented starting spec; to the screen when no file is named.",
        footer = {"", "Example: contrapposto new ines.yaml"})
final class NewCommand implements Callable<Integer> {
    static final String TEMPLATE = "/contrapposto/cli/new-spec.yaml";

    private final Streams streams;

    @Mixin
    private final Voice voice = new Voice();

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "Where to write it; a file that is there already is left as it is.")
    private Optional<Path> file = Optional.empty();

    NewCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        byte[] spec = startingSpec();
        if (file.isEmpty()) {
            streams.out().write(spec);
            return Console.DONE;
        }
        try {
            Files.write(streams.path(file.get()), spec, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw new Console.Usage("`" + file.get() + "` is there already; name a new file");
        } catch (IOException e) {
            throw new Console.Usage("`" + file.get() + "` cannot be written; check its folder");
        }
        if (!voice.quiet()) {
            streams.err().println("wrote " + file.get() + "; next: contrapposto build " + file.get());
        }
        return Console.DONE;
    }

    static byte[] startingSpec() throws IOException {
        try (InputStream in = NewCommand.class.getResourceAsStream(TEMPLATE)) {
            return in.readAllBytes();
        }
    }
}
