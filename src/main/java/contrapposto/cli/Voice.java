package contrapposto.cli;

import picocli.CommandLine.Option;

/** How much a command says on the message stream. */
final class Voice {
    @Option(names = {"-q", "--quiet"}, description = "Say nothing but errors.")
    private boolean quiet;

    @Option(names = {"-v", "--verbose"}, description = "Say what is done, stage by stage.")
    private boolean verbose;

    boolean quiet() {
        return quiet;
    }

    boolean verbose() {
        return verbose && !quiet;
    }
}
