package contrapposto.assess;

/**
 * The published ways of saying how far apart two sides are. There are at least nine equations in print (Bishop et al.
 * 2016, Strength Cond J 38(6):27-32), so whoever prints one of these numbers prints {@link #words()} beside it.
 */
public enum Symmetry {
    /** 100 · less able ÷ more able side (used in knee rehabilitation guidelines); reference B4.1. */
    LIMB_SYMMETRY_INDEX("limb symmetry index, 100 × smaller ÷ larger") {
        @Override
        public double of(double left, double right) {
            return 100 * share(left, right);
        }
    },
    /** 100 − 100 · min ÷ max, for tests of one side at a time (Bishop et al. 2018, from memory); reference B4.6. */
    PERCENT_DIFFERENCE("percent difference, 100 − 100 × smaller ÷ larger") {
        @Override
        public double of(double left, double right) {
            return 100 - 100 * share(left, right);
        }
    },
    /** 100 · (45° − atan(left ÷ right)) ÷ 90° (Zifchock et al. 2008, from memory); 0 when equal; reference B4.8. */
    SYMMETRY_ANGLE("symmetry angle, 100 × (45° − atan(left ÷ right)) ÷ 90°") {
        @Override
        public double of(double left, double right) {
            return 100 * (45 - StrictMath.toDegrees(StrictMath.atan2(left, right))) / 90;
        }
    };

    private final String words;

    Symmetry(String words) {
        this.words = words;
    }

    /**
     * The number in percent for a pair of values of one test.
     *
     * @param left  at least 0
     * @param right at least 0
     */
    public abstract double of(double left, double right);

    /** Name and equation, as printed beside the number. */
    public String words() {
        return words;
    }

    /**
     * How much less (negative) or more both sides lift together than the sum of each alone, in percent:
     * 100 · both ÷ (left + right) − 100 (Howard and Enoka 1991, the minus-100 form from memory); reference B4.10.
     */
    public static double bilateralIndex(double both, double left, double right) {
        return 100 * both / (left + right) - 100;
    }

    /** The smaller as a share of the larger; 1 when both are nothing. */
    private static double share(double a, double b) {
        double larger = Math.max(a, b);
        return larger == 0 ? 1 : Math.min(a, b) / larger;
    }
}
