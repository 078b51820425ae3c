package contrapposto.body;

/** An angle that is set again and again, often to what it is: its sine and cosine are worked out when it changes. */
final class Angle {
    private double degrees = Double.NaN;
    private double sine;
    private double cosine;

    /** @return whether it was another angle before */
    boolean set(double to) {
        if (to == degrees) {
            return false;
        }
        degrees = to;
        sine = Degrees.sin(to + 0.0);
        cosine = Degrees.cos(to);
        return true;
    }

    double degrees() {
        return degrees;
    }

    double sine() {
        return sine;
    }

    double cosine() {
        return cosine;
    }
}
