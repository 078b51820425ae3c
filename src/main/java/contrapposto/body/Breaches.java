package contrapposto.body;

import contrapposto.quantity.Side;
import java.util.Locale;
import java.util.Optional;

/** Adds up by how much a trial pose breaks its constraints, and remembers the worst of them. */
final class Breaches {
    /** What can be broken; the words take the side, the value and the limit. */
    enum Kind {
        HIP_FLEXION("the %s hip would have to bend %.0f°, %.0f° is allowed", "°", 2),
        HIP_EXTENSION("the %s hip would have to stretch %.0f° back, %.0f° is allowed", "°", 2),
        KNEE_FLEXION("the %s knee would have to bend %.0f°, %.0f° is allowed", "°", 2),
        ANKLE("the %s ankle would need %.0f° of forward bend, %.0f° is allowed", "°", 2),
        TOES("the toes of the %s foot would have to bend %.0f°, %.0f° is allowed", "°", 2),
        LEG_REACH("the %s leg would have to be %.2f m long, it is %.2f m", "m", 0.004),
        LEG_FOLD("the %s hip would come within %.2f m of the ankle, %.2f m is the least", "m", 0.004),
        ARM_REACH("the %s hand would have to reach %.2f m, it reaches %.2f m", "m", 0.004),
        ELBOW("the %s elbow would have to bend %.0f°, %.0f° is allowed", "°", 2),
        SHOULDER("the %s arm would have to rise %.0f°, %.0f° is allowed", "°", 2),
        KNEE_FLOOR("the %s knee would be %.3f m above the floor, %.3f m is the least", "m", 0.004),
        FOOT_FLOOR("the %s foot would be %.3f m above the floor, %.3f m is the least", "m", 0.004),
        LIMB_BOX("the %s leg would be %.3f m from the box, %.3f m is the least", "m", 0.004),
        HANDS_DEPTH("the %s hand would stop at %.2f m, it is to reach %.2f m above the floor", "m", 0.01),
        FOOT_LIFT("the %s foot would carry %.2f of the weight, %.2f is the least", "of the weight", 0.01),
        SEAT("with the %s foot flat the knee would be %.2f m off the height of the hip, %.2f m is the most", "m", 0.004),
        BALANCE("the body would fall over its %s foot: its weight passes %.3f m beside it, %.3f m is allowed", "m", 0.001),
        OFF_BASE("the weight would pass %2$.3f m outside what the body rests on", "m", 0.001);

        private final String words;
        private final String unit;
        private final double scale;

        Kind(String words, String unit, double scale) {
            this.words = words;
            this.unit = unit;
            this.scale = scale;
        }
    }

    private double penalty;
    private double worst;
    private Optional<Kind> kind = Optional.empty();
    private Side side = Side.LEFT;
    private double value;
    private double limit;

    /** {@code value} must not be above {@code limit}. */
    void atMost(Kind what, Side where, double found, double most) {
        if (found > most) {
            add(what, where, found, most, (found - most) / what.scale);
        }
    }

    /** {@code value} must not be below {@code limit}. */
    void atLeast(Kind what, Side where, double found, double least) {
        if (found < least) {
            add(what, where, found, least, (least - found) / what.scale);
        }
    }

    private void add(Kind what, Side where, double found, double bound, double scaled) {
        penalty += scaled * scaled;
        if (scaled > worst) {
            worst = scaled;
            kind = Optional.of(what);
            side = where;
            value = found;
            limit = bound;
        }
    }

    /** Grows with the square of each breach; 0 when nothing is broken. */
    double penalty() {
        return penalty;
    }

    /** Whether the worst breach is more than {@code slack} of its scale (2° or 4 mm). */
    boolean beyond(double slack) {
        return worst > slack;
    }

    /** The worst breach in words. */
    PoseOutcome.Impossible worst() {
        Kind what = kind.orElseThrow();
        return new PoseOutcome.Impossible(String.format(Locale.ROOT, what.words, side.word(), value, limit),
                Math.abs(value - limit), what.unit);
    }
}
