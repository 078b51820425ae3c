package contrapposto.prescribe;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.HouseRules.Range;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The first weight of a side: the one that asks the wanted share, and what became of it among the weights that exist.
 *
 * @param exact   kg per implement, before rounding down
 * @param load    that exists, at most {@code exact}; 0 is body weight
 * @param warning for the coach, where the first week cannot be as wanted
 * @param held    whether the weight stays as it is in every week, since its share says too little
 */
record Loading(double exact, double load, List<Reason> reasons, Optional<Said> warning, boolean held) {
    /** A share this far under the wanted one shows that the other leg carries most of the load: house. */
    private static final double FAR_UNDER = 0.15;

    /**
     * Empty when no pose carries any load of this set-up, not even none, and when a heavier weight would not ask more of the
     * working side, so that no share can say how much it should be.
     *
     * @param most to begin with, kg per implement
     */
    static Optional<Loading> of(Asking asking, Weights weights, Range band, double wanted, double most) {
        var alone = asking.share(0);
        if (alone.isEmpty()) {
            return Optional.empty();
        }
        double heaviest = asking.share(weights.existing().getLast()).orElse(Double.POSITIVE_INFINITY);
        if (weights.existing().size() > 1 && heaviest <= alone.getAsDouble()) {
            return Optional.empty();
        }
        if (weights.lightest().isEmpty() && alone.getAsDouble() < wanted) {
            return Optional.of(bodyOnly(alone.getAsDouble()));
        }
        if (alone.getAsDouble() >= wanted) {
            return Optional.of(bodyAlone(alone.getAsDouble(), band, wanted));
        }
        double exact = asking.loadAt(wanted).orElseGet(() -> heaviestWithin(asking, weights, wanted));
        double below = weights.roundedDown(Math.min(exact, most));
        double load = below;
        while (load > 0 && (asking.share(load).orElse(Double.POSITIVE_INFINITY) > wanted + 1e-6
                || asking.bindingShare(load).orElse(Double.POSITIVE_INFINITY) > band.high() + 1e-9)) {
            load = weights.roundedDown(load - 0.01);
        }
        return Optional.of(load > 0 ? rounded(asking, weights, wanted, exact, load, most, oneJoint(asking, weights, band, below, load))
                : tooHeavy(weights, wanted, exact, alone.getAsDouble()));
    }

    /** Where no load asks so much: the heaviest existing weight that asks no more. */
    private static double heaviestWithin(Asking asking, Weights weights, double wanted) {
        return weights.existing().stream().filter(mass -> asking.share(mass).orElse(Double.POSITIVE_INFINITY) <= wanted)
                .reduce((a, b) -> b).orElse(0.0);
    }

    private static Loading bodyOnly(double alone) {
        return new Loading(0, 0, List.of(Reason.of("body-weight", Said.of("body-weight/only").percent("share", alone, 0), Source.SOLVED)), Optional.empty(), false);
    }

    private static Loading bodyAlone(double alone, Range band, double wanted) {
        boolean over = alone > band.high();
        var reason = Reason.of("body-weight", Said.of(over ? "body-weight/over" : "body-weight/enough").percent("share", alone, 0)
                .percent("limit", over ? band.high() : wanted, 0), Source.SOLVED);
        return new Loading(0, 0, List.of(reason), over ? Optional.of(reason.said()) : Optional.empty(), false);
    }

    /** Said where the joint that bound in the test alone would pass the band, so that a lighter weight was taken. */
    private static List<Reason> oneJoint(Asking asking, Weights weights, Range band, double below, double load) {
        return load >= below ? List.of() : List.of(Reason.of("binding-joint", Said.of("binding-joint").mass("load", below)
                .percent("share", asking.bindingShare(below).orElse(0), 1).percent("limit", band.high(), 0), Source.SOLVED));
    }

    private static Loading rounded(Asking asking, Weights weights, double wanted, double exact, double load,
                                   double most, List<Reason> oneJoint) {
        double share = asking.share(load).orElse(0);
        var reasons = new ArrayList<Reason>();
        reasons.add(Reason.of("load-exact", Said.of("load-exact").percent("share", wanted, 1).mass("load", exact), Source.SOLVED));
        reasons.addAll(oneJoint);
        boolean capped = weights.above(load).isEmpty() && exact > load + 0.05;
        String why = most < exact && weights.above(load).stream().findFirst().orElse(exact) > most
                ? "as-tested" : capped ? weights.perHand() < Double.POSITIVE_INFINITY ? "heaviest-for-a-hand" : "heaviest"
                : "exists";
        reasons.add(new Reason("load-rounded", Said.of("load-rounded").mass("load", load).word("why", why)
                .mass("less", Math.max(0, exact - load)).percent("share", share, 1).percent("wanted", wanted, 1), Source.PRACTICE, "G1.21: round down after the cap, print both"));
        if (share < wanted - FAR_UNDER && most < Double.POSITIVE_INFINITY && load > most / 2) {
            var far = Reason.of("far-under", Said.of("far-under").mass("load", load).percent("share", share, 0), Source.SOLVED);
            reasons.add(far);
            return new Loading(exact, load, List.copyOf(reasons), Optional.of(far.said()), true);
        }
        return new Loading(exact, load, List.copyOf(reasons), Optional.empty(), false);
    }

    private static Loading tooHeavy(Weights weights, double wanted, double exact, double alone) {
        var reason = Reason.of("lightest-too-heavy", Said.of("lightest-too-heavy").percent("wanted", wanted, 0).mass("exact", exact)
                .mass("lightest", weights.lightest().orElseThrow()).percent("alone", alone, 0), Source.SOLVED);
        return new Loading(exact, 0, List.of(reason), Optional.of(reason.said()), false);
    }
}
