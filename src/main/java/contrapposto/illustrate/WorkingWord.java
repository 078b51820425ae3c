package contrapposto.illustrate;

import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.body.PoseProblem;
import java.util.Locale;

/** What the working position is called under its sketch; the words themselves belong to the templates. */
public enum WorkingWord {
    DOWN, UP, PRESS, PULL, REACH, BEND, STRAIGHTEN, SQUEEZE, WALK;

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
            case Action.PressUp a -> UP;
            case Action.Squeeze a -> SQUEEZE;
            case Action.Walk a -> WALK;
            case Action.ArmsMove a -> of(SetUpWishes.task(problem, problem.working()));
        };
    }

    private static WorkingWord of(ArmTask task) {
        return switch (task) {
            case ArmTask.Press t -> PRESS;
            case ArmTask.Pull t -> PULL;
            case ArmTask.Curl t -> BEND;
            case ArmTask.Extend t -> STRAIGHTEN;
            case ArmTask.Overhead t -> PRESS;
            case ArmTask.Reach t -> REACH;
            case ArmTask.Hang t -> REACH;
            case ArmTask.Rest t -> REACH;
            case ArmTask.AtChest t -> REACH;
            case ArmTask.AtShoulder t -> REACH;
            case ArmTask.OnSupport t -> REACH;
            case ArmTask.Planted t -> REACH;
            case ArmTask.DrawBack t -> PULL;
            case ArmTask.Flat t -> REACH;
            case ArmTask.Pillow t -> REACH;
        };
    }
}
