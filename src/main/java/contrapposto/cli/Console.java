package contrapposto.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
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

    private final Streams streams;

    Console(Streams streams) {
        this.streams = streams;
    }

    /** Runs one command line and returns its exit code. */
    int run(String... args) {
        var line = new CommandLine(new Root())
                .addSubcommand(new BuildCommand(streams)).addSubcommand(new CheckCommand(streams)).addSubcommand(new ExplainCommand(streams)).addSubcommand(new AuditCommand(streams))
                .addSubcommand(new NextCommand(streams))
                .addSubcommand(NewCommand.line(streams)).addSubcommand(new ExercisesCommand(streams))
                .addSubcommand(new MailCommand(streams));
        line.setOut(new PrintWriter(streams.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(streams.err(), true, StandardCharsets.UTF_8));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setExecutionExceptionHandler((failure, command, parsed) -> failed(failure));
        return line.execute(args);
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

    @Command(name = "contrapposto", version = "contrapposto 0.1.0", mixinStandardHelpOptions = true, subcommands = {CommandLine.HelpCommand.class, AutoComplete.GenerateCompletion.class},
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
