package contrapposto.body;

/** Trigonometry in degrees, through {@link StrictMath} so that every machine gets the same bits. */
final class Degrees {
    private static final double RADIANS = StrictMath.PI / 180;

    private Degrees() { }

    static double sin(double degrees) {
        return StrictMath.sin(degrees * RADIANS);
    }

    static double cos(double degrees) {
        return StrictMath.cos(degrees * RADIANS);
    }

    static double atan2(double y, double x) {
        return StrictMath.atan2(y, x) / RADIANS;
    }

    /** The arc sine, with arguments a rounding error outside −1…1 taken as the end. */
    static double asin(double sine) {
        return StrictMath.asin(Math.clamp(sine, -1.0, 1.0)) / RADIANS;
    }

    static double acos(double cosine) {
        return StrictMath.acos(Math.clamp(cosine, -1.0, 1.0)) / RADIANS;
    }
}
