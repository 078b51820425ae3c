package contrapposto.prescribe;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.HouseRules.Range;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.wording.Said;

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
        return new ShareBand(range, new Reason("share-band", Said.of("share-band").number("years", years, 1)
                .word("aim", strength ? "aim-strength" : "aim-movement").number("low", 100 * listed.low(), 0).percent("high", listed.high(), 0)
                .word("of", legs ? "legs" : "arms").word("moderate", moderate ? "yes" : "no"), Source.HOUSE, "house-rules: bands"));
    }
}
