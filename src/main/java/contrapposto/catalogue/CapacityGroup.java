package contrapposto.catalogue;

/** Families among which a tested capacity transfers; outside its group a load starts by effort. */
public enum CapacityGroup {
    KNEE_BEND, HINGE, PRESS, PULL, CURL, EXTENSION, CALF, CARRY,
    /** Not loaded by weight. */
    NONE;

    /** Whether demand counts body mass as well as the load. */
    public boolean countsBodyMass() {
        return this == KNEE_BEND || this == HINGE || this == CALF;
    }
}
