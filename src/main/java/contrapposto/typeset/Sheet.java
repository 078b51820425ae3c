package contrapposto.typeset;

import contrapposto.document.Badge;
import contrapposto.document.Field;
import contrapposto.document.Inline.Sign.Kind;
import contrapposto.figure.Drawing;
import contrapposto.figure.Tone;
import contrapposto.typeset.Line.Run;
import java.util.List;
import org.openpdf.text.pdf.PdfRectangle;

/**
 * Where slabs paint: the page in hand, the structure tree that grows with it, and what is done once a document —
 * form fields, links, bookmarks, figures. All lengths in mm from the top left of the paper.
 */
final class Sheet {
    static final double HAIR = 0.25;
    static final double FOOT = 0.35;
    static final double BOX = 0.35;
    static final double HEAVY = 0.7;

    private final Desk desk;
    private final Pen pen;
    private final Tags tags;
    private final Press press;
    private final Signs signs;

    Sheet(Desk desk, Pen pen, Tags tags, Press press) {
        this.desk = desk;
        this.pen = pen;
        this.tags = tags;
        this.press = press;
        signs = new Signs(desk.fonts().bold(), desk.type().body().size(), desk.wording());
    }

    Desk desk() {
        return desk;
    }

    Pen pen() {
        return pen;
    }

    Tags tags() {
        return tags;
    }

    Press press() {
        return press;
    }

    /** A straight line that means nothing to a reader, in the ink of the heads. */
    void rule(double x1, double y1, double x2, double y2, double width) {
        tags.artifact(() -> {
            pen.moveTo(x1, y1);
            pen.lineTo(x2, y2);
            pen.stroke(desk.heads(), width);
        });
    }

    void across(double x, double y, double width, double weight) {
        rule(x, y, x + width, y, weight);
    }

    void box(double x, double y, double width, double height, double line) {
        tags.artifact(() -> Signs.box(pen, x, y, width, height, line));
    }

    void fill(double x, double y, double width, double height, Tone tone) {
        tags.artifact(() -> {
            pen.rectangle(x, y, width, height);
            pen.fill(tone);
        });
    }

    /** A side mark of the open element's own: the shape is decoration, the letter is text. */
    void pill(Badge badge, double x, double y, double height) {
        tags.artifact(() -> Signs.shape(pen, badge, x, y, height));
        tags.begin("Span").actual(spoken(badge));
        tags.mark(() -> signs.letters(pen, badge, x, y, height));
        tags.end();
    }

    private String spoken(Badge badge) {
        return switch (badge) {
            case LEFT -> desk.wording().left();
            case RIGHT -> desk.wording().right();
            case BOTH -> desk.wording().both();
        };
    }

    /** The box of a figure on this page, in pt from its lower left. */
    PdfRectangle area(double x, double y, double width, double height) {
        double paper = desk.stock().height();
        return new PdfRectangle(Pen.pt(x), Pen.pt(paper - y - height), Pen.pt(x + width), Pen.pt(paper - y));
    }

    /** A drawing in its box, with what a screen reader says in its place. */
    void figure(Drawing drawing, String alt, double x, double y, double width, double height) {
        tags.figure(alt, area(x, y, width, height),
                () -> press.figures().paint(drawing.drawn(width, height, desk.type().body().size()), pen.at(x, y)));
    }

    /** A form field and the frame around it. */
    void field(Field field, double x, double y, double width, double height) {
        box(x, y, width, height, BOX);
        double inside = BOX;
        press.fields().place(this, field, area(x + inside, y + inside, width - 2 * inside, height - 2 * inside));
    }

    /** What of a line is decoration: the shapes of its signs. Before the text, since artifacts cannot lie in it. */
    void decorate(Line line, Style style, double x, double top) {
        for (var run : line.runs()) {
            if (run instanceof Run.Sign(double dx, double width, Kind kind)) {
                tags.artifact(() -> shape(kind, x + dx, top, width, style));
            }
        }
    }

    private void shape(Kind kind, double x, double top, double width, Style style) {
        double baseline = top + style.baseline();
        switch (kind) {
            case UP_TRIANGLE -> Signs.triangle(pen, x, baseline, width);
            case TICK_BOX -> Signs.box(pen, x, baseline - width + 0.6, width, width, BOX);
            case LEFT_PILL -> Signs.shape(pen, Badge.LEFT, x, top, style.line());
            case RIGHT_PILL -> Signs.shape(pen, Badge.RIGHT, x, top, style.line());
            case BOTH_PILL -> Signs.shape(pen, Badge.BOTH, x, top, style.line());
        }
    }

    /** The letters of a line, inside marked content. */
    void letters(Line line, Style style, double x, double top, Tone tone) {
        pen.beginText(tone);
        for (var run : line.runs()) {
            switch (run) {
                case Run.Words(double dx, double width, String text, boolean bold) ->
                        pen.words(desk.fonts().of(bold), style.size(), x + dx, top + style.baseline(), text);
                case Run.Link(double dx, double width, String guess, String part) -> pen.words(desk.fonts().bold(),
                        style.size(), x + dx, top + style.baseline(), press.links().folio(part));
                case Run.Sign(double dx, double width, Kind kind) -> {
                    pen.endText();
                    pillLetters(kind, x + dx, top, style.line());
                    pen.beginText(tone);
                }
            }
        }
        pen.endText();
    }

    /** The letters of a pill, inside marked content. */
    void pillLetters(Badge badge, double x, double y, double height) {
        signs.letters(pen, badge, x, y, height);
    }

    private void pillLetters(Kind kind, double x, double top, double height) {
        switch (kind) {
            case LEFT_PILL -> signs.letters(pen, Badge.LEFT, x, top, height);
            case RIGHT_PILL -> signs.letters(pen, Badge.RIGHT, x, top, height);
            case BOTH_PILL -> signs.letters(pen, Badge.BOTH, x, top, height);
            case UP_TRIANGLE, TICK_BOX -> { }
        }
    }

    /** One line as an element of its own. */
    void leaf(String type, Line line, Style style, double x, double top, Tone tone) {
        decorate(line, style, x, top);
        if (links(line)) {
            tags.within(type, () -> press.links().paint(this, line, style, x, top));
        } else {
            tags.leaf(type, () -> letters(line, style, x, top, tone));
        }
    }

    void leaf(String type, Line line, Style style, double x, double top) {
        leaf(type, line, style, x, top, Tone.BLACK);
    }

    static boolean links(Line line) {
        for (var run : line.runs()) {
            if (run instanceof Run.Link) {
                return true;
            }
        }
        return false;
    }

    static boolean links(List<Line> lines) {
        return lines.stream().anyMatch(Sheet::links);
    }
}
