package contrapposto.typeset;

import contrapposto.figure.Tone;
import java.util.List;
import java.util.Optional;

/**
 * A framed box with a black header; groups with a rule between, pushed apart by what height is to spare.
 *
 * @param fixed height when a neighbour decides it; 0 for as high as needed
 */
record PanelSlab(Line heading, Style style, List<Stack> groups, double width, double fixed, double inset)
        implements Slab {
    private static final double AIR = 2;
    private static final double BETWEEN = 4;

    PanelSlab asHighAs(double height) {
        return new PanelSlab(heading, style, groups, width, Math.max(height, natural()), inset);
    }

    private double natural() {
        return style.line() + 2 * AIR + groups.stream().mapToDouble(g -> g.height(0)).sum()
                + BETWEEN * Math.max(0, groups.size() - 1);
    }

    @Override
    public double height(double stretch) {
        return Math.max(fixed, natural());
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        sheet.tags().begin("Sect");
        sheet.fill(x, y, width, style.line(), Tone.BLACK);
        sheet.box(x, y, width, height(stretch), Sheet.HEAVY);
        sheet.leaf(sheet.tags().heading(2), heading, style, x + inset, y, Tone.WHITE);
        double spare = (height(stretch) - natural()) / Math.max(1, groups.size());
        double top = y + style.line() + AIR;
        for (int i = 0; i < groups.size(); i++) {
            if (i > 0) {
                double between = BETWEEN + spare;
                sheet.across(x + inset, top + between / 2, width - inset - 2, Sheet.HAIR);
                top += between;
            }
            groups.get(i).paint(sheet, x + inset, top, 0);
            top += groups.get(i).height(0);
        }
        sheet.tags().end();
    }

    /** Between groups, where no page is high enough; the header is repeated. */
    @Override
    public Optional<Cut> cut(double room, double page) {
        int fits = groups.size() - 1;
        while (fits > 0 && part(groups.subList(0, fits)).natural() > room) {
            fits--;
        }
        return fits == 0 ? Optional.empty()
                : Optional.of(new Cut(part(groups.subList(0, fits)), part(groups.subList(fits, groups.size()))));
    }

    private PanelSlab part(List<Stack> some) {
        return new PanelSlab(heading, style, some, width, 0, inset);
    }
}
