package contrapposto.typeset;

import contrapposto.document.Block.DayBox;
import contrapposto.document.Block.Note;
import contrapposto.document.Block.Opening;
import contrapposto.document.Block.Plate;
import contrapposto.document.Inline;
import contrapposto.typeset.Stack.Item;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Sets page 1. Where it is full, the white between its parts shrinks first, then notes that may go, go one by one; type never shrinks. */
final class OpeningSetter {
    private static final double WIDE = 112;
    private static final double NARROW = 60;
    private static final double SECOND = 118;
    private static final double COLUMN = 85;
    private static final double SECOND_COLUMN = 93;
    private static final double PLATE_STEP = 58;
    private static final double TRAINING_DAY = 33.5;
    private static final double REST_DAY = 16;
    private static final double STRIP = 16.6;
    private static final int MOST_WIDE_DAYS = 4;
    private static final double TWO_LINE_NAME = 11;
    private static final double AIRY = 6;
    private static final double SNUG = 2.5;
    private static final double SNUG_ROW = 2;

    private final Desk desk;
    private final BlockSetter blocks;

    OpeningSetter(Desk desk, BlockSetter blocks) {
        this.desk = desk;
        this.blocks = blocks;
    }

    List<Item> set(Opening opening) {
        var items = new ArrayList<Item>();
        if (desk.large()) {
            items.addAll(panelled(opening));
            items.addAll(rest(opening, Stock.MEASURE).items());
        } else {
            var plan = new ArrayList<>(head(opening, WIDE).items());
            plan.addAll(rest(opening, WIDE).items());
            items.add(new Item(new OpeningSlab(new Stack(plan), blocks.panel(opening.safety(), NARROW, true), SECOND),
                    0, false));
        }
        var airy = closed(opening, items, AIRY, opening.notes());
        boolean fits = desk.large() || new Stack(airy).height(0) <= desk.stock().live();
        return fits ? airy : fitting(opening, items);
    }

    /** {@code above} and below it the week and the notes, with {@code white} before them. */
    private List<Item> closed(Opening opening, List<Item> above, double white, List<Note> notes) {
        var items = new ArrayList<>(above);
        items.add(new Item(blocks.heading(opening.weekTitle(), 2), white, true));
        items.add(new Item(week(opening.week()), 1, false));
        items.addAll(rows(notes, white));
        return items;
    }

    /** The large print's name, safety panel and maker, in this order: the first page is for the panel; what it cannot hold of it goes on. */
    private List<Item> panelled(Opening opening) {
        var items = new ArrayList<>(head(opening, Stock.MEASURE).items());
        var made = items.removeLast();
        items.add(new Item(new Divisible(blocks.panel(opening.safety(), Stock.MEASURE, true)), SNUG, false));
        items.add(new Item(made.slab(), AIRY, false));
        return items;
    }

    /** A panel that is divided where a page is full, rather than moved on. */
    private record Divisible(Slab panel) implements Slab {
        @Override
        public double height(double stretch) {
            return panel.height(stretch);
        }

        @Override
        public void paint(Sheet sheet, double x, double y, double stretch) {
            panel.paint(sheet, x, y, stretch);
        }

        @Override
        public Optional<Cut> cut(double room, double page) {
            return panel.cut(room, page);
        }

        @Override
        public boolean whole() {
            return false;
        }
    }

    /** Whom it is for, and who made it. */
    private Stack head(Opening opening, double measure) {
        var type = desk.type();
        double room = opening.logo().isPresent() ? CornerSlab.beside(measure) : measure;
        var name = desk.lines(type.name()).broken(opening.name(), true, room);
        var style = name.size() == 1 || desk.large() ? type.name() : type.name().in(TWO_LINE_NAME);
        var items = new ArrayList<Item>();
        opening.logo().ifPresent(logo -> items.add(new Item(new CornerSlab(logo, measure), 0, true)));
        items.add(new Item(TextSlab.left(desk.lines(type.intro()).broken(opening.lead(), false, room), type.intro(), "P"), 0, true));
        items.add(new Item(new HeadingSlab(name, style, 1, List.of(), type.body(), room, true), 0.4, true));
        items.add(new Item(text(opening.imprint(), type.body(), measure), 1.5, false));
        return new Stack(items);
    }

