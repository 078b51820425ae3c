package contrapposto.typeset;

import contrapposto.document.Field;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.openpdf.text.pdf.PdfAppearance;
import org.openpdf.text.pdf.PdfBoolean;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfRectangle;
import org.openpdf.text.pdf.PdfStream;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;

/**
 * Form fields, each in a tagged Form element. The frame is painted on the page; the appearance of a text field is empty
 * until it is filled, and all share one, since a file holds hundreds. Programs that fill fields write into an appearance
 * that has a size; this one has none, so that each field is given one of its own.
 */
final class FieldWriter {
    /** What can be typed: Latin with its accents, and common punctuation; a field's font must hold it beforehand. */
    private static final String ALPHABET = alphabet();

    private final PdfWriter writer;
    private final Desk desk;
    private final Map<String, Widget.Look.Tick> ticks = new LinkedHashMap<>();
    private Optional<Widget.Look.Words> words = Optional.empty();

    FieldWriter(PdfWriter writer, Desk desk) {
        this.writer = writer;
        this.desk = desk;
    }

    private static String alphabet() {
        var letters = new StringBuilder();
        for (char c = ' '; c <= '~'; c++) {
            letters.append(c);
        }
        for (char c = '\u00a1'; c <= '\u017f'; c++) {
            letters.append(c);
        }
        return letters.append("–—‘’“”…€").toString();
    }

    /** Puts a field on the page in hand, over {@code box} in pt. */
    void place(Sheet sheet, Field field, PdfRectangle box) {
        var look = switch (field.kind()) {
            case TEXT -> words(false);
            case MULTILINE -> words(true);
            case CHECK -> tick(box);
        };
        var widget = new Widget(writer, field.name(), field.tip(), box, look);
        var element = sheet.tags().begin("Form");
        sheet.tags().end();
        widget.tied(sheet.tags().tie(element, widget.getIndirectReference()));
        writer.addAnnotation(widget);
    }

    private Widget.Look words(boolean multiline) {
        var unfilled = words.orElseGet(this::prepareText);
        words = Optional.of(unfilled);
        return new Widget.Look.Words(unfilled.style(), unfilled.nothing(), multiline);
    }

    private Widget.Look tick(PdfRectangle box) {
        return ticks.computeIfAbsent(size(box), key -> new Widget.Look.Tick(add(form(box, ticked(box))), add(form(box, ""))));
    }

    private static String size(PdfRectangle box) {
        return box.width() + "x" + box.height();
    }

    private static PdfStream form(PdfRectangle box, String content) {
        var stream = new PdfStream(content.getBytes(StandardCharsets.US_ASCII));
        stream.put(PdfName.SUBTYPE, PdfName.FORM);
        stream.put(PdfName.BBOX, new PdfRectangle(box.width(), box.height()));
        return stream;
    }

    /** Two strokes from corner to hook, inside the frame. */
    private static String ticked(PdfRectangle box) {
        double w = box.width();
        double h = box.height();
        return String.format(Locale.ROOT, "1.4 w 1 J 1 j %.2f %.2f m %.2f %.2f l %.2f %.2f l S",
                0.2 * w, 0.5 * h, 0.42 * w, 0.24 * h, 0.82 * w, 0.8 * h);
    }

    /** Its number in the file. */
    private int add(PdfStream stream) {
        try {
            return writer.addToBody(stream).getIndirectReference().getNumber();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts the alphabet into the font once, the font where all fields find it, and the appearance of those not filled. */
    private Widget.Look.Words prepareText() {
        var face = desk.fonts().regular().base();
        float size = (float) desk.type().number().size();
        var unused = new PdfContentByte(writer);
        unused.beginText();
        unused.setFontAndSize(face, size);
        unused.showText(ALPHABET);
        unused.endText();
        PdfAppearance sample = writer.getDirectContent().createAppearance(1, 1);
        sample.setFontAndSize(face, size);
        byte[] style = sample.getInternalBuffer().toByteArray();
        var form = writer.getAcroForm();
        form.addFieldTemplates(Map.of(sample, ""));
        form.put(PdfName.DA, new PdfString(style));
        form.put(new PdfName("NeedAppearances"), PdfBoolean.PDFFALSE);
        return new Widget.Look.Words(style, add(form(new PdfRectangle(0, 0), "")), false);
    }
}
