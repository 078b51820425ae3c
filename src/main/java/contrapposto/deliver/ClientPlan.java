package contrapposto.deliver;

import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/**
 * What a client's own file may carry of a plan: exercises, set-ups, poses, weeks. Nothing of the screening, of restrictions or
 * of what was left out because of them; of the person only what the plan goes by, the code alone where there is one.
 */
final class ClientPlan {
    private static final Set<String> PRIVATE = Set.of("reasons", "left-out", "warnings", "withheld", "equipment-lacks", "second-best");
    private static final Set<String> OF_THE_PERSON = Set.of("language", "units");

    /** What became of a branch: one that hangs in the plan at several places hangs in the client's at the same. */
    private final Map<Object, Object> kept = new IdentityHashMap<>();

    private ClientPlan() { }

    static Map<String, Object> of(Map<String, Object> plan) {
        var tree = new ClientPlan().without(plan);
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

    private Map<String, Object> without(Map<?, ?> map) {
        var left = new LinkedHashMap<String, Object>();
        map.forEach((key, value) -> {
            if (!PRIVATE.contains(key)) {
                left.put((String) key, without(value));
            }
        });
        return left;
    }

    private Object without(Object value) {
        return switch (value) {
            case Map<?, ?> map -> once(map, () -> without(map));
            case List<?> list -> once(list, () -> list.stream().map(this::without).toList());
            default -> value;
        };
    }

    private Object once(Object branch, Supplier<Object> made) {
        if (!kept.containsKey(branch)) {
            kept.put(branch, made.get());
        }
        return kept.get(branch);
    }
}
