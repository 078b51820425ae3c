package contrapposto.select;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.quantity.Side;
import java.util.Map;
import java.util.TreeMap;

/**
 * The running sums of a partial selection, exercises put in and taken out again as {@link Search} goes: what is covered,
 * what is full, and the score. Mutable, and seen by its search alone.
 */
final class Tally {
    /** Direct sets on two sessions a week, in half sets a session: more of one muscle no longer counts (published: twice a week). */
    static final int ENOUGH = 4;
    static final int TURNS_ENOUGH = 3;
    static final int PATTERN_ENOUGH = 2;
    private static final int PATTERNS = 4;
    private static final int MUSCLES = Muscle.values().length;

    private final Frame frame;
    private final Scale scale;
    private final int[][] weight = new int[2][MUSCLES];
    private final int[][][] covered;
    private final int[] turns;
    private final int[][] patterns;
    private final int[][] count;
    private final double[][] seconds;
    private final int[][] floor;
    private final int[][] hard = new int[2][MUSCLES];
    private final int[] groups = new int[CapacityGroup.values().length];
    private final TreeMap<String, Integer> things = new TreeMap<>();
    private final long[] amount = new long[Goal.values().length];
    private int chosen;
    private int twoSided;

    Tally(Frame frame, Scale scale) {
        this.frame = frame;
        this.scale = scale;
        int blocks = frame.blocks().size();
        covered = new int[blocks][2][MUSCLES];
        turns = new int[blocks];
        patterns = new int[blocks][PATTERNS];
        count = new int[blocks][2];
        seconds = new double[blocks][2];
        floor = new int[blocks][2];
        for (var side : Side.values()) {
            frame.wanted().getOrDefault(side, Map.of()).forEach((m, w) -> weight[side.ordinal()][m.ordinal()] = w);
        }
    }

    int chosen() {
        return chosen;
    }

    long score() {
        long score = 0;
        for (var goal : Goal.values()) {
            score += scale.of(goal, amount[goal.ordinal()]);
        }
        return score;
    }

    long[] amounts() {
        return amount.clone();
    }

    /** Whether {@code item} may join in {@code duty} without breaking a hard rule. */
    boolean admits(Item item, Duty duty) {
        if (chosen >= frame.inAll() || item.twoSided() && twoSided >= frame.twoSided()) {
            return false;
        }
        for (int b = 0; b < frame.blocks().size(); b++) {
            if (!item.window().meets(frame.blocks().get(b))) {
                continue;
            }
            for (int s = 0; s < 2; s++) {
                if (duty.in(s) && (count[b][s] >= frame.perSession() || crowdedFloor(item, b, s)
                        || seconds[b][s] + item.seconds(item.least()) > frame.seconds() + 1e-6)) {
                    return false;
                }
            }
        }
        return !frame.sessionsTouch() || rested(item, duty);
    }

    /** Once standing work leads, a session has one floor exercise, its opener. */
    private boolean crowdedFloor(Item item, int block, int session) {
        return item.floor() && floor[block][session] >= 1
                && frame.blocks().get(block).stage().compareTo(Stage.STANDING) >= 0;
    }

    private boolean rested(Item item, Duty duty) {
        if (item.hard().isEmpty()) {
            return true;
        }
        if (duty == Duty.BOTH) {
            return false;
        }
        int other = duty == Duty.A ? 1 : 0;
        return item.hard().stream().allMatch(m -> hard[other][m.ordinal()] == 0);
    }

    void add(Item item, Duty duty) {
        change(item, duty, 1);
        costs(item, 1);
    }

    void remove(Item item, Duty duty) {
        change(item, duty, -1);
        costs(item, -1);
    }

    private void costs(Item item, int sign) {
        for (var thing : item.things()) {
            int had = things.merge(thing, sign, Integer::sum);
            grow(Goal.THINGS, sign > 0 && had == 1 ? 1 : sign < 0 && had == 0 ? -1 : 0);
        }
        grow(Goal.MINUTES, sign * Math.round(item.fetchSeconds() / 30));
        grow(Goal.EARLIER, sign * item.place());
    }

    private void change(Item item, Duty duty, int sign) {
        chosen += sign;
        twoSided += item.twoSided() ? sign : 0;
        int times = (duty.in(0) ? frame.daysOf(0) : 0) + (duty.in(1) ? frame.daysOf(1) : 0);
        for (int b = 0; b < frame.blocks().size(); b++) {
            if (item.window().meets(frame.blocks().get(b))) {
                block(item, duty, b, sign, times);
            }
        }
        for (int s = 0; s < 2; s++) {
            if (duty.in(s)) {
                for (var muscle : item.hard()) {
                    hard[s][muscle.ordinal()] += sign;
                }
            }
        }
        grow(Goal.PINNED, item.pinned() ? sign : 0);
        amount[Goal.TWO_SIDED.ordinal()] = Math.min(1, twoSided);
        int g = item.group().ordinal();
        grow(Goal.VARIETY, step(groups[g], sign, 1));
        groups[g] += sign;
    }

    private void block(Item item, Duty duty, int b, int sign, int times) {
        for (var side : Side.values()) {
            var own = covered[b][side.ordinal()];
            item.on(side).forEach((muscle, halves) -> {
                int before = Math.min(ENOUGH, own[muscle.ordinal()]);
                own[muscle.ordinal()] += sign * halves * times;
                grow(Goal.MUSCLES, (long) weight[side.ordinal()][muscle.ordinal()]
                        * (Math.min(ENOUGH, own[muscle.ordinal()]) - before));
            });
        }
        if (item.turning()) {
            grow(Goal.TURN, step(turns[b], sign, TURNS_ENOUGH));
            turns[b] += sign;
        }
        int pattern = pattern(item);
        if (pattern >= 0) {
            int before = Math.min(PATTERN_ENOUGH, patterns[b][pattern]);
            patterns[b][pattern] += sign * times;
            grow(Goal.PATTERNS, Math.min(PATTERN_ENOUGH, patterns[b][pattern]) - before);
        }
        for (int s = 0; s < 2; s++) {
            if (duty.in(s)) {
                grow(Goal.FILLED, step(count[b][s], sign, frame.filled()));
                count[b][s] += sign;
                seconds[b][s] += sign * item.seconds(item.least());
                floor[b][s] += item.floor() ? sign : 0;
            }
        }
    }

    /** Growth of min(cap, n) when n changes by {@code sign}. */
    private static int step(int before, int sign, int cap) {
        return Math.min(cap, before + sign) - Math.min(cap, before);
    }

    private void grow(Goal goal, long by) {
        amount[goal.ordinal()] += by;
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

    /** What {@code item} would add to the goals that grow, as score, if it were done in every session: costs are left out. */
    long gain(Item item) {
        long before = growing();
        var duty = frame.sessions() == 1 ? Duty.A : Duty.BOTH;
        change(item, duty, 1);
        long after = growing();
        change(item, duty, -1);
        return after - before;
    }

    private long growing() {
        long score = 0;
        for (var goal : Goal.values()) {
            score += goal.cost() ? 0 : scale.of(goal, amount[goal.ordinal()]);
        }
        return score;
    }

    /** Seconds of session {@code s} in block {@code b}, at least sets. */
    double seconds(int b, int s) {
        return seconds[b][s];
    }
}
