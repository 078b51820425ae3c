package contrapposto.typeset;

import contrapposto.document.Badge;
import contrapposto.document.Block.Table.Align;
import contrapposto.document.Field;
import contrapposto.figure.Drawing;
import contrapposto.figure.Tone;
import java.util.List;

/** What a cell holds, measured for its column. Painted into the open TH or TD. */
sealed interface CellBox {
    /** Of text and drawings; 0 for what adapts to the row. */
    double height();

    /** @param row height of the row; {@code text} top of its text within, so that all first lines agree */
    void paint(Sheet sheet, double x, double y, double width, double row, double text);

    /** Whether it can head a row or column. */
    default boolean words() {
        return false;
    }

    /** Lines of one style, one under the other. */
    record Words(List<Line> lines, Style style, Align align) implements CellBox {
        @Override
        public double height() {
            return lines.size() * style.line();
        }

        @Override
        public boolean words() {
            return true;
        }

        @Override
        public void paint(Sheet sheet, double x, double y, double width, double row, double text) {
            for (int i = 0; i < lines.size(); i++) {
                sheet.decorate(lines.get(i), style, left(lines.get(i), x, width), y + text + i * style.line());
            }
            if (Sheet.links(lines)) {
                for (int i = 0; i < lines.size(); i++) {
                    var line = lines.get(i);
                    sheet.press().links().paint(sheet, line, style, left(line, x, width), y + text + i * style.line());
                }
            } else {
                sheet.tags().mark(() -> {
                    for (int i = 0; i < lines.size(); i++) {
                        var line = lines.get(i);
                        sheet.letters(line, style, left(line, x, width), y + text + i * style.line(), Tone.BLACK);
                    }
                });
            }
        }

        private double left(Line line, double x, double width) {
            return CellBox.left(align, line.width(), x, width);
        }
    }

    /** The side mark, centred on its row. */
    record Side(Badge badge, double pill) implements CellBox {
        @Override
        public double height() {
            return pill;
        }

        @Override
        public void paint(Sheet sheet, double x, double y, double width, double row, double text) {
            sheet.pill(badge, x + (width - Signs.width(badge, pill)) / 2, y + (row - pill) / 2, pill);
        }
    }

    /** Sets and repeats over kilograms; the triangle hangs left of the kilograms, out of the centring. */
    record Dose(Line upper, Line lower, List<Line> third, Style style, Style bold, boolean heavier)
            implements CellBox {
        private static final double HANG = 0.5;

        @Override
        public double height() {
            return style.line() + bold.line() + third.size() * style.line();
        }

        @Override
        public void paint(Sheet sheet, double x, double y, double width, double row, double text) {
            double top = y + text;
            double middle = x + width / 2;
            double second = top + style.line();
            var tags = sheet.tags();
            if (heavier) {
                double side = sheet.desk().gap(Signs.TRIANGLE);
                sheet.leaf("Span", upper, style, middle - upper.width() / 2, top);
                tags.sign(sheet.desk().wording().heavier() + " ", () -> Signs.triangle(sheet.pen(),
                        middle - lower.width() / 2 - side - HANG, second + bold.baseline(), side));
                sheet.leaf("Span", lower, bold, middle - lower.width() / 2, second);
                if (!third.isEmpty()) {
                    tags.leaf("Span", () -> third(sheet, middle, second + bold.line()));
                }
            } else {
                tags.mark(() -> {
                    sheet.letters(upper, style, middle - upper.width() / 2, top, Tone.BLACK);
                    sheet.letters(lower, bold, middle - lower.width() / 2, second, Tone.BLACK);
                    third(sheet, middle, second + bold.line());
                });
            }
        }

        private void third(Sheet sheet, double middle, double top) {
            for (int i = 0; i < third.size(); i++) {
                sheet.letters(third.get(i), style, middle - third.get(i).width() / 2, top + i * style.line(),
                        Tone.BLACK);
            }
        }
    }

    /** A box for the pen that is also a form field. */
    record Entry(Field field, double inset) implements CellBox {
        private static final double SHORTER = 1.6;

        @Override
        public double height() {
            return 0;
        }

        @Override
        public void paint(Sheet sheet, double x, double y, double width, double row, double text) {
            boolean check = field.kind() == Field.Kind.CHECK;
            double side = sheet.desk().gap(Signs.TICK_BOX);
            if (check) {
                sheet.field(field, x + (width - side) / 2, y + (row - side) / 2, side, side);
            } else {
                sheet.field(field, x + inset, y + SHORTER / 2, width - inset, row - SHORTER);
            }
        }
    }

    record Picture(Drawing drawing, String alt, double width, double drawn) implements CellBox {
        private static final double ABOVE = 1;

        @Override
        public double height() {
            return drawn + 2 * ABOVE;
        }

        @Override
        public void paint(Sheet sheet, double x, double y, double column, double row, double text) {
            sheet.figure(drawing, alt, x, y + ABOVE, width, drawn);
        }
    }

    /** Nothing is asked for: a dash on the row's middle, read as words. */
    record Dash(Line dash, Style style) implements CellBox {
        @Override
        public double height() {
            return style.line();
        }

        @Override
        public void paint(Sheet sheet, double x, double y, double width, double row, double text) {
            sheet.tags().sign(sheet.desk().wording().notAsked(), () -> sheet.letters(dash, style,
                    x + (width - dash.width()) / 2, y + (row - style.line()) / 2, Tone.BLACK));
        }
    }

    record Empty() implements CellBox {
        @Override
        public double height() {
            return 0;
        }

        @Override
        public void paint(Sheet sheet, double x, double y, double width, double row, double text) { }
    }

    static double left(Align align, double line, double x, double width) {
        return switch (align) {
            case LEFT -> x;
            case CENTRE -> x + (width - line) / 2;
            case RIGHT -> x + width - line;
        };
    }
}
