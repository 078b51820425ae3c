package contrapposto.compose;

import java.io.IOException;
import java.io.Writer;

/** Keeps what is written, up to a limit that no honest template reaches. */
final class BoundedWriter extends Writer {
    static final int LIMIT = 8_000_000;

    /** Thrown when the limit is passed. */
    static final class Full extends IOException {
        Full() {
            super("full");
        }
    }

    private final StringBuilder text = new StringBuilder();

    String text() {
        return text.toString();
    }

    @Override
    public void write(char[] letters, int from, int count) throws IOException {
        if (text.length() + count > LIMIT) {
            throw new Full();
        }
        text.append(letters, from, count);
    }

    @Override
    public void flush() { }

    @Override
    public void close() { }
}
