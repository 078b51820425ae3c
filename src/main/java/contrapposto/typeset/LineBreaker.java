package contrapposto.typeset;

import contrapposto.document.Inline;
import contrapposto.document.Inline.Sign.Kind;
import contrapposto.typeset.Line.Run;
import java.util.ArrayList;
import java.util.List;

/**
 * Breaks running text into lines, greedily and ragged right. Lines end after a space or after a hyphen between
 * letters. A word wider than the measure is divided where its language divides it, else where the measure ends; one that would
 * leave a loose line is divided too, in regular type. No-break spaces hold.
 */
final class LineBreaker {
    private static final double ROUNDING = 1e-6;
    private static final double SIGN_GAP = 0.8;
    /** Share of the measure under which a line is loose. */
    private static final double LOOSE = 0.7;
    /** Measure under which lines may be loose: in cells and boxes whole words read better, mm. */
    private static final double NARROW = 60;

    private final Desk desk;
    private final Style style;

    LineBreaker(Desk desk, Style style) {
        this.desk = desk;
        this.style = style;
    }

    /** At least one line, each at most {@code measure} mm wide. */
    List<Line> broken(List<Inline> runs, double measure) {
        var lines = new ArrayList<Line>();
        var line = new ArrayList<Piece>();
        double filled = 0;
        var pieces = pieces(runs);
        for (int from = 0; from < pieces.size(); ) {
            int to = from + 1;
            while (to < pieces.size() && !pieces.get(to - 1).breaks()) {
                to++;
            }
            var group = pieces.subList(from, to);
            double needed = width(group) - group.getLast().space();
            if (filled + needed > measure + ROUNDING) {
                if ((line.isEmpty() || isRegular(group) && measure >= NARROW && filled < LOOSE * measure) && divides(pieces, from, measure - filled)) {
                    line.add(pieces.get(from++));
                    close(line, lines);
                    filled = 0;
                    continue;
                }
                if (!line.isEmpty()) {
                    close(line, lines);
                    filled = 0;
                    continue;
                }
                group = chopped(group, measure, lines);
            }
            line.addAll(group);
            filled += width(group);
            from = to;
        }
        lines.add(joined(line));
        return List.copyOf(lines);
    }

    private void close(List<Piece> line, List<Line> lines) {
        lines.add(joined(line));
        line.clear();
    }

    private static boolean isRegular(List<Piece> group) {
        return group.getFirst() instanceof Piece.Word word && !word.bold();
    }

    /** Puts the part of a word that {@code room} holds, with its hyphen, and the rest in the word's place; false where it cannot be divided so. */
    private boolean divides(List<Piece> pieces, int at, double room) {
        if (!(pieces.get(at) instanceof Piece.Word word)) {
            return false;
        }
        var place = desk.divisions().last(word.text(), p -> width(head(word, p), word.bold()) <= room + ROUNDING);
        place.ifPresent(p -> {
            pieces.set(at, word(head(word, p), false, true, word.bold()));
            pieces.add(at + 1, word(word.text().substring(p), word.space() > 0, word.breaks(), word.bold()));
        });
        return place.isPresent();
    }

    private static String head(Piece.Word word, int letters) {
        return word.text().substring(0, letters) + Divisions.MARK;
    }

    private static double width(List<Piece> group) {
        double width = 0;
        for (var piece : group) {
            width += piece.width() + piece.space();
        }
        return width;
    }

    /** All in one line, however wide. */
    Line single(List<Inline> runs) {
        return joined(pieces(runs));
    }

    Line single(String text, boolean bold) {
        return single(List.of(new Inline.Text(text, bold)));
    }

    List<Line> broken(String text, boolean bold, double measure) {
        return broken(List.of(new Inline.Text(text, bold)), measure);
    }

    private List<Piece> pieces(List<Inline> runs) {
        var pieces = new ArrayList<Piece>();
        for (var run : runs) {
            switch (run) {
                case Inline.Text(String text, boolean bold) -> cut(Letters.clean(text), bold, pieces);
                case Inline.Sign(Kind kind) -> pieces.add(new Piece.Drawn(kind, width(kind)));
                case Inline.PageOf(String part) -> {
                    String folio = desk.folios().of(part);
                    pieces.add(new Piece.Page(folio, part, width(folio, true)));
                }
            }
        }
        return pieces;
    }

