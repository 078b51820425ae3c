package contrapposto.typeset;

import contrapposto.document.Badge;
import contrapposto.document.Block;
import contrapposto.document.Block.Card;
import contrapposto.document.Block.Half;
import contrapposto.document.Block.Halves;
import contrapposto.document.Block.Panel;
import contrapposto.document.Block.Plate;
import contrapposto.document.Block.Table;
import contrapposto.document.Cell;
import contrapposto.document.Document;
import contrapposto.document.Document.Print;
import contrapposto.document.Field;
import contrapposto.document.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * In which order a handout is to be read, told from its blocks alone: words, with signs for what they stand in. A column
 * of the left side comes before one of the right, drawings before the words about them, rows from the left.
 */
final class IntendedOrder {
    static final String HEAD = "<H>";
    static final String ITEM = "<LI>";
    static final String ROW = "<TR>";
    static final String CELL = "|";
    static final String FIGURE = "<Figure>";
    static final String FIELD = "<Form>";
    static final String END = "</>";
    static final String PAGE = "§";
    /** Between words of which any will do. */
    static final String OR = "\u0001";

    /** What is read one after the other, or two columns that may go on together on another page. */
    sealed interface Passage {
        record Words(List<String> words) implements Passage { }

        record Columns(List<String> left, List<String> between, List<String> right) implements Passage { }
    }

    private final Document document;
    private final boolean large;
    private final Predicate<String> printed;
    private final List<Passage> passages = new ArrayList<>();
    private List<String> words = new ArrayList<>();

    /** @param printed whether those words stand in the file: notes that may go are left out where they do not */
    private IntendedOrder(Document document, Predicate<String> printed) {
        this.document = document;
        large = document.print() == Print.LARGE;
        this.printed = printed;
    }

    static List<Passage> of(Document document, Document.Part part, Predicate<String> printed) {
        var order = new IntendedOrder(document, printed);
        part.blocks().forEach(order::block);
        order.close();
        return order.passages;
    }

    /** Headings and rows as one piece each: they are not divided, and are said once more as a whole. */
    static List<String> pieces(List<String> words) {
        var pieces = new ArrayList<String>();
        boolean open = false;
        for (String word : words) {
            if (open) {
                pieces.set(pieces.size() - 1, pieces.getLast() + (word.equals(END) ? "" : " " + word));
            } else {
                pieces.add(word);
            }
            open = word.equals(HEAD) || word.equals(ROW) || open && !word.equals(END);
        }
        return pieces;
    }

    private void close() {
        if (!words.isEmpty()) {
            passages.add(new Passage.Words(pieces(words)));
            words = new ArrayList<>();
        }
    }

    private List<String> apart(Runnable content) {
        var kept = words;
        words = new ArrayList<>();
        content.run();
        var made = words;
        words = kept;
        return made;
    }

    private void columns(Runnable left, Runnable between, Runnable right) {
        close();
        passages.add(new Passage.Columns(pieces(apart(left)), pieces(apart(between)), pieces(apart(right))));
    }

    static List<String> split(String text) {
        return text.isBlank() ? List.of() : List.of(text.replace('\u00a0', ' ').strip().split("\\s+"));
    }

    private void say(String text) {
        words.addAll(split(Letters.clean(text)));
    }

    private void say(List<Inline> runs) {
        say(text(runs));
    }

    private String text(List<Inline> runs) {
        var text = new StringBuilder();
        for (var run : runs) {
            text.append(switch (run) {
                case Inline.Text(String plain, boolean bold) -> plain;
                case Inline.PageOf page -> " " + PAGE + " ";
                case Inline.Sign(var kind) -> switch (kind) {
                    case LEFT_PILL -> " " + document.wording().leftLetter() + " ";
                    case RIGHT_PILL -> " " + document.wording().rightLetter() + " ";
                    case BOTH_PILL -> " " + document.wording().leftLetter() + " " + document.wording().rightLetter() + " ";
                    case UP_TRIANGLE, TICK_BOX -> " ";
                };
            });
        }
        return text.toString();
    }

    private void head(String text) {
        words.add(HEAD);
        say(text);
        words.add(END);
    }

