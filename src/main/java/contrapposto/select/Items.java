package contrapposto.select;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Family.Ribs;
import contrapposto.catalogue.Family.Toward;
import contrapposto.catalogue.HouseRules.Band;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.setup.SetUp;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Reads solved set-ups as {@link Item}s: what each would cover, cost and ask for in this client's plan. */
final class Items {
    private static final int SETS_THAT_COUNT = 2;

    private final SetUps setUps;
    private final Stages stages;
    private final Band band;
    private final Optional<String> balance;

    Items(SetUps setUps, Stages stages) {
        this.setUps = setUps;
        this.stages = stages;
        this.balance = Balance.wanted(setUps);
        this.band = setUps.catalogue().rules().band(spec().client().trainingYears());
    }

    private CheckedSpec spec() {
        return setUps.assessed().spec();
    }

    /** In catalogue order. */
    List<Item> all() {
        var items = new ArrayList<Item>();
        for (var entry : setUps.usable().entrySet()) {
            items.add(item(items.size(), entry.getValue().values().getFirst().family(), entry.getValue()));
        }
        return List.copyOf(items);
    }

    private Item item(int place, Family family, Sided<SolvedSetUp> sides) {
        boolean tested = spec().assessment().tests().stream().anyMatch(t -> t.exercise().equals(family.id()));
        boolean pinned = tested || spec().choices().include().contains(family.id()) || balance.filter(family.id()::equals).isPresent();
        boolean loaded = sides.values().stream().anyMatch(s -> s.setUp().count() > 0
                && s.setUp().implement() != Implement.BODY_WEIGHT);
        boolean light = family.works() == Family.Works.LEG && !loaded && family.stage().compareTo(Stage.STANDING) < 0;
        boolean twoSided = !light && family.sides() == Family.Sides.BOTH
                && (family.group() == CapacityGroup.KNEE_BEND || family.group() == CapacityGroup.HINGE);
        int most = Math.min(band.sets(), family.dose().sets());
        double fetch = SessionTime.seconds(family.dose(), rounds(sides), 0);
        return new Item(place, family.id(), family.stage(), family.group(), family.works(), stages.window(family.stage(), pinned,
                light || family.stage() == Stage.FLOOR),
                muscles(sides, Side.LEFT), muscles(sides, Side.RIGHT), phased(sides), ribs(family, sides),
                turns(family), loaded, light, twoSided,
                loaded && family.stage().compareTo(Stage.STANDING) >= 0 ? direct(sides) : Set.of(), things(sides), fetch,
                SessionTime.seconds(family.dose(), rounds(sides), 1) - fetch, Math.min(SETS_THAT_COUNT, most), most, pinned);
    }

    /** Sides done one after the other. */
    static int rounds(Sided<SolvedSetUp> sides) {
        return sides.values().size();
    }

    private boolean turns(Family family) {
        return setUps.assessed().landing().isPresent() && family.turn().toward() != Toward.NONE;
    }

    /** Sides on which the solved phase is one that the side is to train; a symmetric set-up trains no side's phase. */
    private Set<Side> phased(Sided<SolvedSetUp> sides) {
        var phased = EnumSet.noneOf(Side.class);
        for (var side : Side.values()) {
            if (!(sides instanceof Sided.Whole) && sides.has(side)
                    && sides.on(side).phase().filter(setUps.assessed().target(side).phases()::contains).isPresent()) {
                phased.add(side);
            }
        }
        return Collections.unmodifiableSet(phased);
    }

    /** Sides whose wanted ribs the family opens while that side works. */
    private Set<Side> ribs(Family family, Sided<SolvedSetUp> sides) {
        var ribs = EnumSet.noneOf(Side.class);
        for (var side : Side.values()) {
            if (family.ribs() != Ribs.NEITHER && sides.has(side) && setUps.assessed().target(side).ribs() == family.ribs()) {
                ribs.add(side);
            }
        }
        return Collections.unmodifiableSet(ribs);
    }

    /** Half sets of a round for one side: its own work and what the other side's work adds. */
    private static Map<Muscle, Integer> muscles(Sided<SolvedSetUp> sides, Side side) {
        var halves = new EnumMap<Muscle, Integer>(Muscle.class);
        if (sides.has(side)) {
            Item.halves(sides.on(side).muscles()).forEach((m, n) -> halves.merge(m, n, Integer::sum));
        }
        if (sides.has(side.other())) {
            Item.halves(sides.on(side.other()).otherSideMuscles()).forEach((m, n) -> halves.merge(m, n, Integer::sum));
        }
        return Collections.unmodifiableMap(halves);
    }

    private static Set<Muscle> direct(Sided<SolvedSetUp> sides) {
        var direct = EnumSet.noneOf(Muscle.class);
        sides.values().forEach(s -> s.muscles().forEach((muscle, share) -> {
            if (share >= 1) {
                direct.add(muscle);
            }
        }));
        return Collections.unmodifiableSet(direct);
    }

    private static Set<String> things(Sided<SolvedSetUp> sides) {
        var things = new TreeSet<String>();
        for (var solved : sides.values()) {
            var s = solved.setUp();
            if (s.count() > 0) {
                things.add(s.implement().word());
            }
            if (s.frontRaise().metres() + s.rearRaise().metres() + s.raise().metres() > 0) {
                things.add("box or bench");
            }
            if (s.heelWedge().metres() > 0) {
                things.add("wedge");
            }
            if (s.handSupport() != SetUp.Support.NONE) {
                things.add("support");
            }
        }
        return Collections.unmodifiableSet(things);
    }
}
