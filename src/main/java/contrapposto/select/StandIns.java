package contrapposto.select;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.quantity.Sided;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What would best stand in for an exercise of the plan: of those that do the same kind of work (legs, arms or trunk) and train, on each
 * side, a third of the muscles it trains in full, the nearest in kind; of equals the best by the score that the plan was chosen by. Each takes
 * its place, in its weeks, and the plan is scored again.
 *
 * <p>Where something hurts, nobody knows yet what. What stands in must ask for nothing that the exercise does not ask for, and for less:
 * fewer of its joints and demands. The more joints it leaves in peace, the better (house).
 */
final class StandIns {
    /** What an exercise asks of a body besides its position. */
    private static final Set<RestrictionTag> DEMANDS = EnumSet.complementOf(EnumSet.of(RestrictionTag.KNEELING, RestrictionTag.PRONE,
            RestrictionTag.SUPINE, RestrictionTag.SIDE_LYING, RestrictionTag.FLOOR));
    /** A joint left in peace outweighs nearness in kind. */
    private static final int JOINT = 10;
    /** Always at hand, so never taken. */
    private static final Set<String> AT_HAND = Set.of("mat", "wall", "support");

    private final SetUps setUps;
    private final Tally tally;
    private final Scale scale;
    private final Search.Found found;
    private final List<Item> free;

    /** @param free exercises that no hard rule keeps out of a plan */
    StandIns(SetUps setUps, Frame frame, Scale scale, Search.Found found, List<Item> free) {
        this.setUps = setUps;
        this.tally = Tally.all(frame, found.chosen());
        this.scale = scale;
        this.found = found;
        this.free = free;
    }

    /** A plan with another exercise in the place of one. */
    private record Other(Item item, long[] amounts) { }

    Instead of(Item item) {
        return new Instead(taken(item).map(other -> other.item().id()), hurts(item).map(other -> other.item().id()));
    }

    /** What the plan would lose, for the coach: without the exercise, and with what stands in for it. */
    List<Reason> reasons(Item item) {
        var reasons = new ArrayList<Reason>();
        if (!item.pinned()) {
            best(item, other -> other, other -> true, other -> 0).ifPresent(other -> reasons.add(Reason.of("earns", loss(Said.of("earns"), other), Source.SOLVED)));
        }
        taken(item).ifPresent(other -> reasons.add(Reason.of("instead", loss(Said.of("instead/taken"), other), Source.SOLVED)));
        hurts(item).ifPresent(other -> reasons.add(Reason.of("instead", loss(Said.of("instead/hurts"), other)
                .word("how", spares(item, other.item()) ? "spares" : "easier"), Source.SOLVED)));
        return List.copyOf(reasons);
    }

    private Said loss(Said said, Other other) {
        return goal(scale, found.amounts(), other.amounts(), said.exercise("exercise", other.item().id()));
    }

    /** With the first goal on which two plans differ, and how much each scores on it. */
    static Said goal(Scale scale, long[] now, long[] then, Said said) {
        var goal = scale.decides(then, now);
        return said.word("goal", "goal-" + goal.word()).count("now", now[goal.ordinal()]).count("then", then[goal.ordinal()]);
    }

    private Optional<Other> taken(Item item) {
        var needs = needs(item);
        return needs.isEmpty() ? Optional.empty() : best(item, other -> other.inPlaceOf(item), other -> needs(other).stream().noneMatch(needs::contains),
                other -> kinship(item, other));
    }

    private Optional<Other> hurts(Item item) {
        return best(item, other -> other.inPlaceOf(item), other -> gentler(item, other),
                other -> spared(item, other) * JOINT + kinship(item, other));
    }

    private boolean gentler(Item item, Item other) {
        var asks = demands(family(item));
        var less = demands(family(other));
        return asks.containsAll(less) && less.size() < asks.size();
    }

    /** How many of its joints another leaves in peace. */
    private int spared(Item item, Item other) {
        var joints = joints(family(item));
        joints.removeAll(joints(family(other)));
        return joints.size();
    }

    /** How near in kind, the higher the nearer: the same movement under load; then the same turn; then the same place and base. */
    private int kinship(Item item, Item other) {
        int group = item.group() == other.group() && item.group() != CapacityGroup.NONE ? 4 : 0;
        int turn = item.turning() && other.turning() ? 2 : 0;
        int place = item.onFeet() == other.onFeet() ? 1 : 0;
        return group + turn + place + (family(item).base() == family(other).base() ? 1 : 0);
    }

    /**
     * @param as   how the other would stand in the plan
     * @param rank goes before the score
     */
    private Optional<Other> best(Item item, UnaryOperator<Item> as, Predicate<Item> fits, ToIntFunction<Item> rank) {
        Optional<Other> best = Optional.empty();
        for (var other : free) {
            if (!found.chosen().contains(other) && serves(item, other) && fits.test(other)) {
                var amounts = tally.exchanged(found.chosen().indexOf(item), as.apply(other));
                if (amounts.isPresent() && (best.isEmpty() || beats(new Other(other, amounts.get()), best.get(), rank))) {
                    best = Optional.of(new Other(other, amounts.get()));
                }
            }
        }
        return best;
    }

    private boolean beats(Other one, Other best, ToIntFunction<Item> rank) {
        int nearer = Integer.compare(rank.applyAsInt(one.item()), rank.applyAsInt(best.item()));
        return nearer > 0 || nearer == 0 && scale.score(one.amounts()) > scale.score(best.amounts());
    }

    /** Whether one side's work covers a third of what the other's trains in full (house). */
    private static boolean trains(Map<Muscle, Integer> wanted, Map<Muscle, Integer> offered) {
        int all = 0;
        int some = 0;
        for (var use : wanted.entrySet()) {
            all += use.getValue() >= 2 ? use.getValue() : 0;
            some += use.getValue() >= 2 ? Math.min(use.getValue(), offered.getOrDefault(use.getKey(), 0)) : 0;
        }
        return all > 0 && 3 * some >= all;
    }

    /** Whether it does the same kind of work on all the sides of the other, on a third of the chief muscles of each, and belongs to no later stage. */
    private boolean serves(Item item, Item other) {
        var sides = sides(item).sides();
        return other.works() == item.works() && other.stage().compareTo(item.stage()) <= 0 && sides(other).sides().containsAll(sides)
                && sides.stream().allMatch(side -> trains(item.on(side), other.on(side)));
    }

    private boolean spares(Item item, Item other) {
        return spared(item, other) == joints(family(item)).size();
    }

    private static Set<RestrictionTag> joints(Family family) {
        return demands(family).stream().filter(tag -> tag.compareTo(RestrictionTag.NECK) >= 0)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(RestrictionTag.class)));
    }

    private static Set<RestrictionTag> demands(Family family) {
        return family.tags().stream().flatMap(tag -> RestrictionTag.of(tag).stream()).filter(DEMANDS::contains)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(RestrictionTag.class)));
    }

    private Set<String> needs(Item item) {
        var needs = new TreeSet<>(item.things());
        needs.addAll(family(item).levers().needs());
        needs.removeAll(AT_HAND);
        return needs;
    }

    private Family family(Item item) {
        return sides(item).values().getFirst().family();
    }

    private Sided<SolvedSetUp> sides(Item item) {
        return setUps.usable().get(item.id());
    }
}
