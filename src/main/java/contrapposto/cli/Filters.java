package contrapposto.cli;

import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.catalogue.Stage;
import contrapposto.spec.Nearest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** Which families a list shows: those that pass every filter given. */
final class Filters {
    @Option(names = "--stage", paramLabel = "STAGE", description = "Only this stage: floor, supported, standing or integrated.")
    private Optional<String> stage = Optional.empty();

    @Option(names = "--muscle", paramLabel = "MUSCLE", description = "Only what trains this muscle, on either side: hamstrings, serratus-anterior, …")
    private Optional<String> muscle = Optional.empty();

    @Option(names = "--implement", paramLabel = "THING", description = "Only what this can load: body-weight, dumbbell, kettlebell, barbell, cable or band.")
    private Optional<String> implement = Optional.empty();

    @Option(names = "--avoid", paramLabel = "RESTRICTION", split = ",",
            description = "Only what is left when a person keeps away from these: kneeling, grip, knee, … as in a spec.")
    private List<String> avoid = List.of();

    /** Whether any filter is given. */
    boolean given() {
        return stage.isPresent() || muscle.isPresent() || implement.isPresent() || !avoid.isEmpty();
    }

    /** In catalogue order. @throws Console.Usage naming the nearest word when one is not known */
    List<Family> of(Catalogue catalogue) {
        var one = stage.map(word -> known("stage", word, Stage.values(), Stage::word));
        var worked = muscle.map(word -> known("muscle", word, Muscle.values(), Muscle::word));
        var held = implement.map(word -> known("implement", word, Implement.values(), Implement::word));
        var away = avoid.stream().map(word -> known("avoid", word, RestrictionTag.values(), RestrictionTag::word).word()).toList();
        return catalogue.families().stream()
                .filter(f -> one.isEmpty() || f.stage() == one.get())
                .filter(f -> worked.isEmpty() || trains(f, worked.get()))
                .filter(f -> held.isEmpty() || f.levers().implement().contains(held.get()))
                .filter(f -> away.stream().noneMatch(f.tags()::contains)).toList();
    }

    private static boolean trains(Family family, Muscle muscle) {
        return Stream.concat(family.muscles().stream(), family.otherSideMuscles().stream()).anyMatch(use -> use.muscle() == muscle);
    }

    private static <E> E known(String option, String word, E[] all, Function<E, String> words) {
        return Arrays.stream(all).filter(e -> words.apply(e).equalsIgnoreCase(word)).findFirst().orElseThrow(() -> {
            var every = Arrays.stream(all).map(words).toList();
            return new Console.Usage("`--" + option + " " + word + "` is not known" + Nearest.of(word, every)
                    .map(near -> ", did you mean `" + near + "`?").orElse("") + "; the words are " + String.join(", ", every));
        });
    }
}
