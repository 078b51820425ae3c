package contrapposto.cli;

import contrapposto.audit.Wording;
import contrapposto.catalogue.Catalogue;
import contrapposto.compose.Composer;
import contrapposto.deliver.Json;
import contrapposto.notice.Notice;
import contrapposto.notice.NoticeText;
import contrapposto.notice.Outcome;
import contrapposto.press.Press;
import contrapposto.press.Wanted;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "check", mixinStandardHelpOptions = true, description = "Shows every problem of specs; writes nothing.",
        footer = {"", "Example: contrapposto check --wording programs/newcomer-right.yaml"})
final class CheckCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private final Voice voice = new Voice();

    @Mixin
    private final House house = new House();

    @Option(names = "--json", description = "Print the problems as JSON.")
    private boolean json;

    @Option(names = "--wording", description = "Also say how hard the client edition reads: grades, long sentences and rare words with their places.")
    private boolean wording;

    @Mixin
    private final OwnTemplates templates = new OwnTemplates();

    @Mixin
    private final Spoken spoken = new Spoken();

    @Parameters(paramLabel = "SPEC", arity = "1..*", description = "Spec files, folders of them, or rosters (.csv).")
    private List<Path> specs = List.of();

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        return streams.with(house.open(streams), catalogue -> report(Inputs.of(specs, streams, catalogue), catalogue));
    }

    private int report(Inputs inputs, Catalogue catalogue) {
        var press = new Press(catalogue, new Composer(templates.open(streams)), new Wanted(List.of(), Optional.empty(), Optional.empty(), false,
                spoken.language(), false));
        var notices = new ArrayList<Notice>();
        var read = new LinkedHashMap<String, Wording>();
        boolean sound = true;
        for (var input : inputs) {
            var outcome = wording ? input.spec().then(press::wording).map(Optional::of) : input.spec().map(spec -> Optional.<Wording>empty());
            notices.addAll(outcome.notices());
            sound &= outcome instanceof Outcome.Done<?>;
            if (outcome instanceof Outcome.Done<Optional<Wording>>(var made, var said)) {
                made.ifPresent(words -> read.put(input.name(), words));
            }
        }
        print(notices, read);
        if (!voice.quiet()) {
            streams.err().println(count(inputs.size(), "spec") + ", " + (notices.isEmpty() ? "no problem" : count(notices.size(), "problem")));
        }
        return !inputs.anyThere() ? Console.NOTHING : sound ? Console.DONE : Console.PARTLY;
    }

    private void print(List<Notice> notices, Map<String, Wording> read) {
        var problems = notices.stream().map(CheckCommand::tree).toList();
        if (json && wording) {
            var words = read.entrySet().stream().map(e -> {
                var tree = new LinkedHashMap<String, Object>(Map.of("spec", e.getKey()));
                tree.putAll(new WordingReport(e.getValue()).tree());
                return tree;
            }).toList();
            var both = new LinkedHashMap<String, Object>();
            both.put("problems", problems);
            both.put("wording", words);
            streams.out().print(Json.of(both));
        } else if (json) {
            streams.out().print(Json.of(problems));
        } else {
            notices.forEach(notice -> streams.out().print(NoticeText.of(notice)));
            read.forEach((name, words) -> {
                streams.out().println(name);
                new WordingReport(words).print(streams.out());
            });
        }
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
