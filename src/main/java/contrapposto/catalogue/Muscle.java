package contrapposto.catalogue;

/** Muscles that the program counts sets for. The word is the key in plans and words files. */
public enum Muscle {
    GLUTEUS_MAXIMUS, GLUTEUS_MEDIUS_FRONT, GLUTEUS_MEDIUS_BACK, UPPER_ADDUCTORS, HAMSTRINGS, QUADRICEPS, CALF,
    OBLIQUES_TRANSVERSUS, SERRATUS_ANTERIOR, LOWER_TRAPEZIUS, TRICEPS_LONG_HEAD, BICEPS, UPPER_BACK, CHEST, SHOULDER;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
