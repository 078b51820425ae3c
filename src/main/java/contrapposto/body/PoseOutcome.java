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

    /** The same in the mirror, words included. */
    default PoseOutcome mirrored() {
        return switch (this) {
            case Solved(var pose) -> new Solved(pose.mirrored());
            case Impossible(var words, var by, var unit) -> new Impossible(
                    words.replace("left", "\0").replace("right", "left").replace("\0", "right"), by, unit);
        };
    }
}
