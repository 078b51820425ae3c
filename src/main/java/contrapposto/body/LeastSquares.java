package contrapposto.body;

import java.util.Arrays;

/**
 * Finds the least sum of squares of a few residuals over a few variables, each between 0 and 1: Levenberg and Marquardt's
 * damped steps (Moré JJ 1978, The Levenberg–Marquardt algorithm, LNM 630), with walls, whose residuals count only while
 * positive, and with variables that lean on a bound. A step foresees the walls and bounds it would run into. The library's
 * own search knows neither, and one without slopes takes twenty times as many trials. The same input gives the same bits.
 */
final class LeastSquares {
    private static final int ROUNDS = 60;
    private static final int DAMPINGS = 14;
    private static final int FORESIGHTS = 6;
    private static final double FIRST_DAMPING = 1e-4;
    private static final double LEAST_DAMPING = 1e-9;
    /** No step is longer than this share of a variable's range. */
    private static final double LONGEST = 0.35;
    /** The search ends when it moves no variable by more than this, or the sum falls by less than this share. */
    private static final double STEP = 4e-5;
    private static final double GAIN = 1e-8;

    /** What is to be made small. */
    interface Residuals {
        /** Sum of squares at {@code point}. */
        double at(double[] point);

        /** The same, residuals and slopes kept for {@link #residual} and {@link #slope}. */
        double linearised(double[] point);

        int count();

        /** Rows from this one on are walls: below 0 they do not count. */
        int firstWall();

        double residual(int row);

        double slope(int row, int variable);
    }

    private final Residuals residuals;
    private final double[] point;
    private final int n;
    private final double[] gradient;
    /** Of each variable, how strongly what is to be small hangs on it, walls left out: what damping is measured by. */
    private final double[] scale;
    private final double[][] normal;
    private final double[][] root;
    private final double[] move;
    private final double[] next;
    private final boolean[] held;
    private final boolean[] felt;
    private double damping = FIRST_DAMPING;

    private LeastSquares(Residuals residuals, double[] point) {
        this.residuals = residuals;
        this.point = point;
        this.n = point.length;
        this.gradient = new double[n];
        this.scale = new double[n];
        this.normal = new double[n][n];
        this.root = new double[n][n];
        this.move = new double[n];
        this.next = new double[n];
        this.held = new boolean[n];
        this.felt = new boolean[residuals.count()];
    }

    /** Moves {@code point} to the least sum found and returns that. */
    static double lowest(Residuals residuals, double[] point) {
        return point.length == 0 ? residuals.at(point) : new LeastSquares(residuals, point).search();
    }

    private double search() {
        double least = residuals.linearised(point);
        for (int round = 0; round < ROUNDS; round++) {
            double moved = 0;
            double sum = least;
            for (int trial = 0; trial < DAMPINGS && !(sum < least); trial++) {
                step();
                moved = 0;
                for (int i = 0; i < n; i++) {
                    next[i] = Math.clamp(point[i] + move[i], 0.0, 1.0);
                    moved = Math.max(moved, Math.abs(next[i] - point[i]));
                }
                if (moved < STEP / 10) {
                    return least;
                }
                sum = residuals.at(next);
                damping = sum < least ? Math.max(LEAST_DAMPING, damping * 0.1) : Math.max(1e-5, damping) * 10;
            }
            if (!(sum < least)) {
                return least;
            }
            System.arraycopy(next, 0, point, 0, n);
            if (moved < STEP || least - sum < GAIN * least) {
                return sum;
            }
            least = residuals.linearised(point);
        }
        return least;
    }

    /** The damped step that is best if every residual goes on as straight as it begins. */
    private void step() {
        Arrays.fill(move, 0);
        Arrays.fill(felt, false);
        for (int look = 0; look < FORESIGHTS; look++) {
            boolean same = feel() && look > 0;
            if (same) {
                return;
            }
            equations();
            Arrays.fill(held, false);
            boolean settled = false;
            for (int i = 0; i < 4 * n && !settled; i++) {
                solve();
                settled = hold() && release();
            }
        }
    }

