package contrapposto.typeset;

import java.util.List;
import java.util.Optional;

/**
 * A heading, with words at its right where there is room on the last line.
 *
 * @param level    wished; levels are never skipped
 * @param bookmark whether it is listed for navigation
 */
record HeadingSlab(List<Line> lines, Style style, int level, List<Line> aside, Style asideStyle, double measure,
                   boolean bookmark) implements Slab {
    private static final double GAP = 4;

    /** The same, not listed a second time. */
    HeadingSlab quiet() {
        return new HeadingSlab(lines, style, level, List.of(), asideStyle, measure, false);
    }

    /** The heading of a page that goes on. */
    HeadingSlab continued(Desk desk) {
        var smaller = style.size() > desk.type().title().size() ? desk.type().title() : style;
        String words = text() + ", " + desk.wording().continued();
        return new HeadingSlab(desk.lines(smaller).broken(words, true, measure), smaller, level, List.of(), asideStyle,
                measure, false);
    }

    @Override
    public Optional<HeadingSlab> pageTitle() {
        return level == 1 ? Optional.of(this) : Optional.empty();
    }

    @Override
    public double height(double stretch) {
        return lines.size() * style.line() + (beside() ? 0 : aside.size() * asideStyle.line());
    }

    private boolean beside() {
        return aside.isEmpty()
                || aside.size() == 1 && lines.getLast().width() + GAP + aside.getFirst().width() <= measure;
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        if (bookmark) {
            sheet.press().bookmarks().section(text(), y);
        }
        sheet.tags().leaf(sheet.tags().heading(level), () -> {
            for (int i = 0; i < lines.size(); i++) {
                sheet.letters(lines.get(i), style, x, y + i * style.line(), sheet.desk().heads());
            }
        });
        double last = y + (lines.size() - 1) * style.line();
        double baseline = last + style.baseline();
        for (int i = 0; i < aside.size(); i++) {
            var line = aside.get(i);
            double top = beside() ? baseline - asideStyle.baseline() : last + style.line() + i * asideStyle.line();
            sheet.leaf("P", line, asideStyle, beside() ? x + measure - line.width() : x, top);
        }
    }

    private String text() {
        return Text.of(lines);
    }
}
