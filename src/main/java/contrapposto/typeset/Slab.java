package contrapposto.typeset;

import java.util.Optional;

/**
 * A piece of a page of known width. Its height may depend on the stretch of the page: 0 is tightest, 1 is widest;
 * all elastic slabs of a page share one value.
 */
interface Slab {
    /** In mm; never less for a larger stretch. */
    double height(double stretch);

    void paint(Sheet sheet, double x, double y, double stretch);

    /** Whether it is broken only where no page is high enough for it. */
    default boolean whole() {
        return true;
    }

    /**
     * The same in two slabs, the first at most {@code room} high at the tightest; empty where it cannot be divided so.
     *
     * @param page what a whole page holds: parts that are to stay whole and are not higher are not divided
     */
    default Optional<Cut> cut(double room, double page) {
        return Optional.empty();
    }

    /** The smallest end of it that may stand on the next page with words that belong to it; empty for none. */
    default Optional<Cut> lastRows() {
        return Optional.empty();
    }

    /** The page title that a page going on after it repeats. */
    default Optional<HeadingSlab> pageTitle() {
        return Optional.empty();
    }

    record Cut(Slab head, Slab tail) { }
}
