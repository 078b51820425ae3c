package contrapposto.setup;

import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Family.BaseKind;
import contrapposto.wording.Said;
import java.util.Optional;

/**
 * What people of 65 and over, of unknown age, or with such a limit from the screening are not asked to do (common
 * practice): a rear foot raised, or an unsteady stance, without a hand on something steady. A wall that the exercise leans on is something steady.
 */
final class Caution {
    private static final int UNSTEADY = 3;
    /** The arm task of the catalogue that leans a hand on a wall. */
    private static final String ON_SUPPORT = "on-support";

    private Caution() { }

    static Optional<Reason> against(Question q, SetUp setUp) {
        boolean hand = setUp.handSupport() != SetUp.Support.NONE || handsOnSupport(q.family());
        boolean careful = q.assessed().cautious()
                || q.restraints().verdict().contains(Limit.HAND_SUPPORT_FOR_REAR_RAISE);
        if (careful && !hand && setUp.rearRaise().metres() > 0) {
            return Optional.of(Reason.of("hand-support", Said.of("hand-support/rear-raise"),
                    Source.PRACTICE));
        }
        boolean unsteady = q.family().base() == BaseKind.ONE_LEG || q.family().steadiness() >= UNSTEADY;
        return q.assessed().cautious() && !hand && unsteady
                ? Optional.of(Reason.of("hand-support", Said.of("hand-support/one-leg"), Source.PRACTICE))
                : Optional.empty();
    }

    /** Whether the exercise itself is done with a hand on a wall. */
    private static boolean handsOnSupport(Family family) {
        return family.workingArm().kind().equals(ON_SUPPORT) || family.otherArm().kind().equals(ON_SUPPORT);
    }
}
