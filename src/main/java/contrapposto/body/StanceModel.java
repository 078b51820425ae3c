package contrapposto.body;

import contrapposto.body.Stance.Free;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What the search for the best of a {@link Stance} sees: the body of a {@link StanceTrial} in plain numbers, so that
 * thousands of trials cost no memory, with the slopes of every residual. The body is kept in balance as the variables
 * move: its slopes come from those at a fixed pelvis and those of the imbalance (implicit function theorem). A test holds
 * it against the trial.
 */
final class StanceModel implements LeastSquares.Residuals {
    /** Step of the difference quotients, share of a variable's range and of stature. */
    private static final double NUDGE = 1e-6;
    /** What is left of an imbalance while searching, share of stature. */
    private static final double BALANCED = 1e-7;
    private static final int BALANCE_ROUNDS = 25;

    private final Stance stance;
    private final Arms arms;
    private final Loads loads;
    private final Position position;
    private final List<Free> open;
    private final StanceBody body;
    private final StanceCost cost;
    private final boolean oneFoot;
    private final double stature;
    private final double nudge;
    private final boolean armsChange;
    private final double[] values = new double[Free.values().length];
    private final double[] rows = new double[StanceCost.ROWS];
    private final double[] here = new double[StanceCost.ROWS];
    private final double[][] slopes;
    private final double[][] rowsByShift = new double[2][StanceCost.ROWS];
    /** The pelvis beside (or, over one foot, before and beside) its place: what balance asks for. */
    private final double[] shift = new double[2];
    private final double[] shiftHere = new double[2];
    private final double[][] shiftSlopes;
    /** Of the imbalance, by variable at a fixed pelvis and by the place of the pelvis. */
    private final double[][] slipSlopes;
    private final double[][] slipByShift = new double[2][2];
    private final double[] pointHere;
    private final double[] slipBy = {StanceTrial.PELVIS_TO_CENTRE, StanceTrial.PELVIS_TO_CENTRE};
    private boolean linear;
    /** Whether the body stands in balance as {@link #at} put it for {@link #pointPlaced}, so that it need not again. */
    private boolean placed;
    private final double[] pointPlaced;
    private double sumPlaced;

    StanceModel(PoseProblem problem, Stance stance, Position position, Arms arms, Loads loads, List<Contact> hands,
                List<Free> open) {
        this.stance = stance;
        this.position = position;
        this.arms = arms;
        this.loads = loads;
        this.open = open;
        this.oneFoot = stance.other().isEmpty();
        this.stature = problem.person().stature();
        this.nudge = NUDGE * stature;
        this.body = new StanceBody(problem, stance, loads, hands);
        this.cost = new StanceCost(problem, stance, body);
        this.armsChange = ArmShape.changes(List.of(problem.left(), problem.right()), problem.load());
        this.slopes = new double[open.size()][StanceCost.ROWS];
        this.shiftSlopes = new double[open.size()][2];
        this.slipSlopes = new double[open.size()][2];
        this.pointHere = new double[open.size()];
        this.pointPlaced = new double[open.size()];
        System.arraycopy(stance.low(), 0, values, 0, values.length);
        reshape();
        body.place(0, 0);
        reshape();
    }

    /** Weight of a breach in the sum. */
    void strictness(double weight) {
        cost.strictness(weight);
        linear = false;
        placed = false;
    }

    /** Where the pelvis was moved to for the last point: a first guess for the trial. */
    double shifted() {
        return shift[0];
    }

    /** The variables at {@code point}. */
    double[] values(double[] point) {
        double[] all = stance.low().clone();
        for (int i = 0; i < point.length; i++) {
            all[open.get(i).ordinal()] = value(i, point[i]);
        }
        return all;
    }

    private double value(int variable, double share) {
        int at = open.get(variable).ordinal();
        return stance.low()[at] + share * (stance.high()[at] - stance.low()[at]);
    }

    @Override
    public int count() {
        return StanceCost.ROWS;
    }

    @Override
    public int firstWall() {
        return StanceCost.FIRST_WALL;
    }

    @Override
    public double residual(int row) {
        return here[row];
    }

    @Override
    public double slope(int row, int variable) {
        return slopes[variable][row];
    }

    @Override
    public double at(double[] point) {
        if (placed && Arrays.equals(point, pointPlaced)) {
            return sumPlaced;
        }
        set(point);
        if (linear) {
            for (int j = 0; j < shift.length; j++) {
                shift[j] = shiftHere[j];
                for (int i = 0; i < point.length; i++) {
                    shift[j] += shiftSlopes[i][j] * (point[i] - pointHere[i]);
                }
            }
        }
        balance();
        sumPlaced = cost.rows(rows);
        System.arraycopy(point, 0, pointPlaced, 0, point.length);
        placed = linear;
        return sumPlaced;
    }

    @Override
    public double linearised(double[] point) {
        at(point);
        if (armsChange) {
            reshape();
            balance();
        }
        double sum = cost.rows(here);
        double slipX = body.slipX();
        double slipY = body.slipY();
        System.arraycopy(shift, 0, shiftHere, 0, 2);
        System.arraycopy(point, 0, pointHere, 0, point.length);
        byVariable(point, slipX, slipY);
        byShift(slipX, slipY);
        inBalance(point.length);
        linear = true;
        placed = false;
        return sum;
    }

