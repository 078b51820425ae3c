package contrapposto.typeset;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where PDFBox finds letters on a page, joined to runs that stand side by side on one baseline. Lengths in mm. */
final class Letterpress extends PDFTextStripper {
    private static final double MM = 25.4 / 72;
    /** How far a letter may be drawn under the one before it, in ems. */
    private static final double DEEPEST_KERN = 0.15;

    /** @param top of capitals above the baseline {@code bottom}, from the upper edge */
    record Run(String text, double left, double right, double top, double bottom, double size) {
        boolean overlaps(Run other) {
            return Math.min(right, other.right) - Math.max(left, other.left) > 0.2
                    && Math.min(bottom, other.bottom) - Math.max(top, other.top) > 0.2;
        }

        boolean isTwin(Run other) {
            return text.equals(other.text) && Math.abs(left - other.left) < 0.01 && Math.abs(bottom - other.bottom) < 0.01;
        }
    }

    private final List<Run> runs = new ArrayList<>();

    private Letterpress() { }

    static List<Run> of(PDDocument file, int page) throws IOException {
        var press = new Letterpress();
        press.setSuppressDuplicateOverlappingText(false);
        press.setStartPage(page);
        press.setEndPage(page);
        press.getText(file);
        return press.runs;
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
        if (letter.getUnicode().isBlank()) {
            return;
        }
        double left = letter.getXDirAdj() * MM;
        double right = left + letter.getWidthDirAdj() * MM;
        double bottom = letter.getYDirAdj() * MM;
        double size = letter.getFontSizeInPt();
        if (!runs.isEmpty()) {
            var last = runs.getLast();
            if (Math.abs(last.bottom - bottom) < 0.01 && last.size == size && left >= last.right - DEEPEST_KERN * size * MM
                    && left - last.right < 1.5) {
                runs.set(runs.size() - 1, new Run(last.text + letter.getUnicode(), last.left, right, last.top, bottom,
                        size));
                return;
            }
        }
        runs.add(new Run(letter.getUnicode(), left, right, bottom - 0.711 * size * MM, bottom, size));
    }
}
