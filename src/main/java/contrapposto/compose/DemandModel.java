package contrapposto.compose;

import contrapposto.catalogue.Family.Works;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Optional;

/**
 * What each side of a loaded exercise can bear and is asked to in its first week, one side under the other: equal weights are
 * not equal work where the sides differ in set-up or strength. As finished words.
 *
 * @param known empty where no test counts for the side, so that it begins by effort
 */
record DemandModel(String number, String name, List<Row> rows) {
    record Row(String badge, Optional<Known> known) { }

    /**
     * @param capacity of hip and knee together at the 1RM in N·m, of an arm the 1RM itself
     * @param wanted   share of it, {@code exact} the weight that asks just that; empty where the body alone is asked
     * @param printed  weight of the first week; empty for body weight
     * @param asked    share that this asks, {@code cost} by how much less than wanted
     */
    record Known(String capacity, String wanted, Optional<String> exact, Optional<String> printed, String asked, Cost cost) { }

    /** @param percent points of capacity, {@code mass} lighter than exact; both empty where nothing was rounded */
    record Cost(Optional<String> percent, Optional<String> mass) { }

    /** Every exercise of which one side at least was tested, in the order of the plan. */
    static List<DemandModel> of(PlanWords words) {
        return words.plan().exercises().stream().filter(exercise -> exercise.sides().values().stream().anyMatch(side -> side.capacity().isPresent()))
                .map(exercise -> new DemandModel(Integer.toString(exercise.number()), words.name(exercise.id()), PlanWords.rows(exercise.sides()).stream()
                        .map(side -> row(words, exercise.sides().on(side), PlanWords.badge(exercise.sides(), side))).toList())).toList();
    }

    private static Row row(PlanWords words, Plan.SidePlan side, String badge) {
        return new Row(badge, side.capacity().map(capacity -> known(words, side, capacity)));
    }

    private static Known known(PlanWords words, Plan.SidePlan side, Plan.Capacity capacity) {
        var units = words.units();
        var first = side.doses().getFirst();
        boolean arm = side.solved().family().works() == Works.ARM;
        double load = first.load().orElse(0);
        double share = first.share().orElse(0);
        double less = capacity.exactLoad() - load;
        double points = capacity.wanted() - share;
        boolean rounded = less >= 0.05 && points > 0.0005;
        return new Known(arm ? units.mass(capacity.oneRepMax()) : units.moment(capacity.together()), units.percent(capacity.wanted(), 1),
                capacity.exactLoad() > 0 ? Optional.of(units.mass(capacity.exactLoad())) : Optional.empty(), load > 0 ? Optional.of(units.mass(load)) : Optional.empty(),
                units.percent(share, 1), new Cost(rounded ? Optional.of(units.percent(points, 1)) : Optional.empty(),
                rounded ? Optional.of(units.mass(Math.round(less * 10) / 10.0)) : Optional.empty()));
    }
}
