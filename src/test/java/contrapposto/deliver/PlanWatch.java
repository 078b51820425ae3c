package contrapposto.deliver;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.yaml.snakeyaml.Yaml;

/**
 * Reads a plan file as a stranger would, and looks for what a restriction forbids. It knows the plan's YAML, the tags in
 * the catalogue's YAML and plain geometry; it shares no rule with the program. Angles are read from the joints.
 */
final class PlanWatch {
    private static final double DEGREES = 2.5;
    private static final Path CATALOGUE = Path.of("src/main/resources/contrapposto/catalogue");
    private static final Map<String, List<String>> TAGS = tags();
    /** Demands of the whole body: the side does not matter. Written down here a second time, by anatomy. */
    private static final Set<String> WHOLE = Set.of("floor", "spine-flexion", "breath-hold", "impact", "twisting", "neck", "lower-back",
            "deep-knee", "side-lying");

    private final List<String> found = new ArrayList<>();

    private PlanWatch() { }

    /** What is forbidden and how much: a tag (or family) on a side, or the most of something. */
    record Ban(String what, String side, double most) {
        boolean on(String one) {
            return side.equals("both") || side.equals(one);
        }
    }

    /** @param heights of boxes and bench, cm: nothing else may be under a foot */
    record Rules(List<Ban> bans, boolean noSupine, boolean noBreathHold, boolean handForRearFoot, List<Double> heights) { }

    /** Every violation in words; none when the plan keeps the rules. */
    static List<String> violations(String plan, Rules rules) {
        var watch = new PlanWatch();
        Map<String, Object> root = new Yaml().load(plan);
        var printed = new ArrayList<String>();
        for (var day : PlanWatch.<Map<String, Object>>list(root, "days")) {
            for (var exercise : PlanWatch.<Map<String, Object>>list(day, "exercises")) {
                printed.add((String) exercise.get("id"));
                map(exercise, "sides").forEach((side, task) -> watch.look((String) exercise.get("id"), side, cast(task), rules));
            }
        }
        var explained = PlanWatch.<Map<String, Object>>list(root, "left-out").stream().map(out -> (String) out.get("id")).toList();
        if (root.containsKey("days")) {
            TAGS.keySet().stream().filter(id -> !printed.contains(id) && !explained.contains(id))
                    .forEach(id -> watch.found.add(id + " is neither printed nor left out with a reason"));
        }
        return watch.found.stream().distinct().toList();
    }

    private void look(String id, String side, Map<String, Object> task, Rules rules) {
        var setUp = map(task, "setup");
        var pose = map(task, "pose");
        for (var key : List.of("front-raise-cm", "rear-raise-cm", "raise-cm")) {
            double height = number(setUp, key);
            if (height > 0 && rules.heights().stream().noneMatch(h -> Math.abs(h - height) < 0.1)) {
                found.add(id + ": a foot or seat on " + height + " cm, which is no box or bench");
            }
        }
        boolean hand = !"none".equals(setUp.get("hand-support"));
        if (rules.handForRearFoot() && number(setUp, "rear-raise-cm") > 0 && !hand) {
            found.add(id + ": rear foot raised without a hand on something");
        }
        if (rules.noBreathHold() && TAGS.get(id).contains("breath-hold")) {
            found.add(id + ": tempts to hold the breath");
        }
        for (var ban : rules.bans()) {
            if (ban.what().equals("hand-load")) {
                watchLoad(id, setUp, task, ban);
            } else {
                watchTags(id, side, setUp, task, ban);
            }
        }
        for (var position : List.of("start", "working")) {
            watchPose(id, position, map(map(pose, "joints"), position), PlanWatch.list(pose, "forces"), rules);
        }
    }

    private void watchLoad(String id, Map<String, Object> setUp, Map<String, Object> task, Ban ban) {
        boolean shared = "both".equals(setUp.get("load-hand"));
        for (var week : PlanWatch.<Map<String, Object>>list(task, "weeks")) {
            double load = number(week, "load-kg") / (shared ? 2 : 1);
            if (load > ban.most() + 0.01 && !TAGS.get(id).contains("hips-load")) {
                found.add(id + ": " + load + " kg in a hand, " + ban.most() + " allowed");
            }
        }
    }

    /** Only what the catalogue's tags alone decide, and whose side the set-up names. */
    private void watchTags(String id, String side, Map<String, Object> setUp, Map<String, Object> task, Ban ban) {
        if (ban.what().equals(id) && (ban.on(side) || side.equals("both"))) {
            found.add(id + " is printed, but to be avoided");
        }
        boolean weight = !"body-weight".equals(setUp.get("implement"));
        String movement = ban.what().startsWith("loaded-") ? ban.what().substring(7) : ban.what();
        if (!TAGS.get(id).contains(movement)) {
            return;
        }
        boolean hit = switch (ban.what()) {
            case "loaded-twisting", "loaded-spine-flexion" -> weight;
            case "single-leg", "deep-hip" -> side.equals("both") || ban.on((String) task.getOrDefault("working-leg", side));
            case "grip" -> weight && heldOn(setUp, task, side, ban);
            case "knee", "hip", "ankle" -> ban.side().equals("both") || side.equals("both") || ban.on((String) task.getOrDefault("working-leg", side));
            case "elbow", "shoulder", "wrist" -> side.equals("both") || weight && heldOn(setUp, task, side, ban);
            default -> WHOLE.contains(ban.what());
        };
        if (hit) {
            found.add(id + " on the " + side + ": " + ban.what() + " is to be avoided on the " + ban.side());
        }
    }

