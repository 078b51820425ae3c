package contrapposto.assess;

import contrapposto.assess.Assessed.Agreement;
import contrapposto.assess.Assessed.Agrees;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.HouseRules;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Measure;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Holds the measured pairs against the finding. A difference counts only beyond the measurement error; a measure that
 * disagrees is reported, never averaged away, and the coach's finding stands.
 */
final class Agreements {
    /** The role whose side shows less of what is measured, where the finding is there: common practice, no source. */
    private static final Map<String, Role> LESS_ON = Map.of("hip internal rotation", Role.LANDING,
            "hip external rotation", Role.DRIVE, "seated trunk turn", Role.LANDING,
            "shoulder internal rotation", Role.DRIVE, "single-leg stance", Role.LANDING);
    /** Where the house rules name no error for a measure: 5 degrees, 5 seconds, 1 centimetre. House. */
    private static final Map<String, Double> ERROR = Map.of("deg", 5.0, "s", 5.0, "cm", 1.0);

    private final Optional<Side> landing;
    private final HouseRules rules;

    Agreements(Optional<Side> landing, HouseRules rules) {
        this.landing = landing;
        this.rules = rules;
    }

    List<Agreement> of(List<Measure> measures) {
        return measures.stream().map(this::agreement).toList();
    }

    private Agreement agreement(Measure measure) {
        double error = rules.measurementError().getOrDefault(measure.what(), ERROR.getOrDefault(measure.unit(), 0.0));
        return new Agreement(measure, error, agrees(measure, error),
                OptionalDouble.of(Symmetry.LIMB_SYMMETRY_INDEX.of(measure.left(), measure.right())));
    }

    private Agrees agrees(Measure measure, double error) {
        if (!LESS_ON.containsKey(measure.what())) {
            return Agrees.NOT_RELATED;
        }
        if (Math.abs(measure.left() - measure.right()) <= error) {
            return landing.isEmpty() ? Agrees.YES : Agrees.WITHIN_ERROR;
        }
        return expectedLess(measure).filter(side -> side == less(measure)).isPresent() ? Agrees.YES : Agrees.NO;
    }

    private Optional<Side> expectedLess(Measure measure) {
        return landing.map(side -> LESS_ON.get(measure.what()) == Role.LANDING ? side : side.other());
    }

    private static Side less(Measure measure) {
        return measure.left() < measure.right() ? Side.LEFT : Side.RIGHT;
    }

    /** One sentence a measure, for the coach. */
    List<Reason> reasons(List<Agreement> agreements) {
        var reasons = new ArrayList<Reason>();
        for (var agreement : agreements) {
            reasons.add(new Reason("measure-agrees", sentence(agreement),
                    agreement.agrees() == Agrees.NOT_RELATED ? Source.HOUSE : Source.PRACTICE,
                    "house-rules: measurement-error"));
        }
        return List.copyOf(reasons);
    }

    private Said sentence(Agreement agreement) {
        var measure = agreement.measure();
        var pair = Said.of("measure/pair").word("what", measure.what().replace(' ', '-')).number("left", measure.left(), 1)
                .number("right", measure.right(), 1).word("unit", measure.unit())
                .number("difference", Math.abs(measure.left() - measure.right()), 1).number("error", agreement.error(), 1);
        return switch (agreement.agrees()) {
            case YES -> landing.isEmpty() ? Said.of("measure/agrees-square").said("pair", pair)
                    : Said.of("measure/agrees").said("pair", pair).side("side", less(measure));
            case NO -> Said.of("measure/disagrees").said("pair", pair).side("side", less(measure));
            case WITHIN_ERROR -> Said.of("measure/too-small").said("pair", pair);
            case NOT_RELATED -> Said.of("measure/not-related").said("pair", pair);
        };
    }

    /** Where the weight habit or the low shoulder points the other way than the pelvis. */
    List<Reason> signs(CheckedSpec.Assessment assessment) {
        var reasons = new ArrayList<Reason>();
        assessment.weightHabit().ifPresent(side -> reasons.add(sign("weight-habit", side)));
        assessment.lowShoulder().ifPresent(side -> reasons.add(sign("low-shoulder", side)));
        return List.copyOf(reasons);
    }

    private Reason sign(String what, Side side) {
        String verdict = landing.map(own -> own.other() == side ? "sign/agrees" : "sign/disagrees").orElse("sign/square");
        return Reason.of("sign-agrees", Said.of(verdict).word("what", what).side("side", side), Source.PRACTICE);
    }
}
