package contrapposto.illustrate;

import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.PoseProblem;
import java.util.Locale;

/** What the working position is called under its sketch; the words themselves belong to the templates. */
public enum WorkingWord {
    DOWN, UP, PRESS, PULL, REACH, BEND, STRAIGHTEN, SQUEEZE, WALK, TURN, HOLD, STEP;

    /** From here on a turn of the ribs is what one does, degrees. */
    private static final double LEAST_TURN = 10;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static WorkingWord of(PoseProblem problem) {
        return switch (problem.action()) {
            case Action.KneeBend a -> DOWN;
            case Action.HipFold a -> DOWN;
            case Action.HeelRise a -> UP;
            case Action.HipLift a -> UP;
            case Action.StepUp a -> UP;
            case Action.Shift a -> HOLD;
            case Action.PressUp a -> UP;
            case Action.Squeeze(var lift) -> lift > 0 ? UP : SQUEEZE;
            case Action.Walk a -> WALK;
            case Action.ArmsMove a when problem.base() instanceof BaseOfSupport.OneLeg -> HOLD;
            case Action.ArmsMove a -> of(SetUpWishes.task(problem, problem.working()), turns(a) ? TURN : HOLD);
        };
    }

    private static boolean turns(Action.ArmsMove moves) {
        return StrictMath.abs(moves.workingTurn() - moves.startTurn()) >= LEAST_TURN;
    }

    /** @param resting the word where the arm itself does nothing */
    private static WorkingWord of(ArmTask task, WorkingWord resting) {
        return switch (task) {
            case ArmTask.Press t -> PRESS;
            case ArmTask.Pull t -> PULL;
            case ArmTask.Curl t -> BEND;
            case ArmTask.Extend t -> STRAIGHTEN;
            case ArmTask.Overhead t -> PRESS;
            case ArmTask.Reach t -> REACH;
            case ArmTask.Hang t -> resting;
            case ArmTask.Rest t -> resting;
            case ArmTask.AtChest t -> resting;
            case ArmTask.AtShoulder t -> resting;
            case ArmTask.OnSupport t -> resting;
            case ArmTask.Planted t -> resting;
            case ArmTask.StepsAhead t -> STEP;
            case ArmTask.DrawBack t -> PULL;
            case ArmTask.Flat t -> resting;
            case ArmTask.Pillow t -> resting;
        };
    }
}
