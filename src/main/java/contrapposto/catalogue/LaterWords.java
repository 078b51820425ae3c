package contrapposto.catalogue;

import java.util.AbstractMap;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * The words of one language by family id, read when they are first asked for: a run prints one language and few families.
 * Nothing can go wrong then, since what is read later is part of this program and a test has read all of it.
 */
final class LaterWords extends AbstractMap<String, FamilyWords> {
    private final List<String> ids;
    private final Function<String, FamilyWords> read;
    private final Map<String, FamilyWords> known = new ConcurrentHashMap<>();

    /** @param ids of all families, in order */
    LaterWords(List<String> ids, Function<String, FamilyWords> read) {
        this.ids = List.copyOf(ids);
        this.read = read;
    }

    @Override
    public boolean containsKey(Object id) {
        return id instanceof String word && ids.contains(word);
    }

    @Override
    public FamilyWords get(Object id) {
        return containsKey(id) ? known.computeIfAbsent((String) id, read) : null;
    }

    @Override
    public Set<Entry<String, FamilyWords>> entrySet() {
        var all = new LinkedHashMap<String, FamilyWords>();
        ids.forEach(id -> all.put(id, get(id)));
        return Collections.unmodifiableMap(all).entrySet();
    }
}
