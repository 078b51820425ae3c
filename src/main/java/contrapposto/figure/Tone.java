package contrapposto.figure;

/** What ink a mark is made of. */
public sealed interface Tone {
    Tone BLACK = new Grey(0);
    Tone WHITE = new Grey(1);

    /** A grey: 0 is black, 1 is white. */
    record Grey(double lightness) implements Tone {
        public Grey {
            if (!(lightness >= 0 && lightness <= 1)) {
                throw new IllegalArgumentException("A grey lies between 0 and 1, but was (" + lightness + ").");
            }
        }
    }

    /** The one spot colour; it means a movement to make and nothing else. */
    record Spot() implements Tone { }
}
