package contrapposto.typeset;

import contrapposto.document.Block;
import contrapposto.document.Block.Columns.Split;
import contrapposto.document.Block.Panel;
import contrapposto.document.Block.Paragraph;
import contrapposto.document.Inline;
import contrapposto.typeset.Stack.Item;
import contrapposto.typeset.Stack.Start;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Turns blocks into slabs of a given measure, and says how far apart they stand. */
final class BlockSetter {
    private static final double SECOND_EVEN = 93;
    private static final double EVEN = 85;
    private static final double SECOND_WIDE = 118;
    private static final double WIDE = 112;
    private static final double NARROW = 60;
    private static final double TIGHTEST_ROW = 31;
    private static final double WIDEST_ROW = 48;
    private static final double LARGE_TIGHTEST_ROW = 44;
    private static final double LARGE_ROW = 88;
    private static final double PANEL_INSET = 3.5;
    /** From the plain print's type to the large one's: charts keep their proportions to their words. */
    private static final double LARGER = 18.0 / 11;

    private final Desk desk;
    private final TextSetter text;
    private final FieldSetter fields;

    BlockSetter(Desk desk) {
        this.desk = desk;
        text = new TextSetter(desk);
        fields = new FieldSetter(desk);
    }

    Stack stack(List<Block> blocks, double measure) {
        return new Stack(items(blocks, measure));
    }

    /** Slabs with the gaps between them. */
    List<Item> items(List<Block> blocks, double measure) {
        var items = new ArrayList<Item>();
        boolean broken = false;
        for (int i = 0; i < blocks.size(); i++) {
            double before = i == 0 ? 0 : desk.gap(Gaps.between(blocks.get(i - 1), blocks.get(i)));
            var set = set(blocks.get(i), measure);
            for (int k = 0; k < set.size(); k++) {
                var item = set.get(k);
                var start = k == 0 && broken && item.start() == Start.FLOW ? Start.PAGE : item.start();
                items.add(new Item(item.slab(), k == 0 ? before : item.before(),
                        item.keep() || k == set.size() - 1 && staysWithNext(blocks, i), start,
                        k == 0 && i > 0 && Gaps.clings(blocks.get(i - 1), blocks.get(i))));
            }
            broken = blocks.get(i) instanceof Block.PageBreak;
        }
        return items;
    }

    private static boolean staysWithNext(List<Block> blocks, int i) {
        return Gaps.staysWithNext(blocks.get(i))
                || i + 1 < blocks.size() && Gaps.leadsInto(blocks.get(i), blocks.get(i + 1))
                && (i == 0 || Gaps.staysWithNext(blocks.get(i - 1)) || !(blocks.get(i + 1) instanceof Block.Table));
    }

    private List<Item> set(Block block, double measure) {
        return switch (block) {
            case Block.Opening opening -> new OpeningSetter(desk, this).set(opening);
            case Block.Card card -> new CardSetter(desk, this).set(card);
            case Block.Masthead masthead -> text.masthead(masthead, measure);
            case Block.PageBreak pageBreak -> List.of();
            case Block.Title title -> one(text.title(title, measure));
            case Block.Heading(int level, String words) -> one(text.heading(words, level, measure));
            case Paragraph(var role, List<Inline> runs) -> one(text.paragraph(role, runs, measure));
            case Block.Bullets(var points) -> one(text.bullets(points, desk.type().body(), measure));
            case Block.Steps(var steps) -> one(text.steps(steps, measure));
            case Block.Measures(var measures) -> one(text.measures(measures, measure));
            case Block.Reasons(var statements) -> one(text.reasons(statements, measure));
            case Block.Plate plate -> one(plate(plate,
                    desk.large() ? Math.min(measure, LARGER * plate.width()) : plate.width()));
            case Block.FigureRow(var parts) -> one(desk.large()
                    ? new FigureRowSlab(parts, measure, LARGE_TIGHTEST_ROW, LARGE_ROW)
                    : new FigureRowSlab(parts, measure, TIGHTEST_ROW, WIDEST_ROW));
            case Panel panel -> one(panel(panel, measure, false));
            case Block.Table table -> desk.large()
                    ? LargeTables.of(table, desk.divisions()).stream().map(t -> new Item(new TableSetter(desk).set(t, measure),
                            desk.gap(Gaps.CARD), false)).toList()
                    : one(new TableSetter(desk).set(table, measure));
            case Block.FieldLine line -> one(fields.line(line, measure));
            case Block.FieldRow row -> one(fields.row(row, measure));
            case Block.Choice choice -> one(fields.choice(choice, measure));
            case Block.Columns(Split split, List<Block> left, List<Block> right) -> desk.large() || measure < Stock.MEASURE
                    ? items(Stream.concat(left.stream(), right.stream()).toList(), measure) : one(columns(split, left, right));
            case Block.Rule(var weight, String words) -> one(new RuleSlab(weight,
                    desk.lines(desk.type().body()).single(words, false), desk.type().body(), measure));
            case Block.Together(List<Block> blocks) -> one(new Kept(stack(blocks, measure)));
        };
    }

