package contrapposto.typeset;

import contrapposto.figure.Tone;
import contrapposto.typeset.Line.Run;
import java.util.List;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfAction;
import org.openpdf.text.pdf.PdfAnnotation;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDestination;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfWriter;

/** Page numbers that lead to their page: words and link as elements side by side. */
final class Links {
    private static final String PREFIX = "part-";

    private final PdfWriter writer;
    private final List<String> parts;
    private final Folios folios;

    /** @param folios final page numbers, in place of those that lines were broken with */
    Links(PdfWriter writer, List<String> parts, Folios folios) {
        this.writer = writer;
        this.parts = parts;
        this.folios = folios;
    }

    /** Marks the page in hand as the first of a part. */
    void begin(String part) {
        writer.getDirectContent().localDestination(name(part), new PdfDestination(PdfDestination.FIT));
    }

    /** The printed page number of the first page of a part. */
    String folio(String part) {
        return folios.of(part);
    }

    private String name(String part) {
        return PREFIX + parts.indexOf(part);
    }

    /** Paints a line that holds links into the open element. */
    void paint(Sheet sheet, Line line, Style style, double x, double top) {
        for (var run : line.runs()) {
            switch (run) {
                case Run.Words words -> sheet.tags().leaf("Span", () -> letters(sheet, words, style, x, top));
                case Run.Sign sign -> { }
                case Run.Link link -> link(sheet, link, style, x, top);
            }
        }
    }

    private void letters(Sheet sheet, Run run, Style style, double x, double top) {
        sheet.letters(new Line(List.of(run), run.width()), style, x, top, Tone.BLACK);
    }

    private void link(Sheet sheet, Run.Link link, Style style, double x, double top) {
        if (!parts.contains(link.part())) {
            throw new IllegalArgumentException("There is no part `" + link.part() + "` to name the page of.");
        }
        var element = sheet.tags().leaf("Link", () -> letters(sheet, link, style, x, top));
        var area = sheet.area(x + link.x(), top, link.width(), style.line());
        var annotation = new PdfAnnotation(writer,
                new Rectangle(area.left(), area.bottom(), area.right(), area.top()));
        annotation.put(PdfName.SUBTYPE, PdfName.LINK);
        annotation.put(PdfName.BORDER, new PdfArray(new float[] {0, 0, 0}));
        annotation.put(PdfName.F, new PdfNumber(PdfAnnotation.FLAGS_PRINT));
        annotation.put(PdfName.CONTENTS, Tags.text(link.part() + ", " + folio(link.part())));
        annotation.put(PdfName.A, PdfAction.gotoLocalPage(name(link.part()), false));
        annotation.put(new PdfName("StructParent"), new PdfNumber(sheet.tags().tie(element, annotation.getIndirectReference())));
        writer.addAnnotation(annotation);
    }
}
