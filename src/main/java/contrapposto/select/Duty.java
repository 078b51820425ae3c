package contrapposto.select;

/** In which of the two alternating sessions an exercise is done; the order breaks ties. */
enum Duty {
    BOTH, A, B;

    /** Whether session 0 (A) or 1 (B) does it. */
    boolean in(int session) {
        return this == BOTH || this == (session == 0 ? A : B);
    }
}
