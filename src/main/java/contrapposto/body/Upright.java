package contrapposto.body;

import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Solves the problems of a body on its feet. */
final class Upright {
    /** How near the rear knee comes to its least height, share of stature. */
    private static final double CLEARANCE = 6e-5;
    private static final int DEPTH_ROUNDS = 7;
    /** A squat or split squat whose working knee bends less than this is none; over a free foot less will do. */
    private static final double LEAST_DEPTH = 60;
    private static final double FREE_FOOT_DEPTH = 20;
    private static final double DEPTH_STEP = 5;
    /** Bends of the knee that lifts the body onto a box, degrees: the first tried and the bounds. */
    private static final double FIRST_LIFT = 60;
    private static final double SHALLOWEST_LIFT = 12;
    private static final double DEEPEST_LIFT = 120;
    private static final double[] NOWHERE = {};
    /** How far the working knee may bend in a fold, degrees, the first that serves, and how many of them are soft: house. */
    private static final int SOFT_FOLDS = 4;
    private static final double[] FOLD_KNEES = {25, 30, 35, 40, 60};

    private final PoseProblem problem;
    private final Loads loads;
    private final Standing standing;
    /** Where the last searches ended: a little more or less depth hardly moves the best pose. */
    private double[] easyNear = NOWHERE;
    private double[] strainedNear = NOWHERE;
    private boolean lighter;

    private Upright(PoseProblem problem, Loads loads, Standing standing) {
        this.problem = problem;
        this.loads = loads;
        this.standing = standing;
    }

    static PoseOutcome solve(PoseProblem asked) {
        PoseProblem problem = Support.given(asked);
        Loads loads = Loads.of(problem.load(), middle(problem));
        var hands = Support.forces(problem);
        var free = new Upright(problem, loads, new Standing(problem, Arms.free(problem), loads, hands));
        StanceTrial start = free.start();
        if (start.breaches(0).beyond(Standing.SLACK)) {
            return start.breaches(0).worst();
        }
        StanceTrial working = free.working();
        StanceTrial end = free.end(working);
        if (!hands.isEmpty()) {
            Arms held = Support.reached(problem, List.of(start.skeleton, working.skeleton, end.skeleton));
            var steadied = new Upright(problem, loads, new Standing(problem, held, loads, hands));
            start = steadied.start();
            working = steadied.working();
            return steadied.outcome(start, working, steadied.end(working), held);
        }
        return free.outcome(start, working, end, Arms.free(problem));
    }

    private static double middle(PoseProblem problem) {
        Footing footing = Footing.of(problem, problem.base(), Position.START);
        Segments lengths = problem.person().segments();
        double lead = Stance.reference(footing.foot(footing.lead()).orElseThrow(), lengths).getX();
        return footing.foot(footing.lead().other())
                .map(other -> (lead + Stance.reference(other, lengths).getX()) / 2).orElse(lead);
    }

    private StanceTrial start() {
        return best(Position.START, 0);
    }

    private void forget() {
        easyNear = NOWHERE;
        strainedNear = NOWHERE;
    }

    /** At the declared depth, or less deep where a limit or the rear knee stops it. */
    private StanceTrial working() {
        forget();
        if (problem.action() instanceof Action.HipFold) {
            return folded();
        }
        if (problem.action() instanceof Action.StepUp) {
            return liftedOff();
        }
        if (!(problem.action() instanceof Action.KneeBend(var kneeFlexion, var rearKneeClear))) {
            return bent(0);
        }
        Side lead = Footing.of(problem, problem.base(), Position.WORKING).lead();
        double knee = Math.min(kneeFlexion, problem.limits().on(lead).kneeFlexion() - 2 * StanceTrial.MARGIN);
        StanceTrial best = bent(knee);
        if (!(problem.base() instanceof BaseOfSupport.Split split)) {
            return stoppedByLimits(best, knee);
        }
        Side rear = split.front().other();
        double least = rearKneeClear + Segments.KNEE_RADIUS * problem.person().stature();
        double excess = best.skeleton.at(rear, Part.KNEE).getZ() - least;
        double slope = -0.006 * problem.person().stature();
        for (int round = 0; round < DEPTH_ROUNDS && excess < -CLEARANCE * problem.person().stature(); round++) {
            double shallower = Math.max(knee - Math.min(25, Math.abs(excess / slope) + 0.02), 5);
            StanceTrial next = bent(shallower);
            double left = next.skeleton.at(rear, Part.KNEE).getZ() - least;
            if (left > excess) {
                slope = (left - excess) / (shallower - knee);
            }
            best = next;
            knee = shallower;
            excess = left;
        }
        return stoppedByLimits(best, knee);
    }

