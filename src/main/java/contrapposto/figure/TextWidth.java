package contrapposto.figure;

import contrapposto.figure.Mark.Weight;

/**
 * How wide words are in the handout's own face, for placing labels: advance widths of Roboto 2.137 in thousandths of
 * the size, rounded; characters that are not in the table count as a wide digit.
 */
public final class TextWidth {
    private static final double MM_PER_PT = 25.4 / 72;
    private static final int OTHER = 600;
    private static final int[] REGULAR = {
        248, 257, 320, 616, 562, 732, 622, 174, 342, 348, 431, 567, 196, 276, 263, 412,
        562, 562, 562, 562, 562, 562, 562, 562, 562, 562, 242, 211, 508, 549, 522, 472,
        898, 652, 623, 651, 656, 568, 553, 681, 713, 272, 552, 627, 538, 873, 713, 688,
        631, 688, 616, 593, 597, 648, 636, 887, 627, 601, 599, 265, 410, 265, 418, 451,
        309, 544, 561, 523, 564, 530, 347, 561, 551, 243, 239, 507, 243, 876, 552, 570,
        561, 568, 338, 516, 327, 551, 484, 751, 496, 473, 496, 338, 244, 338, 680};
    private static final int[] BOLD = {
        249, 272, 321, 596, 574, 738, 656, 162, 351, 353, 453, 546, 244, 388, 291, 374,
        574, 574, 574, 574, 574, 574, 574, 574, 574, 574, 282, 262, 509, 572, 517, 498,
        895, 673, 638, 654, 650, 563, 548, 681, 707, 292, 559, 635, 542, 876, 706, 690,
        645, 690, 638, 615, 619, 658, 654, 875, 635, 618, 606, 278, 422, 278, 437, 446,
        331, 536, 563, 521, 563, 541, 358, 571, 560, 265, 260, 534, 265, 866, 560, 565,
        563, 565, 365, 514, 338, 560, 505, 735, 509, 502, 509, 330, 253, 330, 648};

    private TextWidth() { }

    /** In mm at {@code size} pt. */
    public static double of(String text, double size, Weight weight) {
        int[] table = weight == Weight.BOLD ? BOLD : REGULAR;
        int sum = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            sum += c >= ' ' && c < ' ' + table.length ? table[c - ' '] : c == '°' ? 380 : OTHER;
        }
        return sum / 1000.0 * size * MM_PER_PT;
    }

    /** From the baseline to the top of a capital or a digit, mm (1456/2048 of the size). */
    public static double capHeight(double size) {
        return .711 * size * MM_PER_PT;
    }

    /** The room a label takes: a little above the capitals, down to the descenders. */
    public static Bounds bounds(Mark.Label label) {
        double width = of(label.text(), label.size(), label.weight());
        double left = switch (label.anchor()) {
            case START -> label.at().x();
            case MIDDLE -> label.at().x() - width / 2;
            case END -> label.at().x() - width;
        };
        return new Bounds(left, label.at().y() - capHeight(label.size()), left + width,
                label.at().y() + (hasDescender(label.text()) ? .21 * label.size() * MM_PER_PT : 0));
    }

    private static boolean hasDescender(String text) {
        return text.chars().anyMatch(c -> "gjpqy,;()Q".indexOf(c) >= 0);
    }
}
