package contrapposto.typeset;

import contrapposto.font.FontFile;
import java.io.IOException;
import java.security.SecureRandom;
import org.openpdf.text.DocumentException;
import org.openpdf.text.pdf.BaseFont;

/**
 * One weight of the typeface: its measures and the same file as the PDF library knows it. Immutable in effect; all
 * documents and threads share it.
 */
final class Face {
    private final FontFile file;
    private final BaseFont base;

    /** @param letter of the subset's name, so that two weights of a document differ and two runs do not */
    Face(String name, byte[] bytes, char letter) {
        file = new FontFile(bytes);
        try {
            base = BaseFont.createFont(name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, bytes, null);
        } catch (DocumentException | IOException e) {
            throw new IllegalStateException("The font " + name + " cannot be read.", e);
        }
        base.setSubset(true);
        base.setIncludeCidSet(false);
        base.setSecureRandom(new SameLetter(letter));
    }

    BaseFont base() {
        return base;
    }

    boolean has(int codePoint) {
        return file.has(codePoint);
    }

    /** What a gap between two characters gains, in thousandths of the size. Spaces and figures keep their places. */
    int kern(char left, char right) {
        boolean fixed = left == ' ' || right == ' ' || left == '\u00a0' || right == '\u00a0'
                || isDigit(left) && isDigit(right);
        return fixed ? 0 : file.kern(left, right);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Width in thousandths of the size, pairs included. */
    int width(String text) {
        int sum = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            sum += file.width(c) + (i == 0 ? 0 : kern(text.charAt(i - 1), c));
        }
        return sum;
    }

    /** Names every subset with the same six letters; it keeps no state, so threads do not matter. */
    private static final class SameLetter extends SecureRandom {
        private static final long serialVersionUID = 1;
        private final double share;

        SameLetter(char letter) {
            share = (letter - 'A' + 0.5) / 26;
        }

        @Override
        public double nextDouble() {
            return share;
        }
    }
}
