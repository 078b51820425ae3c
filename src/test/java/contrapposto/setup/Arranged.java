package contrapposto.setup;

import contrapposto.catalogue.Implement;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import java.util.Optional;

/** Set-ups made by hand: lengths in centimetres, a dumbbell in one hand unless said. */
record Arranged(Optional<Side> ahead, double front, double rear, double wedge, Optional<Side> hand, boolean shift, double stance, SetUp.Support support,
                Implement implement) {
    /** The left foot ahead, flat, the weight in the right hand, 80 cm apart. */
    static Arranged flat() {
        return new Arranged(Optional.of(Side.LEFT), 0, 0, 0, Optional.of(Side.RIGHT), false, 80, SetUp.Support.NONE, Implement.DUMBBELL);
    }

    Arranged ahead(Side side) {
        return new Arranged(Optional.of(side), front, rear, wedge, hand, shift, stance, support, implement);
    }

    Arranged raised(double underFront, double underRear) {
        return new Arranged(ahead, underFront, underRear, wedge, hand, shift, stance, support, implement);
    }

    Arranged wedged(double height) {
        return new Arranged(ahead, front, rear, height, hand, shift, stance, support, implement);
    }

    Arranged in(Side side) {
        return new Arranged(ahead, front, rear, wedge, Optional.of(side), shift, stance, support, implement);
    }

    Arranged shifted() {
        return new Arranged(ahead, front, rear, wedge, hand, true, stance, support, implement);
    }

    Arranged apart(double centimetres) {
        return new Arranged(ahead, front, rear, wedge, hand, shift, centimetres, support, implement);
    }

    Arranged held(SetUp.Support by) {
        return new Arranged(ahead, front, rear, wedge, hand, shift, stance, by, implement);
    }

    Arranged with(Implement other) {
        return new Arranged(ahead, front, rear, wedge, other == Implement.BODY_WEIGHT ? Optional.empty() : hand, shift, stance, support, other);
    }

    SetUp setUp() {
        return new SetUp(Optional.of(Side.LEFT), Optional.empty(), ahead, Length.ofCentimetres(front), Length.ofCentimetres(rear), Length.ZERO,
                Length.ofCentimetres(wedge), wedge > 0 ? Optional.of(Side.LEFT) : Optional.empty(), stance / 100, 0.19, hand, false, false, shift, support,
                Length.ZERO, Double.NaN, implement, implement == Implement.BODY_WEIGHT ? 0 : 1);
    }
}
