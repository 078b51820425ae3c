package contrapposto.cli;

import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.FamilyWords;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.deliver.Json;
import contrapposto.notice.Outcome;
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

@Command(name = "exercises", mixinStandardHelpOptions = true, description = "Lists the exercise families, or shows one.",
        footer = {"", "Example: contrapposto exercises split-squat"})
final class ExercisesCommand implements Callable<Integer> {
    private static final String LANGUAGE = "en";

    private final Streams streams;

    @Mixin
    private final Voice voice = new Voice();

    @Mixin
    private final House house = new House();

    @Option(names = "--json", description = "Print as JSON.")
    private boolean json;

    @Parameters(paramLabel = "ID", arity = "0..1", description = "The family to show.")
    private Optional<String> id = Optional.empty();

    ExercisesCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        return switch (house.open(streams)) {
            case Outcome.Refused<?> refused -> {
                streams.notices(refused.notices());
                yield Console.NOTHING;
            }
            case Outcome.Done<Catalogue>(var catalogue, var notices) -> {
                streams.notices(notices);
                yield id.map(wanted -> one(catalogue, wanted)).orElseGet(() -> all(catalogue));
            }
        };
    }

    private int all(Catalogue catalogue) {
        if (json) {
            streams.out().print(Json.of(catalogue.families().stream().map(f -> tree(catalogue, f)).toList()));
            return Console.DONE;
        }
        catalogue.families().forEach(family -> streams.out().println(String.format(Locale.ROOT, "%-22s %-11s %s", family.id(),
                family.stage().word(), catalogue.words(LANGUAGE, family.id()).name())));
        return Console.DONE;
    }

    private int one(Catalogue catalogue, String wanted) {
        Family family = catalogue.family(wanted).orElseThrow(() -> new Console.Usage("there is no exercise `" + wanted + "`"
                + ExplainCommand.nearest(wanted, catalogue) + "; `contrapposto exercises` lists them"));
        var tree = tree(catalogue, family);
        if (json) {
            streams.out().print(Json.of(tree));
            return Console.DONE;
        }
        tree.forEach((key, value) -> streams.out().println(String.format(Locale.ROOT, "%-14s %s", key,
                value instanceof List<?> list ? list.stream().map(Object::toString).collect(Collectors.joining("; ")) : value)));
        return Console.DONE;
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
