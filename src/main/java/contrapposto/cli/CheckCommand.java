package contrapposto.cli;

import contrapposto.deliver.Json;
import contrapposto.notice.Notice;
import contrapposto.notice.NoticeText;
import contrapposto.notice.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "check", mixinStandardHelpOptions = true, description = "Shows every problem of specs; writes nothing.",
        footer = {"", "Example: contrapposto check programs/newcomer-right.yaml"})
final class CheckCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private final Voice voice = new Voice();

    @Mixin
    private final House house = new House();

    @Option(names = "--json", description = "Print the problems as JSON.")
    private boolean json;

    @Parameters(paramLabel = "SPEC", arity = "1..*", description = "Spec files, folders of them, or rosters (.csv).")
    private List<Path> specs = List.of();

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        return switch (house.open(streams)) {
            case Outcome.Refused<?> refused -> {
                streams.notices(refused.notices());
                yield Console.NOTHING;
            }
            case Outcome.Done<contrapposto.catalogue.Catalogue>(var catalogue, var notices) -> {
                streams.notices(notices);
                yield report(Inputs.of(specs, streams, catalogue));
            }
        };
    }

    private int report(Inputs inputs) {
        var notices = new ArrayList<Notice>();
        boolean sound = true;
        for (var input : inputs) {
            notices.addAll(input.spec().notices());
            sound &= input.spec() instanceof Outcome.Done<?>;
        }
        if (json) {
            streams.out().print(Json.of(notices.stream().map(CheckCommand::tree).toList()));
        } else {
            notices.forEach(notice -> streams.out().print(NoticeText.of(notice)));
        }
        if (!voice.quiet()) {
            streams.err().println(count(inputs.size(), "spec") + ", " + (notices.isEmpty() ? "no problem" : count(notices.size(), "problem")));
        }
        return !inputs.anyThere() ? Console.NOTHING : sound ? Console.DONE : Console.PARTLY;
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    private static Map<String, Object> tree(Notice notice) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("severity", notice.severity().name().toLowerCase(Locale.ROOT));
        tree.put("id", notice.id());
        tree.put("file", notice.span().file());
        tree.put("line", notice.span().line());
        tree.put("column", notice.span().column());
        tree.put("message", notice.message());
        tree.put("hints", notice.hints());
        return tree;
    }
}
