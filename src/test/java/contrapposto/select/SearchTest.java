package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.quantity.Side;
import contrapposto.select.Selection.StageWeeks;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Branch and bound against trying everything, scored by a second, plain reading of the goals. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SearchTest {
    private static final int CASES = 240;

    @Test
    void finds_what_trying_everything_finds() {
        var random = new Random(20261125);
        int chosen = 0;
        int tight = 0;
        for (int c = 0; c < CASES; c++) {
            var frame = frame(random);
            var items = items(random, 4 + random.nextInt(8));
            var scale = Scale.of(frame.aims());
            var found = Search.best(frame, scale, items);
            var expected = bruteForce(frame, scale, Search.ordered(frame, scale, items));
            assertEquals(score(frame, scale, expected), found.score(), "case " + c);
            assertEquals(expected, found.chosen(), "case " + c);
            chosen += found.chosen().size();
            tight += found.chosen().size() < items.size() ? 1 : 0;
        }
        assertTrue(chosen > 2 * CASES, "the cases choose something: " + chosen);
        assertTrue(tight > CASES / 3, "the cases leave something out: " + tight);
    }

    @Test
    void spreads_over_neighbouring_days_as_trying_everything_would() {
        var random = new Random(11);
        int split = 0;
        for (int c = 0; c < CASES; c++) {
            var frame = frame(random);
            var items = items(random, 1 + random.nextInt(5));
            var spread = Days.spread(frame, items);
            if (spread.isEmpty()) {
                assertTrue(all(items.size()).stream().filter(d -> !frame.sessionsTouch() ? d.stream().allMatch(Duty.BOTH::equals)
                        : rested(frame, items, d)).noneMatch(d -> fits(frame, items, d)), "case " + c);
                continue;
            }
            var duties = List.copyOf(spread.get().values());
            assertTrue(fits(frame, items, duties), "case " + c);
            assertTrue(!frame.sessionsTouch() || rested(frame, items, duties), "case " + c);
            if (!frame.sessionsTouch()) {
                assertTrue(duties.stream().allMatch(Duty.BOTH::equals), "case " + c);
            }
            int sessions = duties.stream().mapToInt(d -> times(frame, d)).sum();
            long covered = covered(frame, items, duties);
            for (var other : all(items.size())) {
                if ((!frame.sessionsTouch() || rested(frame, items, other)) && fits(frame, items, other)) {
                    long its = covered(frame, items, other);
                    assertTrue(its < covered || its == covered
                            && other.stream().mapToInt(d -> times(frame, d)).sum() <= sessions, "case " + c);
                }
            }
            split += duties.stream().anyMatch(d -> d != Duty.BOTH) ? 1 : 0;
        }
        assertTrue(split > CASES / 10, "the cases split some weeks: " + split);
    }

    private static boolean fits(Frame frame, List<Item> items, List<Duty> duties) {
        for (var block : frame.blocks()) {
            for (var left : List.of(Duty.A, Duty.B)) {
                var here = new ArrayList<Item>();
                for (int i = 0; i < items.size(); i++) {
                    if (duties.get(i) != left) {
                        here.addAll(in(List.of(items.get(i)), block));
                    }
                }
                boolean never = frame.days().size() == 1 && left == Duty.A;
                if (!never && (here.size() > frame.perSession()
                        || here.stream().mapToDouble(i -> i.seconds(i.least())).sum() > frame.seconds() + 1e-6)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static List<List<Duty>> all(int size) {
        var all = new ArrayList<List<Duty>>(List.of(List.of()));
        for (int i = 0; i < size; i++) {
            var longer = new ArrayList<List<Duty>>();
            for (var head : all) {
                for (var duty : Duty.values()) {
                    var list = new ArrayList<>(head);
                    list.add(duty);
                    longer.add(list);
                }
            }
            all = longer;
        }
        return all;
    }

    private static int times(Frame frame, Duty duty) {
        return duty == Duty.BOTH ? frame.days().size() : frame.daysOf(duty == Duty.A ? 0 : 1);
    }

    private static long covered(Frame frame, List<Item> items, List<Duty> duties) {
        long sum = 0;
        for (var side : Side.values()) {
            for (var wanted : frame.wanted().get(side).entrySet()) {
                int halves = 0;
                for (int i = 0; i < items.size(); i++) {
                    var muscles = side == Side.LEFT ? items.get(i).left() : items.get(i).right();
                    halves += times(frame, duties.get(i)) * muscles.getOrDefault(wanted.getKey(), 0);
                }
                sum += (long) wanted.getValue() * Math.min(4, halves);
            }
        }
        return sum;
    }

    private static boolean rested(Frame frame, List<Item> items, List<Duty> duties) {
        for (int i = 0; i < items.size(); i++) {
            boolean a = duties.get(i) != Duty.B && frame.touchesItself(0);
            boolean b = duties.get(i) != Duty.A && frame.touchesItself(1);
            if ((a || b) && !items.get(i).hard().isEmpty()) {
                return false;
            }
        }
        for (int i = 0; i < items.size(); i++) {
            for (int j = 0; j < items.size(); j++) {
                var shared = new TreeSet<>(items.get(i).hard());
                shared.retainAll(items.get(j).hard());
                boolean a = duties.get(i) == Duty.A || duties.get(i) == Duty.BOTH;
                boolean b = duties.get(j) == Duty.B || duties.get(j) == Duty.BOTH;
                if (a && b && !shared.isEmpty()) {
                    return false;
                }
            }
        }
        return true;
    }

    @Test
    void a_large_catalogue_is_searched_in_time() {
        var random = new Random(7);
        long worst = 0;
        for (int c = 0; c < 6; c++) {
            var frame = frame(random);
            var items = items(random, 40);
            long before = System.nanoTime();
            Search.best(frame, Scale.of(frame.aims()), items);
            worst = Math.max(worst, System.nanoTime() - before);
        }
        assertTrue(worst < 3_000_000_000L, "worst of searches over 40 exercises, ms: " + worst / 1_000_000);
    }

    static List<Item> bruteForce(Frame frame, Scale scale, List<Item> items) {
        List<Item> best = List.of();
        long bestScore = Long.MIN_VALUE;
        for (int out = 0; out < 1 << items.size(); out++) {
            var chosen = new ArrayList<Item>();
            for (int i = 0; i < items.size(); i++) {
                if ((out >> (items.size() - 1 - i) & 1) == 0) {
                    chosen.add(items.get(i));
                }
            }
            if (allowed(frame, chosen) && score(frame, scale, chosen) > bestScore) {
                bestScore = score(frame, scale, chosen);
                best = chosen;
            }
        }
        return best;
    }

    private static boolean allowed(Frame frame, List<Item> chosen) {
        if (chosen.size() > frame.inAll() || chosen.stream().filter(Item::twoSided).count() > frame.twoSided()) {
            return false;
        }
        for (var block : frame.blocks()) {
            var here = in(chosen, block);
            boolean standing = block.stage() == Stage.STANDING || block.stage() == Stage.INTEGRATED;
            if (here.size() > frame.perSession()
                    || here.stream().mapToDouble(i -> i.fetchSeconds() + i.least() * i.setSeconds()).sum() > frame.seconds() + 1e-6
                    || standing && here.stream().filter(i -> i.stage() == Stage.FLOOR).count() > 1) {
                return false;
            }
        }
        return true;
    }

    private static List<Item> in(List<Item> items, StageWeeks block) {
        return items.stream().filter(i -> i.window().first() <= block.lastWeek() && i.window().last() >= block.firstWeek()).toList();
    }

    /** Every goal from the whole selection, nothing carried along. */
    static long score(Frame frame, Scale scale, List<Item> chosen) {
        long[] sums = new long[Goal.values().length];
        var groups = EnumSet.noneOf(CapacityGroup.class);
        for (var item : chosen) {
            sums[Goal.PINNED.ordinal()] += item.pinned() ? 1 : 0;
            sums[Goal.TWO_SIDED.ordinal()] |= item.twoSided() ? 1 : 0;
            sums[Goal.FETCHING.ordinal()] += Math.round(item.fetchSeconds() / 30) + item.things().size();
            sums[Goal.EARLIER.ordinal()] += item.place() + 1;
            groups.add(item.group());
        }
        sums[Goal.VARIETY.ordinal()] = groups.size();
        int days = frame.days().size();
        for (var block : frame.blocks()) {
            var here = in(chosen, block);
            sums[Goal.EVERY_WEEK.ordinal()] += Math.min(3, here.size()) + (here.stream().anyMatch(i -> i.works() == Family.Works.LEG) ? 1 : 0)
                    + (here.stream().anyMatch(i -> i.works() != Family.Works.LEG) ? 1 : 0);
            for (var side : Side.values()) {
                for (var wanted : frame.wanted().get(side).entrySet()) {
                    int halves = here.stream().mapToInt(i -> {
                        int own = (side == Side.LEFT ? i.left() : i.right()).getOrDefault(wanted.getKey(), 0);
                        return i.light() && onFeet(block.stage()) ? Math.min(1, own) : own;
                    }).sum() * days;
                    sums[Goal.MUSCLES.ordinal()] += (long) wanted.getValue() * Math.min(4, halves);
                }
            }
            sums[Goal.TURN.ordinal()] += Math.min(4, here.stream().filter(Item::turning).count());
            for (var group : List.of(CapacityGroup.KNEE_BEND, CapacityGroup.HINGE, CapacityGroup.PRESS, CapacityGroup.PULL)) {
                sums[Goal.PATTERNS.ordinal()] += Math.min(2, days * here.stream().filter(i -> i.loaded() && i.group() == group).count());
            }
            for (var side : Side.values()) {
                sums[Goal.PHASE.ordinal()] += Math.min(2, here.stream()
                        .filter(i -> i.phased().contains(side) && !(i.light() && onFeet(block.stage()))).count());
            }
            for (var side : Side.values()) {
                sums[Goal.RIBS.ordinal()] += here.stream().anyMatch(i -> i.ribs().contains(side)) ? 1 : 0;
            }
            sums[Goal.STANDING.ordinal()] += Math.min(4, here.stream().filter(i -> onFeet(i.stage())).count());
            sums[Goal.FILLED.ordinal()] += Math.min(frame.filled(), here.size());
        }
        return Arrays.stream(Goal.values()).mapToLong(g -> scale.of(g, sums[g.ordinal()])).sum();
    }

    private static boolean onFeet(Stage stage) {
        return stage == Stage.STANDING || stage == Stage.INTEGRATED;
    }

    static Frame frame(Random random) {
        var days = new ArrayList<DayOfWeek>();
        for (var day : DayOfWeek.values()) {
            if (random.nextInt(7) < 3) {
                days.add(day);
            }
        }
        if (days.isEmpty()) {
            days.add(DayOfWeek.TUESDAY);
        }
        var blocks = List.of(List.of(new StageWeeks(Stage.STANDING, 1, 4)),
                List.of(new StageWeeks(Stage.FLOOR, 1, 2), new StageWeeks(Stage.SUPPORTED, 3, 4), new StageWeeks(Stage.STANDING, 5, 8)),
                List.of(new StageWeeks(Stage.SUPPORTED, 1, 2), new StageWeeks(Stage.INTEGRATED, 3, 6))).get(random.nextInt(3));
        var aims = List.of(List.of(Aim.SIDE_TO_SIDE_MOVEMENT, Aim.STRENGTH), List.of(Aim.STRENGTH, Aim.SIDE_TO_SIDE_MOVEMENT),
                List.of(Aim.SIDE_TO_SIDE_MOVEMENT), List.of(Aim.STRENGTH)).get(random.nextInt(4));
        var wanted = new EnumMap<Side, Map<Muscle, Integer>>(Side.class);
        for (var side : Side.values()) {
            var weights = new EnumMap<Muscle, Integer>(Muscle.class);
            for (int weight = 5; weight >= 1; weight--) {
                weights.putIfAbsent(Muscle.values()[random.nextInt(8)], weight);
            }
            wanted.put(side, weights);
        }
        return new Frame(blocks, days, 600 + random.nextInt(1500), 2 + random.nextInt(4), 3, 2 + random.nextInt(5), 1, aims, wanted);
    }

    static List<Item> items(Random random, int size) {
        var items = new ArrayList<Item>();
        for (int i = 0; i < size; i++) {
            var stage = Stage.values()[random.nextInt(4)];
            boolean loaded = random.nextBoolean();
            var window = List.of(new Item.Window(1, 8), new Item.Window(3, 8), new Item.Window(1, 2)).get(random.nextInt(3));
            var things = new TreeSet<String>();
            for (var thing : List.of("dumbbell", "box or bench", "cable")) {
                if (random.nextInt(3) == 0) {
                    things.add(thing);
                }
            }
            items.add(new Item(i, "family-" + i, stage, CapacityGroup.values()[random.nextInt(9)], Family.Works.values()[random.nextInt(3)], window, muscles(random),
                    muscles(random), some(random), some(random), random.nextBoolean(), loaded,
                    !loaded && (stage == Stage.FLOOR || stage == Stage.SUPPORTED) && random.nextBoolean(), random.nextInt(4) == 0, loaded ? hard(random) : Set.of(), things,
                    30 + 30 * random.nextInt(3), 100 + random.nextInt(200), 2, 3, random.nextInt(6) == 0));
        }
        return items;
    }

    private static Set<Side> some(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> EnumSet.allOf(Side.class);
            case 1 -> EnumSet.of(Side.LEFT);
            case 2 -> EnumSet.of(Side.RIGHT);
            default -> EnumSet.noneOf(Side.class);
        };
    }

    private static Map<Muscle, Integer> muscles(Random random) {
        var muscles = new EnumMap<Muscle, Integer>(Muscle.class);
        for (int i = 0; i < 3; i++) {
            muscles.put(Muscle.values()[random.nextInt(8)], 1 + random.nextInt(2));
        }
        return muscles;
    }

    private static Set<Muscle> hard(Random random) {
        return EnumSet.of(Muscle.values()[random.nextInt(8)], Muscle.values()[random.nextInt(8)]);
    }
}
