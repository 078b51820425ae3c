package contrapposto.typeset;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;

/** What goes into a PDF file, as it grows: names and operators in ASCII, numbers, references and strings, written without going through text. */
final class Bytes {
    static final Bytes NONE = new Bytes(0);
    private static final double NOTHING = 1.5e-5;
    private static final double LARGE = 32767;
    private static final int SMALL_DIGITS = 100_000;

    private byte[] bytes;
    private int size;

    Bytes(int room) {
        bytes = new byte[room];
    }

    private void room(int more) {
        if (size + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, size + more));
        }
    }

    Bytes put(int value) {
        room(1);
        bytes[size++] = (byte) value;
        return this;
    }

    Bytes put(Bytes more) {
        room(more.size);
        System.arraycopy(more.bytes, 0, bytes, size, more.size);
        size += more.size;
        return this;
    }

    /** @param ascii characters below 128 only */
    @SuppressWarnings("deprecation")    // the one way to copy ASCII without an array in between
    Bytes ascii(String ascii) {
        int length = ascii.length();
        room(length);
        ascii.getBytes(0, length, bytes, size);
        size += length;
        return this;
    }

    /**
     * A number as the PDF library writes it, so that what we write ourselves cannot be told from the rest: five decimals below 1, two
     * above, none above 32,767; rounded half away from zero, without zeros at the end.
     */
    Bytes number(double value) {
        double size = Math.abs(value);
        if (size < NOTHING) {
            return put('0');
        }
        if (value < 0) {
            put('-');
        }
        if (size < 1) {
            double rounded = size + .5 / SMALL_DIGITS;
            return rounded >= 1 ? put('1') : put('0').decimals((int) (rounded * SMALL_DIGITS), SMALL_DIGITS);
        }
        if (size > LARGE) {
            return whole((long) (size + .5));
        }
        int hundredths = (int) ((size + .005) * 100);
        return whole(hundredths / 100).decimals(hundredths % 100, 100);
    }

    /** The decimals of {@code rest / of}, with a point before them if there are any. */
    private Bytes decimals(int rest, int of) {
        if (rest > 0) {
            put('.');
        }
        for (int left = rest, unit = of / 10; left > 0; left %= unit, unit /= 10) {
            put('0' + left / unit);
        }
        return this;
    }

    Bytes whole(long value) {
        if (value >= 10) {
            whole(value / 10);
        }
        return put((int) ('0' + value % 10));
    }

    /** An indirect reference to the object of that number. */
    Bytes reference(int number) {
        return whole(number).ascii(" 0 R");
    }

    /** One byte of a string in parentheses. */
    Bytes escaped(int value) {
        return switch (value) {
            case '\r' -> ascii("\\r");
            case '\n' -> ascii("\\n");
            case '\t' -> ascii("\\t");
            case '\b' -> ascii("\\b");
            case '\f' -> ascii("\\f");
            case '(', ')', '\\' -> put('\\').put(value);
            default -> put(value);
        };
    }

    /** A string of bytes. */
    Bytes string(byte[] string) {
        put('(');
        for (byte b : string) {
            escaped(b);
        }
        return put(')');
    }

    Bytes box(double left, double bottom, double right, double top) {
        return put('[').number(left).put(' ').number(bottom).put(' ').number(right).put(' ').number(top).put(']');
    }

    /** Words a reader sees or hears, as a string. */
    Bytes text(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > '~' || text.charAt(i) < ' ') {
                return string(Tags.text(text).getOriginalBytes());
            }
        }
        put('(');
        for (int i = 0; i < text.length(); i++) {
            escaped(text.charAt(i));
        }
        return put(')');
    }

    void clear() {
        size = 0;
    }

    int size() {
        return size;
    }

    void writeTo(OutputStream out) throws IOException {
        out.write(bytes, 0, size);
    }
}
