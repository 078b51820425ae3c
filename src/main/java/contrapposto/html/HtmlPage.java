package contrapposto.html;

import contrapposto.document.Badge;
import contrapposto.document.Block;
import contrapposto.document.Document;
import contrapposto.document.Field;
import contrapposto.document.Inline;
import contrapposto.figure.Tone;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/**
 * A document as one HTML page that needs nothing else: style and drawings are inside, no script, nothing fetched.
 * The same blocks in the same order as on paper.
 */
public final class HtmlPage {
    static final double LABEL_POINTS = 11;
    private static final double ROW_MM = 85;
    private static final double FIGURE_MM = 44;
    private static final double LOGO_WIDTH = 48;
    private static final double LOGO_HEIGHT = 20;

    /** The black head of the safety panel and the marks of sides stay. */
    private static final String IN_OWN_COLOUR = "h1, h2, h3, .title { color: INK; border-color: INK; } hr, th, td { border-color: INK; } aside h2, .half.right > h3 { color: #fff; } .half > h3 { border-color: #000; } .half:not(.right) > h3 { color: #000; }\n";

    private final Markup out = new Markup();
    private final Document.Wording wording;
    /** The last title, and the last heading under it: the name of a table that has none of its own. */
    private String title = "";
    private String heading = "";

    private HtmlPage(Document.Wording wording) {
        this.wording = wording;
    }

    /** The page's text, to be written as UTF-8. Equal documents give equal text. */
    public static String of(Document document) {
        return new HtmlPage(document.wording()).page(document);
    }

    private String page(Document document) {
        out.raw("<!DOCTYPE html>\n").open("html", "lang", document.language()).open("head");
        out.empty("meta", "charset", "utf-8");
        out.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        out.element("title", document.title());
        out.open("style").raw(style()).raw(document.heads().equals(Tone.BLACK) ? "" : IN_OWN_COLOUR.replace("INK", SvgPainter.ink(document.heads()))).close().close();
        out.open("body").open("main");
        document.parts().forEach(this::part);
        out.close().open("footer");
        inlines(document.footer());
        return out.close().close().close().finished();
    }

    private void part(Document.Part part) {
        out.open("section", "id", slug(part.name()), "aria-label", part.name());
        blocks(part.blocks());
        part.legend().ifPresent(legend -> {
            out.open("p", "class", "legend");
            legend.items().forEach(item -> {
                out.open("span").raw(SvgPainter.svg(item.drawing().drawn(item.width(), item.height(), LABEL_POINTS), ""));
                out.text(" " + item.words()).close().text(" ");
            });
            out.text(legend.aside()).close();
        });
        out.close();
    }

    private void blocks(List<Block> blocks) {
        blocks.forEach(this::block);
    }

    private void block(Block block) {
        switch (block) {
            case Block.Title(var text, var aside) -> {
                title = text;
                heading = "";
                titled(text, aside);
            }
            case Block.Masthead(var lead, var title, var imprint, var logo) -> {
                logo.ifPresent(this::logo);
                out.element("p", lead).element("h1", title);
                paragraph(imprint, "imprint");
            }
            case Block.Heading(var level, var text) -> out.element("h" + (level + 1), text);
            case Block.Paragraph(var role, var runs) -> paragraph(runs, role.name().toLowerCase(Locale.ROOT));
            case Block.Bullets(var items) -> list("ul", items);
            case Block.Steps(var items) -> list("ol", items);
            case Block.Measures(var measures) -> {
                out.open("dl");
                measures.forEach(m -> out.open("div").element("dt", m.value()).element("dd", m.words()).close());
                out.close();
            }
            case Block.Reasons(var statements) -> {
                out.open("ul", "class", "reasons");
                statements.forEach(s -> {
                    out.open("li");
                    inlines(s.runs());
                    out.text(" ").element("small", s.source()).close();
                });
                out.close();
            }
            case Block.Plate plate -> plate(plate);
            case Block.FigureRow(var parts) -> {
                out.open("div", "class", "figures");
                parts.forEach(p -> out.raw(SvgPainter.svg(
                        p.drawing().drawn(ROW_MM * p.share(), FIGURE_MM, LABEL_POINTS), p.alt())));
                out.close();
            }
            case Block.Opening opening -> opening(opening);
            case Block.Panel panel -> panel(panel);
            case Block.Card card -> card(card);
            case Block.Table table -> new HtmlTable(out, this::inlines, wording).write(table, tableName(table));
            case Block.FieldLine(var text, var fields) -> {
                heading = text;
                out.open("div", "class", "fields").element("h3", text);
                fields.forEach(f -> {
                    labelled(f.label(), f.field());
                    out.text(" " + f.after());
                });
                out.close();
            }
            case Block.FieldRow(var boxes, var height) -> {
                out.open("div", "class", "fields");
                boxes.forEach(b -> labelled(b.label(), b.field()));
                out.close();
            }
            case Block.Choice(var field, var runs, var detail) -> {
                out.open("p").empty("input", "type", "checkbox", "name", field.name(), "aria-label", field.tip()).text(" ");
                inlines(runs);
                detail.ifPresent(d -> labelled("", d));
                out.close();
            }
            case Block.Columns(var split, var left, var right) -> {
                out.open("div", "class", "columns").open("div");
                blocks(left);
                out.close().open("div");
                blocks(right);
                out.close().close();
            }
            case Block.Rule rule -> out.empty("hr");
            case Block.Together(var inside) -> blocks(inside);
            case Block.PageBreak pageBreak -> { }
        }
    }

