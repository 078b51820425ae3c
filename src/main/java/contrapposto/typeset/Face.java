package contrapposto.typeset;

import contrapposto.font.FontFile;
import java.io.IOException;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.openpdf.text.DocumentException;
import org.openpdf.text.pdf.BaseFont;

/**
 * One weight of the typeface: its measures and the same files as the PDF library knows them. The first file that has a
 * character shows it; those after the first are fonts that a practice adds. Immutable in effect; all documents and threads
 * share it.
 */
final class Face {
    private final List<Cut> cuts;

    /** One font file, read by us for its measures and by the PDF library for its outlines. */
    record Cut(FontFile file, BaseFont base) {
        /** @param letter of the subset's name, so that two fonts of a document differ and two runs do not */
        static Cut of(String name, byte[] bytes, char letter) {
            try {
                var base = BaseFont.createFont(name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, bytes, null);
                base.setSubset(true);
                base.setIncludeCidSet(false);
                base.setSecureRandom(new SameLetter(letter));
                return new Cut(new FontFile(bytes), base);
            } catch (DocumentException | IOException e) {
                throw new IllegalArgumentException("The font " + name + " cannot be read.", e);
            }
        }
    }

    /** Letters in a row that one file shows. */
    record Stretch(Cut cut, String text) { }

    Face(List<Cut> cuts) {
        this.cuts = List.copyOf(cuts);
    }

    /** The same with more files to look a character up in. */
    Face with(List<Cut> more) {
        return new Face(Stream.concat(cuts.stream(), more.stream()).toList());
    }

    /** The typeface proper. */
    BaseFont base() {
        return cuts.getFirst().base();
    }

    boolean has(int codePoint) {
        for (var cut : cuts) {
            if (cut.file().has(codePoint)) {
                return true;
            }
        }
        return false;
    }

    private Cut cut(int codePoint) {
        var first = cuts.getFirst();
        return cuts.size() == 1 || first.file().has(codePoint) ? first
                : cuts.stream().filter(cut -> cut.file().has(codePoint)).findFirst().orElse(first);
    }

    /** The text in stretches that one file each shows, in order. */
    List<Stretch> stretches(String text) {
        if (cuts.size() == 1) {
            return List.of(new Stretch(cuts.getFirst(), text));
        }
        var stretches = new ArrayList<Stretch>();
        int from = 0;
        for (int i = 1; i <= text.length(); i++) {
            if (i == text.length() || cut(text.charAt(i)) != cut(text.charAt(from))) {
                stretches.add(new Stretch(cut(text.charAt(from)), text.substring(from, i)));
                from = i;
            }
        }
        return stretches;
    }

    /** What a gap between two characters gains, in thousandths of the size. Spaces and figures keep their places. */
    int kern(char left, char right) {
        boolean fixed = left == ' ' || right == ' ' || left == '\u00a0' || right == '\u00a0'
                || isDigit(left) && isDigit(right);
        var cut = cut(left);
        return fixed || cut != cut(right) ? 0 : cut.file().kern(left, right);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Width in thousandths of the size, pairs included. */
    int width(String text) {
        int sum = 0;
        char before = ' ';
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            sum += cut(c).file().width(c) + (i == 0 ? 0 : kern(before, c));
            before = c;
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
