package contrapposto.body;

import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import java.util.Locale;
import java.util.Optional;

/** Adds up by how much a trial pose breaks its constraints, and remembers the worst of them. */
final class Breaches {
    /** What can be broken; the phrasebooks have a sentence {@code pose/…} for each, which takes the side, the value and the limit. */
    enum Kind {
        HIP_FLEXION(Unit.DEGREES, 2),
        HIP_EXTENSION(Unit.DEGREES, 2),
        KNEE_FLEXION(Unit.DEGREES, 2),
        ANKLE(Unit.DEGREES, 2),
        TOES(Unit.DEGREES, 2),
        LEG_REACH(Unit.METRES, 0.0024),
        LEG_FOLD(Unit.METRES, 0.0024),
        ARM_REACH(Unit.METRES, 0.0024),
        ELBOW(Unit.DEGREES, 2),
        SHOULDER(Unit.DEGREES, 2),
        SHOULDER_BACK(Unit.DEGREES, 2),
        ARM_TURNED_IN(Unit.DEGREES, 2),
        ARM_TURNED_OUT(Unit.DEGREES, 2),
        HIP_OUT(Unit.DEGREES, 2),
        HIP_IN(Unit.DEGREES, 2),
        TRUNK_TURN(Unit.DEGREES, 2),
        KNEE_FLOOR(Unit.METRES, 0.0024),
        FOOT_FLOOR(Unit.METRES, 0.0024),
        HAND_FLOOR(Unit.METRES, 0.0024),
        LIMB_BOX(Unit.METRES, 0.0024),
        LEG_FLOOR(Unit.METRES, 0.0024),
        ARM_FLOOR(Unit.METRES, 0.0024),
        ARM_BOX(Unit.METRES, 0.0024),
        LEGS(Unit.METRES, 0.0024),
        ARM_LEG(Unit.METRES, 0.0024),
        WEIGHT_FLOOR(Unit.METRES, 0.0024),
        WEIGHT_BOX(Unit.METRES, 0.0024),
        WEIGHT_LEG(Unit.METRES, 0.0024),
        HANDS_DEPTH(Unit.METRES, 0.006),
        FOOT_LIFT(Unit.SHARE, 0.01),
        SEAT(Unit.METRES, 0.0024),
        BALANCE(Unit.METRES, 0.0006),
        OFF_BASE(Unit.METRES, 0.0006);

        private final Unit unit;
        private final double scale;

        Kind(Unit unit, double scale) {
            this.unit = unit;
            this.scale = scale;
        }

        /** What counts as one: degrees, m (about 4 mm: longer for a longer body, so that poses scale) or share. */
        double scale(double stature) {
            return unit == Unit.METRES ? scale * stature : scale;
        }

        private Said said(Side side, double value, double limit) {
            var said = Said.of("pose/" + name().toLowerCase(Locale.ROOT).replace('_', '-')).side("side", side);
            return switch (unit) {
                case DEGREES -> said.degrees("value", value).degrees("limit", limit);
                case METRES -> said.length("value", value).length("limit", limit);
                case SHARE -> said.percent("value", value, 0).percent("limit", limit, 0);
            };
        }
    }

    /** What a breach is measured in. */
    private enum Unit {
        DEGREES("°"), METRES("m"), SHARE("of the weight");

        private final String word;

        Unit(String word) {
            this.word = word;
        }
    }

    private final double stature;
    private double penalty;
    private double worst;
    private Optional<Kind> kind = Optional.empty();
    private Side side = Side.LEFT;
    private double value;
    private double limit;

    /** @param stature of the body that is judged, m */
    Breaches(double stature) {
        this.stature = stature;
    }

    /** {@code value} must not be above {@code limit}. */
    void atMost(Kind what, Side where, double found, double most) {
        if (found > most) {
            add(what, where, found, most, (found - most) / what.scale(stature));
        }
    }

    /** {@code value} must not be below {@code limit}. */
    void atLeast(Kind what, Side where, double found, double least) {
        if (found < least) {
            add(what, where, found, least, (least - found) / what.scale(stature));
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
        return new PoseOutcome.Impossible(what.said(side, value, limit), Math.abs(value - limit), what.unit.word);
    }
}
