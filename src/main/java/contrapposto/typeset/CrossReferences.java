package contrapposto.typeset;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * The table at the end of a file that says where each object lies. The PDF library writes it row after row; written as the differences from one row
 * to the next (predictor 12 of ISO 32000-1, 7.4.4.4), it takes 6 kB in place of 10 for a handout with a log.
 */
final class CrossReferences {
    private static final byte[] START = "startxref\n".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] STREAM = ">>stream\n".getBytes(StandardCharsets.US_ASCII);
    private static final Pattern WIDTHS = Pattern.compile("/W\\[(\\d+) (\\d+) (\\d+)]");
    private static final Pattern ROWS = Pattern.compile("/Index\\[0 (\\d+)]");
    /** Each row is told by what it adds to the row above. */
    private static final byte UP = 2;

    private CrossReferences() { }

    /** The same file with a small table. */
    static byte[] tight(byte[] file) {
        int end = last(file, START);
        int start = Integer.parseInt(new String(file, end + START.length, file.length - end - START.length, StandardCharsets.US_ASCII)
                .lines().findFirst().orElseThrow());
        int data = next(file, STREAM, start);
        String head = new String(file, start, data - start, StandardCharsets.ISO_8859_1);
        var widths = WIDTHS.matcher(head);
        var rows = ROWS.matcher(head);
        if (!widths.find() || !rows.find()) {
            throw new IllegalStateException("The table of objects is not as the PDF library writes it: " + head);
        }
        int wide = Integer.parseInt(widths.group(1)) + Integer.parseInt(widths.group(2)) + Integer.parseInt(widths.group(3));
        byte[] table = inflated(file, data + STREAM.length, wide * Integer.parseInt(rows.group(1)));
        byte[] small = deflated(differences(table, wide));
        String said = head.replaceFirst("/Length \\d+", "/Length " + small.length + "/DecodeParms<</Predictor 12/Columns " + wide + ">>");
        var out = new ByteArrayOutputStream(file.length);
        out.write(file, 0, start);
        out.writeBytes(said.getBytes(StandardCharsets.ISO_8859_1));
        out.writeBytes(STREAM);
        out.writeBytes(small);
        out.writeBytes("\nendstream\nendobj\n".getBytes(StandardCharsets.US_ASCII));
        out.write(file, end, file.length - end);
        return out.toByteArray();
    }

    private static byte[] differences(byte[] table, int wide) {
        int rows = table.length / wide;
        byte[] told = new byte[rows * (wide + 1)];
        for (int row = 0; row < rows; row++) {
            told[row * (wide + 1)] = UP;
            for (int i = 0; i < wide; i++) {
                int at = row * wide + i;
                told[row * (wide + 1) + 1 + i] = (byte) (table[at] - (row == 0 ? 0 : table[at - wide]));
            }
        }
        return told;
    }

    private static byte[] inflated(byte[] file, int from, int length) {
        byte[] table = new byte[length];
        var inflater = new Inflater();
        try {
            inflater.setInput(file, from, file.length - from);
            for (int filled = 0; filled < length; ) {
                int more = inflater.inflate(table, filled, length - filled);
                if (more == 0) {
                    throw new IllegalStateException("The table of objects is shorter than it says.");
                }
                filled += more;
            }
            return table;
        } catch (DataFormatException e) {
            throw new IllegalStateException("The table of objects is damaged.", e);
        } finally {
            inflater.end();
        }
    }

    private static byte[] deflated(byte[] bytes) {
        var deflater = new Deflater();
        try {
            deflater.setInput(bytes);
            deflater.finish();
            byte[] small = new byte[bytes.length + 64];     // rows of one width never grow by more
            return Arrays.copyOf(small, deflater.deflate(small));
        } finally {
            deflater.end();
        }
    }

    private static int last(byte[] file, byte[] wanted) {
        for (int i = file.length - wanted.length; i >= 0; i--) {
            if (Arrays.equals(file, i, i + wanted.length, wanted, 0, wanted.length)) {
                return i;
            }
        }
        throw new IllegalStateException("The file has no end.");
    }

    private static int next(byte[] file, byte[] wanted, int from) {
        for (int i = from; i + wanted.length <= file.length; i++) {
            if (Arrays.equals(file, i, i + wanted.length, wanted, 0, wanted.length)) {
                return i;
            }
        }
        throw new IllegalStateException("The table of objects has no stream.");
    }
}
