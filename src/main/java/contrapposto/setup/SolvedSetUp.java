package contrapposto.setup;

import contrapposto.assess.Reason;
import contrapposto.assess.Role;
import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The set-up chosen for one side of one family, its poses and the case for it.
 *
 * @param side      the working side
 * @param problem   what was solved: solving it again with another load gives the poses for that load
 * @param pose      solved with the load the problem names
 * @param phase     that the solved shin angle trains; empty where no leg works
 * @param muscles   trained in this set-up on this side, 1 direct or 0.5 indirect
 * @param otherSideMuscles the same for the other side
 * @param runnerUp  the second best and why it lost; empty when there was no other
 * @param lacks     what the equipment lacks to meet the target, and what would help; empty when nothing
 * @param byCoach   whether the coach fixed (part of) it
 */
public record SolvedSetUp(Family family, Side side, Role role, SetUp setUp, PoseProblem problem, SolvedPose pose,
                          Optional<Phase> phase, Map<Muscle, Double> muscles, Map<Muscle, Double> otherSideMuscles,
                          List<Reason> reasons, Optional<RunnerUp> runnerUp, Optional<Said> lacks, boolean byCoach) {
    /** @param lostOn the criterion that decided */
    public record RunnerUp(SetUp setUp, Said summary, Said lostOn) { }
}
