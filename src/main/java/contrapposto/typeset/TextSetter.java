package contrapposto.typeset;

import contrapposto.document.Block.Masthead;
import contrapposto.document.Block.Measures.Measure;
import contrapposto.document.Block.Paragraph.Role;
import contrapposto.document.Block.Reasons.Statement;
import contrapposto.document.Block.Title;
import contrapposto.document.Inline;
import contrapposto.typeset.Stack.Item;
import java.util.ArrayList;
import java.util.List;

/** Sets blocks of running text. */
final class TextSetter {
    private static final double VALUE_COLUMN = 22;
    private static final double CUE_INDENT = 6;
    private static final double BULLET_INDENT = 4;
    private static final double SOURCE_COLUMN = 21;
    private static final double MASTHEAD_LINE = 11;
    private static final double ASIDE_GAP = 4;

    private final Desk desk;

    TextSetter(Desk desk) {
        this.desk = desk;
    }

    HeadingSlab title(Title title, double measure) {
        var style = measure < Stock.MEASURE ? desk.type().day() : desk.type().title();
        var body = desk.type().body();
        var aside = title.aside().isEmpty() ? List.<Line>of()
                : desk.lines(body).broken(title.aside(), measure - ASIDE_GAP);
        return new HeadingSlab(desk.lines(style).broken(title.text(), true, measure), style, 1, aside, body, measure,
                true);
    }

    List<Item> masthead(Masthead masthead, double measure) {
        var type = desk.type();
        var style = desk.large() ? type.name() : type.name().in(MASTHEAD_LINE);
        double room = masthead.logo().isPresent() ? CornerSlab.beside(measure) : measure;
        var items = new ArrayList<Item>();
        masthead.logo().ifPresent(logo -> items.add(new Item(new CornerSlab(logo, measure), 0, true)));
        items.add(new Item(text(List.of(Inline.plain(masthead.lead())), type.intro(), room), 0, true));
        items.add(new Item(new HeadingSlab(desk.lines(style).broken(masthead.title(), true, room), style, 1, List.of(),
                type.body(), room, true), 0.4, true));
        items.add(new Item(text(masthead.imprint(), type.body(), measure), desk.gap(1.5), false));
        return items;
    }

    HeadingSlab heading(String words, int level, double measure) {
        var style = desk.type().heading();
        return new HeadingSlab(desk.lines(style).broken(words, true, measure), style, level, List.of(),
                desk.type().body(), measure, level <= 2);
    }

    TextSlab paragraph(Role role, List<Inline> runs, double measure) {
        return switch (role) {
            case BODY, FINE -> text(runs, desk.type().body(), measure);
            case LEAD -> text(runs, desk.type().lead(), measure);
        };
    }

    private TextSlab text(List<Inline> runs, Style style, double measure) {
        return TextSlab.left(desk.lines(style).broken(runs, measure), style, "P");
    }

    ListSlab bullets(List<List<Inline>> points, Style style, double measure) {
        double indent = desk.gap(BULLET_INDENT);
        var items = points.stream().map(p -> new ListSlab.Item(new Line(List.of(), 0),
                desk.lines(style).broken(p, measure - indent))).toList();
        return new ListSlab(items, style, ListSlab.Numbering.DISC, indent, 0);
    }

    ListSlab steps(List<List<Inline>> steps, double measure) {
        var style = desk.type().body();
        double indent = desk.gap(CUE_INDENT);
        var items = new ArrayList<ListSlab.Item>();
        for (var step : steps) {
            items.add(new ListSlab.Item(desk.lines(style).single((items.size() + 1) + " ", true),
                    desk.lines(style).broken(step, measure - indent)));
        }
        return new ListSlab(items, style, ListSlab.Numbering.DECIMAL, indent, 0);
    }

    ListSlab measures(List<Measure> measures, double measure) {
        var style = desk.type().body();
        var labels = measures.stream().map(m -> desk.lines(style).single(m.value() + " ", true)).toList();
        double widest = labels.stream().mapToDouble(Line::width).max().orElse(0);
        double indent = Math.max(desk.gap(VALUE_COLUMN), widest + 1.5);
        var items = new ArrayList<ListSlab.Item>();
        for (int i = 0; i < labels.size(); i++) {
            items.add(new ListSlab.Item(labels.get(i),
                    desk.lines(style).broken(measures.get(i).words(), false, measure - indent)));
        }
        return new ListSlab(items, style, ListSlab.Numbering.NONE, indent, 0);
    }

    ReasonSlab reasons(List<Statement> statements, double measure) {
        var style = desk.type().body();
        double words = measure - desk.gap(SOURCE_COLUMN);
        return new ReasonSlab(statements.stream().map(s -> new ReasonSlab.Item(
                desk.lines(style).broken(s.runs(), words), desk.lines(style).single(s.source(), false))).toList(),
                style, measure, desk.gap(1.5));
    }
}
