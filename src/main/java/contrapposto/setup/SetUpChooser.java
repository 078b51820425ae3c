package contrapposto.setup;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessed.Target;
import contrapposto.assess.Reason;
import contrapposto.assess.Role;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.body.PoseSolver;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Phase;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Sets up every family for each side of one person. It never fails as a whole: a family that has no set-up on either side
 * goes to {@link SetUps#leftOut} with its reasons. The same input gives the same set-ups; the mirrored finding gives
 * mirror images; a square pelvis gives the same on both sides.
 */
public final class SetUpChooser {
    private final Function<PoseProblem, PoseOutcome> solver;
    private final boolean parallel;

    public SetUpChooser() {
        this(PoseSolver::solve);
    }

    SetUpChooser(Function<PoseProblem, PoseOutcome> solver) {
        this(solver, false);
    }

    private SetUpChooser(Function<PoseProblem, PoseOutcome> solver, boolean parallel) {
        this.solver = solver;
        this.parallel = parallel;
    }

    /** The same chooser, which works on several families at once: families know nothing of each other. */
    public SetUpChooser inParallel() {
        return new SetUpChooser(solver, true);
    }

    /** The same chooser, which keeps every pose it has solved: for one person in several rooms or under several restrictions. */
    public SetUpChooser remembering() {
        return new SetUpChooser(new SolvedOnce(solver), parallel);
    }

    /** Chooses for every family of {@code catalogue}, in its order. */
    public SetUps choose(Assessed assessed, Catalogue catalogue) {
        var solved = new SolvedOnce(solver);
        var usable = new LinkedHashMap<String, Sided<SolvedSetUp>>();
        var leftOut = new LinkedHashMap<String, List<Reason>>();
        var refused = new LinkedHashMap<String, Map<Side, List<Reason>>>();
        var families = catalogue.families();
        var each = (parallel ? families.parallelStream() : families.stream()).map(family -> answers(assessed, catalogue, family, solved)).toList();
        for (int i = 0; i < families.size(); i++) {
            var family = families.get(i);
            var answers = each.get(i);
            sided(family, answers).ifPresentOrElse(sides -> usable.put(family.id(), sides),
                    () -> leftOut.put(family.id(), answers.values().stream()
                            .flatMap(a -> a.refusals().stream()).distinct().toList()));
            answers.forEach((side, answer) -> {
                if (answer.solved().isEmpty() && usable.containsKey(family.id())) {
                    refused.computeIfAbsent(family.id(), id -> new LinkedHashMap<>()).put(side, answer.refusals());
                }
            });
        }
        return new SetUps(assessed, catalogue, Collections.unmodifiableMap(usable), Collections.unmodifiableMap(leftOut),
                Collections.unmodifiableMap(refused));
    }

    private static Map<Side, Choice.Answer> answers(Assessed assessed, Catalogue catalogue, Family family, SolvedOnce solved) {
        var answers = new LinkedHashMap<Side, Choice.Answer>();
        var sides = family.sides() == Family.Sides.BOTH ? List.of(Side.LEFT) : List.of(Side.LEFT, Side.RIGHT);
        for (var side : sides) {
            answers.put(side, new Choice(question(assessed, catalogue, family, side), solved).answer());
        }
        return answers;
    }

    private static Optional<Sided<SolvedSetUp>> sided(Family family, Map<Side, Choice.Answer> answers) {
        var left = answers.get(Side.LEFT).solved();
        if (family.sides() == Family.Sides.BOTH) {
            return left.map(Sided.Whole::new);
        }
        var right = answers.get(Side.RIGHT).solved();
        if (left.isPresent() && right.isPresent()) {
            return Optional.of(new Sided.Each<>(left.get(), right.get()));
        }
        return left.<Sided<SolvedSetUp>>map(l -> new Sided.Only<>(Side.LEFT, l))
                .or(() -> right.map(r -> new Sided.Only<>(Side.RIGHT, r)));
    }

    /**
     * The same set-up solved again with {@code kg} on each implement, its phase, muscles and reasons brought up to date.
     * Empty where no pose holds that weight.
     */
    public Optional<SolvedSetUp> resolve(SetUps setUps, SolvedSetUp chosen, double kg) {
        var question = question(setUps.assessed(), setUps.catalogue(), chosen.family(), chosen.side());
        return new Choice(question, solver).resolve(chosen, kg);
    }

    /**
     * The problem of a test as it was done: flat feet and the weight in both hands (or one in each) unless {@code wish}
     * says otherwise, in the usual stance, {@code kg} on each implement.
     */
    public PoseProblem asTested(SetUps setUps, Family family, Side side, SetUpWish wish, double kg) {
        var question = question(setUps.assessed(), setUps.catalogue(), family, side);
        return Tested.problem(question, wish, kg);
    }

    private static Question question(Assessed assessed, Catalogue catalogue, Family family, Side side) {
        return new Question(assessed, catalogue.rules(), family, side, target(assessed, family, side), assessed.spec().client().person(),
                Restraints.of(assessed, catalogue.rules()), assessed.spec().equipment(), assessed.spec().choices().setup()
                .getOrDefault(family.id(), Map.of()).getOrDefault(side, SetUpWish.NONE));
    }

    /** A symmetric set-up serves both sides at once, so it has no side's phase or turn to serve. */
    private static Target target(Assessed assessed, Family family, Side side) {
        var own = assessed.target(side);
        if (family.sides() == Family.Sides.EACH) {
            return own;
        }
        var first = assessed.target(assessed.landing().orElse(Side.LEFT));
        var second = assessed.target(assessed.landing().orElse(Side.LEFT).other());
        var muscles = Stream.concat(first.muscles().stream(), second.muscles().stream()).distinct().toList();
        return new Target(Role.BOTH, List.of(Phase.values()), Zone.WHOLE_SOLE, muscles, Family.Ribs.NEITHER,
                Optional.empty());
    }
}
