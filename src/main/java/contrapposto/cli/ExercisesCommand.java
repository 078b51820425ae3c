package contrapposto.cli;

import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.FamilyWords;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.compose.Composer;
import contrapposto.compose.Templates;
import contrapposto.deliver.Json;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "exercises", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Lists the exercise families, shows one, or draws its card.",
        footer = {"", "Example: contrapposto exercises --stage standing --avoid knee", "Example: contrapposto exercises split-squat --pdf card.pdf"})
final class ExercisesCommand implements Callable<Integer> {
    private static final String LANGUAGE = "en";

    private final Streams streams;

    @Mixin
    private final Voice voice = new Voice();

    @Mixin
    private final House house = new House();

    @Mixin
    private final Filters filters = new Filters();

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write the card of ID, both sides, as a PDF.")
    private Optional<Path> pdf = Optional.empty();

    @Option(names = "--for", paramLabel = "SPEC", description = "Draw the card for the person of this spec (default: an invented one in a furnished room).")
    private Optional<Path> person = Optional.empty();

    @Option(names = "--json", description = "Print as JSON.")
    private boolean json;

    @Parameters(paramLabel = "ID", arity = "0..1", description = "The family to show.")
    private Optional<String> id = Optional.empty();

    ExercisesCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        if (id.isPresent() && filters.given()) {
            throw new Console.Usage("an ID and filters exclude each other; give one or the other");
        }
        if (id.isEmpty() && (pdf.isPresent() || person.isPresent())) {
            throw new Console.Usage("a card needs the ID of its exercise; `contrapposto exercises` lists them");
        }
        if (person.isPresent() && pdf.isEmpty()) {
            throw new Console.Usage("`--for` draws a card; say where with `--pdf FILE`");
        }
        return streams.with(house.open(streams), catalogue -> id.map(wanted -> one(catalogue, wanted)).orElseGet(() -> all(catalogue)));
    }

    private int all(Catalogue catalogue) {
        var shown = filters.of(catalogue);
        if (json) {
            streams.out().print(Json.of(shown.stream().map(f -> tree(catalogue, f)).toList()));
            return Console.DONE;
        }
        shown.forEach(family -> streams.out().println(String.format(Locale.ROOT, "%-22s %-11s %s", family.id(),
                family.stage().word(), catalogue.words(LANGUAGE, family.id()).name())));
        return Console.DONE;
    }

    private int one(Catalogue catalogue, String wanted) {
        Family family = catalogue.family(wanted).orElseThrow(() -> new Console.Usage("there is no exercise `" + wanted + "`"
                + ExplainCommand.nearest(wanted, catalogue) + "; `contrapposto exercises` lists them"));
        if (pdf.isPresent()) {
            return card(catalogue, family, pdf.get());
        }
        var tree = tree(catalogue, family);
        if (json) {
            streams.out().print(Json.of(tree));
            return Console.DONE;
        }
        tree.forEach((key, value) -> streams.out().println(String.format(Locale.ROOT, "%-14s %s", key,
                value instanceof List<?> list ? list.stream().map(Object::toString).collect(Collectors.joining("; ")) : value)));
        return Console.DONE;
    }

    private int card(Catalogue catalogue, Family family, Path file) {
        var press = new CardPress(catalogue, new Composer(Templates.own()));
        var drawnFor = person.map(spec -> Inputs.one(spec, streams, catalogue).spec()).orElseGet(press::anyone);
        var card = drawnFor.then(spec -> press.press(spec, family));
        streams.notices(card.notices());
        return switch (card) {
            case Outcome.Refused<byte[]> refused -> Console.NOTHING;
            case Outcome.Done<byte[]>(var bytes, var notices) -> {
                write(file, bytes);
                yield Console.DONE;
            }
        };
    }

    private void write(Path file, byte[] bytes) {
        try {
            Files.write(streams.path(file), bytes);
        } catch (IOException e) {
            throw new Console.Usage("`" + file + "` cannot be written; check its folder");
        }
        if (!voice.quiet()) {
            streams.err().println("wrote " + file);
        }
    }

    private static Map<String, Object> tree(Catalogue catalogue, Family family) {
        FamilyWords words = catalogue.words(LANGUAGE, family.id());
        var tree = new LinkedHashMap<String, Object>();
        tree.put("id", family.id());
        tree.put("name", words.name());
        tree.put("purpose", words.purpose());
        tree.put("stage", family.stage().word());
        tree.put("sides", family.sides().name().toLowerCase(Locale.ROOT));
        tree.put("base", family.base().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        tree.put("loaded-by", family.levers().implement().stream().map(Implement::word).toList());
        tree.put("needs", List.copyOf(new TreeSet<>(family.levers().needs())));
        tree.put("muscles", family.muscles().stream().map(Family.MuscleUse::muscle).map(Muscle::word).distinct().toList());
        tree.put("kept-from-by", List.copyOf(new TreeSet<>(family.tags())));
        tree.put("cues", Stream.of(words.cues().landing(), words.cues().drive(), words.cues().both()).flatMap(List::stream).distinct().toList());
        tree.put("easier", List.copyOf(words.easier().values()));
        tree.put("harder", List.copyOf(words.harder().values()));
        tree.put("instead", family.instead());
        return tree;
    }
}
