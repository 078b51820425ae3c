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

    /** A colour of the practice's own, in sRGB, each part from 0 to 255; it never carries a meaning. */
    record Own(int red, int green, int blue) implements Tone { }

    /** The tone of red, green and blue, each from 0 to 255: a grey where all are equal. */
    static Tone of(int red, int green, int blue) {
        return red == green && green == blue ? new Grey(red / 255.0) : new Own(red, green, blue);
    }

    /** The one spot colour; it means a movement to make and nothing else. */
    record Spot() implements Tone { }
}
