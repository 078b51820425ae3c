package contrapposto.body;

/** The two positions of a set-up. */
enum Position {
    START, WORKING;

    /** {@code start} at the start, {@code working} in the working position. */
    double pick(double start, double working) {
        return this == START ? start : working;
    }
}
