package contrapposto.typeset;

import contrapposto.document.Badge;
import contrapposto.document.Block;
import contrapposto.document.Block.Card;
import contrapposto.document.Block.Half;
import contrapposto.document.Block.Halves;
import contrapposto.typeset.Line.Run;
import contrapposto.typeset.Stack.Item;
import contrapposto.typeset.Stack.Start;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sets exercise cards: both sides next to each other, or in the large print each side over the full measure. */
final class CardSetter {
    private static final double COLUMN = 85;
    static final double SECOND = 93;
    private static final double PILL = 5;
    private static final double NUMBER = 9;
    private static final double BAR_LEADING = 5;
    private static final double HEADING_ROOM = 12;

    private final Desk desk;
    private final BlockSetter blocks;

    CardSetter(Desk desk, BlockSetter blocks) {
        this.desk = desk;
        this.blocks = blocks;
    }

    /**
     * One slab, or in the large print one for each side; those with drawings have a page of their own, and left lies
     * left.
     */
    List<Item> set(Card card) {
        return switch (card.halves()) {
            case Halves.Pair(Half left, Half right) -> desk.large()
                    ? List.of(item(alone(card, Badge.LEFT, left, List.of()), start(left, Start.LEFT_PAGE)),
                            item(alone(card, Badge.RIGHT, right, List.of()), start(right, Start.PAGE)))
                    : List.of(item(pair(card, left, right), Start.FLOW));
            case Halves.Single(Badge side, Half half, String empty, List<Block> why) -> desk.large()
                    ? List.of(item(alone(card, side, half, why), start(half, Start.PAGE)))
                    : List.of(item(single(card, side, half, empty, why), Start.FLOW));
            case Halves.Together(Half half) -> desk.large()
                    ? List.of(item(alone(card, Badge.BOTH, half, List.of()), start(half, Start.PAGE)))
                    : List.of(item(together(card, half), Start.FLOW));
        };
    }

    private static Start start(Half half, Start drawn) {
        return isDrawn(half) ? drawn : Start.FLOW;
    }

    private static Item item(CardSlab card, Start start) {
        return new Item(card, start == Start.FLOW ? Gaps.CARD : 0, false, start);
    }

    private CardSlab pair(Card card, Half left, Half right) {
        var columns = new TwoColumns(blocks.stack(left.blocks(), COLUMN), blocks.stack(right.blocks(), COLUMN),
                SECOND, true);
        return card(card, bar(Optional.of(end(left, true, narrow(left))), Optional.of(end(right, true, narrow(right))),
                Optional.empty()), columns, band(card), gap(left));
    }

    private CardSlab single(Card card, Badge side, Half half, String empty, List<Block> why) {
        var used = Optional.of(end(half, true, narrow(half)));
        var none = new Half(empty, "", List.of());
        var dashed = Optional.of(end(none, false, narrow(none)));
        var words = blocks.stack(why, COLUMN);
        var drawn = blocks.stack(half.blocks(), COLUMN);
        boolean left = side == Badge.LEFT;
        return card(card, left ? bar(used, dashed, Optional.empty()) : bar(dashed, used, Optional.empty()),
                left ? new TwoColumns(drawn, words, SECOND, true) : new TwoColumns(words, drawn, SECOND, true),
                band(card), 2);
    }

    private CardSlab together(Card card, Half half) {
        var drawn = new ArrayList<Block>();
        var words = new ArrayList<Block>();
        half.blocks().forEach(b -> (isDrawn(b) ? drawn : words).add(b));
        if (drawn.isEmpty() && !words.isEmpty()) {
            drawn.add(words.removeFirst());
        }
        var columns = new TwoColumns(blocks.stack(drawn, COLUMN), blocks.stack(words, COLUMN), SECOND, false);
        return card(card, bar(Optional.empty(), Optional.empty(), Optional.of(end(half, true, Stock.MEASURE - 60))),
                columns, band(card), 2);
    }

    private CardSlab alone(Card card, Badge side, Half half, List<Block> why) {
        var end = Optional.of(end(half, true, 110));
        var below = new ArrayList<>(why);
        below.addAll(card.bandLeft());
        below.addAll(card.bandRight());
        Optional<Slab> band = below.isEmpty() ? Optional.empty() : Optional.of(blocks.stack(below.stream().map(CardSetter::whole).toList(), Stock.MEASURE));
        return card(card, switch (side) {
            case LEFT -> bar(end, Optional.empty(), Optional.empty());
            case RIGHT -> bar(Optional.empty(), end, Optional.empty());
            case BOTH -> bar(Optional.empty(), Optional.empty(), end);
        }, blocks.stack(half.blocks(), Stock.MEASURE), band, 2);
    }

