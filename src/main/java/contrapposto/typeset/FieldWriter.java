package contrapposto.typeset;

import contrapposto.document.Field;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfAnnotation;
import org.openpdf.text.pdf.PdfAppearance;
import org.openpdf.text.pdf.PdfBoolean;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfFormField;
import org.openpdf.text.pdf.PdfIndirectReference;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfObject;
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
    private static final PdfName ON = new PdfName("Yes");
    private static final PdfName OFF = new PdfName("Off");

    private final PdfWriter writer;
    private final Desk desk;
    private final Map<String, PdfIndirectReference> ticks = new LinkedHashMap<>();
    private Optional<PdfString> textStyle = Optional.empty();
    private Optional<PdfIndirectReference> nothing = Optional.empty();

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
        var widget = switch (field.kind()) {
            case TEXT -> text(box, false);
            case MULTILINE -> text(box, true);
            case CHECK -> check(box);
        };
        widget.setFieldName(field.name());
        widget.setUserName(field.tip());
        widget.setFlags(PdfAnnotation.FLAGS_PRINT);
        var element = sheet.tags().begin("Form");
        sheet.tags().end();
        sheet.tags().tie(element, widget, widget.getIndirectReference(),
                writer.getPageReference(writer.getPageNumber()));
        writer.addAnnotation(widget);
    }

    private PdfFormField text(PdfRectangle box, boolean multiline) {
        var widget = PdfFormField.createTextField(writer, multiline, false, 0);
        widget.setWidget(rectangle(box), PdfAnnotation.HIGHLIGHT_NONE);
        if (textStyle.isEmpty()) {
            prepareText();
        }
        widget.put(PdfName.DA, textStyle.orElseThrow());
        if (!multiline) {
            widget.setQuadding(PdfFormField.Q_CENTER);
        }
        widget.put(PdfName.AP, normal(nothing.orElseThrow()));
        return widget;
    }

    private PdfFormField check(PdfRectangle box) {
        var widget = PdfFormField.createCheckBox(writer);
        widget.setWidget(rectangle(box), PdfAnnotation.HIGHLIGHT_NONE);
        var states = new PdfDictionary();
        states.put(ON, ticks.computeIfAbsent("on" + size(box), key -> add(form(box, tick(box)))));
        states.put(OFF, ticks.computeIfAbsent("off" + size(box), key -> add(form(box, ""))));
        widget.put(PdfName.AP, normal(states));
        widget.setValueAsName("Off");
        widget.setAppearanceState("Off");
        return widget;
    }

    private static String size(PdfRectangle box) {
        return box.width() + "x" + box.height();
    }

    private static Rectangle rectangle(PdfRectangle box) {
        return new Rectangle(box.left(), box.bottom(), box.right(), box.top());
    }

    private static PdfDictionary normal(PdfObject appearance) {
        var dictionary = new PdfDictionary();
        dictionary.put(PdfName.N, appearance);
        return dictionary;
    }

    private static PdfStream form(PdfRectangle box, String content) {
        var stream = new PdfStream(content.getBytes(StandardCharsets.US_ASCII));
        stream.put(PdfName.SUBTYPE, PdfName.FORM);
        stream.put(PdfName.BBOX, new PdfRectangle(box.width(), box.height()));
        return stream;
    }

    /** Two strokes from corner to hook, inside the frame. */
    private static String tick(PdfRectangle box) {
        double w = box.width();
        double h = box.height();
        return String.format(Locale.ROOT, "1.4 w 1 J 1 j %.2f %.2f m %.2f %.2f l %.2f %.2f l S",
                0.2 * w, 0.5 * h, 0.42 * w, 0.24 * h, 0.82 * w, 0.8 * h);
    }

    private PdfIndirectReference add(PdfStream stream) {
        try {
            return writer.addToBody(stream).getIndirectReference();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts the alphabet into the font once, the font where all fields find it, and the appearance of those not filled. */
    private void prepareText() {
        var face = desk.fonts().regular().base();
        float size = (float) desk.type().number().size();
        var unused = new PdfContentByte(writer);
        unused.beginText();
        unused.setFontAndSize(face, size);
        unused.showText(ALPHABET);
        unused.endText();
        PdfAppearance sample = writer.getDirectContent().createAppearance(1, 1);
        sample.setFontAndSize(face, size);
        var style = new PdfString(sample.getInternalBuffer().toByteArray());
        var form = writer.getAcroForm();
        form.addFieldTemplates(Map.of(sample, ""));
        form.put(PdfName.DA, style);
        form.put(new PdfName("NeedAppearances"), PdfBoolean.PDFFALSE);
        textStyle = Optional.of(style);
        nothing = Optional.of(add(form(new PdfRectangle(0, 0), "")));
    }
}
