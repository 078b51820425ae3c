package contrapposto.select;

import contrapposto.check.CheckedSpec.Aim;
import java.util.ArrayList;
import java.util.List;

/**
 * The order of the goals for one spec, packed into one long so that scores compare lexicographically: each goal has a
 * unit larger than all that the lesser goals can add up to.
 */
record Scale(List<Goal> order, long[] unit) {
    /** More than any plan can score on each goal, in the order of {@link Goal}: the product stays below 2^63. */
    private static final long[] ROOM = {9, 2, 21, 17, 1761, 9, 17, 33, 17, 25, 10, 57, 610};

    static Scale of(List<Aim> aims) {
        var order = new ArrayList<>(List.of(Goal.PINNED, Goal.TWO_SIDED, Goal.EVERY_WEEK));
        for (var aim : aims) {
            order.addAll(group(aim));
        }
        for (var goal : Goal.values()) {
            if (!order.contains(goal)) {
                order.add(goal);
            }
        }
        long[] unit = new long[ROOM.length];
        long room = 1;
        for (var goal : order.reversed()) {
            unit[goal.ordinal()] = goal.cost() ? -room : room;
            room = Math.multiplyExact(room, ROOM[goal.ordinal()]);
        }
        return new Scale(List.copyOf(order), unit);
    }

    private static List<Goal> group(Aim aim) {
        return switch (aim) {
            case SIDE_TO_SIDE_MOVEMENT -> List.of(Goal.PHASE, Goal.MUSCLES, Goal.RIBS, Goal.TURN);
            case STRENGTH -> List.of(Goal.PATTERNS);
        };
    }

    long of(Goal goal, long amount) {
        return unit[goal.ordinal()] * Math.min(amount, ROOM[goal.ordinal()] - 1);
    }

    /** The part of a score that grows with more exercises, of these amounts. */
    long growing(long[] amounts) {
        long score = 0;
        for (int g = 0; g < amounts.length; g++) {
            score += Goal.of(g).cost() ? 0 : of(Goal.of(g), amounts[g]);
        }
        return score;
    }

    /** The whole score of these amounts. */
    long score(long[] amounts) {
        long score = 0;
        for (int g = 0; g < amounts.length; g++) {
            score += of(Goal.of(g), amounts[g]);
        }
        return score;
    }

    /** The first goal on which two tallies differ, the weightiest first; EARLIER if none. */
    Goal decides(long[] one, long[] other) {
        for (var goal : order) {
            if (one[goal.ordinal()] != other[goal.ordinal()]) {
                return goal;
            }
        }
        return Goal.EARLIER;
    }
}
