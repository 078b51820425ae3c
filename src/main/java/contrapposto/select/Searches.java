package contrapposto.select;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Searches that were made before: two clients of one practice often ask the same, though their bodies differ. The question is
 * compared as a whole, so an answer is never another than {@link Search} would give. The last few are kept; threads may share
 * them.
 */
final class Searches {
    private static final int MOST = 32;

    /** {@link Scale} follows from the aims in the frame. */
    private record Question(Frame frame, List<Goal> order, List<Item> items) { }

    private final Map<Question, Search.Found> answered = new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Question, Search.Found> eldest) {
            return size() > MOST;
        }
    };

    Search.Found best(Frame frame, Scale scale, List<Item> items) {
        var question = new Question(frame, scale.order(), items);
        return known(question).orElseGet(() -> {
            var found = Search.best(frame, scale, items);
            keep(question, found);
            return found;
        });
    }

    private synchronized Optional<Search.Found> known(Question question) {
        return Optional.ofNullable(answered.get(question));
    }

    private synchronized void keep(Question question, Search.Found found) {
        answered.put(question, found);
    }
}
