package contrapposto.sketch;

/**
 * How thick a limb is along its bone: a table of stations, in shares of stature, with smooth values between them.
 * Drawn from our own figure study; no measured population.
 */
enum Profile {
    THIGH(new double[][] {{0, .0500, -.002, -.004}, {.15, .0530, .001, -.002}, {.35, .0500, .005, 0},
        {.60, .0415, .005, 0}, {.82, .0345, .003, 0}, {1, .0315, .003, 0}}),
    SHANK(new double[][] {{0, .0312, .002, 0}, {.13, .0305, -.003, .001}, {.30, .0335, -.0085, .002},
        {.50, .0290, -.0075, .001}, {.72, .0210, -.0035, 0}, {.90, .0170, -.001, 0}, {1, .0172, 0, 0}}),
    UPPER_ARM(new double[][] {{0, .0300, 0, .002}, {.18, .0305, 0, .003}, {.45, .0262, .002, 0},
        {.75, .0225, .001, 0}, {1, .0205, 0, 0}}),
    FOREARM(new double[][] {{0, .0205, 0, 0}, {.20, .0232, .001, .001}, {.45, .0205, 0, 0}, {.78, .0155, 0, 0},
        {1, .0138, 0, 0}}),
    /** Sections along pelvis → neck: half width, half depth, forward. */
    TRUNK(new double[][] {{-.20, .030, .040, -.008}, {-.09, .064, .057, -.013}, {.05, .0890, .066, -.013},
        {.20, .0870, .061, -.007}, {.33, .0770, .0535, .001}, {.46, .0720, .0510, .006}, {.60, .0775, .0560, .005},
        {.74, .0860, .0630, .001}, {.86, .0880, .0620, -.005}, {.95, .0780, .0530, -.010},
        {1.03, .0560, .0430, -.014}, {1.12, .0340, .0330, -.015}});

    private final double[][] rows;

    Profile(double[][] rows) {
        this.rows = rows;
    }

    /**
     * The values at {@code t}: radius, offset to the front, offset outward (of {@link #TRUNK}: see there). Cubic
     * between the rows, with the slopes of the parabola through three neighbours.
     */
    double[] at(double t) {
        int last = rows.length - 1;
        double clamped = Math.clamp(t, rows[0][0], rows[last][0]);
        int i = 0;
        while (i < last - 1 && rows[i + 1][0] <= clamped) {
            i++;
        }
        double h = rows[i + 1][0] - rows[i][0];
        double u = (clamped - rows[i][0]) / h;
        double[] values = new double[3];
        for (int k = 1; k <= 3; k++) {
            values[k - 1] = (2 * u * u * u - 3 * u * u + 1) * rows[i][k] + (u * u * u - 2 * u * u + u) * h * slope(i, k)
                    + (-2 * u * u * u + 3 * u * u) * rows[i + 1][k] + (u * u * u - u * u) * h * slope(i + 1, k);
        }
        return values;
    }

    private double slope(int i, int k) {
        int last = rows.length - 1;
        if (i == 0 || i == last) {
            int from = i == 0 ? 0 : last - 1;
            return rise(from, k);
        }
        double h1 = rows[i][0] - rows[i - 1][0];
        double h2 = rows[i + 1][0] - rows[i][0];
        return (rise(i - 1, k) * h2 + rise(i, k) * h1) / (h1 + h2);
    }

    private double rise(int i, int k) {
        return (rows[i + 1][k] - rows[i][k]) / (rows[i + 1][0] - rows[i][0]);
    }
}