    /** The plan in three sentences and the finding. */
    private Stack rest(Opening opening, double measure) {
        var items = new ArrayList<Item>();
        for (int i = 0; i < opening.sentences().size(); i++) {
            items.add(new Item(text(opening.sentences().get(i), desk.type().lead(), measure), i == 0 ? 4 : 2, false));
        }
        var plates = opening.plates().stream().map(this::plate).toList();
        if (!plates.isEmpty()) {
            double step = desk.large() ? (Stock.MEASURE + 4) / plates.size() : PLATE_STEP;
            items.add(new Item(new RowSlab(plates, step), 3, false));
        }
        return new Stack(items);
    }

    private Slab plate(Plate plate) {
        return blocks.plate(plate, desk.large() ? COLUMN : plate.width());
    }

    private TextSlab text(List<Inline> runs, Style style, double measure) {
        return TextSlab.left(desk.lines(style).broken(runs, measure), style, "P");
    }

    private Slab week(List<DayBox> days) {
        return desk.large() ? new Stack(dayRows(days)) : strip(days);
    }

    /** In the large print a training day is a line of its own; the rest days share one. */
    private List<Item> dayRows(List<DayBox> days) {
        var rows = new ArrayList<>(days.stream().filter(DayBox::training).map(this::dayRow).toList());
        var rest = days.stream().filter(d -> !d.training()).toList();
        if (!rest.isEmpty()) {
            rows.add(dayRow(new DayBox(String.join(", ", rest.stream().map(DayBox::name).toList()), "", false,
                    rest.getFirst().lines())));
        }
        return rows;
    }

    private Item dayRow(DayBox day) {
        var runs = new ArrayList<Inline>(List.of(new Inline.Text(day.name() + ": ", day.training())));
        runs.add(Inline.plain(String.join(", ", day.lines())));
        return new Item(text(runs, desk.type().body(), Stock.MEASURE), 0, false);
    }

    private WeekSlab strip(List<DayBox> days) {
        long training = days.stream().filter(DayBox::training).count();
        double room = Stock.MEASURE - WeekSlab.GAP * (days.size() - 1);
        double even = room / days.size();
        double rests = days.size() - training;
        boolean wide = training > 0 && training <= MOST_WIDE_DAYS && rests > 0;
        double work = wide ? Math.min(TRAINING_DAY, (room - rests * REST_DAY) / training) : even;
        double rest = wide ? (room - training * work) / rests : even;
        var boxes = days.stream().map(d -> day(d, d.training() ? work : rest, wide && d.training())).toList();
        return new WeekSlab(boxes, desk.type().body(), STRIP);
    }

    private WeekSlab.Day day(DayBox day, double width, boolean full) {
        double room = width - 2 * WeekSlab.INSET;
        var breaker = desk.lines(desk.type().body());
        var lines = new ArrayList<Line>(breaker.broken((full ? day.name() : day.shortName()) + " ", true, room));
        day.lines().forEach(line -> lines.addAll(breaker.broken(line + " ", false, room)));
        return new WeekSlab.Day(lines, width, day.training());
    }

    private List<Item> fitting(Opening opening, List<Item> above) {
        var kept = new ArrayList<>(opening.notes());
        while (true) {
            var snug = closed(opening, above, SNUG, kept);
            var droppable = kept.stream().filter(n -> n.droppable() > 0).min(Comparator.comparingInt(Note::droppable));
            if (new Stack(snug).height(0) <= desk.stock().live() || droppable.isEmpty()) {
                return snug;
            }
            kept.remove(droppable.get());
        }
    }

    private List<Item> rows(List<Note> notes, double white) {
        var rows = new ArrayList<Item>();
        int columns = desk.large() ? 1 : 2;
        double measure = desk.large() ? Stock.MEASURE : COLUMN;
        for (int i = 0; i < notes.size(); i += columns) {
            var row = notes.subList(i, Math.min(i + columns, notes.size())).stream()
                    .map(n -> text(n.runs(), desk.type().body(), measure)).toList();
            rows.add(new Item(new RowSlab(row, SECOND_COLUMN), i == 0 ? white : white < AIRY ? SNUG_ROW : desk.gap(3.5), false));
        }
        return rows;
    }
}
