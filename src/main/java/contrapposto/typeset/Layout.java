package contrapposto.typeset;

import contrapposto.document.Document;
import contrapposto.document.Document.Format;
import contrapposto.document.Document.Part;
import contrapposto.typeset.Paginator.Leaf;
import contrapposto.typeset.Paginator.Plan;
import contrapposto.typeset.Paginator.Plan.Bounds;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A whole document on its pages, not yet painted. */
record Layout(Desk desk, Footer footer, List<Sheaf> sheaves) {
    private static final double LEGEND_GAP = 2;
    private static final double FOLDED_LEFT = 8;
    private static final double FOLDED_TOP = 8;
    private static final double FOLDED_BOTTOM = 6;
    private static final double FOLDED_MEASURE = 90;

    /** The pages of one part; {@code blanks} before its first. */
    record Sheaf(Part part, List<Leaf> leaves, Optional<LegendSlab> legend, int blanks) {
        /** The first leaf that is not left blank so that the next lies on the right side: there the legend is read. */
        int firstFilled() {
            int leaf = 0;
            while (leaf < leaves.size() && leaves.get(leaf).frames().isEmpty()) {
                leaf++;
            }
            return leaf;
        }
    }

    static Layout of(Document document, Desk desk) {
        var footer = new Footer(desk, document.footer());
        var sheaves = new ArrayList<Sheaf>();
        int pages = 0;
        for (var part : document.parts()) {
            int blanks = part.freshSheet() && pages % 2 == 1 ? 1 : 0;
            var legend = part.legend().map(l -> LegendSlab.of(l, desk));
            double foot = footer.extra() + legend.map(l -> l.height(0) + LEGEND_GAP).orElse(0.0);
            boolean whole = part.format() == Format.WHOLE;
            var plan = whole ? page(desk.stock(), foot) : halves(desk.stock());
            var items = whole ? new BlockSetter(desk).items(part.blocks(), Stock.MEASURE)
                    : new BlockSetter(desk.folded()).items(part.blocks(), FOLDED_MEASURE);
            var leaves = new ArrayList<>(new Paginator(desk, plan, pages + blanks).filled(items));
            if (blanks > 0) {
                leaves.add(0, new Leaf(List.of()));
            }
            sheaves.add(new Sheaf(part, leaves, legend, blanks));
            pages += leaves.size();
        }
        return new Layout(desk, footer, sheaves);
    }

    private static Plan page(Stock stock, double foot) {
        return new Plan(List.of(new Bounds(stock.margin(), stock.top(), stock.live() - foot)), true, false);
    }

    private static Plan halves(Stock stock) {
        double width = stock.width() / 2;
        double height = stock.height() - FOLDED_TOP - FOLDED_BOTTOM;
        return new Plan(List.of(new Bounds(FOLDED_LEFT, FOLDED_TOP, height), new Bounds(width + FOLDED_LEFT, FOLDED_TOP, height)), false, true);
    }

    /** Printed page numbers of all pages: counted for each prefix by itself. */
    List<String> numbers() {
        var counts = new LinkedHashMap<String, Integer>();
        var numbers = new ArrayList<String>();
        for (var sheaf : sheaves) {
            for (int i = 0; i < sheaf.leaves().size(); i++) {
                String prefix = sheaf.part().folio();
                numbers.add(prefix + counts.merge(prefix, 1, Integer::sum));
            }
        }
        return numbers;
    }

    /** How many pages have this prefix. */
    int total(String prefix) {
        return sheaves.stream().filter(s -> s.part().folio().equals(prefix)).mapToInt(s -> s.leaves().size()).sum();
    }

    /** First page of each part, from 1. */
    Map<String, Integer> firstPages() {
        var first = new LinkedHashMap<String, Integer>();
        int pages = 0;
        for (var sheaf : sheaves) {
            first.putIfAbsent(sheaf.part().name(), pages + sheaf.blanks() + 1);
            pages += sheaf.leaves().size();
        }
        return first;
    }

    Folios folios() {
        var numbers = numbers();
        var folios = new LinkedHashMap<String, String>();
        firstPages().forEach((part, page) -> folios.put(part, numbers.get(page - 1)));
        return new Folios(folios);
    }

    /** Whether every frame holds what was put into it. */
    List<String> overfull() {
        return sheaves.stream().filter(s -> s.leaves().stream().flatMap(l -> l.frames().stream())
                .anyMatch(Frame::isOverfull)).map(s -> s.part().name()).toList();
    }
}
