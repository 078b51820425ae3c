package contrapposto.select;

import java.util.Locale;

/**
 * What a selection is scored by. {@link Frame#aims} decides which of the two middle groups weighs more; see
 * {@link Scale}. Everything down to {@link #VARIETY} grows, ever more slowly, as exercises are added, which is what
 * lets {@link Search} bound what is still to be had; the rest are costs, which
 * simply add up.
 */
enum Goal {
    PINNED,
    TWO_SIDED,
    EVERY_WEEK,
    PHASE,
    MUSCLES,
    RIBS,
    TURN,
    PATTERNS,
    STANDING,
    FILLED,
    VARIETY,
    FETCHING,
    EARLIER;

    private static final Goal[] ALL = values();

    /** The goal with this ordinal. */
    static Goal of(int ordinal) {
        return ALL[ordinal];
    }

    /** Its word in the phrasebooks, after {@code goal-}. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether more of it is a cost. */
    boolean cost() {
        return compareTo(VARIETY) > 0;
    }
}
