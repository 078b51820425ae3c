package contrapposto.deliver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import contrapposto.compose.Plans;
import contrapposto.prescribe.Plan;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlanFileTest {
    private final Map<String, Object> file = read(Plans.turnedRight());

    @Test
    void roles_weeks_and_days_stand_where_the_contract_has_them() {
        assertEquals(1, file.get("format"));
        assertEquals(Map.of("landing", "left", "drive", "right"), file.get("roles"));
        assertEquals(List.of("mon", "thu"), list(file, "days").stream().map(d -> map(d).get("day")).toList());
        assertEquals(List.of(48, 48, 48, 48, 48, 48, 48, 48, 48, 48), map(list(file, "days").getFirst()).get("minutes"));
    }

    @Test
    void each_side_has_its_set_up_pose_and_weeks() {
        var left = side("split-squat", "left");
        var setup = map(left.get("setup"));
        assertEquals(15, setup.get("front-raise-cm"));
        assertEquals(80, setup.get("stance-cm"));
        assertEquals("right", setup.get("load-hand"));
        assertEquals("landing", left.get("role"));
        assertEquals(Map.of("start", -8, "working", 3), map(left.get("pose")).get("shin-deg"));
        assertEquals(0.65, map(left.get("pose")).get("front-share"));
        var first = map(list(left, "weeks").getFirst());
        assertEquals(List.of(1, 3, 8, 8, 3, "3-1-1", 90), List.of(first.get("week"), first.get("sets"), first.get("reps"), first.get("load-kg"),
                first.get("in-reserve"), first.get("tempo"), first.get("rest-s")));
    }

    @Test
    void every_joint_of_the_contract_is_there_in_both_positions() {
        var joints = map(map(side("split-squat", "left").get("pose")).get("joints"));
        for (String position : List.of("start", "working")) {
            assertEquals(23, map(joints.get(position)).size());
            assertEquals(List.of(0, 0, 0), map(joints.get(position)).get("left-hip"));
        }
    }

    @Test
    void what_does_not_apply_is_absent() {
        var squat = side("goblet-squat", "both");
        assertFalse(map(squat.get("setup")).containsKey("front-raise-cm"));
        assertFalse(map(squat.get("setup")).containsKey("pulley-cm"));
        assertFalse(map(list(squat, "weeks").getFirst()).containsKey("load-kg"));
        assertEquals(Set.of("right"), map(exercise("high-to-low-press").get("sides")).keySet());
    }

    @Test
    void a_withheld_plan_says_why_and_has_no_days() {
        var withheld = read(Plans.withheld());
        assertFalse(withheld.containsKey("days"));
        assertEquals("screening-chest-pain", map(list(withheld, "withheld").getFirst()).get("rule"));
        assertEquals(Map.of("landing", "left", "drive", "right"), withheld.get("roles"));
    }

    @Test
    void the_same_plan_gives_the_same_bytes() {
        assertArrayEquals(PlanFile.of(Plans.turnedRight()), PlanFile.of(Plans.turnedRight()));
    }

    private Map<String, Object> side(String id, String side) {
        return map(map(exercise(id).get("sides")).get(side));
    }

    private Map<String, Object> exercise(String id) {
        return list(file, "days").stream().flatMap(d -> list(map(d), "exercises").stream()).map(PlanFileTest::map)
                .filter(e -> e.get("id").equals(id)).findFirst().orElseThrow();
    }

    private static Map<String, Object> read(Plan plan) {
        return new Yaml(new SafeConstructor(new LoaderOptions())).load(new String(PlanFile.of(plan), StandardCharsets.UTF_8));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    private static List<?> list(Map<String, Object> map, String key) {
        return (List<?>) map.get(key);
    }
}
