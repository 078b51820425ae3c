package contrapposto.typeset;

import contrapposto.document.Badge;
import contrapposto.document.Document.Wording;
import contrapposto.figure.Tone;

/**
 * The drawn signs: half pills, triangle, tick box, square bullet.
 *
 * @param bold  for the letters of pills
 * @param floor smallest size of those letters, pt
 * @param wording which letters they are
 */
record Signs(Face bold, double floor, Wording wording) {
    static final double TRIANGLE = 2;
    static final double TICK_BOX = 4.4;
    static final double BULLET = 1.6;
    private static final double PILL_WIDTH = 1.02;
    private static final double LETTER_SHARE = 0.74;
    private static final double LEFT_CENTRE = 0.54;
    private static final double RIGHT_CENTRE = 0.46;
    private static final double CAP_HEIGHT = 0.711;

    /** Width of a half pill of that height. */
    static double pillWidth(double height) {
        return PILL_WIDTH * height;
    }

    static double width(Badge badge, double height) {
        return switch (badge) {
            case LEFT, RIGHT -> pillWidth(height);
            case BOTH -> 2 * pillWidth(height);
        };
    }

    /** The shape without its letter: an artifact. */
    static void shape(Pen pen, Badge badge, double x, double y, double height) {
        double width = pillWidth(height);
        double line = Math.max(0.3, 0.055 * height);
        switch (badge) {
            case LEFT -> open(pen, x, y, width, height, line);
            case RIGHT -> solid(pen, x, y, width, height);
            case BOTH -> {
                open(pen, x, y, width, height, line);
                solid(pen, x + width, y, width, height);
            }
        }
    }

    private static void open(Pen pen, double x, double y, double width, double height, double line) {
        pen.halfPill(x + line / 2, y + line / 2, width - line, height - line, true);
        pen.stroke(Tone.BLACK, line);
    }

    private static void solid(Pen pen, double x, double y, double width, double height) {
        pen.halfPill(x, y, width, height, false);
        pen.fill(Tone.BLACK);
    }

    /** The letters of the pill, as text; each with a space, so that it is not read together with what follows. */
    void letters(Pen pen, Badge badge, double x, double y, double height) {
        double width = pillWidth(height);
        switch (badge) {
            case LEFT -> letter(pen, wording.leftLetter(), x + LEFT_CENTRE * width, y, height, Tone.BLACK);
            case RIGHT -> letter(pen, wording.rightLetter(), x + RIGHT_CENTRE * width, y, height, Tone.WHITE);
            case BOTH -> {
                letter(pen, wording.leftLetter(), x + LEFT_CENTRE * width, y, height, Tone.BLACK);
                letter(pen, wording.rightLetter(), x + (1 + RIGHT_CENTRE) * width, y, height, Tone.WHITE);
            }
        }
    }

    private void letter(Pen pen, String letter, double centre, double y, double height, Tone tone) {
        double size = Math.max(floor, LETTER_SHARE * height / Style.MM_PER_PT);
        double em = size * Style.MM_PER_PT;
        pen.beginText(tone);
        pen.words(bold, size, centre - bold.width(letter) * em / 2000, y + (height + CAP_HEIGHT * em) / 2, letter + " ");
        pen.endText();
    }

    /** An upright triangle standing on {@code baseline}. */
    static void triangle(Pen pen, double x, double baseline, double side) {
        pen.moveTo(x, baseline);
        pen.lineTo(x + side, baseline);
        pen.lineTo(x + side / 2, baseline - side);
        pen.close();
        pen.fill(Tone.BLACK);
    }

    static void bullet(Pen pen, double x, double baseline, double side) {
        pen.rectangle(x, baseline - side - 0.3, side, side);
        pen.fill(Tone.BLACK);
    }

    static void box(Pen pen, double x, double y, double width, double height, double line) {
        pen.rectangle(x + line / 2, y + line / 2, width - line, height - line);
        pen.stroke(Tone.BLACK, line);
    }
}
