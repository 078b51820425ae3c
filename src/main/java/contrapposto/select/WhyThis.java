package contrapposto.select;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUps;
import contrapposto.wording.Said;
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
        if (item.pinned() && asked(item.id())) {
            reasons.add(Reason.of("included", Said.of("included"), Source.COACH));
        }
        if (Balance.first(setUps.assessed()) && Balance.trainedBy(setUps.usable().get(item.id()).values().getFirst().family())) {
            reasons.add(Reason.of("balance-first", Said.of("balance-first"), Source.PRACTICE));
        }
        for (var side : Side.values()) {
            var covered = setUps.assessed().target(side).muscles().stream().filter(item.on(side)::containsKey)
                    .map(m -> Said.of(item.on(side).get(m) < 2 ? "covers/indirectly" : "covers/directly").word("muscle", m.word())).toList();
            if (!covered.isEmpty()) {
                reasons.add(Reason.of("covers", Said.of("covers").side("side", side).listed("muscles", covered), Source.PRACTICE));
            }
        }
        if (item.turning()) {
            setUps.assessed().landing().ifPresent(to -> reasons.add(Reason.of("turns", Said.of("turns").side("side", to),
                    Source.PRACTICE)));
        }
        if (item.twoSided()) {
            reasons.add(Reason.of("two-sided", Said.of("two-sided"), Source.PRACTICE));
        }
        if (item.window().first() > 1) {
            reasons.add(Reason.of("stage", Said.of("stage/comes-in").word("stage", "stage-" + item.stage().word())
                    .count("week", item.window().first()), Source.HOUSE));
        }
        if (item.window().last() < stages.weeks()) {
            reasons.add(Reason.of("stage", Said.of("stage/ends").count("week", item.window().last()), Source.HOUSE));
        }
        return List.copyOf(reasons);
    }

    private boolean asked(String id) {
        var spec = setUps.assessed().spec();
        return spec.choices().include().contains(id) || spec.assessment().tests().stream().anyMatch(test -> test.exercise().equals(id));
    }
}
