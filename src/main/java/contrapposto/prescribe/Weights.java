package contrapposto.prescribe;

import contrapposto.body.Load;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.quantity.Mass;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * The weights that exist for one set-up and that the client may hold, kg per implement, ascending; nothing at all (0 kg)
 * comes first. Rounding goes down, never up.
 *
 * @param existing 0 first
 * @param perHand  the most one hand may hold, kg; infinite without such a limit
 */
record Weights(List<Double> existing, double perHand) {
    static Weights of(CheckedSpec spec, Implement implement, Load load) {
        double perHand = spec.restrictions().stream()
                .filter(limit -> limit.until().map(until -> !until.isBefore(spec.schedule().start())).orElse(true))
                .flatMapToDouble(Weights::limit).min().orElse(Double.POSITIVE_INFINITY);
        var held = DoubleStream.concat(DoubleStream.of(0), spec.equipment().weights(implement).stream()
                .mapToDouble(Mass::kilograms)).filter(mass -> inOneHand(load, mass) <= perHand + 1e-9).distinct().sorted();
        return new Weights(held.boxed().toList(), perHand);
    }

    private static DoubleStream limit(Restriction restriction) {
        return switch (restriction) {
            case Restriction.LimitLoad limit -> DoubleStream.of(limit.perHand().kilograms());
            case Restriction.LimitRange range -> DoubleStream.empty();
            case Restriction.Avoid avoid -> DoubleStream.empty();
        };
    }

    /** What one hand feels, kg. */
    private static double inOneHand(Load load, double mass) {
        return switch (load) {
            case Load.InHand inHand -> mass;
            case Load.InEachHand each -> mass;
            case Load.InBothHands both -> mass / 2;
            case Load.Cable cable -> mass / cable.ratio();
            case Load.OnHips onHips -> 0;
            case Load.None none -> 0;
            case Load.Band band -> 0;
        };
    }

    /** The heaviest that is not over {@code exact}; 0 is body weight. */
    double roundedDown(double exact) {
        return existing.stream().filter(mass -> mass <= exact + 1e-9).reduce((a, b) -> b).orElse(0.0);
    }

    /** The lightest real weight; empty without any. */
    OptionalDouble lightest() {
        return existing.stream().mapToDouble(mass -> mass).filter(mass -> mass > 0).findFirst();
    }

    /** Only those up to {@code mass}. */
    Weights upTo(double mass) {
        return new Weights(existing.stream().filter(other -> other <= mass + 1e-9).toList(), perHand);
    }

    /** Those heavier than {@code mass}, lightest first. */
    List<Double> above(double mass) {
        return existing.stream().filter(other -> other > mass + 1e-9).toList();
    }
}
