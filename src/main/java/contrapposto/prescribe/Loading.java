package contrapposto.prescribe;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.HouseRules.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The first weight of a side: the one that asks the wanted share, and what became of it among the weights that exist.
 *
 * @param exact   kg per implement, before rounding down
 * @param load    that exists, at most {@code exact}; 0 is body weight
 * @param warning for the coach, where the first week cannot be as wanted
 * @param held    whether the weight stays as it is in every week, since its share says too little
 */
record Loading(double exact, double load, List<Reason> reasons, Optional<String> warning, boolean held) {
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
        return new Loading(0, 0, List.of(Reason.of("body-weight", String.format(Locale.ROOT,
                "the body is the load here: %.0f %% of this side's capacity", 100 * alone), Source.SOLVED)), Optional.empty(), false);
    }

    private static Loading bodyAlone(double alone, Range band, double wanted) {
        boolean over = alone > band.high();
        var reason = Reason.of("body-weight", String.format(Locale.ROOT,
                "body weight alone asks %.0f %% of this side's capacity, %s %.0f %%: %s", 100 * alone,
                over ? "over the top of the band," : "at or over the wanted", 100 * (over ? band.high() : wanted),
                over ? "no weight, and the easier way of doing it (a hand on something steady, less depth) until it is"
                        + " in reach" : "no weight yet"), Source.SOLVED);
        return new Loading(0, 0, List.of(reason), over ? Optional.of(reason.because()) : Optional.empty(), false);
    }

    /** Said where the joint that bound in the test alone would pass the band, so that a lighter weight was taken. */
    private static List<Reason> oneJoint(Asking asking, Weights weights, Range band, double below, double load) {
        return load >= below ? List.of() : List.of(Reason.of("binding-joint", String.format(Locale.ROOT,
                "with %s the joint that bound in the test would bear %.1f %% of what it then bore, over the top of the band, "
                        + "%.0f %%: a lighter weight", weights.words().of(below), 100 * asking.bindingShare(below).orElse(0),
                100 * band.high()), Source.SOLVED));
    }

    private static Loading rounded(Asking asking, Weights weights, double wanted, double exact, double load,
                                   double most, List<Reason> oneJoint) {
        double share = asking.share(load).orElse(0);
        var reasons = new ArrayList<Reason>();
        reasons.add(Reason.of("load-exact", String.format(Locale.ROOT,
                "%.1f %% of capacity is %s in this set-up", 100 * wanted, weights.words().of(exact)), Source.SOLVED));
        reasons.addAll(oneJoint);
        boolean capped = weights.above(load).isEmpty() && exact > load + 0.05;
        String why = most < exact && weights.above(load).stream().findFirst().orElse(exact) > most
                ? "no heavier than the heaviest weight of the test to begin with" : capped
                ? weights.perHand() < Double.POSITIVE_INFINITY ? "the heaviest within what a hand may hold" : "the heaviest there is"
                : "a weight that exists";
        reasons.add(new Reason("load-rounded", String.format(Locale.ROOT,
                "rounded down to %s, %s: %s less, %.1f %% of capacity in place of %.1f %%", weights.words().of(load), why,
                weights.words().of(Math.max(0, exact - load)), 100 * share, 100 * wanted),
                Source.PRACTICE, "G1.21: round down after the cap, print both"));
        if (share < wanted - FAR_UNDER && most < Double.POSITIVE_INFINITY && load > most / 2) {
            var far = Reason.of("far-under", String.format(Locale.ROOT, "%s asks the working side only %.0f %% of its capacity in this "
                    + "set-up, so the other side carries much of it: the weight stays at what the test allows", weights.words().of(load),
                    100 * share), Source.SOLVED);
            reasons.add(far);
            return new Loading(exact, load, List.copyOf(reasons), Optional.of(far.because()), true);
        }
        return new Loading(exact, load, List.copyOf(reasons), Optional.empty(), false);
    }

    private static Loading tooHeavy(Weights weights, double wanted, double exact, double alone) {
        String lightest = "the lightest weight there is, " + weights.words().of(weights.lightest().orElseThrow())
                + ", is too heavy to begin with";
        var reason = Reason.of("lightest-too-heavy", String.format(Locale.ROOT,
                "%.0f %% of capacity is %s and %s: without a weight, %.0f %% of capacity", 100 * wanted, weights.words().of(exact), lightest,
                100 * alone), Source.SOLVED);
        return new Loading(exact, 0, List.of(reason), Optional.of(reason.because()), false);
    }
}
