package contrapposto.typeset;

import java.util.List;

/** The week strip: a frame a day, heavy for training days. */
record WeekSlab(List<Day> days, Style style, double least) implements Slab {
    /** @param width of the frame, mm */
    record Day(List<Line> lines, double width, boolean training) { }

    static final double GAP = 2.1;
    static final double INSET = 2;
    private static final double ABOVE = 0.8;

    @Override
    public double height(double stretch) {
        int most = days.stream().mapToInt(d -> d.lines().size()).max().orElse(0);
        return Math.max(least, most * style.line() + 2 * ABOVE);
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        sheet.tags().begin("L");
        sheet.tags().listing("None");
        double left = x;
        for (var day : days) {
            sheet.box(left, y, day.width(), height(stretch), day.training() ? Sheet.HEAVY : Sheet.HAIR);
            sheet.tags().begin("LI");
            TextSlab.left(day.lines(), style, "LBody").paint(sheet, left + INSET, y + ABOVE, stretch);
            sheet.tags().end();
            left += day.width() + GAP;
        }
        sheet.tags().end();
    }
}
