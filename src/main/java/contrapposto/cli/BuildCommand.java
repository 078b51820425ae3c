package contrapposto.cli;

import contrapposto.catalogue.Catalogue;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.check.Pack;
import contrapposto.compose.Composer;
import contrapposto.notice.Outcome;
import contrapposto.press.Press;
import contrapposto.press.Wanted;
import contrapposto.typeset.Typesetter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "build", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Solves programs and prints them: PDF handouts, solved plans and a manifest.",
        footer = {"", "Example: contrapposto build programs -o out --edition client,coach"})
final class BuildCommand implements Callable<Integer> {
    private static final int MOST_JOBS = 64;

    private final Streams streams;

    @Parameters(paramLabel = "SPEC", arity = "1..*", description = "Spec files, folders of them, packs, or rosters (.csv).")
    private List<Path> specs = List.of();

    @Option(names = {"-o", "--out"}, paramLabel = "DIR", defaultValue = "out", description = "Where to write (default: ${DEFAULT-VALUE}).")
    private Path out = Path.of("out");

    @Option(names = "--edition", split = ",", paramLabel = "EDITION", description = "client, coach, pocket (a folded sheet for the gym bag), separated by commas (default: as the spec says).")
    private List<Edition> editions = List.of();

    @Option(names = "--paper", paramLabel = "PAPER", description = "a4 or letter (default: as the spec says).")
    private Optional<Paper> paper = Optional.empty();

    @Option(names = "--print", paramLabel = "PRINT", description = "plain or large (default: as the spec says).")
    private Optional<Print> print = Optional.empty();

    @Mixin
    private final Spoken spoken = new Spoken();

    @Option(names = "--html", description = "Also write each edition as one HTML page.")
    private boolean html;

    @Option(names = "--jobs", paramLabel = "N", description = "How many clients to work on at once (default: one for each processor).")
    private Optional<Integer> jobs = Optional.empty();

    @Option(names = "--watch", description = "Stay, and build again what a saved file touches; the last good handout stays when a file has a slip.")
    private boolean watch;

    @Option(names = "--again", description = "Make everything again, also what is there from the same inputs.")
    private boolean again;

    @Mixin
    private final OwnTemplates templates = new OwnTemplates();

    @Mixin
    private final MoreFonts fonts = new MoreFonts();

    @Mixin
    private final Secrecy secrecy = new Secrecy();

    @Mixin
    private final House house = new House();

    @Option(names = "--json", description = "Print the manifest on the output.")
    private boolean json;

    @Mixin
    private final Voice voice = new Voice();

    BuildCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        if (!watch) {
            return once();
        }
        return new Watch(watched(), streams, () -> true).each(this::once);
    }

    /** Everything a build reads: specs, what they start from, the practice's own catalogue, rules, templates and fonts. */
    List<Path> watched() {
        return Stream.of(specs.stream().flatMap(this::withBases).toList(), house.own(streams), templates.own(streams),
                fonts.files(streams)).flatMap(List::stream).toList();
    }

    /** A roster or a pack stands for its whole folder, since the specs that it starts from lie there. */
    private Stream<Path> withBases(Path given) {
        Path place = streams.path(given);
        boolean startsFromOthers = given.toString().toLowerCase(Locale.ROOT).endsWith(".csv")
                || House.bytes(given, place) instanceof Outcome.Done<byte[]>(var bytes, var none) && Pack.is(bytes);
        return Stream.of(startsFromOthers ? place.toAbsolutePath().getParent() : place);
    }

    private int once() {
        int atOnce = jobs.orElse(Runtime.getRuntime().availableProcessors());
        if (atOnce < 1 || atOnce > MOST_JOBS) {
            throw new Console.Usage("`--jobs " + atOnce + "` is out of range; give a number from 1 to " + MOST_JOBS);
        }
        return streams.with(house.open(streams), catalogue -> withFonts(catalogue, atOnce));
    }

    private int withFonts(Catalogue catalogue, int atOnce) {
        return streams.with(fonts.typesetter(streams), typesetter -> build(catalogue, typesetter, atOnce));
    }

    private int build(Catalogue catalogue, Typesetter typesetter, int atOnce) {
        var inputs = Inputs.of(specs, streams, catalogue);
        if (inputs.isEmpty()) {
            throw new Console.Usage("there is no spec in " + specs.stream().map(p -> "`" + p + "`").toList() + "; a spec is a file that ends in .yaml");
        }
        if (!inputs.anyThere()) {
            inputs.forEach(input -> streams.notices(input.spec().notices()));
            return Console.NOTHING;
        }
        var wanted = new Wanted(editions, paper, print, html, spoken.language(), secrecy.attach());
        var press = new Press(catalogue, new Composer(templates.open(streams)), wanted,
                secrecy.password(streams).map(typesetter::openedBy).orElse(typesetter));
        var own = Stream.of(house.own(streams), templates.own(streams), fonts.files(streams)).flatMap(List::stream).toList();
        boolean alone = inputs.size() == 1 && atOnce > 1;
        var job = new Run.Job(alone ? press.inParallel() : press, Fingerprint.of(wanted.toString(), own), again || secrecy.protects(), atOnce);
        var tally = new Run(job, streams.path(out), out, streams, voice).all(inputs);
        if (json && tally.written()) {
            streams.out().print(text(streams.path(out).resolve("manifest.json")));
        }
        return tally.written() && tally.failed() == 0 && tally.withheld() == 0 ? Console.DONE : Console.PARTLY;
    }

    private static String text(Path manifest) {
        try {
            return Files.readString(manifest);
        } catch (IOException e) {
            throw new Console.Usage("`" + manifest + "` was written, but cannot be read");
        }
    }
}