    private void block(Block block) {
        switch (block) {
            case Block.Title(String text, List<Inline> aside) -> {
                head(text);
                say(aside);
            }
            case Block.Masthead(String lead, String title, List<Inline> imprint, var logo) -> {
                logo.ifPresent(signed -> figure(signed.alt()));
                say(lead);
                head(title);
                say(imprint);
            }
            case Block.Heading(int level, String text) -> head(text);
            case Block.Paragraph(var role, List<Inline> runs) -> say(runs);
            case Block.Bullets(var items) -> items.forEach(this::item);
            case Block.Steps(var items) -> {
                for (int i = 0; i < items.size(); i++) {
                    words.add(ITEM);
                    say(Integer.toString(i + 1));
                    say(items.get(i));
                }
            }
            case Block.Measures(var measures) -> measures.forEach(m -> {
                words.add(ITEM);
                say(m.value());
                say(m.words());
            });
            case Block.Reasons(var statements) -> statements.forEach(s -> {
                item(s.runs());
                say(s.source());
            });
            case Plate plate -> plate(plate);
            case Block.FigureRow(var parts) -> parts.forEach(p -> figure(p.alt()));
            case Block.Opening opening -> opening(opening);
            case Panel panel -> panel(panel);
            case Card card -> card(card);
            case Table table -> (large ? LargeTables.of(table, Divisions.of(document.language())) : List.of(table)).forEach(this::table);
            case Block.FieldLine(String heading, var fields) -> {
                head(heading);
                fields.forEach(f -> {
                    say(f.label());
                    field(f.field());
                    say(f.after());
                });
            }
            case Block.FieldRow(var boxes, double height) -> boxes.forEach(b -> {
                say(b.label());
                field(b.field());
            });
            case Block.Choice(Field field, List<Inline> runs, Optional<Field> detail) -> {
                field(field);
                say(runs);
                detail.ifPresent(this::field);
            }
            case Block.Columns(var split, List<Block> left, List<Block> right) ->
                    columns(() -> left.forEach(this::block), () -> { }, () -> right.forEach(this::block));
            case Block.Rule(var weight, String text) -> say(text);
            case Block.Together(List<Block> blocks) -> blocks.forEach(this::block);
            case Block.PageBreak pageBreak -> { }
        }
    }

    private void item(List<Inline> runs) {
        words.add(ITEM);
        say(runs);
    }

    private void figure(String alt) {
        words.add(FIGURE);
        words.addAll(split(alt));
    }

    private void field(Field field) {
        words.add(FIELD);
        words.addAll(split(field.tip()));
    }

    private void plate(Plate plate) {
        figure(plate.alt());
        say(plate.caption());
    }

    private void panel(Panel panel) {
        head(panel.heading());
        for (var group : panel.groups()) {
            if (!group.heading().isEmpty()) {
                head(group.heading());
            }
            group.points().forEach(this::item);
            say(group.after());
        }
    }

    /** Who it is for and the stop signs first; in the large print the panel comes before who made it. */
    private void opening(Block.Opening opening) {
        opening.logo().ifPresent(signed -> figure(signed.alt()));
        say(opening.lead());
        head(opening.name());
        if (large) {
            panel(opening.safety());
        }
        say(opening.imprint());
        opening.sentences().forEach(this::say);
        opening.plates().forEach(this::plate);
        if (!large) {
            panel(opening.safety());
        }
        head(opening.weekTitle());
        if (large) {
            largeWeek(opening.week());
        } else {
            opening.week().forEach(day -> {
                words.add(ITEM);
                words.add(day.name() + OR + day.shortName());
                day.lines().forEach(this::say);
            });
        }
        opening.notes().stream().filter(n -> n.droppable() == 0 || printed.test(text(n.runs()))).forEach(n -> say(n.runs()));
    }

    private void largeWeek(List<Block.DayBox> days) {
        days.stream().filter(Block.DayBox::training).forEach(d -> say(d.name() + ": " + String.join(", ", d.lines())));
        var rest = days.stream().filter(d -> !d.training()).toList();
        if (!rest.isEmpty()) {
            say(String.join(", ", rest.stream().map(Block.DayBox::name).toList()) + ": " + String.join(", ", rest.getFirst().lines()));
        }
    }

