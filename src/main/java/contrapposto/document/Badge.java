package contrapposto.document;

/** The split pill: left half open, right half solid, or both together. */
public enum Badge { LEFT, RIGHT, BOTH }
