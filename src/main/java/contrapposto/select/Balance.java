package contrapposto.select;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessed.Limit;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Family.BaseKind;
import contrapposto.quantity.Sided;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import java.util.Comparator;
import java.util.Optional;

/**
 * Balance work: standing on one leg, or what is hard to balance. Where the limits of screening put balance first it is in
 * every session, and comes before all other work on the feet, while the client is fresh (common practice). Floor work
 * still opens the session: nobody gets down to the floor and up again in the middle of it.
 */
public final class Balance {
    private static final int HARD_TO_BALANCE = 3;

    private Balance() { }

    /** Whether this family trains balance. */
    public static boolean trainedBy(Family family) {
        return family.base() == BaseKind.ONE_LEG || family.steadiness() >= HARD_TO_BALANCE;
    }

    /** Whether balance comes first for this client. */
    public static boolean first(Assessed assessed) {
        return assessed.verdict().limits().contains(Limit.BALANCE_FIRST);
    }

    /**
     * The family that is put into the plan so that balance is trained at all: on one leg without a weight, the steadiest there
     * is, then the first of the catalogue. None where balance need not come first, the coach has asked for balance work, or none can be set up.
     */
    static Optional<String> wanted(SetUps setUps) {
        var spec = setUps.assessed().spec();
        var asked = spec.choices().include().stream().anyMatch(id -> setUps.usable().containsKey(id) && trainedBy(family(setUps.usable().get(id))));
        return !first(setUps.assessed()) || asked ? Optional.empty() : setUps.usable().values().stream().map(Balance::family)
                .filter(f -> f.base() == BaseKind.ONE_LEG && f.group() == CapacityGroup.NONE && !spec.choices().exclude().contains(f.id()))
                .min(Comparator.comparingInt(Family::steadiness)).map(Family::id);
    }

    private static Family family(Sided<SolvedSetUp> sides) {
        return sides.values().getFirst().family();
    }
}
