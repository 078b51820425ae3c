package contrapposto.select;

import java.util.Optional;

/**
 * What to do in place of an exercise on a day when it cannot be done; family ids, not of the plan.
 *
 * @param taken the best one that needs none of the things this one needs, for when they are in use; empty when it needs none
 * @param hurts the best one that loads other joints, or an easier step; empty when there is none: it is then left out
 */
public record Instead(Optional<String> taken, Optional<String> hurts) {
    public static final Instead NONE = new Instead(Optional.empty(), Optional.empty());

    /** The same one for both. */
    public static Instead of(String id) {
        return new Instead(Optional.of(id), Optional.of(id));
    }
}