    private void cut(String text, boolean bold, List<Piece> pieces) {
        desk.misses().check(text);
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == ' ') {
                pieces.add(word(text.substring(start, i), true, true, bold));
                start = i + 1;
            } else if (hyphenated(text, i)) {
                pieces.add(word(text.substring(start, i + 1), false, true, bold));
                start = i + 1;
            }
        }
        if (start < text.length()) {
            pieces.add(word(text.substring(start), false, false, bold));
        }
    }

    private static boolean hyphenated(String text, int at) {
        return text.charAt(at) == '-' && at > 0 && at + 1 < text.length()
                && Character.isLetter(text.charAt(at - 1)) && Character.isLetter(text.charAt(at + 1));
    }

    private Piece.Word word(String text, boolean space, boolean breaks, boolean bold) {
        return new Piece.Word(text, bold, width(text, bold), space ? width(" ", bold) : 0, breaks);
    }

    private double width(String text, boolean bold) {
        return desk.fonts().of(bold).width(text) * style.em() / 1000;
    }

    private double width(Kind kind) {
        return SIGN_GAP + switch (kind) {
            case UP_TRIANGLE -> desk.gap(Signs.TRIANGLE);
            case TICK_BOX -> desk.gap(Signs.TICK_BOX);
            case LEFT_PILL, RIGHT_PILL -> Signs.pillWidth(style.line());
            case BOTH_PILL -> 2 * Signs.pillWidth(style.line());
        };
    }

    /** Breaks a group that no line can hold; full lines go to {@code lines}, the rest comes back. */
    private List<Piece> chopped(List<Piece> group, double measure, List<Line> lines) {
        var rest = new ArrayList<Piece>();
        double filled = 0;
        for (var piece : group) {
            for (var letter : piece.letters(this)) {
                if (!rest.isEmpty() && filled + letter.width() > measure) {
                    lines.add(joined(rest));
                    rest.clear();
                    filled = 0;
                }
                rest.add(letter);
                filled += letter.width() + letter.space();
            }
        }
        return rest;
    }

    private Line joined(List<Piece> pieces) {
        var runs = new ArrayList<Run>();
        double x = 0;
        double trailing = 0;
        for (int i = 0; i < pieces.size(); ) {
            switch (pieces.get(i)) {
                case Piece.Word first -> {
                    var text = new StringBuilder();
                    for (; i < pieces.size() && pieces.get(i) instanceof Piece.Word word
                            && word.bold() == first.bold(); i++) {
                        text.append(word.text()).append(word.space() > 0 ? " " : "");
                        trailing = word.space();
                    }
                    double width = width(text.toString(), first.bold());
                    if (!text.isEmpty()) {
                        runs.add(new Run.Words(x, width, text.toString(), first.bold()));
                    }
                    x += width;
                }
                case Piece.Drawn(Kind kind, double width) -> {
                    runs.add(new Run.Sign(x, width - SIGN_GAP, kind));
                    x += width;
                    trailing = SIGN_GAP;
                    i++;
                }
                case Piece.Page(String text, String part, double width) -> {
                    runs.add(new Run.Link(x, width, text, part));
                    x += width;
                    trailing = 0;
                    i++;
                }
            }
        }
        return new Line(runs, x - trailing);
    }

    /** What stands in a line without a place to break inside. */
    private sealed interface Piece {
        double width();

        default double space() {
            return 0;
        }

        default boolean breaks() {
            return false;
        }

        default List<Piece> letters(LineBreaker breaker) {
            return List.of(this);
        }

        record Word(String text, boolean bold, double width, double space, boolean breaks) implements Piece {
            @Override
            public List<Piece> letters(LineBreaker breaker) {
                var letters = new ArrayList<Piece>();
                int[] points = text.codePoints().toArray();
                for (int i = 0; i < points.length; i++) {
                    boolean last = i == points.length - 1;
                    letters.add(breaker.word(Character.toString(points[i]), last && space > 0, last && breaks, bold));
                }
                return letters;
            }
        }

        record Drawn(Kind kind, double width) implements Piece { }

        record Page(String text, String part, double width) implements Piece { }
    }
}
