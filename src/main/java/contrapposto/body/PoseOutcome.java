package contrapposto.body;

import contrapposto.wording.Said;

/** What pose solving found. */
public sealed interface PoseOutcome {
    /** Both positions exist. */
    record Solved(SolvedPose pose) implements PoseOutcome { }

    /**
     * No pose keeps every constraint.
     *
     * @param constraint the one that cannot be met ("the left ankle would need 34° of forward bend")
     * @param by         by how much, in {@code unit}
     */
    record Impossible(Said constraint, double by, String unit) implements PoseOutcome { }

    /** The same in the mirror, words included. */
    default PoseOutcome mirrored() {
        return switch (this) {
            case Solved(var pose) -> new Solved(pose.mirrored());
            case Impossible(var constraint, var by, var unit) -> new Impossible(constraint.mirrored(), by, unit);
        };
    }
}
