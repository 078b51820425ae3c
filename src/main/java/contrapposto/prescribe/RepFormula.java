package contrapposto.prescribe;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * The published formulas that read a one-repetition maximum (1RM) out of a set taken to failure. They differ by up to a
 * few percent for the same set, so whoever prints an estimate prints {@link #words()} with it.
 *
 * <p>Sources as in reference A1; the originals of all but Brzycki and Mayhew were read in secondary texts.
 */
public enum RepFormula {
    /** 1RM = w (1 + r/30). Epley 1985, Poundage chart. */
    EPLEY("Epley 1985", "w × (1 + r ÷ 30)") {
        @Override
        public double factor(double reps) {
            return 1 + reps / 30;
        }

        @Override
        double repsAt(double factor) {
            return 30 * (factor - 1);
        }
    },
    /**
     * 1RM = w / (1.0278 − 0.0278 r). Brzycki 1993, JOPERD 64(1):88-90. Also printed as w × 36/(37 − r), which differs in
     * the fourth digit. Pole at r = 37.
     */
    BRZYCKI("Brzycki 1993", "w ÷ (1.0278 − 0.0278 × r)") {
        @Override
        public double factor(double reps) {
            return 1 / (1.0278 - 0.0278 * reps);
        }

        @Override
        double repsAt(double factor) {
            return (1.0278 - 1 / factor) / 0.0278;
        }
    },
    /** 1RM = w r^0.10. Lombardi 1989, Beginning Weight Training. */
    LOMBARDI("Lombardi 1989", "w × r^0.10") {
        @Override
        public double factor(double reps) {
            return StrictMath.pow(reps, 0.10);
        }

        @Override
        double repsAt(double factor) {
            return StrictMath.pow(factor, 10);
        }
    },
    /** 1RM = w (1 + 0.025 r). O'Conner, Simmons and O'Shea 1989, Weight Training Today. */
    OCONNER("O'Conner et al. 1989", "w × (1 + 0.025 × r)") {
        @Override
        public double factor(double reps) {
            return 1 + 0.025 * reps;
        }

        @Override
        double repsAt(double factor) {
            return 40 * (factor - 1);
        }
    },
    /** 1RM = 100 w / (48.80 + 53.8 e^(−0.075 r)). Wathan 1994. */
    WATHAN("Wathan 1994", "100 × w ÷ (48.80 + 53.8 × e^(−0.075 × r))") {
        @Override
        public double factor(double reps) {
            return 100 / (48.80 + 53.8 * StrictMath.exp(-0.075 * reps));
        }

        @Override
        double repsAt(double factor) {
            return decayed(100 / factor - 48.80, 53.8, 0.075);
        }
    },
    /** 1RM = 100 w / (101.3 − 2.67123 r). Lander 1985, NSCA Journal 6(6):60-61. Pole at r = 37.92. */
    LANDER("Lander 1985", "100 × w ÷ (101.3 − 2.67123 × r)") {
        @Override
        public double factor(double reps) {
            return 100 / (101.3 - 2.67123 * reps);
        }

        @Override
        double repsAt(double factor) {
            return (101.3 - 100 / factor) / 2.67123;
        }
    },
    /** 1RM = 100 w / (52.2 + 41.9 e^(−0.055 r)). Mayhew et al. 1992, J Appl Sport Sci Res 6(4):200-206. */
    MAYHEW("Mayhew et al. 1992", "100 × w ÷ (52.2 + 41.9 × e^(−0.055 × r))") {
        @Override
        public double factor(double reps) {
            return 100 / (52.2 + 41.9 * StrictMath.exp(-0.055 * reps));
        }

        @Override
        double repsAt(double factor) {
            return decayed(100 / factor - 52.2, 41.9, 0.055);
        }
    };

    private final String author;
    private final String equation;

    RepFormula(String author, String equation) {
        this.author = author;
        this.equation = equation;
    }

    /** 1RM as a multiple of the load of a set of {@code reps} to failure, exactly as printed: not 1 at one rep for most. */
    public abstract double factor(double reps);

    /** The reps at which {@link #factor} is this, without the special case of one rep. */
    abstract double repsAt(double factor);

    /** Author and year. */
    public String author() {
        return author;
    }

    /** Author and equation (w load, r repetitions), as printed beside an estimate. */
    public String words() {
        return author + ": " + equation;
    }

    /** The formula of this name, letters only and in any case ({@code epley}, {@code O'Conner}). */
    public static Optional<RepFormula> named(String name) {
        String letters = name.replaceAll("[^A-Za-z]", "").toUpperCase(Locale.ROOT);
        return Arrays.stream(values()).filter(formula -> formula.name().equals(letters)).findFirst();
    }

    /** r of rest = scale · e^(−rate · r); unbounded where the curve has flattened out. */
    private static double decayed(double rest, double scale, double rate) {
        return rest <= 0 ? Double.POSITIVE_INFINITY : -StrictMath.log(rest / scale) / rate;
    }
}
