package contrapposto.select;

/**
 * What a selection is scored by. {@link Frame#aims} decides which of the two middle groups weighs more; see
 * {@link Scale}. Everything down to {@link #VARIETY} grows, ever more slowly, as exercises are added, which is what
 * lets {@link Search} bound what is still to be had; the rest are costs, which
 * simply add up.
 */
enum Goal {
    PINNED("what the coach asked for or tested"),
    TWO_SIDED("keeping one two-sided lift"),
    PHASE("the stance phase that each side is to train"),
    MUSCLES("the wanted muscles of each side"),
    RIBS("opening the ribs of each side that move less"),
    TURN("the turn toward the landing side"),
    PATTERNS("squat, hinge, push and pull under load"),
    STANDING("work on the feet, where the plan has come to it"),
    FILLED("a full session"),
    VARIETY("variety"),
    FETCHING("few equipment changes and little time lost"),
    EARLIER("the order of the catalogue");

    private static final Goal[] ALL = values();

    private final String words;

    Goal(String words) {
        this.words = words;
    }

    /** The goal with this ordinal. */
    static Goal of(int ordinal) {
        return ALL[ordinal];
    }

    String words() {
        return words;
    }

    /** Whether more of it is a cost. */
    boolean cost() {
        return compareTo(VARIETY) > 0;
    }
}
