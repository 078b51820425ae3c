package contrapposto.assess;

import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.HouseRules;
import contrapposto.check.CheckedSpec;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns the coach's finding into one task a side, holds the measures against it, and reads the screening answers.
 * Total: every checked spec has an assessment. What may not be trained is a {@link Assessed.Verdict}, not a refusal.
 */
public final class Assessor {
    /** @param rules for the measurement errors */
    public Assessed assess(CheckedSpec spec, HouseRules rules) {
        Optional<Side> landing = landing(spec.assessment().turned());
        var agreements = new Agreements(landing, rules);
        var compared = agreements.of(spec.assessment().measures());
        var reasons = new ArrayList<Reason>();
        reasons.add(roles(landing));
        reasons.addAll(agreements.signs(spec.assessment()));
        reasons.addAll(agreements.reasons(compared));
        reasons.addAll(Bodies.of(spec.client()));
        return new Assessed(spec, landing, Targets.of(role(Side.LEFT, landing), landing),
                Targets.of(role(Side.RIGHT, landing), landing), compared, Screener.verdict(spec),
                Screener.cautious(spec), Screener.unanswered(spec), Conditions.restrained(spec), List.copyOf(reasons));
    }

    /** The side to shift into: the one the pelvis is turned away from. */
    private static Optional<Side> landing(CheckedSpec.Turned turned) {
        return switch (turned) {
            case LEFT -> Optional.of(Side.RIGHT);
            case RIGHT -> Optional.of(Side.LEFT);
            case SQUARE -> Optional.empty();
        };
    }

    private static Role role(Side side, Optional<Side> landing) {
        return landing.map(own -> own == side ? Role.LANDING : Role.DRIVE).orElse(Role.BOTH);
    }

    private static Reason roles(Optional<Side> landing) {
        return landing.map(side -> Reason.of("roles", Said.of("roles/turned").side("landing", side).side("drive", side.other()), Source.PRACTICE))
                .orElse(Reason.of("roles", Said.of("roles/square"), Source.PRACTICE));
    }
}
