package contrapposto.notice;

/** How much a notice weighs: an {@link #ERROR} refuses the input, a {@link #WARNING} does not. */
public enum Severity { WARNING, ERROR }
