package contrapposto.select;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The running sums of a partial selection, exercises put in and taken out again as {@link Search} goes: what is covered,
 * what is full, and the amounts scored. Mutable, and seen by its search alone. Exercises go by their place in its list.
 */
final class Tally {
    /** Half sets a week from which more of one muscle no longer counts: direct work in two sessions (twice a week, published). */
    static final int ENOUGH = 4;
    static final int TURNS_ENOUGH = 4;
    static final int PATTERN_ENOUGH = 2;
    /** Exercises of a side that train its phase, and exercises on the feet, from which more do not count. */
    static final int PHASE_ENOUGH = 2;
    static final int STANDING_ENOUGH = 4;
    private static final int PATTERNS = 4;

    private final Frame frame;
    private final List<Item> items;
    private final int blocks;
    private final Part[] parts;
    private final int[] covered;
    private final int[] turns;
    private final int[] patterns;
    private final int[] phased;
    private final int[] ribs;
    private final int[] standing;
    private final int[] count;
    private final double[] seconds;
    private final int[] floor;
    private final int[] groups = new int[CapacityGroup.values().length];
    private final long[] amount = new long[Goal.values().length];
    private int chosen;
    private int twoSided;

    /**
     * An exercise as numbers.
     *
     * @param in      the blocks it is done in
     * @param cells   of {@code covered} that it adds to, {@code adds} half sets a week, worth {@code weights} each
     * @param pattern it loads, −1 for none
     */
    private record Part(int[] in, int[] cells, int[] adds, int[] weights, int pattern, int group, double seconds) { }

    Tally(Frame frame, List<Item> items) {
        this.frame = frame;
        this.items = items;
        blocks = frame.blocks().size();
        parts = items.stream().map(this::part).toArray(Part[]::new);
        covered = new int[blocks * 2 * Muscle.values().length];
        turns = new int[blocks];
        patterns = new int[blocks * PATTERNS];
        phased = new int[blocks * 2];
        ribs = new int[blocks * 2];
        standing = new int[blocks];
        count = new int[blocks];
        seconds = new double[blocks];
        floor = new int[blocks];
    }

    private Part part(Item item) {
        var in = new ArrayList<Integer>();
        var cells = new ArrayList<int[]>();
        for (int b = 0; b < blocks; b++) {
            if (item.window().meets(frame.blocks().get(b))) {
                var block = frame.blocks().get(b);
                in.add(b);
                for (var side : Side.values()) {
                    int first = (b * 2 + side.ordinal()) * Muscle.values().length;
                    var wanted = frame.wanted().getOrDefault(side, Map.of());
                    item.on(side).forEach((muscle, halves) -> {
                        if (wanted.containsKey(muscle)) {
                            cells.add(new int[] {first + muscle.ordinal(),
                                item.counted(halves, block) * frame.days().size(), wanted.get(muscle)});
                        }
                    });
                }
            }
        }
        return new Part(in.stream().mapToInt(Integer::intValue).toArray(), cells.stream().mapToInt(c -> c[0]).toArray(),
                cells.stream().mapToInt(c -> c[1]).toArray(), cells.stream().mapToInt(c -> c[2]).toArray(), pattern(item),
                item.group().ordinal(), item.seconds(item.least()));
    }

    private static int pattern(Item item) {
        return !item.loaded() ? -1 : switch (item.group()) {
            case KNEE_BEND -> 0;
            case HINGE -> 1;
            case PRESS -> 2;
            case PULL -> 3;
            case CURL, EXTENSION, CALF, CARRY, NONE -> -1;
        };
    }

    /** Scored so far on each {@link Goal}; a copy. */
    long[] amounts() {
        return amount.clone();
    }

    /** Whether exercise {@code i} may join without breaking a hard rule. */
    boolean admits(int i) {
        var item = items.get(i);
        if (chosen >= frame.inAll() || item.twoSided() && twoSided >= frame.twoSided()) {
            return false;
        }
        for (int b : parts[i].in()) {
            if (count[b] >= frame.perSession() || crowdedFloor(item, b)
                    || seconds[b] + parts[i].seconds() > frame.seconds() + 1e-6) {
                return false;
            }
        }
        return true;
    }

