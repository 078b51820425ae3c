package contrapposto.deliver;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a client's own file may carry of a plan: exercises, set-ups, poses, weeks. Nothing of the screening, of restrictions or
 * of what was left out because of them; of the person only what the plan goes by, the code alone where there is one.
 */
final class ClientPlan {
    private static final Set<String> PRIVATE = Set.of("reasons", "left-out", "warnings", "withheld", "equipment-lacks", "second-best");
    private static final Set<String> OF_THE_PERSON = Set.of("language", "units");

    private ClientPlan() { }

    static Map<String, Object> of(Map<String, Object> plan) {
        var tree = without(plan);
        tree.put("client", person(plan.get("client")));
        if (coded(plan.get("client"))) {
            tree.remove("title");
        }
        return tree;
    }

    private static Map<String, Object> person(Object client) {
        var kept = new LinkedHashMap<String, Object>();
        String named = coded(client) ? "code" : "name";
        ((Map<?, ?>) client).forEach((key, value) -> {
            if (key.equals(named) || OF_THE_PERSON.contains(key)) {
                kept.put((String) key, value);
            }
        });
        return kept;
    }

    private static boolean coded(Object client) {
        return client instanceof Map<?, ?> map && map.containsKey("code");
    }

    private static Map<String, Object> without(Map<?, ?> map) {
        var kept = new LinkedHashMap<String, Object>();
        map.forEach((key, value) -> {
            if (!PRIVATE.contains(key)) {
                kept.put((String) key, without(value));
            }
        });
        return kept;
    }

    private static Object without(Object value) {
        return value instanceof Map<?, ?> map ? without(map)
                : value instanceof List<?> list ? list.stream().map(ClientPlan::without).toList() : value;
    }
}