    private void card(Card card) {
        if (large) {
            switch (card.halves()) {
                case Halves.Pair(Half left, Half right) -> {
                    alone(card, Badge.LEFT, left, List.of());
                    alone(card, Badge.RIGHT, right, List.of());
                }
                case Halves.Single(Badge side, Half half, String empty, List<Block> why) -> alone(card, side, half, why);
                case Halves.Together(Half half) -> alone(card, Badge.BOTH, half, List.of());
            }
            return;
        }
        name(card);
        switch (card.halves()) {
            case Halves.Pair(Half left, Half right) -> {
                bar(Badge.LEFT, left);
                columns(() -> left.blocks().forEach(this::block), () -> bar(Badge.RIGHT, right), () -> right.blocks().forEach(this::block));
            }
            case Halves.Single(Badge side, Half half, String empty, List<Block> why) -> {
                var none = new Half(empty, "", why);
                var left = side == Badge.LEFT ? half : none;
                var right = side == Badge.LEFT ? none : half;
                bar(Badge.LEFT, left);
                columns(() -> left.blocks().forEach(this::block), () -> bar(Badge.RIGHT, right), () -> right.blocks().forEach(this::block));
            }
            case Halves.Together(Half half) -> {
                bar(Badge.BOTH, half);
                var drawn = half.blocks().stream().filter(IntendedOrder::isDrawn).toList();
                var rest = half.blocks().stream().filter(b -> !isDrawn(b)).toList();
                int first = drawn.isEmpty() ? Math.min(1, rest.size()) : 0;
                columns(() -> {
                    drawn.forEach(this::block);
                    rest.subList(0, first).forEach(this::block);
                }, () -> { }, () -> rest.subList(first, rest.size()).forEach(this::block));
            }
        }
        columns(() -> card.bandLeft().forEach(this::block), () -> { }, () -> card.bandRight().forEach(this::block));
    }

    private static boolean isDrawn(Block block) {
        return block instanceof Block.FigureRow || block instanceof Plate;
    }

    private void alone(Card card, Badge side, Half half, List<Block> why) {
        name(card);
        bar(side, half);
        half.blocks().forEach(this::block);
        why.forEach(this::block);
        card.bandLeft().forEach(this::block);
        card.bandRight().forEach(this::block);
    }

    private void name(Card card) {
        head(card.number() + " " + card.name());
        say(card.aside());
    }

    private void bar(Badge side, Half half) {
        var letters = document.wording();
        head(switch (side) {
            case LEFT -> letters.leftLetter();
            case RIGHT -> letters.rightLetter();
            case BOTH -> letters.leftLetter() + " " + letters.rightLetter();
        } + " " + half.heading());
        say(half.order());
    }

    private void table(Table table) {
        if (!table.title().isEmpty()) {
            head(table.title());
        }
        table.head().forEach(this::row);
        table.groups().forEach(g -> g.rows().forEach(this::row));
        say(table.note());
    }

    private void row(Table.Row row) {
        words.add(ROW);
        row.cells().forEach(cell -> {
            var inside = apart(() -> cell(cell));
            if (!inside.isEmpty()) {
                words.add(CELL);
                words.addAll(inside);
            }
        });
        words.add(END);
    }

    private void cell(Cell cell) {
        switch (cell) {
            case Cell.Words(var lines) -> lines.forEach(this::say);
            case Cell.Side(Badge badge) -> say(switch (badge) {
                case LEFT -> document.wording().left();
                case RIGHT -> document.wording().right();
                case BOTH -> document.wording().both();
            });
            case Cell.Dose(String upper, String lower, Optional<String> third, boolean heavier) -> {
                say(upper);
                say(heavier ? document.wording().heavier() : "");
                say(lower);
                third.ifPresent(this::say);
            }
            case Cell.Entry(Field field) -> field(field);
            case Cell.Picture(var drawing, String alt, double width, double height) -> figure(alt);
            case Cell.Dash() -> say(document.wording().notAsked());
            case Cell.Empty() -> { }
        }
    }
}
