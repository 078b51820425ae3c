package contrapposto.cli;

import contrapposto.catalogue.Catalogue;
import contrapposto.check.CheckedSpec;
import contrapposto.compose.Composer;
import contrapposto.compose.Templates;
import contrapposto.notice.Outcome;
import contrapposto.press.Press;
import contrapposto.press.Wanted;
import contrapposto.quantity.Side;
import contrapposto.spec.Nearest;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "explain", mixinStandardHelpOptions = true, description = "Says why this and why not that: every decision of a plan, with its source.",
        footer = {"", "Example: contrapposto explain programs/newcomer-right.yaml --exercise split-squat --side left"})
final class ExplainCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(paramLabel = "SPEC", description = "A spec file.")
    private Path spec = Path.of("");

    @Option(names = "--exercise", paramLabel = "ID", description = "Only this exercise, in the plan or left out.")
    private Optional<String> exercise = Optional.empty();

    @Option(names = "--side", paramLabel = "SIDE", description = "Only this side: left or right.")
    private Optional<Side> side = Optional.empty();

    @Mixin
    private final House house = new House();

    @Mixin
    private final Voice voice = new Voice();

    ExplainCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        var outcome = house.open(streams).then(catalogue -> {
            exercise.filter(id -> catalogue.family(id).isEmpty()).ifPresent(id -> {
                throw new Console.Usage("there is no exercise `" + id + "`" + nearest(id, catalogue) + "; `contrapposto exercises` lists them");
            });
            return read(catalogue);
        });
        streams.notices(outcome.notices());
        return switch (outcome) {
            case Outcome.Refused<?> refused -> Console.NOTHING;
            case Outcome.Done<Explanation>(var explanation, var notices) -> {
                streams.out().print(explanation.text(exercise, side));
                yield explanation.withheld() ? Console.PARTLY : Console.DONE;
            }
        };
    }

    private Outcome<Explanation> read(Catalogue catalogue) {
        var press = new Press(catalogue, new Composer(Templates.own()), new Wanted(List.of(), Optional.empty(), Optional.empty(), false));
        return Inputs.one(spec, streams, catalogue).spec()
                .map((CheckedSpec checked) -> new Explanation(press.solve(checked)));
    }

    /** {@code , did you mean `split-squat`?} when some id is near. */
    static String nearest(String id, Catalogue catalogue) {
        return Nearest.of(id, catalogue.families().stream().map(f -> f.id()).toList()).map(near -> ", did you mean `" + near + "`?").orElse("");
    }
}