    /** Where a card must go on on another page, it does so between paragraphs. */
    private static Block whole(Block block) {
        return block instanceof Block.Paragraph ? new Block.Together(List.of(block)) : block;
    }

    private static boolean isDrawn(Block block) {
        return block instanceof Block.FigureRow || block instanceof Block.Plate;
    }

    /** A figure row stands close under the bar, words do not. */
    private static double gap(Half half) {
        return !half.blocks().isEmpty() && isDrawn(half.blocks().getFirst()) ? 0.5 : 2;
    }

    private CardSlab card(Card card, BarSlab bar, Slab columns, Optional<Slab> band, double gap) {
        var style = desk.type().heading();
        var again = desk.lines(style).broken(card.number() + " " + card.name() + ", " + desk.wording().continued(), true,
                Stock.MEASURE);
        var body = new CardBody(Optional.of(columns), band);
        return new CardSlab(card.key(), name(card), bar, body, new CardRestSlab(again, style, bar, body, desk.gap(PILL)),
                gap, isDrawn(card));
    }

    private static boolean isDrawn(Card card) {
        return switch (card.halves()) {
            case Halves.Pair(Half left, Half right) -> isDrawn(left) || isDrawn(right);
            case Halves.Single single -> isDrawn(single.half());
            case Halves.Together(Half half) -> isDrawn(half);
        };
    }

    private static boolean isDrawn(Half half) {
        return half.blocks().stream().anyMatch(CardSetter::isDrawn);
    }

    private HeadingSlab name(Card card) {
        var style = desk.type().title();
        var aside = desk.lines(desk.type().body()).broken(card.aside(),
                desk.large() ? Stock.MEASURE : Stock.MEASURE / 2);
        var asides = card.aside().isEmpty() ? List.<Line>of() : aside;
        double indent = card.number().isEmpty() ? 0 : desk.gap(NUMBER);
        double used = asides.isEmpty() || desk.large() ? 0 : asides.getFirst().width() + 4;
        var lines = new ArrayList<Line>();
        for (var line : desk.lines(style).broken(card.name(), true, Stock.MEASURE - indent - used)) {
            lines.add(shifted(line, indent));
        }
        if (!card.number().isEmpty()) {
            var number = desk.lines(style).single(card.number() + " ", true);
            var runs = new ArrayList<>(number.runs());
            runs.addAll(lines.getFirst().runs());
            lines.set(0, new Line(runs, lines.getFirst().width()));
        }
        return new HeadingSlab(lines, style, 2, asides, desk.type().body(), Stock.MEASURE, true);
    }

    private static Line shifted(Line line, double by) {
        var runs = new ArrayList<Run>();
        for (var run : line.runs()) {
            runs.add(switch (run) {
                case Run.Words(double x, double width, String text, boolean bold) ->
                        new Run.Words(x + by, width, text, bold);
                case Run.Sign(double x, double width, var kind) -> new Run.Sign(x + by, width, kind);
                case Run.Link(double x, double width, String text, String part) ->
                        new Run.Link(x + by, width, text, part);
            });
        }
        return new Line(runs, line.width() + by);
    }

    /** Room for the heading in a half bar beside its order word. */
    private double narrow(Half half) {
        double order = desk.lines(desk.type().order()).single(half.order(), false).width();
        return Stock.MEASURE / 2 - HEADING_ROOM - 4.5 - order - (order > 0 ? 3 : 0);
    }

    private BarSlab.End end(Half half, boolean present, double room) {
        var type = desk.type();
        var heading = desk.lines(type.bar()).broken(half.heading(), present, room);
        var style = heading.size() == 1 ? type.bar() : type.bar().in(desk.gap(BAR_LEADING));
        return new BarSlab.End(heading, desk.lines(type.order()).single(half.order(), false), style, type.order(),
                present);
    }

    private BarSlab bar(Optional<BarSlab.End> left, Optional<BarSlab.End> right, Optional<BarSlab.End> both) {
        double height = desk.type().bar().line();
        for (var end : List.of(left, right, both)) {
            int lines = end.map(e -> e.heading().size()).orElse(1);
            height = lines > 1 ? Math.max(height, desk.gap(lines * BAR_LEADING + 3)) : height;
        }
        return new BarSlab(left, right, both, desk.type().letter(), height);
    }

    private Optional<Slab> band(Card card) {
        if (card.bandRight().isEmpty()) {
            return card.bandLeft().isEmpty() ? Optional.empty()
                    : Optional.of(blocks.stack(card.bandLeft(), Stock.MEASURE));
        }
        return Optional.of(new TwoColumns(blocks.stack(card.bandLeft(), COLUMN),
                        blocks.stack(card.bandRight(), COLUMN), SECOND, false));
    }
}
