package contrapposto.cli;

import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;

/** The manual page of the program, in roff for {@code man}: the words are those that picocli makes for {@code --help}. */
final class ManualPage {
    private static final String DAY = "2026-11-25";
    private static final int WIDTH = 100;

    private ManualPage() { }

    static String of(CommandLine whole) {
        var root = whole.getCommandSpec();
        var page = new StringBuilder(".\\\" Made from the command line by ShareTest; not written by hand.\n.TH CONTRAPPOSTO 1 \"" + DAY + "\" \"contrapposto " + root.version()[0].replaceAll("^\\S+ ", "") + "\" \"Contrapposto\"\n");
        page.append(".SH NAME\ncontrapposto \\- ").append(text(String.join(" ", root.usageMessage().description()))).append('\n');
        page.append(".SH SYNOPSIS\n").append(verbatim(whole.getHelp().synopsis(0)));
        page.append(".SH COMMANDS\nEach has its own section below.\n").append(verbatim(whole.getHelp().commandList()));
        page.append(".SH OPTIONS\n").append(verbatim(whole.getHelp().optionList()));
        whole.getSubcommands().forEach((name, command) -> page.append(section(name, command)));
        page.append(".SH EXIT STATUS\n").append(text(footer(whole, "Exit code: "))).append('\n');
        page.append(".SH EXAMPLES\n").append(verbatim(whole.getSubcommands().values().stream().map(command -> footer(command, "Example: "))
                .filter(line -> !line.isEmpty()).collect(Collectors.joining("\n"))));
        return page.toString();
    }

    private static String section(String name, CommandLine command) {
        command.setUsageHelpWidth(WIDTH);
        Help help = command.getHelp();
        return ".SH CONTRAPPOSTO " + name.toUpperCase(Locale.ROOT).replace("-", "\\-") + "\n" + text(String.join(" ", command.getCommandSpec().usageMessage().description())) + "\n.PP\n"
                + verbatim(help.synopsis(0)) + verbatim(help.parameterList()) + verbatim(help.optionList());
    }

    /** What stands in the footer after {@code lead}; empty without. */
    private static String footer(CommandLine command, String lead) {
        return java.util.Arrays.stream(command.getCommandSpec().usageMessage().footer()).filter(line -> line.startsWith(lead)).map(line -> line.substring(lead.length()))
                .collect(Collectors.joining("\n"));
    }

    private static String verbatim(String lines) {
        return lines.isBlank() ? "" : ".nf\n" + Ansi.OFF.string(lines).stripTrailing().lines().map(ManualPage::text).collect(Collectors.joining("\n")) + "\n.fi\n";
    }

    /** Signs that roff would take for its own are written as it wants them. */
    private static String text(String words) {
        String escaped = words.replace("\\", "\\e").replace("-", "\\-").replace("'", "\\(aq").replace("%n", " ");
        return escaped.startsWith(".") ? "\\&" + escaped : escaped;
    }
}
