package contrapposto.returns;

import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Measure;
import contrapposto.check.ReturnKeys;
import contrapposto.returns.Review.GateState;
import contrapposto.returns.Review.Remeasured;
import contrapposto.spec.Written;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What was measured again, beside what was measured before. */
record Recheck(CheckedSpec spec, Optional<Written.Fields> found) {
    Optional<LocalDate> day() {
        return found.flatMap(fields -> fields.day("date"));
    }

    List<Remeasured> measures() {
        return found.map(ReturnKeys::measures).orElse(List.of()).stream()
                .map(now -> new Remeasured(spec.assessment().measures().stream().filter(m -> m.what().equals(now.what())).findFirst(), now))
                .toList();
    }

    Optional<GateState> gate() {
        return spec.schedule().gate().map(gate -> new GateState(gate.what(), gate.differenceUnder(), gate.unit(), measures().stream()
                .map(Remeasured::now).filter(m -> m.what().equals(gate.what())).map(Recheck::difference).findFirst()
                .map(OptionalDouble::of).orElseGet(OptionalDouble::empty)));
    }

    private static double difference(Measure measure) {
        return Math.abs(measure.left() - measure.right());
    }
}
