package contrapposto.quantity;

/** Chooses the segment table; {@link #UNSTATED} uses the table that is common to both. */
public enum Sex { FEMALE, MALE, UNSTATED }
