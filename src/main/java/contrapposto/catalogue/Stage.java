package contrapposto.catalogue;

/** The way from the floor to loaded work on the feet, in order. */
public enum Stage {
    FLOOR, SUPPORTED, STANDING, INTEGRATED;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
