package contrapposto.body;

/** What pose solving found. */
public sealed interface PoseOutcome {
    /** Both positions exist. */
    record Solved(SolvedPose pose) implements PoseOutcome { }

    /**
     * No pose keeps every constraint.
     *
     * @param constraint the one that cannot be met, in words ("left ankle would need 34° of forward bend")
     * @param by         by how much, in {@code unit}
     */
    record Impossible(String constraint, double by, String unit) implements PoseOutcome { }
}