    /** Its own, else that of the page and the day it stands under. */
    private String tableName(Block.Table table) {
        return !table.title().isEmpty() ? table.title() : heading.isEmpty() ? title : title + ", " + heading;
    }

    private void titled(String text, List<Inline> aside) {
        out.open("div", "class", "title").element("h2", text);
        if (!aside.isEmpty()) {
            paragraph(aside, "aside");
        }
        out.close();
    }

    private void opening(Block.Opening opening) {
        opening.logo().ifPresent(this::logo);
        out.element("p", opening.lead()).element("h1", opening.name());
        paragraph(opening.imprint(), "imprint");
        panel(opening.safety());
        opening.sentences().forEach(sentence -> paragraph(sentence, "lead"));
        out.open("div", "class", "figures");
        opening.plates().forEach(this::plate);
        out.close().element("h2", opening.weekTitle()).open("ul", "class", "week");
        opening.week().forEach(this::day);
        out.close();
        opening.notes().forEach(note -> paragraph(note.runs(), "note"));
    }

    private void panel(Block.Panel panel) {
        out.open("aside", "aria-label", panel.heading()).element("h2", panel.heading());
        out.open("div", "class", "groups");
        panel.groups().forEach(group -> {
            out.open("div");
            if (!group.heading().isEmpty()) {
                out.element("h3", group.heading());
            }
            list("ul", group.points());
            if (!group.after().isEmpty()) {
                paragraph(group.after(), "body");
            }
            out.close();
        });
        out.close().close();
    }

    private void day(Block.DayBox day) {
        out.open("li", "class", day.training() ? "training" : "rest").element("strong", day.name());
        day.lines().forEach(line -> out.text(" ").element("span", line));
        out.close();
    }

    private void card(Block.Card card) {
        out.open("article", "id", card.key());
        titled((card.number() + " " + card.name()).strip(), card.aside());
        switch (card.halves()) {
            case Block.Halves.Pair(var left, var right) -> {
                out.open("div", "class", "columns");
                half(Badge.LEFT, left);
                half(Badge.RIGHT, right);
                out.close();
            }
            case Block.Halves.Single(var side, var half, var emptyHeading, var emptyColumn) -> {
                out.open("div", "class", "columns");
                half(side, half);
                out.open("div", "class", side == Badge.RIGHT ? "empty before" : "empty").element("h3", emptyHeading);
                blocks(emptyColumn);
                out.close().close();
            }
            case Block.Halves.Together(var half) -> half(Badge.BOTH, half);
        }
        if (!card.bandLeft().isEmpty() || !card.bandRight().isEmpty()) {
            out.open("div", "class", "columns band").open("div");
            blocks(card.bandLeft());
            out.close().open("div");
            blocks(card.bandRight());
            out.close().close();
        }
        out.close();
    }

    private void half(Badge badge, Block.Half half) {
        out.open("div", "class", "half " + badge.name().toLowerCase(Locale.ROOT)).open("h3");
        out.element("b", HtmlTable.letters(badge, wording)).text(" " + half.heading() + " ").element("small", half.order()).close();
        blocks(half.blocks());
        out.close();
    }

    private void plate(Block.Plate plate) {
        out.open("figure").raw(SvgPainter.svg(plate.drawing().drawn(plate.width(), plate.height(), LABEL_POINTS), plate.alt()));
        if (!plate.caption().isEmpty()) {
            out.open("figcaption");
            inlines(plate.caption());
            out.close();
        }
        out.close();
    }

    private void logo(Block.Logo logo) {
        out.open("figure", "class", "logo").raw(SvgPainter.svg(logo.drawing().drawn(LOGO_WIDTH, LOGO_HEIGHT, LABEL_POINTS), logo.alt())).close();
    }

    private void labelled(String label, Field field) {
        out.open("label").text(label + " ");
        out.empty("input", "type", field.kind() == Field.Kind.CHECK ? "checkbox" : "text", "name", field.name(),
                "aria-label", field.tip(), "size", "6");
        out.close();
    }

    private void list(String kind, List<List<Inline>> items) {
        out.open(kind);
        items.forEach(item -> {
            out.open("li");
            inlines(item);
            out.close();
        });
        out.close();
    }

    private void paragraph(List<Inline> runs, String kind) {
        out.open("p", "class", kind);
        inlines(runs);
        out.close();
    }

    private void inlines(List<Inline> runs) {
        runs.forEach(run -> {
            switch (run) {
                case Inline.Text(var text, var bold) -> {
                    if (bold) {
                        out.element("b", text);
                    } else {
                        out.text(text);
                    }
                }
                case Inline.Sign(var kind) -> out.text(sign(kind));
                case Inline.PageOf(var part) -> out.element("a", part, "href", "#" + slug(part));
            }
        });
    }

    private String sign(Inline.Sign.Kind kind) {
        return switch (kind) {
            case UP_TRIANGLE -> "\u25B2";
            case TICK_BOX -> "\u2610";
            case LEFT_PILL -> HtmlTable.letters(Badge.LEFT, wording);
            case RIGHT_PILL -> HtmlTable.letters(Badge.RIGHT, wording);
            case BOTH_PILL -> HtmlTable.letters(Badge.BOTH, wording);
        };
    }

    private static String slug(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("(?U)[^\\w]+", "-");
    }

    private static String style() {
        try (InputStream sheet = HtmlPage.class.getResourceAsStream("/contrapposto/html/page.css")) {
            return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
