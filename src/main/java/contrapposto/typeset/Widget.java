package contrapposto.typeset;

import java.io.IOException;
import java.io.OutputStream;
import org.openpdf.text.pdf.PdfAnnotation;
import org.openpdf.text.pdf.PdfFormField;
import org.openpdf.text.pdf.PdfRectangle;
import org.openpdf.text.pdf.PdfWriter;

/** A form field and its place on a page; a file holds hundreds, so each writes itself. */
final class Widget extends PdfFormField {
    private final String name;
    private final String tip;
    private final PdfRectangle box;
    private final Look look;
    private int key;

    /** What is filled in, and what that looks like while it is not. */
    sealed interface Look {
        /** @param style of the letters, {@code nothing} the number of the empty appearance */
        record Words(byte[] style, int nothing, boolean multiline) implements Look { }

        /** @param on the number of the ticked appearance, {@code off} that of the other */
        record Tick(int on, int off) implements Look { }
    }

    Widget(PdfWriter writer, String name, String tip, PdfRectangle box, Look look) {
        super(writer);
        this.name = name;
        this.tip = tip;
        this.box = box;
        this.look = look;
        form = true;
        annotation = true;
    }

    /** @param key under which its structure element is found */
    void tied(int key) {
        this.key = key;
    }

    @Override
    public void toPdf(PdfWriter writer, OutputStream out) throws IOException {
        var to = new Bytes(256).ascii("<</Type/Annot/Subtype/Widget/F ").whole(PdfAnnotation.FLAGS_PRINT).ascii("/H/N/StructParent ").whole(key)
                .ascii("/T").text(name).ascii("/TU").text(tip).ascii("/Rect").box(box.left(), box.bottom(), box.right(), box.top());
        switch (look) {
            case Look.Words(byte[] style, int nothing, boolean multiline) -> to.ascii("/FT/Tx/DA").string(style).ascii("/AP<</N ").reference(nothing)
                    .ascii(">>").ascii(multiline ? "/Ff " : "/Q 1/Ff ").whole(multiline ? FF_MULTILINE : 0);
            case Look.Tick(int on, int off) -> to.ascii("/FT/Btn/V/Off/AS/Off/AP<</N<</Off ").reference(off).ascii("/Yes ").reference(on).ascii(">>>>");
        }
        to.ascii(">>").writeTo(out);
    }
}
