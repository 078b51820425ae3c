package contrapposto.quantity;

/** Chooses the breadths between hip and between shoulder joints; {@link #UNSTATED} takes the mean of both. */
public enum Sex { FEMALE, MALE, UNSTATED }