    /** Slopes at a fixed pelvis. The last variables come first: pressures move no leg, so that least has to be worked out anew. */
    private void byVariable(double[] point, double slipX, double slipY) {
        for (int i = point.length - 1; i >= 0; i--) {
            double step = point[i] > 0.5 ? -NUDGE : NUDGE;
            values[open.get(i).ordinal()] = value(i, point[i] + step);
            place();
            cost.rows(rows);
            slipSlopes[i][0] = (body.slipX() - slipX) / step;
            slipSlopes[i][1] = oneFoot ? (body.slipY() - slipY) / step : 0;
            for (int k = 0; k < rows.length; k++) {
                slopes[i][k] = (rows[k] - here[k]) / step;
            }
            values[open.get(i).ordinal()] = value(i, point[i]);
        }
        body.hold(values);
    }

    /** Slopes over the place of the pelvis. */
    private void byShift(double slipX, double slipY) {
        for (int j = 0; j < (oneFoot ? 2 : 1); j++) {
            shift[j] = shiftHere[j] + nudge;
            place();
            cost.rows(rowsByShift[j]);
            slipByShift[j][0] = (body.slipX() - slipX) / nudge;
            slipByShift[j][1] = (body.slipY() - slipY) / nudge;
            shift[j] = shiftHere[j];
            for (int k = 0; k < rows.length; k++) {
                rowsByShift[j][k] = (rowsByShift[j][k] - here[k]) / nudge;
            }
        }
        if (!oneFoot) {
            slipByShift[1][0] = 0;
            slipByShift[1][1] = 1;
        }
        slipBy[0] = slipByShift[0][0];
        slipBy[1] = slipByShift[1][1];
    }

    /** Turns slopes at a fixed pelvis into those of a body whose pelvis moves with each variable so that it stays in balance. */
    private void inBalance(int variables) {
        double[][] slip = slipByShift;
        double whole = slip[0][0] * slip[1][1] - slip[1][0] * slip[0][1];
        for (int i = 0; i < variables; i++) {
            double bySlipX = slipSlopes[i][0];
            double bySlipY = slipSlopes[i][1];
            shiftSlopes[i][0] = -(bySlipX * slip[1][1] - bySlipY * slip[1][0]) / whole;
            shiftSlopes[i][1] = oneFoot ? -(bySlipY * slip[0][0] - bySlipX * slip[0][1]) / whole : 0;
            for (int k = 0; k < rows.length; k++) {
                slopes[i][k] = slopes[i][k] + rowsByShift[0][k] * shiftSlopes[i][0]
                        + (oneFoot ? rowsByShift[1][k] * shiftSlopes[i][1] : 0);
            }
        }
    }

    private void set(double[] point) {
        for (int i = 0; i < point.length; i++) {
            values[open.get(i).ordinal()] = value(i, point[i]);
        }
    }

    private void place() {
        body.hold(values);
        body.place(shift[0], shift[1]);
    }

    /** Moves the pelvis until the weight falls where the feet press. */
    private void balance() {
        body.hold(values);
        double[] slope = slipBy.clone();
        double lastX = 0;
        double lastY = 0;
        double lastSlipX = 0;
        double lastSlipY = 0;
        for (int round = 0; round < BALANCE_ROUNDS; round++) {
            body.place(shift[0], shift[1]);
            double slipX = body.slipX();
            double slipY = oneFoot ? body.slipY() : 0;
            if (Math.abs(slipX) < BALANCED * stature && Math.abs(slipY) < BALANCED * stature) {
                return;
            }
            slope[0] = slope(round, slipX, lastSlipX, shift[0], lastX, slope[0]);
            slope[1] = slope(round, slipY, lastSlipY, shift[1], lastY, slope[1]);
            lastX = shift[0];
            lastY = shift[1];
            lastSlipX = slipX;
            lastSlipY = slipY;
            shift[0] -= slipX / slope[0];
            shift[1] -= slipY / slope[1];
        }
    }

    private double slope(int round, double slip, double lastSlip, double at, double last, double before) {
        return round == 0 || Math.abs(at - last) < 1e-10 * stature ? Math.clamp(before, 0.3, 3.0)
                : Math.clamp((slip - lastSlip) / (at - last), 0.3, 3.0);
    }

    /** Reads the shapes of the arms again where the trunk now is. */
    private void reshape() {
        var k = withArms();
        body.hold(values, shape(k, Side.LEFT), shape(k, Side.RIGHT));
    }

    private ArmShape shape(Skeleton k, Side side) {
        return ArmShape.of(k, side, arms.problem().arm(side), position, loads, arms.onSupport(side));
    }

    private Skeleton withArms() {
        var k = new Skeleton(arms.problem().person());
        k.trunk(Torso.upright(body.pelvis(), stance.yaw(), body.lean(), body.bend(), stance.turn()), Vector3D.PLUS_K);
        arms.place(k, position);
        return k;
    }

    /** The variables of {@code stance} that are open. */
    static List<Free> open(Stance stance) {
        var open = new ArrayList<Free>(4);
        for (Free free : Free.values()) {
            if (stance.high()[free.ordinal()] > stance.low()[free.ordinal()]) {
                open.add(free);
            }
        }
        return List.copyOf(open);
    }

    @Override
    public String toString() {
        return open + " at " + Arrays.toString(values);
    }
}
