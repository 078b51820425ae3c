package contrapposto.returns;

import java.nio.charset.StandardCharsets;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * How large the compressed parts of a PDF grow, found out before any reader is let loose on it: everything that follows the
 * word {@code stream} is inflated and counted, and thrown away.
 */
final class Swelling {
    private static final byte[] WORD = "stream".getBytes(StandardCharsets.US_ASCII);
    private static final int CHUNK = 1 << 16;

    private Swelling() { }

    /** Whether all compressed parts together, or one alone, grow beyond {@code most} bytes. */
    static boolean exceeds(byte[] pdf, long most) {
        long total = 0;
        var buffer = new byte[CHUNK];
        for (int at = 0; at + WORD.length < pdf.length; at++) {
            if (begins(pdf, at)) {
                int from = afterLineEnd(pdf, at + WORD.length);
                total += inflated(pdf, from, most - total, buffer);
                if (total > most) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Where the word stands, but not as the end of {@code endstream}. */
    private static boolean begins(byte[] pdf, int at) {
        for (int i = 0; i < WORD.length; i++) {
            if (pdf[at + i] != WORD[i]) {
                return false;
            }
        }
        return at == 0 || pdf[at - 1] != 'd';
    }

    private static int afterLineEnd(byte[] pdf, int at) {
        int i = at;
        while (i < pdf.length && (pdf[i] == '\r' || pdf[i] == '\n')) {
            i++;
        }
        return i;
    }

    /** Bytes that come out, counted up to just beyond {@code most}; 0 of what is not compressed this way. */
    private static long inflated(byte[] pdf, int from, long most, byte[] buffer) {
        var inflater = new Inflater();
        try {
            inflater.setInput(pdf, from, pdf.length - from);
            long count = 0;
            while (!inflater.finished() && count <= most) {
                int made = inflater.inflate(buffer);
                if (made == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
                    break;
                }
                count += made;
            }
            return count;
        } catch (DataFormatException notCompressed) {
            return 0;
        } finally {
            inflater.end();
        }
    }
}