    /** Once standing work leads, a session has one floor exercise, its opener. */
    private boolean crowdedFloor(Item item, int block) {
        return item.floor() && floor[block] >= 1 && frame.blocks().get(block).stage().compareTo(Stage.STANDING) >= 0;
    }

    /**
     * How many more of these exercises there can be at most: by number in all, and in each block by number and time; those
     * that are not done in a block do not count there.
     */
    int places(int[] open) {
        int places = Math.min(open.length, frame.inAll() - chosen);
        for (int b = 0; b < blocks; b++) {
            int elsewhere = 0;
            double shortest = Double.POSITIVE_INFINITY;
            for (int i : open) {
                boolean here = items.get(i).window().meets(frame.blocks().get(b));
                elsewhere += here ? 0 : 1;
                shortest = here ? Math.min(shortest, parts[i].seconds()) : shortest;
            }
            int byTime = (int) Math.min(frame.perSession(), (frame.seconds() - seconds[b] + 1e-6) / shortest);
            places = Math.min(places, elsewhere + Math.max(0, Math.min(frame.perSession() - count[b], byTime)));
        }
        return places;
    }

    void add(int i) {
        change(i, 1);
    }

    void remove(int i) {
        change(i, -1);
    }

    private void change(int i, int sign) {
        var item = items.get(i);
        var part = parts[i];
        chosen += sign;
        twoSided += item.twoSided() ? sign : 0;
        for (int c = 0; c < part.cells().length; c++) {
            int cell = part.cells()[c];
            int before = Math.min(ENOUGH, covered[cell]);
            covered[cell] += sign * part.adds()[c];
            grow(Goal.MUSCLES, (long) part.weights()[c] * (Math.min(ENOUGH, covered[cell]) - before));
        }
        for (int b : part.in()) {
            if (item.turning()) {
                grow(Goal.TURN, step(turns[b], sign, TURNS_ENOUGH));
                turns[b] += sign;
            }
            for (var side : item.phasedIn(frame.blocks().get(b))) {
                int cell = b * 2 + side.ordinal();
                grow(Goal.PHASE, step(phased[cell], sign, PHASE_ENOUGH));
                phased[cell] += sign;
            }
            for (var side : item.ribs()) {
                int cell = b * 2 + side.ordinal();
                grow(Goal.RIBS, step(ribs[cell], sign, 1));
                ribs[cell] += sign;
            }
            if (item.onFeet()) {
                grow(Goal.STANDING, step(standing[b], sign, STANDING_ENOUGH));
                standing[b] += sign;
            }
            if (part.pattern() >= 0) {
                int cell = b * PATTERNS + part.pattern();
                int before = Math.min(PATTERN_ENOUGH, patterns[cell]);
                patterns[cell] += sign * frame.days().size();
                grow(Goal.PATTERNS, Math.min(PATTERN_ENOUGH, patterns[cell]) - before);
            }
            grow(Goal.FILLED, step(count[b], sign, frame.filled()));
            count[b] += sign;
            seconds[b] += sign * part.seconds();
            floor[b] += item.floor() ? sign : 0;
        }
        grow(Goal.PINNED, item.pinned() ? sign : 0);
        amount[Goal.TWO_SIDED.ordinal()] = Math.min(1, twoSided);
        grow(Goal.VARIETY, step(groups[part.group()], sign, 1));
        groups[part.group()] += sign;
        grow(Goal.FETCHING, sign * item.fetching());
        grow(Goal.EARLIER, sign * (item.place() + 1));
    }

    /** Growth of min(cap, n) when n changes by {@code sign}. */
    private static int step(int before, int sign, int cap) {
        return Math.min(cap, before + sign) - Math.min(cap, before);
    }

    private void grow(Goal goal, long by) {
        amount[goal.ordinal()] += by;
    }

    /** What exercise {@code i} alone would add on each goal now, whether it may join or not. */
    long[] gain(int i) {
        long[] gain = amount.clone();
        add(i);
        for (int g = 0; g < gain.length; g++) {
            gain[g] = amount[g] - gain[g];
        }
        remove(i);
        return gain;
    }

    /** Amounts if all of these joined at once: no choice among them scores more on a goal that grows. */
    long[] withAll(int[] open) {
        for (int i : open) {
            add(i);
        }
        long[] amounts = amounts();
        for (int i : open) {
            remove(i);
        }
        return amounts;
    }
}
