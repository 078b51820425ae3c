package contrapposto.document;

/** A piece of running text. */
public sealed interface Inline {
    record Text(String text, boolean bold) implements Inline { }

    /** A drawn sign in the line of text (fonts need not have it). */
    record Sign(Kind kind) implements Inline {
        public enum Kind { UP_TRIANGLE, TICK_BOX, LEFT_PILL, RIGHT_PILL, BOTH_PILL }
    }

    /** The number of the page on which the part of that name begins, bold: only the typesetter knows it. */
    record PageOf(String part) implements Inline { }

    static Inline plain(String text) {
        return new Text(text, false);
    }

    static Inline bold(String text) {
        return new Text(text, true);
    }
}