    private static boolean heldOn(Map<String, Object> setUp, Map<String, Object> task, String side, Ban ban) {
        String hand = (String) setUp.getOrDefault("load-hand", task.getOrDefault("working-arm", side));
        return hand.equals("both") || hand.equals("each") || ban.on(hand);
    }

    private void watchPose(String id, String position, Map<String, Object> joints, List<Map<String, Object>> forces, Rules rules) {
        var body = new Body(joints);
        boolean supine = body.chest()[2] > 0.7;
        if (rules.noSupine() && supine) {
            found.add(id + ", " + position + ": on the back");
        }
        for (var ban : rules.bans()) {
            for (var side : List.of("left", "right")) {
                if (!ban.on(side)) {
                    continue;
                }
                boolean broken = switch (ban.what()) {
                    case "kneeling" -> body.at(side + "-knee")[2] < 0.10 && body.at("pelvis")[2] > 0.30 && Math.abs(body.chest()[1]) < 0.5;
                    case "supine" -> supine;
                    case "prone" -> body.chest()[2] < -0.7 && forces.stream().anyMatch(f -> ((String) f.get("what")).endsWith("-knee")
                            || ((String) f.get("what")).endsWith("-toes"));
                    case "wrist-load" -> forces.stream().anyMatch(f -> f.get("what").equals(side + "-hand")) && body.chest()[2] < -0.5;
                    case "overhead" -> body.along(side + "-wrist") > body.along("head-top") + 0.02;
                    case "head-below-heart" -> body.at("head-top")[2] < body.heart() - 0.10;
                    case "knee-flexion" -> body.knee(side) > ban.most() + DEGREES;
                    case "hip-flexion" -> body.hip(side) > ban.most() + DEGREES;
                    case "dorsiflexion" -> body.ankle(side) > ban.most() + DEGREES && stands(forces, side);
                    default -> false;
                };
                if (broken) {
                    found.add(id + ", " + position + ": " + ban.what() + " on the " + side + (ban.most() > 0 ? " over " + ban.most() : ""));
                }
            }
        }
    }

    private static boolean stands(List<Map<String, Object>> forces, String side) {
        return forces.stream().anyMatch(f -> f.get("what").equals(side + "-foot"));
    }

    /** The joints of one position. */
    private record Body(Map<String, Object> joints) {
        double[] at(String joint) {
            return PlanWatch.<List<Number>>cast(joints.get(joint)).stream().mapToDouble(Number::doubleValue).toArray();
        }

        double[] up() {
            return unit(minus(at("neck"), at("pelvis")));
        }

        /** Out of the front of the pelvis. */
        double[] chest() {
            return unit(cross(unit(minus(at("left-hip"), at("right-hip"))), up()));
        }

        /** How far above the pelvis along the trunk. */
        double along(String joint) {
            return dot(minus(at(joint), at("pelvis")), up());
        }

        double heart() {
            return 0.75 * at("neck")[2] + 0.25 * at("pelvis")[2];
        }

        double knee(String side) {
            return angle(minus(at(side + "-knee"), at(side + "-hip")), minus(at(side + "-ankle"), at(side + "-knee")));
        }

        /** Of the thigh against the trunk, in the plane from front to back. */
        double hip(String side) {
            var thigh = minus(at(side + "-knee"), at(side + "-hip"));
            return Math.toDegrees(Math.atan2(dot(thigh, chest()), -dot(thigh, up())));
        }

        /** Of the shin over the sole. */
        double ankle(String side) {
            return 90 - angle(minus(at(side + "-knee"), at(side + "-ankle")), minus(at(side + "-ball"), at(side + "-heel")));
        }
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] unit(double[] a) {
        double length = Math.sqrt(dot(a, a));
        return new double[] {a[0] / length, a[1] / length, a[2] / length};
    }

    private static double angle(double[] a, double[] b) {
        return Math.toDegrees(Math.acos(Math.clamp(dot(unit(a), unit(b)), -1, 1)));
    }

    private static double number(Map<String, Object> map, String key) {
        return map.get(key) instanceof Number number ? number.doubleValue() : 0;
    }

    private static Map<String, Object> map(Map<String, Object> map, String key) {
        return cast(map.getOrDefault(key, Map.of()));
    }

    private static <T> List<T> list(Map<String, Object> map, String key) {
        return cast((Object) map.getOrDefault(key, List.of()));
    }

    @SuppressWarnings("unchecked")
    private static <T> T cast(Object value) {
        return (T) value;
    }

    private static Map<String, List<String>> tags() {
        var tags = new TreeMap<String, List<String>>();
        try (var files = Files.list(CATALOGUE)) {
            for (var file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                Map<String, Object> family = new Yaml().load(Files.readString(file));
                if (family.containsKey("id")) {
                    tags.put((String) family.get("id"), PlanWatch.list(family, "tags"));
                }
            }
            return tags;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
