package contrapposto.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line as a whole: which commands there are, and what a wrong call or a failure of ours ends with. */
final class Console {
    /** All done. */
    static final int DONE = 0;
    /** Some specs failed or were withheld; the others were written. */
    static final int PARTLY = 1;
    /** Bad usage, or nothing could be read. */
    static final int NOTHING = 2;

    private static final String HELP = "/contrapposto/cli/help.txt";

    private final Streams streams;
    /** By name, in the order in which the help lists them. */
    private final Map<String, Supplier<Object>> commands = new LinkedHashMap<>();

    Console(Streams streams) {
        this.streams = streams;
        commands.put("build", () -> new BuildCommand(streams));
        commands.put("check", () -> new CheckCommand(streams));
        commands.put("explain", () -> new ExplainCommand(streams));
        commands.put("audit", () -> new AuditCommand(streams));
        commands.put("next", () -> new NextCommand(streams));
        commands.put("new", () -> NewCommand.line(streams));
        commands.put("exercises", () -> new ExercisesCommand(streams));
        commands.put("mail", () -> new MailCommand(streams));
    }

    /**
     * Runs one command line and returns its exit code. The help of the whole is a text that stands ready, and of the commands
     * only the one that is named is built: half of a start went into reading annotations nobody asked about.
     */
    int run(String... args) {
        if (args.length == 1 && args[0].equals("--help")) {
            streams.out().print(help());
            return DONE;
        }
        var line = new CommandLine(new Root());
        if (args.length > 0 && commands.containsKey(args[0])) {
            line.addSubcommand(commands.get(args[0]).get());
        } else {
            complete(line);
        }
        line.setOut(new PrintWriter(streams.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(streams.err(), true, StandardCharsets.UTF_8));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setExecutionExceptionHandler((failure, command, parsed) -> failed(failure));
        return line.execute(args);
    }

    /** With every command, as help, completion and the search for what a word may have meant need them. */
    private void complete(CommandLine line) {
        line.addSubcommand(new CommandLine.HelpCommand());
        line.addSubcommand(new AutoComplete.GenerateCompletion());
        commands.values().forEach(command -> line.addSubcommand(command.get()));
    }

    /** What {@code --help} prints, as the library makes it: the text that stands ready is held against it by a test. */
    String helpMade() {
        return whole().getUsageMessage(CommandLine.Help.Ansi.OFF);
    }

    /** The command line with all its commands: what the help, the manual page and the completion of a shell are made from. */
    CommandLine whole() {
        var line = new CommandLine(new Root());
        complete(line);
        return line;
    }

    private static String help() {
        try (var in = Console.class.getResourceAsStream(HELP)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The class path does not read at " + HELP, unreadable);
        }
    }

    private int failed(Exception failure) {
        if (failure instanceof Usage usage) {
            streams.err().println("contrapposto: " + usage.getMessage());
            return NOTHING;
        }
        streams.err().println("contrapposto: this is a fault of the program, not of your files: " + failure);
        failure.printStackTrace(streams.err());
        return NOTHING;
    }

    /** A call that cannot be carried out as it stands; its message says why and what to do. */
    static final class Usage extends RuntimeException {
        private static final long serialVersionUID = 1;

        Usage(String message) {
            super(message);
        }
    }

    @Command(name = "contrapposto", version = "contrapposto 0.1.0", mixinStandardHelpOptions = true,
            description = "Turns a YAML program spec into a solved exercise program, side by side, and prints it as a PDF handout.",
            synopsisSubcommandLabel = "COMMAND",
            footer = {"", "Example: contrapposto build programs -o out", "", "Exit code: 0 all done; 1 some specs failed or were withheld; 2 bad usage or nothing could be read."})
    private static final class Root implements Runnable {
        @CommandLine.Spec
        private CommandLine.Model.CommandSpec spec;

        @Override
        public void run() {
            throw new CommandLine.ParameterException(spec.commandLine(), "Which command?");
        }
    }
}