    private static List<Item> one(Slab slab) {
        return List.of(new Item(slab, 0, false));
    }

    private Slab columns(Split split, List<Block> left, List<Block> right) {
        return switch (split) {
            case EVEN -> new TwoColumns(stack(left, EVEN), stack(right, EVEN), SECOND_EVEN, false);
            case WIDE_LEFT -> new TwoColumns(stack(left, WIDE), stack(right, NARROW), SECOND_WIDE, false);
        };
    }

    HeadingSlab heading(String words, int level) {
        return text.heading(words, level, Stock.MEASURE);
    }

    PlateSlab plate(Block.Plate plate, double width) {
        var style = desk.type().body();
        var caption = plate.caption().isEmpty() ? List.<Line>of()
                : desk.lines(style).broken(plate.caption(), width);
        double height = plate.height() * (desk.large() ? LARGER : width / plate.width());
        return new PlateSlab(plate.drawing(), plate.alt(), width, height, caption, style);
    }

    /** @param main whether it is the safety box of page 1, with the larger header and text */
    PanelSlab panel(Panel panel, double width, boolean main) {
        var type = desk.type();
        double inset = desk.gap(PANEL_INSET);
        var body = main ? type.safety() : type.body();
        var groups = panel.groups().stream().map(g -> group(g, body, width - 2 * inset)).toList();
        var style = main ? type.panel() : type.notice();
        return new PanelSlab(desk.lines(style).single(panel.heading(), true), style, groups, width, 0, inset);
    }

    private Stack group(Panel.Group group, Style body, double measure) {
        var items = new ArrayList<Item>();
        if (!group.heading().isEmpty()) {
            var style = desk.type().alarm();
            items.add(new Item(new HeadingSlab(desk.lines(style).broken(group.heading(), true, measure), style, 3,
                    List.of(), body, measure, false), 0, true));
        }
        if (!group.points().isEmpty()) {
            items.add(new Item(text.bullets(group.points(), body, measure), 0, false));
        }
        if (!group.after().isEmpty()) {
            items.add(new Item(TextSlab.left(desk.lines(body).broken(group.after(), measure), body, "P"), 0.5, false));
        }
        return new Stack(items);
    }

    /** A stack that is divided only where no page holds it. */
    private record Kept(Stack stack) implements Slab {
        @Override
        public double height(double stretch) {
            return stack.height(stretch);
        }

        @Override
        public void paint(Sheet sheet, double x, double y, double stretch) {
            stack.paint(sheet, x, y, stretch);
        }

        @Override
        public Optional<Cut> cut(double room, double page) {
            return stack.cut(room, page).map(cut -> new Cut(new Kept((Stack) cut.head()), new Kept((Stack) cut.tail())));
        }

        @Override
        public Optional<HeadingSlab> pageTitle() {
            return stack.pageTitle();
        }
    }
}
