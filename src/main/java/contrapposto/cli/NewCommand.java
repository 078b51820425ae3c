package contrapposto.cli;

import contrapposto.check.FirstFact;
import contrapposto.check.StartingSpec;
import contrapposto.notice.Notice;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(name = "new", mixinStandardHelpOptions = true,
        description = {"Writes a commented starting spec; to the screen when no file is named.",
                "On a terminal, and without facts given as options, it asks for them one by one; an empty answer keeps the example."},
        footer = {"", "Example: contrapposto new ines.yaml --name \"Ines Calloway\" --height \"171 cm\" --mass \"64 kg\" --turned right"})
final class NewCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private final Voice voice = new Voice();

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "Where to write it; a file that is there already is left as it is.")
    private Optional<Path> file = Optional.empty();

    private NewCommand(Streams streams) {
        this.streams = streams;
    }

    /** The command with an option for each fact a spec begins with. */
    static CommandLine line(Streams streams) {
        var line = new CommandLine(new NewCommand(streams));
        for (var fact : FirstFact.values()) {
            line.getCommandSpec().addOption(OptionSpec.builder("--" + fact.option()).type(String.class).paramLabel("…").description(fact.question()).build());
        }
        return line;
    }

    @Override
    public Integer call() throws IOException {
        if (file.isPresent() && Files.exists(streams.path(file.get()))) {
            throw new Console.Usage("`" + file.get() + "` is there already; name a new file");
        }
        var facts = given();
        if (facts.isEmpty() && streams.person()) {
            ask(facts);
        }
        var text = StartingSpec.with(facts);
        var refused = refused(text);
        if (!refused.isEmpty()) {
            streams.notices(refused);
            return Console.NOTHING;
        }
        return file.isPresent() ? write(file.get(), text) : show(text);
    }

    private TreeMap<FirstFact, String> given() {
        var facts = new TreeMap<FirstFact, String>();
        for (var option : spec.commandLine().getParseResult().matchedOptions()) {
            FirstFact.called(option.longestName().substring(2)).ifPresent(fact -> facts.put(fact, option.getValue()));
        }
        if (facts.containsKey(FirstFact.CODE)) {
            facts.putIfAbsent(FirstFact.NAME, "");
        }
        return facts;
    }

    /** Asks fact by fact; an answer the spec would refuse is asked again at once, with the reason. The end of the input ends the asking. */
    private void ask(TreeMap<FirstFact, String> facts) throws IOException {
        for (var fact : FirstFact.values()) {
            for (boolean settled = false; !settled; ) {
                streams.err().print(fact.question() + ": ");
                streams.err().flush();
                var answer = Optional.ofNullable(streams.in().readLine());
                if (answer.isEmpty()) {
                    return;
                }
                boolean kept = answer.get().isBlank() && fact != FirstFact.NAME && fact != FirstFact.AGE;
                var next = new TreeMap<>(facts);
                if (!kept) {
                    next.put(fact, answer.get());
                }
                var refused = fact == FirstFact.NAME && answer.get().isBlank() ? List.<Notice>of() : refused(StartingSpec.with(next));
                refused.forEach(notice -> streams.err().println("  " + notice.message() + ": " + String.join("; ", notice.hints())));
                settled = refused.isEmpty();
                if (settled) {
                    facts.clear();
                    facts.putAll(next);
                }
            }
        }
    }

    private List<Notice> refused(String text) {
        return StartingSpec.problems(file.map(Path::toString).orElse("new.yaml"), text);
    }

    private int show(String text) {
        streams.out().print(text);
        return Console.DONE;
    }

    private int write(Path to, String text) {
        try {
            Files.writeString(streams.path(to), text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw new Console.Usage("`" + to + "` is there already; name a new file");
        } catch (IOException e) {
            throw new Console.Usage("`" + to + "` cannot be written; check its folder");
        }
        if (!voice.quiet()) {
            streams.err().println("wrote " + to + "; ask the questions under `screening` and write the answers down; next: contrapposto build " + to);
        }
        return Console.DONE;
    }
}
