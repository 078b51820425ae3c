package contrapposto.select;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.Muscle;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUps;
import java.util.ArrayList;
import java.util.List;

/** Why an exercise is in the plan, in plain sentences for the coach. */
final class WhyThis {
    private final SetUps setUps;
    private final Stages stages;

    WhyThis(SetUps setUps, Stages stages) {
        this.setUps = setUps;
        this.stages = stages;
    }

    List<Reason> of(Item item) {
        var reasons = new ArrayList<Reason>();
        if (item.pinned()) {
            reasons.add(Reason.of("included", "asked for or tested by the coach", Source.COACH));
        }
        for (var side : Side.values()) {
            var covered = setUps.assessed().target(side).muscles().stream().filter(item.on(side)::containsKey)
                    .map(m -> words(m) + (item.on(side).get(m) < 2 ? " (indirectly)" : "")).toList();
            if (!covered.isEmpty()) {
                reasons.add(Reason.of("covers", "wanted on the " + side.word() + " side and trained: "
                        + String.join(", ", covered), Source.PRACTICE));
            }
        }
        if (item.turning()) {
            setUps.assessed().landing().ifPresent(to -> reasons.add(Reason.of("turns", "it practises turning to the "
                    + to.word(), Source.PRACTICE)));
        }
        if (item.twoSided()) {
            reasons.add(Reason.of("two-sided", "the one two-sided lift that is kept: more force, less movement from side to side, "
                    + "so it is rationed while movement is the goal", Source.PRACTICE));
        }
        if (item.window().first() > 1) {
            reasons.add(Reason.of("stage", "it comes in with the " + item.stage().word() + " stage in week "
                    + item.window().first(), Source.HOUSE));
        }
        if (item.window().last() < stages.weeks()) {
            reasons.add(Reason.of("stage", "it ends in week " + item.window().last()
                    + "; then standing work takes over", Source.HOUSE));
        }
        return List.copyOf(reasons);
    }

    private static String words(Muscle muscle) {
        return muscle.word().replace('-', ' ');
    }
}
