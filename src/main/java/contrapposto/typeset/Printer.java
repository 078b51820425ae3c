package contrapposto.typeset;

import contrapposto.document.Document;
import contrapposto.document.Document.Format;
import contrapposto.figure.Tone;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfPageLabels;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfWriter;

/** Paints a layout into a PDF, page by page in reading order. One printer for one document. */
final class Printer {
    private static final double FOLD_LINE = 0.2;
    private static final double FOLD_ON = 0.8;
    private static final double FOLD_OFF = 2.2;
    private static final String VERSION = "1.7";
    /** Of 9: level 6 takes nearly twice the time for a file a fiftieth smaller. */
    static final int EFFORT = 5;

    private final Document document;
    private final Layout layout;
    private final Stock stock;
    private final boolean archival;

    /** @param archival whether the file claims to be PDF/A */
    Printer(Document document, Layout layout, boolean archival) {
        this.archival = archival;
        this.document = document;
        this.layout = layout;
        stock = layout.desk().stock();
    }

    Pages printed() {
        var out = new ByteArrayOutputStream(1 << 17);
        var file = new org.openpdf.text.Document(new Rectangle(Pen.pt(stock.width()), Pen.pt(stock.height())));
        try {
            var writer = TaggedWriter.of(file, out);
            writer.setFullCompression();
            writer.setCompressionLevel(EFFORT);
            writer.setPdfVersion(VERSION);
            writer.setViewerPreferences(PdfWriter.DisplayDocTitle | PdfWriter.PageModeUseOutlines);
            writer.setTabs(PdfName.S);
            file.open();
            new Metadata(document, archival).write(writer);
            return paint(file, writer, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Pages paint(org.openpdf.text.Document file, TaggedWriter writer, ByteArrayOutputStream out) {
        var desk = layout.desk();
        writer.begin();
        var ink = writer.ink();
        var finds = new Press.Finds();
        var press = new Press(new Links(writer, document.parts().stream().map(Document.Part::name).toList(), layout.folios()),
                new Bookmarks(writer, stock.height()), new FieldWriter(writer, desk),
                new FigurePainter(desk.fonts(), desk.misses()), finds);
        var tags = writer.tags();
        var sheet = new Sheet(desk, new Pen(ink, 0, stock.height()), tags, press);
        var numbers = layout.numbers();
        var stretches = new ArrayList<Double>();
        var labels = new PdfPageLabels();
        int page = 0;
        for (var sheaf : layout.sheaves()) {
            var part = sheaf.part();
            tags.begin("Part");
            for (int i = 0; i < sheaf.leaves().size(); i++) {
                if (page++ > 0) {
                    ink.turn();
                    file.newPage();
                }
                finds.turnTo(page);
                labels.addPageLabel(page, PdfPageLabels.DECIMAL_ARABIC_NUMERALS, part.folio(), count(numbers, page));
                if (i == sheaf.blanks()) {
                    press.links().begin(part.name());
                    press.bookmarks().part(part.name());
                }
                stretches.add(paint(sheet, sheaf, i));
                if (sheaf.leaves().get(i).frames().isEmpty()) {
                    writer.setPageEmpty(false);
                    continue;       // a page that stays empty says nothing
                }
                if (part.format() == Format.WHOLE) {
                    layout.footer().paint(sheet, part.name(), numbers.get(page - 1),
                            Integer.toString(layout.total(part.folio())));
                } else {
                    folds(sheet);
                }
            }
            tags.end();
        }
        writer.setPageLabels(labels);
        ink.turn();
        file.close();
        return new Pages(CrossReferences.tight(out.toByteArray()), page, layout.firstPages(), finds.cards(), stretches);
    }

    /** The number in a printed page number, without its prefix. */
    private int count(java.util.List<String> numbers, int page) {
        String number = numbers.get(page - 1);
        int digits = 0;
        while (digits < number.length() && !Character.isDigit(number.charAt(digits))) {
            digits++;
        }
        return Integer.parseInt(number.substring(digits));
    }

    private double paint(Sheet sheet, Layout.Sheaf sheaf, int leaf) {
        var frames = sheaf.leaves().get(leaf).frames();
        frames.forEach(frame -> frame.paint(sheet));
        if (!frames.isEmpty()) {
            sheaf.legend().ifPresent(legend -> (leaf == sheaf.firstFilled() ? legend : legend.unread()).paint(sheet,
                    stock.margin(), stock.bottom() - layout.footer().extra() - legend.height(0), 0));
        }
        return frames.stream().filter(Frame::isElastic).mapToDouble(Frame::stretch).min().orElse(1);
    }

    /** The first fold through all of it; the second one crosses words, so only the edges mark it. */
    private void folds(Sheet sheet) {
        sheet.tags().artifact(() -> {
            sheet.pen().moveTo(stock.width() / 2, 6);
            sheet.pen().lineTo(stock.width() / 2, stock.height() - 6);
            sheet.pen().moveTo(1, stock.height() / 2);
            sheet.pen().lineTo(6, stock.height() / 2);
            sheet.pen().moveTo(stock.width() - 6, stock.height() / 2);
            sheet.pen().lineTo(stock.width() - 1, stock.height() / 2);
            sheet.pen().dashed(Tone.BLACK, FOLD_LINE, FOLD_ON, FOLD_OFF);
        });
    }
}
