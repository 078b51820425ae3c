package contrapposto.catalogue;

import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Turns the kinds and numbers of a family file into the body's own records, for a working side and a stature.
 *
 * <p>In the file, turns are degrees + = toward the WORKING side; directions are {@code forward}, {@code out} (away from
 * the midline, on the side of that arm) and {@code up} in the frame of the ribs; {@code height}, {@code ahead}, {@code lift} and
 * {@code stride} are shares of stature; {@code rear-knee-clear} is in metres.
 */
final class Motion {
    private Motion() { }

    /** The numbers each kind needs, by its word in the file; insertion order is the order of the guide. */
    static final Map<String, List<String>> ACTIONS = Words.ordered(
            "knee-bend", List.of("kneeFlexion", "rearKneeClear"),
            "hip-fold", List.of("handHeight"),
            "heel-rise", List.of("share"),
            "hip-lift", List.of("shortOf"),
            "step-up", List.of(), "weight-shift", List.of("share", "lean"),
            "arms-move", List.of("startTurn", "workingTurn", "lean"),
            "press-up", List.of("elbowFlexion", "topTurn"),
            "squeeze", List.of(), "knee-lift", List.of("lift"),
            "walk", List.of("stride"));

    static final Map<String, List<String>> ARMS = Words.ordered(
            "hang", List.of(), "rest", List.of(), "at-chest", List.of(), "at-shoulder", List.of(),
            "overhead", List.of(), "on-support", List.of("height", "ahead"), "planted", List.of(),
            "steps-ahead", List.of("ahead"),
            "reach", List.of("forward", "out", "up", "startElbow"),
            "press", List.of("forward", "out", "up"), "pull", List.of("forward", "out", "up"),
            "curl", List.of("from", "to", "elbowOnSupport"), "extend", List.of("from", "to", "armBack"),
            "draw-back", List.of(), "flat", List.of(), "pillow", List.of());

    static Action action(String kind, Map<String, Double> v, Side working, double stature) {
        int sign = working.sign();
        return switch (kind) {
            case "knee-bend" -> new Action.KneeBend(v.get("kneeFlexion"), v.get("rearKneeClear"));
            case "hip-fold" -> new Action.HipFold(v.get("handHeight"));
            case "heel-rise" -> new Action.HeelRise(v.get("share"));
            case "hip-lift" -> new Action.HipLift(v.get("shortOf"));
            case "step-up" -> new Action.StepUp();
            case "weight-shift" -> new Action.Shift(v.get("share"), v.get("lean"), false);
            case "arms-move" -> new Action.ArmsMove(sign * v.get("startTurn"), sign * v.get("workingTurn"),
                    v.get("lean"));
            case "press-up" -> new Action.PressUp(v.get("elbowFlexion"), sign * v.get("topTurn"));
            case "squeeze" -> new Action.Squeeze(0);
            case "knee-lift" -> new Action.Squeeze(v.get("lift") * stature);
            case "walk" -> new Action.Walk(v.get("stride") * stature);
            default -> throw new IllegalArgumentException("No action is called (" + kind + ").");
        };
    }

    static ArmTask arm(String kind, Map<String, Double> v, Side arm, double stature) {
        return switch (kind) {
            case "hang" -> new ArmTask.Hang();
            case "rest" -> new ArmTask.Rest();
            case "at-chest" -> new ArmTask.AtChest();
            case "at-shoulder" -> new ArmTask.AtShoulder();
            case "overhead" -> new ArmTask.Overhead();
            case "on-support" -> new ArmTask.OnSupport(v.get("height") * stature, v.get("ahead") * stature);
            case "planted" -> new ArmTask.Planted();
            case "steps-ahead" -> new ArmTask.StepsAhead(v.get("ahead") * stature);
            case "reach" -> new ArmTask.Reach(direction(v, arm), v.get("startElbow"));
            case "press" -> new ArmTask.Press(direction(v, arm));
            case "pull" -> new ArmTask.Pull(direction(v, arm));
            case "curl" -> new ArmTask.Curl(v.get("from"), v.get("to"), v.get("elbowOnSupport") != 0);
            case "extend" -> new ArmTask.Extend(v.get("from"), v.get("to"), v.get("armBack"));
            case "draw-back" -> new ArmTask.DrawBack();
            case "flat" -> new ArmTask.Flat();
            case "pillow" -> new ArmTask.Pillow();
            default -> throw new IllegalArgumentException("No arm task is called (" + kind + ").");
        };
    }

    private static Vector3D direction(Map<String, Double> v, Side arm) {
        return new Vector3D(v.get("forward"), arm.sign() * v.get("out") + 0.0, v.get("up")).normalize();
    }

    /** What is wrong with these numbers for this kind, if anything. */
    static Optional<String> directionProblem(Map<String, Double> v) {
        boolean none = v.getOrDefault("forward", 0.0) == 0 && v.getOrDefault("out", 0.0) == 0
                && v.getOrDefault("up", 0.0) == 0;
        return v.containsKey("forward") && none ? Optional.of("a direction needs a length") : Optional.empty();
    }
}