    /**
     * The first moment of a step up that one leg carries, its hardest: the toes of the other foot have just left the floor.
     * Less deep where a limit is in the way; the foot behind then helps longer.
     */
    private StanceTrial liftedOff() {
        Side free = Footing.of(problem, problem.base(), Position.WORKING).lead().other();
        double h = problem.person().stature();
        double knee = FIRST_LIFT;
        StanceTrial best = bent(knee);
        double slope = -0.006 * h;
        double excess = excess(best, free);
        for (int round = 0; round < DEPTH_ROUNDS && Math.abs(excess) > CLEARANCE * h; round++) {
            double next = Math.clamp(knee - Math.clamp(excess / slope, -25, 25), SHALLOWEST_LIFT, DEEPEST_LIFT);
            if (next == knee) {
                break;
            }
            best = bent(next);
            double left = excess(best, free);
            slope = Math.min(-0.001 * h, (left - excess) / (next - knee));
            knee = next;
            excess = left;
        }
        return stoppedByLimits(best, knee);
    }

    private double excess(StanceTrial trial, Side free) {
        double h = problem.person().stature();
        return Math.min(trial.skeleton.at(free, Part.TOE).getZ(), trial.skeleton.at(free, Part.HEEL).getZ())
                - (StanceTrial.FREE_FOOT + CLEARANCE) * h;
    }

    /** Where the movement ends: tall on the box after a step up, else the working position. */
    private StanceTrial end(StanceTrial working) {
        return problem.action() instanceof Action.StepUp
                ? standing.best(Stances.risen(problem), Position.WORKING, NOWHERE) : working;
    }

    /** Folded over soft knees; they bend more, and then a foot behind carries less, only where the feet stand too far apart for that. */
    private StanceTrial folded() {
        StanceTrial best = bent(FOLD_KNEES[0]);
        for (int i = 1; i < SOFT_FOLDS && best.breaches(0).beyond(Standing.SLACK); i++) {
            best = bent(FOLD_KNEES[i]);
        }
        lighter = best.breaches(0).beyond(Standing.SLACK);
        for (int i = 0; lighter && i < FOLD_KNEES.length && best.breaches(0).beyond(Standing.SLACK); i++) {
            best = bent(FOLD_KNEES[i]);
        }
        return best;
    }

    /** Less deep, step by step, while a limit of another joint (or the floor under a free foot) is in the way. */
    private StanceTrial stoppedByLimits(StanceTrial deepest, double knee) {
        StanceTrial best = deepest;
        double least = problem.base() instanceof BaseOfSupport.Step || problem.base() instanceof BaseOfSupport.OneLeg ? FREE_FOOT_DEPTH : LEAST_DEPTH;
        for (double bend = knee - DEPTH_STEP; best.breaches(0).beyond(Standing.SLACK) && bend >= least; bend -= DEPTH_STEP) {
            StanceTrial next = bent(bend);
            best = next.breaches(0).penalty() < best.breaches(0).penalty() ? next : best;
        }
        return best;
    }

    private StanceTrial bent(double knee) {
        return best(Position.WORKING, knee);
    }

    private StanceTrial best(Position position, double knee) {
        StanceTrial easy = standing.best(Stances.of(problem, position, knee, false, lighter), position, easyNear);
        easyNear = standing.found();
        if (!easy.breaches(0).beyond(Standing.SLACK)) {
            return easy;
        }
        Stance other = Stances.of(problem, position, knee, true, lighter);
        if (!StanceModel.open(other).contains(Stance.Free.PITCH)) {
            return easy;
        }
        StanceTrial strained = standing.best(other, position, strainedNear);
        strainedNear = standing.found();
        return strained;
    }

    private PoseOutcome outcome(StanceTrial start, StanceTrial working, StanceTrial end, Arms arms) {
        for (StanceTrial trial : end == working ? List.of(working, start) : List.of(working, start, end)) {
            Breaches breaches = trial.breaches(0);
            if (breaches.beyond(Standing.SLACK)) {
                return breaches.worst();
            }
        }
        Pose worked = working.skeleton.pose(Vector3D.PLUS_I);
        return new PoseOutcome.Solved(new SolvedPose(start.skeleton.pose(Vector3D.PLUS_I), worked,
                end == working ? worked : end.skeleton.pose(Vector3D.PLUS_I), mechanics(start, working),
                Props.upright(problem, working.skeleton, loads, arms)));
    }

    private SolvedPose.Mechanics mechanics(StanceTrial start, StanceTrial working) {
        Footing footing = Footing.of(problem, problem.base(), Position.WORKING);
        Side lead = footing.lead();
        boolean both = footing.foot(lead.other()).isPresent();
        double share = working.leadShare();
        double frontShare = both && footing.front().isPresent()
                ? footing.front().get() == lead ? share : 1 - share : Double.NaN;
        double rearKnee = problem.base() instanceof BaseOfSupport.Split split
                ? working.skeleton.at(split.front().other(), Part.KNEE).getZ()
                        - Segments.KNEE_RADIUS * problem.person().stature()
                : Double.NaN;
        return Report.of(problem, lead, start.skeleton, working.statics(), start.centre(), working.centre(), frontShare,
                lead == Side.LEFT ? share : 1 - share, rearKnee, true, true);
    }
}
