package contrapposto.setup;

/**
 * What set-ups are compared by, the weightiest first: the first on which two differ decides (lexicographic).
 * The phrasebooks have a sentence {@code lost-on/…} for each.
 */
enum Criterion {
    SAFETY,
    PHASE,
    WEIGHT,
    LOAD,
    TURN,
    LINE,
    PRESSURE,
    MUSCLES,
    STEADINESS,
    THINGS,
    ORDER
}
