package contrapposto.typeset;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;
import org.openpdf.text.Image;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfWriter;

/**
 * The content of the page in hand: PDF's operators, written straight as bytes. Numbers are rounded to {@code float} before they come here, lengths in pt.
 * The PDF library gets the page when it is full, and the letters of each font that the page is first to use.
 */
final class Ink {
    private static final int PAGE = 1 << 16;

    private final PdfWriter writer;
    private final PdfContentByte aside;
    private final Bytes page = new Bytes(PAGE);
    private final Map<Face.Cut, Case> cases = new LinkedHashMap<>();

    Ink(PdfWriter writer) {
        this.writer = writer;
        aside = new PdfContentByte(writer);
    }

    /** The letters of one font: its name on the pages, and which characters the file must hold. */
    private static final class Case {
        private final BitSet used = new BitSet();
        private final StringBuilder fresh = new StringBuilder();
        private String name = "";
        private boolean onPage;
    }

    /** An operator without numbers. */
    void operator(String operator) {
        page.ascii(operator).put('\n');
    }

    void operator(double a, String operator) {
        page.number(a).put(' ');
        operator(operator);
    }

    void operator(double a, double b, String operator) {
        page.number(a).put(' ');
        operator(b, operator);
    }

    void operator(double a, double b, double c, String operator) {
        page.number(a).put(' ');
        operator(b, c, operator);
    }

    void operator(double a, double b, double c, double d, String operator) {
        page.number(a).put(' ');
        operator(b, c, d, operator);
    }

    void operator(double a, double b, double c, double d, double e, double f, String operator) {
        page.number(a).put(' ').number(b).put(' ');
        operator(c, d, e, f, operator);
    }

    /** A dash pattern; none at all for unbroken lines. */
    void dash(double... lengths) {
        page.put('[');
        for (int i = 0; i < lengths.length; i++) {
            if (i > 0) {
                page.put(' ');
            }
            page.number(lengths[i]);
        }
        page.ascii("] 0 d\n");
    }

    /** Begins content of the page's marked content {@code number}. */
    void mark(String type, int number) {
        page.put('/').ascii(type).ascii(" <</MCID ").whole(number).ascii(">> BDC\n");
    }

    /** Begins content that is not read. */
    void artifact(String kind) {
        page.ascii("/Artifact <</Type/").ascii(kind).ascii(">> BDC\n");
    }

    /** Letters of one font, with what the gaps between them gain, at the place set last. */
    void letters(Face.Stretch letters, Face face, float size) {
        var cut = letters.cut();
        var used = used(cut);
        page.put('/').ascii(used.name).put(' ').number(size).ascii(" Tf\n[");
        String text = letters.text();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int kern = i == 0 ? 0 : face.kern(text.charAt(i - 1), c);
            if (kern != 0) {
                page.put(')').number(-kern);
            }
            if (i == 0 || kern != 0) {
                page.put('(');
            }
            int glyph = cut.file().glyph(c);
            if (glyph != 0) {
                page.escaped(glyph >> 8).escaped(glyph & 0xff);
            }
            if (!used.used.get(c)) {
                used.used.set(c);
                used.fresh.append(c);
            }
        }
        page.ascii(text.isEmpty() ? "]TJ\n" : ")]TJ\n");
    }

    private Case used(Face.Cut cut) {
        var used = cases.get(cut);
        if (used == null) {
            used = new Case();
            cases.put(cut, used);
        }
        if (!used.onPage) {
            used.onPage = true;
            used.name = named(cut);
        }
        return used;
    }

    /** Puts a font among the resources of the page; its name there. */
    private String named(Face.Cut cut) {
        aside.setFontAndSize(cut.base(), 1);
        String said = aside.getInternalBuffer().toString();
        aside.reset();
        return said.substring(1, said.indexOf(' '));
    }

    /** A picture in a box whose lower left corner is at {@code x}, {@code y}. */
    void picture(Image image, float width, float height, float x, float y) {
        aside.addImage(image, width, 0, 0, height, x, y);
        page.ascii(aside.getInternalBuffer().toString());
        aside.reset();
    }

    /** Hands the full page over. */
    void turn() {
        cases.forEach((cut, used) -> {
            if (!used.fresh.isEmpty()) {
                aside.beginText();
                aside.setFontAndSize(cut.base(), 1);
                aside.showText(used.fresh.toString());
                aside.endText();
                aside.reset();
                used.fresh.setLength(0);
            }
            used.onPage = false;
        });
        try {
            page.writeTo(writer.getDirectContent().getInternalBuffer());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        page.clear();
    }
}
