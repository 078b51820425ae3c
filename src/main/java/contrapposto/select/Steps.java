package contrapposto.select;

import contrapposto.catalogue.Family;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * An exercise as numbers: which {@link Counters} it raises when it joins, and by how much. Those that count for one goal lie together.
 *
 * @param counter raised
 * @param add     to it
 * @param first   by goal, the first of its counters; then where the last goal's end
 * @param linear  by goal, what it adds whatever else is chosen
 * @param in      the blocks it is done in
 * @param seconds of one session, at the fewest sets
 */
record Steps(int[] counter, int[] add, int[] first, long[] linear, int[] in, double seconds) {
    boolean isIn(int block) {
        for (int b : in) {
            if (b == block) {
                return true;
            }
        }
        return false;
    }

    static Steps of(Item item, Frame frame, Counters counters) {
        return new Writing(item, frame, counters).steps();
    }

    private static final class Writing {
        private final Item item;
        private final Frame frame;
        private final Counters counters;
        /** By goal, counter and what is added to it in turn. */
        private final List<List<Integer>> rows = new ArrayList<>();

        Writing(Item item, Frame frame, Counters counters) {
            this.item = item;
            this.frame = frame;
            this.counters = counters;
            for (int g = 0; g < Goal.values().length; g++) {
                rows.add(new ArrayList<>());
            }
        }

        Steps steps() {
            int[] in = new int[frame.blocks().size()];
            int n = 0;
            for (int b = 0; b < frame.blocks().size(); b++) {
                if (item.window().meets(frame.blocks().get(b))) {
                    in[n++] = b;
                    block(b);
                }
            }
            raise(counters.group(item.group()), 1);
            if (item.twoSided()) {
                raise(counters.twoSided(), 1);
            }
            long[] linear = new long[rows.size()];
            linear[Goal.PINNED.ordinal()] = item.pinned() ? 1 : 0;
            linear[Goal.FETCHING.ordinal()] = item.fetching();
            linear[Goal.EARLIER.ordinal()] = item.place() + 1;
            return steps(linear, Arrays.copyOf(in, n));
        }

        private Steps steps(long[] linear, int[] in) {
            int[] first = new int[rows.size() + 1];
            for (int g = 0; g < rows.size(); g++) {
                first[g + 1] = first[g] + rows.get(g).size() / 2;
            }
            int[] counter = new int[first[rows.size()]];
            int[] add = new int[counter.length];
            for (int g = 0; g < rows.size(); g++) {
                for (int s = first[g]; s < first[g + 1]; s++) {
                    counter[s] = rows.get(g).get(2 * (s - first[g]));
                    add[s] = rows.get(g).get(2 * (s - first[g]) + 1);
                }
            }
            return new Steps(counter, add, first, linear, in, item.seconds(item.least()));
        }

        private void block(int b) {
            var block = frame.blocks().get(b);
            int days = frame.days().size();
            for (var side : Side.values()) {
                var wanted = frame.wanted().getOrDefault(side, Map.of());
                item.on(side).forEach((muscle, halves) -> {
                    if (wanted.containsKey(muscle)) {
                        raise(counters.muscle(b, side, muscle), item.counted(halves, block) * days);
                    }
                });
            }
            if (item.turning()) {
                raise(counters.turns(b), 1);
            }
            item.phasedIn(block).forEach(side -> raise(counters.phased(b, side), 1));
            item.ribs().forEach(side -> raise(counters.ribs(b, side), 1));
            if (item.onFeet()) {
                raise(counters.standing(b), 1);
            }
            int pattern = pattern();
            if (pattern >= 0) {
                raise(counters.pattern(b, pattern), days);
            }
            raise(counters.week(b), 1);
            raise(counters.kind(b, item.works() == Family.Works.LEG ? 0 : 1), 1);
            raise(counters.count(b), 1);
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

        private void raise(int counter, int by) {
            rows.get(counters.goal(counter)).addAll(List.of(counter, by));
        }
    }
}
