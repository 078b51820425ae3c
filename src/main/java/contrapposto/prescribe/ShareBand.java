package contrapposto.prescribe;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.HouseRules.Range;
import contrapposto.check.CheckedSpec.Aim;
import java.util.Locale;

/**
 * The share of capacity that is wanted: by training age and first aim. Whoever is to keep the load moderate stays at the
 * low end of the movement band.
 */
record ShareBand(Range range, Reason reason) {
    static ShareBand of(Assessed assessed, HouseRules rules, boolean legs) {
        double years = assessed.spec().client().trainingYears();
        var line = rules.band(years);
        boolean moderate = assessed.verdict().limits().contains(Limit.MODERATE_LOAD);
        boolean strength = !moderate && !assessed.spec().aims().isEmpty()
                && assessed.spec().aims().getFirst() == Aim.STRENGTH;
        var listed = legs ? strength ? line.legsStrength() : line.legsMovement()
                : strength ? line.armsStrength() : line.armsMovement();
        var range = moderate ? new Range(listed.low(), listed.low()) : listed;
        return new ShareBand(range, new Reason("share-band", String.format(Locale.ROOT,
                "%s of regular training, aim %s: %.0f to %.0f %% of capacity for %s; the first week at the low end%s", years(years),
                strength ? "strength" : "side-to-side movement", 100 * listed.low(), 100 * listed.high(),
                legs ? "legs, body mass counted" : "arms and cable, the outside load alone",
                moderate ? ", and it stays there because the screening asks for a moderate load" : ""), Source.HOUSE,
                "house-rules: bands"));
    }

    private static String years(double years) {
        return years == 1 ? "1 year" : years == StrictMath.rint(years) ? String.format(Locale.ROOT, "%.0f years", years)
                : String.format(Locale.ROOT, "%.1f years", years);
    }
}