    /** Stops at its bound the variable that would pass it farthest. @return whether none would */
    private boolean hold() {
        int worst = -1;
        double most = 1e-12;
        for (int i = 0; i < n; i++) {
            double over = held[i] ? 0 : Math.max(low(i) - move[i], move[i] - high(i));
            if (over > most) {
                most = over;
                worst = i;
            }
        }
        if (worst >= 0) {
            held[worst] = true;
            move[worst] = move[worst] < low(worst) ? low(worst) : high(worst);
        }
        return worst < 0;
    }

    /** Lets go the variable that pulls hardest away from its bound. @return whether none does */
    private boolean release() {
        int worst = -1;
        double most = 1e-12;
        for (int i = 0; i < n; i++) {
            if (held[i]) {
                double slope = gradient[i] + damping * scale[i] * move[i];
                for (int j = 0; j < n; j++) {
                    slope += normal[i][j] * move[j];
                }
                double pull = move[i] <= low(i) ? -slope : slope;
                if (pull > most && low(i) < high(i)) {
                    most = pull;
                    worst = i;
                }
            }
        }
        if (worst >= 0) {
            held[worst] = false;
        }
        return worst < 0;
    }

    private double low(int variable) {
        return -Math.min(point[variable], LONGEST);
    }

    private double high(int variable) {
        return Math.min(1 - point[variable], LONGEST);
    }

    /** Marks the walls that the step runs into. @return whether they are those it was made for */
    private boolean feel() {
        boolean same = true;
        for (int k = residuals.firstWall(); k < felt.length; k++) {
            double ahead = residuals.residual(k);
            for (int i = 0; i < n; i++) {
                ahead += residuals.slope(k, i) * move[i];
            }
            same &= felt[k] == ahead > 0;
            felt[k] = ahead > 0;
        }
        return same;
    }

    private void equations() {
        Arrays.fill(gradient, 0);
        Arrays.fill(scale, 0);
        for (double[] row : normal) {
            Arrays.fill(row, 0);
        }
        for (int k = 0; k < felt.length; k++) {
            if (k < residuals.firstWall() || felt[k]) {
                double r = residuals.residual(k);
                for (int i = 0; i < n; i++) {
                    double s = residuals.slope(k, i);
                    gradient[i] += s * r;
                    for (int j = 0; j <= i; j++) {
                        normal[i][j] += s * residuals.slope(k, j);
                    }
                    scale[i] += k < residuals.firstWall() ? s * s : 0;
                }
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                normal[i][j] = normal[j][i];
            }
        }
    }

    /** Moves the variables that are not held, by Cholesky's root. */
    private void solve() {
        double floor = 1e-12;
        for (int i = 0; i < n; i++) {
            floor = Math.max(floor, 1e-10 * normal[i][i]);
        }
        for (int i = 0; i < n; i++) {
            double right = -gradient[i];
            for (int j = 0; j < n; j++) {
                right -= held[j] ? normal[i][j] * move[j] : 0;
            }
            for (int j = 0; j <= i; j++) {
                double sum = held[i] || held[j] ? i == j ? 1 : 0 : normal[i][j] + (i == j ? damping * scale[i] + floor : 0);
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                root[i][j] = i == j ? StrictMath.sqrt(Math.max(sum, floor)) : sum / root[j][j];
            }
            if (!held[i]) {
                for (int k = 0; k < i; k++) {
                    right -= held[k] ? 0 : root[i][k] * next[k];
                }
                next[i] = right / root[i][i];
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            if (!held[i]) {
                double sum = next[i];
                for (int k = i + 1; k < n; k++) {
                    sum -= held[k] ? 0 : root[k][i] * move[k];
                }
                move[i] = sum / root[i][i];
            }
        }
    }
}
