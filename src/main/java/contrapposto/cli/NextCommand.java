package contrapposto.cli;

import contrapposto.catalogue.Catalogue;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.compose.Composer;
import contrapposto.compose.Templates;
import contrapposto.deliver.Delivery;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import contrapposto.prescribe.Gauge;
import contrapposto.prescribe.Plan;
import contrapposto.press.Press;
import contrapposto.press.Wanted;
import contrapposto.returns.Log;
import contrapposto.returns.NextSpec;
import contrapposto.returns.Returns;
import contrapposto.returns.Review;
import contrapposto.returns.Reviewer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "next", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Reads what came back and writes the next block's spec, and a page for the coach on what changed.",
        footer = {"", "Example: contrapposto next ines.yaml ines-filled.pdf -o ines-block-2.yaml"})
final class NextCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(index = "0", paramLabel = "SPEC", description = "The spec that the block was built from.")
    private Path spec = Path.of("");

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "RETURN", description = "Filled handouts (.pdf) and logs (.csv, .yaml).")
    private List<Path> returned = List.of();

    @Option(names = {"-o", "--out"}, paramLabel = "NEWSPEC", description = "Where to write the next spec; a file that is there already is left "
            + "as it is (default: beside SPEC, its name with -next).")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private final House house = new House();

    @Mixin
    private final Voice voice = new Voice();

    NextCommand(Streams streams) {
        this.streams = streams;
    }

    /** What is to be written, by file name. */
    private record Written(LinkedHashMap<String, byte[]> files) { }

    @Override
    public Integer call() {
        var place = out.orElseGet(() -> spec.resolveSibling(stem(spec) + "-next.yaml"));
        var page = place.resolveSibling(stem(place) + "-changes.pdf");
        for (var file : List.of(place, page)) {
            if (Files.exists(streams.path(file))) {
                throw new Console.Usage("`" + file + "` is there already; name a new file with `-o`");
            }
        }
        var outcome = house.open(streams).then(catalogue -> bytes(spec).then(source -> files(returned)
                .then(files -> next(catalogue, source, files, place, page))));
        streams.notices(outcome.notices());
        return switch (outcome) {
            case Outcome.Refused<?> refused -> Console.NOTHING;
            case Outcome.Done<Written> done -> {
                if (!voice.quiet()) {
                    streams.err().println("wrote " + place + " and " + page + "; read it, then: contrapposto build " + place);
                }
                yield Console.DONE;
            }
        };
    }

    private Outcome<Written> next(Catalogue catalogue, byte[] source, List<Returns.Returned> files, Path place, Path page) {
        var composer = new Composer(Templates.own());
        var press = new Press(catalogue, composer, new Wanted(List.of(), Optional.empty(), Optional.empty(), false));
        return Checks.check(spec.toString(), source, catalogue)
                .map((CheckedSpec checked) -> press.solve(checked)).then(this::notWithheld)
                .then(plan -> Returns.read(plan, files).then(log -> written(plan, log, source, catalogue, place, page, press)));
    }

    private Outcome<Written> written(Plan plan, Log log, byte[] source, Catalogue catalogue, Path place, Path page, Press press) {
        var gauge = new Gauge(plan);
        Review review = Reviewer.review(plan, gauge, log);
        return NextSpec.write(review, log, gauge, spec.toString(), source, catalogue)
                .then(text -> press.changes(review).map(pdf -> {
                    var made = new LinkedHashMap<String, byte[]>();
                    made.put(place.getFileName().toString(), text.getBytes(StandardCharsets.UTF_8));
                    made.put(page.getFileName().toString(), pdf);
                    return new Written(made);
                })).then(made -> new Delivery(Optional.ofNullable(streams.path(place).toAbsolutePath().getParent()).orElse(Path.of("/")))
                        .deliver(new Delivery.Parcel("", made.files(), List.of())).map(names -> made));
    }

    private Outcome<Plan> notWithheld(Plan plan) {
        return plan.withheld() ? new Outcome.Refused<>(List.of(Notice.error("next-withheld", Span.whole(spec.toString()),
                "screening withholds this program, so there is no log of it and no next block",
                "give the clearance in the spec first"))) : Outcome.done(plan);
    }

    private Outcome<byte[]> bytes(Path given) {
        return House.bytes(given, streams.path(given));
    }

    private Outcome<List<Returns.Returned>> files(List<Path> given) {
        Outcome<List<Returns.Returned>> all = Outcome.done(List.of());
        for (var file : given) {
            all = all.then(before -> bytes(file).map(bytes -> {
                var more = new ArrayList<>(before);
                more.add(new Returns.Returned(file.toString(), bytes));
                return List.copyOf(more);
            }));
        }
        return all;
    }

    private static String stem(Path file) {
        String name = file.getFileName().toString();
        return name.contains(".") ? name.substring(0, name.lastIndexOf('.')) : name;
    }
}
