package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A client turned the other way gets the exact mirror image of the whole plan, from set-ups to joints and reasons. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class MirrorTest {
    private static final double EXACT = 1e-9;
    private static final Pattern SIDE = Pattern.compile("\\b(left|right|Left|Right)\\b");
    private static final Set<String> ANTISYMMETRIC = Set.of("turn-moment-nm", "side-moment-nm");
    private static final Set<String> VECTORS = Set.of("joints", "centre-of-mass", "at", "newton");
    /** Of the spec itself, not of the plan. */
    private static final Set<String> OWN = Set.of("spec-sha256", "client", "assessment", "spec");

    /** Keys that hold the word but name no side of their own. */
    private static final Set<String> FIXED = Set.of("left-share", "left-out");

    @TempDir
    Path folder;

    @Test
    void a_pelvis_turned_left_gets_the_mirror_image_of_the_plan_for_right() throws IOException {
        String right = Files.readString(Path.of("programs/newcomer-right.yaml"));
        Path given = Files.writeString(folder.resolve("turned-right.yaml"), right);
        Path turned = Files.writeString(folder.resolve("turned-left.yaml"), swapped(right));
        assertTrue(Demos.build(folder.resolve("a"), given.toString(), "--edition", "client").startsWith("0\n"));
        assertTrue(Demos.build(folder.resolve("b"), turned.toString(), "--edition", "client").startsWith("0\n"));
        var plan = Demos.plan(Demos.file(folder.resolve("a"), "-plan.yaml"));
        var mirror = Demos.plan(Demos.file(folder.resolve("b"), "-plan.yaml"));
        var differences = new ArrayList<String>();
        compare(mirrored(plan, ""), mirror, "", differences);
        assertEquals(List.of(), differences.stream().limit(10).toList());
    }

    private static Object mirrored(Object value, String key) {
        return switch (value) {
            case Map<?, ?> map -> {
                var turned = new TreeMap<String, Object>();
                map.forEach((k, v) -> {
                    if (!OWN.contains(k.toString())) {
                        boolean vector = VECTORS.contains(key) || VECTORS.contains(k.toString());
                        String name = FIXED.contains(k.toString()) ? k.toString() : swapped(k.toString());
                        turned.put(name, mirrored(v, vector ? "at" : k.toString()));
                    }
                });
                yield turned;
            }
            case List<?> list when VECTORS.contains(key) && list.size() == 3 && list.get(1) instanceof Number y ->
                    List.of(list.get(0), -y.doubleValue(), list.get(2));
            case List<?> list -> list.stream().map(item -> mirrored(item, key)).toList();
            case Number number when ANTISYMMETRIC.contains(key) -> -number.doubleValue();
            case Number share when key.equals("left-share") -> 1 - share.doubleValue();
            case String text -> swapped(text);
            default -> value;
        };
    }

    private static String swapped(String text) {
        return SIDE.matcher(text).replaceAll(side -> switch (side.group()) {
            case "left" -> "right";
            case "right" -> "left";
            case "Left" -> "Right";
            default -> "Left";
        });
    }

    private static List<Object> byName(List<?> forces) {
        return forces.stream().map(f -> (Object) f).sorted(java.util.Comparator.comparing(f -> ((Map<?, ?>) f).get("what").toString())).toList();
    }

    private static List<String> rules(List<?> reasons) {
        return reasons.stream().map(r -> ((Map<?, ?>) r).get("rule").toString()).toList();
    }

    private static List<String> sorted(List<?> reasons) {
        return reasons.stream().map(r -> new TreeMap<Object, Object>((Map<?, ?>) r).toString()).sorted().toList();
    }

    private static void compare(Object expected, Object actual, String path, List<String> differences) {
        switch (expected) {
            case Map<?, ?> map when actual instanceof Map<?, ?> other -> {
                map.forEach((k, v) -> compare(v, other.get(k), path + "/" + k, differences));
                other.keySet().stream().filter(k -> !OWN.contains(k.toString()) && !map.containsKey(k))
                        .forEach(k -> differences.add(path + "/" + k + " is only in the mirror"));
            }
            case List<?> list when path.equals("/reasons") && actual instanceof List<?> other -> {
                if (!rules(list).equals(rules(other))) {        // their words name the measures of left before right
                    differences.add(path + ": " + rules(list) + " against " + rules(other));
                }
            }
            case List<?> list when path.endsWith("/reasons") && actual instanceof List<?> other -> {
                if (!sorted(list).equals(sorted(other))) {      // reasons speak of left before right
                    differences.add(path + ": " + sorted(list) + " against " + sorted(other));
                }
            }
            case List<?> list when path.endsWith("/forces") && actual instanceof List<?> other && list.size() == other.size() -> {
                var mine = byName(list);        // listed left foot first
                var theirs = byName(other);
                for (int i = 0; i < mine.size(); i++) {
                    compare(mine.get(i), theirs.get(i), path + "/" + i + "*", differences);
                }
            }
            case List<?> list when actual instanceof List<?> other && list.size() == other.size() -> {
                for (int i = 0; i < list.size(); i++) {
                    compare(list.get(i), other.get(i), path + "/" + i, differences);
                }
            }
            case Number number when actual instanceof Number other -> {
                if (StrictMath.abs(number.doubleValue() - other.doubleValue()) > EXACT) {
                    differences.add(path + ": " + number + " against " + other);
                }
            }
            case null -> {
                if (actual != null) {
                    differences.add(path + ": nothing against " + actual);
                }
            }
            default -> {
                if (!expected.toString().equals(String.valueOf(actual))) {
                    differences.add(path + ": " + expected + " against " + actual);
                }
            }
        }
    }
}
