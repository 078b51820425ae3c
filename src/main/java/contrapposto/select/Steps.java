package contrapposto.select;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Muscle;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * An exercise as numbers: which counters it raises when it joins, by how much, and what that is worth. A counter counts up
 * to a cap; beyond it more is worth nothing.
 *
 * @param cell    of the counter, see {@link Cells}
 * @param add     to it
 * @param cap     from which more no longer counts
 * @param weight  of one
 * @param goal    ordinal of the {@link Goal} it counts for
 * @param linear  by goal, what it adds whatever else is chosen
 * @param in      the blocks it is done in
 * @param seconds of one session, at the fewest sets
 */
record Steps(int[] cell, int[] add, int[] cap, int[] weight, int[] goal, long[] linear, int[] in, double seconds) {
    /** Where the counters of one frame lie: those of each block, then those of the whole plan. */
    record Cells(int blocks) {
        private static final int MUSCLES = Muscle.values().length;
        private static final int PATTERNS = 4;
        private static final int TURNS = 2 * MUSCLES;
        private static final int PHASED = TURNS + 1;
        private static final int RIBS = PHASED + 2;
        private static final int PATTERN = RIBS + 2;
        private static final int STANDING = PATTERN + PATTERNS;
        private static final int KINDS = STANDING + 1;
        private static final int WEEK = KINDS + 2;
        private static final int COUNT = WEEK + 1;
        private static final int OF_A_BLOCK = COUNT + 1;

        int muscle(int block, Side side, Muscle muscle) {
            return block * OF_A_BLOCK + side.ordinal() * MUSCLES + muscle.ordinal();
        }

        private int of(int block, int what) {
            return block * OF_A_BLOCK + what;
        }

        /** Exercises of a block. */
        int count(int block) {
            return of(block, COUNT);
        }

        private int group(CapacityGroup group) {
            return blocks * OF_A_BLOCK + group.ordinal();
        }

        int twoSided() {
            return blocks * OF_A_BLOCK + CapacityGroup.values().length;
        }

        int size() {
            return twoSided() + 1;
        }
    }

    boolean isIn(int block) {
        for (int b : in) {
            if (b == block) {
                return true;
            }
        }
        return false;
    }

    static Steps of(Item item, Frame frame) {
        return new Writing(item, frame).steps();
    }

    private static final class Writing {
        private final Item item;
        private final Frame frame;
        private final Cells cells;
        private final List<int[]> rows = new ArrayList<>();

        Writing(Item item, Frame frame) {
            this.item = item;
            this.frame = frame;
            this.cells = new Cells(frame.blocks().size());
        }

        Steps steps() {
            var in = new ArrayList<Integer>();
            for (int b = 0; b < frame.blocks().size(); b++) {
                if (item.window().meets(frame.blocks().get(b))) {
                    in.add(b);
                    block(b);
                }
            }
            row(Goal.VARIETY, cells.group(item.group()), 1, 1, 1);
            if (item.twoSided()) {
                row(Goal.TWO_SIDED, cells.twoSided(), 1, 1, 1);
            }
            long[] linear = new long[Goal.values().length];
            linear[Goal.PINNED.ordinal()] = item.pinned() ? 1 : 0;
            linear[Goal.FETCHING.ordinal()] = item.fetching();
            linear[Goal.EARLIER.ordinal()] = item.place() + 1;
            return new Steps(column(0), column(1), column(2), column(3), column(4), linear,
                    in.stream().mapToInt(Integer::intValue).toArray(), item.seconds(item.least()));
        }

        private void block(int b) {
            var block = frame.blocks().get(b);
            int days = frame.days().size();
            for (var side : Side.values()) {
                var wanted = frame.wanted().getOrDefault(side, Map.of());
                item.on(side).forEach((muscle, halves) -> {
                    if (wanted.containsKey(muscle)) {
                        row(Goal.MUSCLES, cells.muscle(b, side, muscle), item.counted(halves, block) * days, Tally.ENOUGH, wanted.get(muscle));
                    }
                });
            }
            if (item.turning()) {
                row(Goal.TURN, cells.of(b, Cells.TURNS), 1, Tally.TURNS_ENOUGH, 1);
            }
            item.phasedIn(block).forEach(side -> row(Goal.PHASE, cells.of(b, Cells.PHASED + side.ordinal()), 1, Tally.PHASE_ENOUGH, 1));
            item.ribs().forEach(side -> row(Goal.RIBS, cells.of(b, Cells.RIBS + side.ordinal()), 1, 1, 1));
            if (item.onFeet()) {
                row(Goal.STANDING, cells.of(b, Cells.STANDING), 1, Tally.STANDING_ENOUGH, 1);
            }
            int pattern = pattern();
            if (pattern >= 0) {
                row(Goal.PATTERNS, cells.of(b, Cells.PATTERN + pattern), days, Tally.PATTERN_ENOUGH, 1);
            }
            row(Goal.EVERY_WEEK, cells.of(b, Cells.WEEK), 1, Enough.EXERCISES, 1);
            row(Goal.EVERY_WEEK, cells.of(b, Cells.KINDS + (item.works() == Family.Works.LEG ? 0 : 1)), 1, 1, 1);
            row(Goal.FILLED, cells.count(b), 1, frame.filled(), 1);
        }

        /** Squat, hinge, push, pull under load; −1 for none of them. */
        private int pattern() {
            return !item.loaded() ? -1 : switch (item.group()) {
                case KNEE_BEND -> 0;
                case HINGE -> 1;
                case PRESS -> 2;
                case PULL -> 3;
                case CURL, EXTENSION, CALF, CARRY, NONE -> -1;
            };
        }

        private void row(Goal goal, int cell, int add, int cap, int weight) {
            rows.add(new int[] {cell, add, cap, weight, goal.ordinal()});
        }

        private int[] column(int c) {
            return rows.stream().mapToInt(row -> row[c]).toArray();
        }
    }
}
