package contrapposto.catalogue;

/** The part of stance that a set-up trains, judged from its solved shin angle. */
public enum Phase {
    /** Arriving and accepting weight: shin about vertical (0 ± 5°) or tilted back at the working depth. */
    EARLY_TO_MID,
    /** Pushing off: shin tilted forward at the working depth. */
    MID_TO_LATE
}
