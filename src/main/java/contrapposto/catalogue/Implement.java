package contrapposto.catalogue;

/** What can load a family. */
public enum Implement {
    BODY_WEIGHT, DUMBBELL, KETTLEBELL, BARBELL, CABLE, BAND;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
