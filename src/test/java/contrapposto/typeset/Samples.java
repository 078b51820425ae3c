package contrapposto.typeset;

import static contrapposto.document.Inline.bold;
import static contrapposto.document.Inline.plain;

import contrapposto.document.Badge;
import contrapposto.document.Block;
import contrapposto.document.Block.Halves;
import contrapposto.document.Block.Table.Align;
import contrapposto.document.Cell;
import contrapposto.document.Document;
import contrapposto.document.Document.Format;
import contrapposto.document.Document.Paper;
import contrapposto.document.Document.Part;
import contrapposto.document.Document.Print;
import contrapposto.document.Field;
import contrapposto.document.Inline;
import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.Tone;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Documents made by hand that hold every block; people, places and numbers are invented. */
final class Samples {
    static final Document.Wording WORDS = new Document.Wording("of", "continued", "left side", "right side",
            "both sides", "heavier", "not asked for");

    private Samples() { }

    static Document every(Paper paper, Print print) {
        boolean large = print == Print.LARGE;
        var parts = new ArrayList<>(List.of(
                part("Your plan", List.of(opening())),
                new Part("Exercises", "", Format.WHOLE, cards(), Optional.of(legend()), false),
                part("Weeks", weeks(large ? 4 : 8, large ? 26 : 14.5)),
                new Part("Log", "", Format.WHOLE, log(), Optional.empty(), true),
                new Part("Reasons", "C", Format.WHOLE, reasons(), Optional.empty(), false),
                part("Referral", referral())));
        if (!large) {
            parts.add(new Part("Pocket", "", Format.FOLDED, pocket(), Optional.empty(), false));
        }
        return of("Both feet, block 1", paper, print, parts, Optional.of(new Document.Attachment("plan.yaml",
                "text/yaml", "format: 1\n".getBytes(StandardCharsets.UTF_8), "the plan as data")));
    }

    static Document of(String title, Paper paper, Print print, List<Part> parts, Optional<Document.Attachment> file) {
        return new Document(title, "T. Adeyemi-Holt", "exercise plan", "en", paper, print,
                List.of(bold("MR-0217"), plain("   Made 2 March 2026. "), bold("Use until 31 May 2026.")), WORDS,
                LocalDate.of(2026, 3, 2), "0123456789abcdef0123456789abcdef", parts, file);
    }

    static Part part(String name, List<Block> blocks) {
        return new Part(name, "", Format.WHOLE, blocks, Optional.empty(), false);
    }

    /** A frame with a cross and a word, whatever its size. */
    static Drawing drawing(String word) {
        return (width, height, label) -> new Figure(width, height, List.of(
                new Mark.Fill(List.of(box(1, 1, width - 1, height - 1)), new Tone.Grey(0xC8 / 255.0)),
                new Mark.Stroke(List.of(box(1, 1, width - 1, height - 1)), Tone.BLACK, 0.4, List.of()),
                new Mark.Stroke(List.of(new Outline(new Point(1, 1), List.of(new Outline.Segment.Curve(
                        new Point(width / 2, 1), new Point(width / 2, height - 1), new Point(width - 1, height - 1))),
                        false)), new Tone.Spot(), 1, List.of(0.9, 0.7)),
                new Mark.Label(new Point(width / 2, height / 2), word, label, Mark.Weight.BOLD, Mark.Anchor.MIDDLE,
                        Tone.BLACK, true)));
    }

    private static Outline box(double x1, double y1, double x2, double y2) {
        return new Outline(new Point(x1, y1), List.of(line(x2, y1), line(x2, y2), line(x1, y2)), true);
    }

    private static Outline.Segment line(double x, double y) {
        return new Outline.Segment.Line(new Point(x, y));
    }

    private static List<Inline> words(String text) {
        return List.of(plain(text));
    }

    private static List<Inline> led(String lead, String text) {
        return List.of(bold(lead), plain(" " + text));
    }

    static Block.Opening opening() {
        var days = new ArrayList<Block.DayBox>();
        for (String day : List.of("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")) {
            boolean training = List.of("Monday", "Wednesday", "Friday").contains(day);
            days.add(new Block.DayBox(day, day.substring(0, 3), training,
                    training ? List.of("45 min", "do 1, 2, 3, 5, 7") : List.of("rest")));
        }
        return new Block.Opening("Weight on both feet, block 1: an exercise plan for", "Orla Venn",
                List.of(plain("Plan "), bold("MR-0217"), plain(", made 2 March 2026 by T. Adeyemi-Holt, Millrace "
                        + "Movement Room. "), bold("Use until 31 May 2026.")),
                List.of(words("You stand mostly on your right leg, and your pelvis has turned to the right."),
                        List.of(plain("For eight weeks your "), bold("left side"), plain(" will practise taking weight "
                                + "and turning left, and your "), bold("right side"), plain(" will push you there.")),
                        words("Train three days a week, and come to be measured again by 31 May.")),
                List.of(new Block.Plate(drawing("now"), "Seen from above: the pelvis turned right.", 54, 66,
                                led("Now.", "Weight on the right foot. Belt buckle to the right.")),
                        new Block.Plate(drawing("to learn"), "Seen from above: the pelvis turned left.", 54, 66,
                                led("To learn.", "Weight on the left foot. Buckle turns left."))),
                panel(), "Your week", days,
                List.of(note("Warm up.", "Walk for 5 minutes. Then two easy sets of your first standing exercise.", 0),
                        note("Which side first.", "The left, always. Rest, then the right.", 0),
                        note("Missed a week?", "Do that week again. Do not skip ahead. Missed two? Go back.", 0),
                        note("You will need", "boxes of 15 and 30 cm, a 45 cm chair, a 3 cm wedge, a tape.", 1),
                        note("Use until 31 May 2026.", "After that the weights and set-ups may not fit you.", 0),
                        note("For you alone.", "Made from your measurements of 2 March 2026.", 0)));
    }

    private static Block.Note note(String lead, String text, int droppable) {
        return new Block.Note(led(lead, text), droppable);
    }

    private static Block.Panel panel() {
        return new Block.Panel("Read this first", List.of(
                new Block.Panel.Group("Stop and call for help", List.of(
                        words("pain or pressure in your chest, neck, jaw or arm"), words("fainting"),
                        words("sudden weakness"), words("one calf suddenly swollen and sore")), List.of()),
                new Block.Panel.Group("Stop the set", List.of(words("sharp pain, or any pain over 5 out of 10"),
                        words("a joint that gives way")), words("Comes back? Leave it out and call +00 555 0146.")),
                new Block.Panel.Group("Every time", List.of(words("Breathe out as you push.")), List.of())));
    }

    static List<Block> cards() {
        var right = half("Right foot in front", "second");
        return List.of(card("1", "Split squat", new Halves.Pair(half("Left foot in front", "first"), right)),
                card("2", "Staggered hinge", new Halves.Pair(half("Left foot behind, working", "first"), right)),
                card("3", "High-to-low press", new Halves.Single(Badge.RIGHT, half("Right arm presses", "right only"),
                        "No left side", List.of(para(words("Your left side gets number 5 in place of this one."))))),
                card("7", "Box squat", new Halves.Together(half("Both sides the same", "left and right together"))));
    }

    private static Block.Card card(String number, String name, Halves halves) {
        List<Inline> aside = List.of(plain("Rest 90 s. Sets and weights: page "), new Inline.PageOf("Weeks"));
        boolean single = halves instanceof Halves.Single;
        return new Block.Card("card-" + number, number, name, aside, halves, single ? List.of()
                : List.of(para(led("Usual mistake:", "The hips swing out to the side."))), single ? List.of()
                : List.of(para(led("Easier:", "hand on a rail, no weight."))));
    }

    private static Block.Half half(String heading, String order) {
        return new Block.Half(heading, order, List.of(
                new Block.FigureRow(List.of(new Block.FigureRow.Part(drawing("Start"), heading + ": start.", 0.35),
                        new Block.FigureRow.Part(drawing("Down"), heading + ": down.", 0.35),
                        new Block.FigureRow.Part(drawing("feet"), heading + ": feet from above.", 0.3))),
                new Block.Measures(List.of(measure("15 cm", "box under your left foot"),
                        measure("80 cm", "left heel back to right toes"), measure("Right hand", "holds the weight"))),
                new Block.Steps(List.of(words("Slide your left hip forward over the heel."),
                        words("Sink for 3 counts. Keep the left shin upright."), words("Breathe out. Press down."))),
                para(led("You should feel", "high up the back of the left thigh, and the inner thigh."))));
    }

    private static Block.Measures.Measure measure(String value, String words) {
        return new Block.Measures.Measure(value, words);
    }

    private static Block para(List<Inline> runs) {
        return new Block.Paragraph(Block.Paragraph.Role.BODY, runs);
    }

    static List<Block> weeks(int weeks, double width) {
        return List.of(new Block.Title("Week by week", List.of()),
                para(List.of(plain("Upper line: sets × repeats. "), bold("Lower line: kilograms. "),
                        new Inline.Sign(Inline.Sign.Kind.UP_TRIANGLE), plain(" = heavier than before."))),
                weekTable("Monday", weeks, width), weekTable("Wednesday", weeks, width),
                new Block.Rule(Block.Rule.Weight.HAIR, ""),
                new Block.Columns(Block.Columns.Split.EVEN, List.of(para(led("Go up", "only as printed."))),
                        List.of(para(led("Too easy?", "Write it in the log.")))));
    }

    private static Block.Table weekTable(String day, int weeks, double width) {
        var columns = new ArrayList<>(List.of(new Block.Table.Column(178 - 16 - weeks * width, Align.LEFT, false),
                new Block.Table.Column(16, Align.CENTRE, false)));
        List<Cell> numbers = new ArrayList<>(List.of(new Cell.Empty(), cell(plain("Week"))));
        List<Cell> spare = new ArrayList<>(List.of(cell(plain("Stop with this many to spare")), new Cell.Empty()));
        List<Cell> ticks = new ArrayList<>(List.of(cell(plain("Cross off each week")), new Cell.Empty()));
        for (int week = 1; week <= weeks; week++) {
            columns.add(new Block.Table.Column(width, Align.CENTRE, week == 4));
            numbers.add(cell(bold(Integer.toString(week))));
            spare.add(cell(bold("2")));
            ticks.add(new Cell.Entry(new Field("done/" + day + "/" + week, day + ", week " + week + " done",
                    Field.Kind.CHECK)));
        }
        return new Block.Table(day, columns, List.of(new Block.Table.Row(numbers, 0), new Block.Table.Row(spare, 0)),
                List.of(new Block.Table.Group(List.of(dose("1 Split squat", Badge.LEFT, weeks),
                                dose("", Badge.RIGHT, weeks))),
                        new Block.Table.Group(List.of(dose("7 Box squat", Badge.BOTH, weeks))),
                        new Block.Table.Group(List.of(new Block.Table.Row(ticks, 0)))),
                words("A note below the table."));
    }

    private static Block.Table.Row dose(String name, Badge badge, int weeks) {
        List<Cell> cells = new ArrayList<>(List.of(name.isEmpty() ? new Cell.Empty()
                : new Cell.Words(List.of(List.of(bold(name)), words("rest 90 s"))), new Cell.Side(badge)));
        for (int week = 1; week <= weeks; week++) {
            cells.add(new Cell.Dose("3 × " + (7 + week), Integer.toString(6 + 2 * week),
                    week == 2 ? Optional.of("3 spare") : Optional.empty(), week == 3));
        }
        return new Block.Table.Row(cells, 11.2);
    }

    private static Cell cell(Inline... runs) {
        return new Cell.Words(List.of(List.of(runs)));
    }

    static List<Block> log() {
        var columns = List.of(column(66, Align.LEFT), column(16, Align.CENTRE), column(24, Align.RIGHT),
                column(24, Align.CENTRE), column(24, Align.CENTRE), column(24, Align.CENTRE));
        var head = new Block.Table.Row(List.of(cell(plain("Plan")), new Cell.Empty(), cell(plain("kg")),
                cell(plain("set 1")), cell(plain("set 2")), cell(plain("spare"))), 0);
        var groups = new ArrayList<Block.Table.Group>();
        for (int n = 1; n <= 14; n++) {
            String name = "w1/mon/exercise-" + n;
            groups.add(new Block.Table.Group(List.of(row(n + " Exercise", name + "/left", Badge.LEFT),
                    row("", name + "/right", Badge.RIGHT))));
        }
        return List.of(new Block.Title("Log: week 1", List.of(plain("Stop every set with "), bold("2 to spare"))),
                new Block.FieldLine("Monday", List.of(
                        new Block.FieldLine.Labelled("Date", text("w1/mon/date"), 26, ""),
                        new Block.FieldLine.Labelled("Minutes", text("w1/mon/minutes"), 13, ""),
                        new Block.FieldLine.Labelled("Pain", text("w1/mon/pain"), 11.5, "of 10"))),
                new Block.Table("", columns, List.of(head), groups, List.of()));
    }

    private static Block.Table.Column column(double width, Align align) {
        return new Block.Table.Column(width, align, false);
    }

    private static Field text(String name) {
        return new Field(name, "fill in " + name.replace('/', ' '), Field.Kind.TEXT);
    }

    private static Block.Table.Row row(String name, String key, Badge badge) {
        return new Block.Table.Row(List.of(name.isEmpty() ? new Cell.Empty() : cell(bold(name)), new Cell.Side(badge),
                cell(bold("8 kg")), new Cell.Entry(text(key + "/set1")), new Cell.Dash(),
                new Cell.Entry(text(key + "/spare"))), 10);
    }

    static List<Block> reasons() {
        var statement = new Block.Reasons.Statement(led("15 cm.", "Shin +3° at depth; wanted 0 ± 5°."), "practice");
        var half = new Block.Half("Landing side", "", List.of(new Block.Reasons(List.of(statement, statement))));
        return List.of(new Block.Title("Reasons", List.of(bold("Coach edition."))),
                new Block.Columns(Block.Columns.Split.WIDE_LEFT,
                        List.of(new Block.Heading(2, "Week 1, sets per muscle"),
                                new Block.Plate(drawing("bars"), "Sets per muscle.", 112, 60, List.of())),
                        List.of(new Block.Heading(2, "Load by week"),
                                new Block.Plate(drawing("plot"), "Load by week.", 60, 60, List.of()))),
                new Block.Card("why-1", "1", "Split squat", List.of(), new Halves.Pair(half, half), List.of(),
                        List.of()),
                new Block.PageBreak(), new Block.Heading(2, "A heading"),
                new Block.Together(List.of(para(words("Kept.")), new Block.Bullets(List.of(words("a"), words("b"))))),
                new Block.Steps(List.of(words("one"), words("two"))));
    }

    static List<Block> referral() {
        var check = new Field("reply/yes", "Yes, may start", Field.Kind.CHECK);
        return List.of(new Block.Masthead("For Orla Venn", "Please see a doctor or clinic before you start to lift",
                        led("MR-0217.", "Made 2 March 2026 by T. Adeyemi-Holt.")),
                new Block.Rule(Block.Rule.Weight.HEAVY, ""),
                new Block.Columns(Block.Columns.Split.WIDE_LEFT, List.of(new Block.Paragraph(
                                Block.Paragraph.Role.LEAD, words("A trained clinician should check you first."))),
                        List.of(new Block.Panel("Do not wait if", List.of(new Block.Panel.Group("",
                                List.of(words("your chest hurts")), words("Call your emergency number.")))))),
                new Block.Rule(Block.Rule.Weight.CUT, "Cut or copy here."),
                new Block.Heading(2, "Reply from the clinician"),
                new Block.Choice(check, led("Yes,", "may start as described."), Optional.empty()),
                new Block.Choice(new Field("reply/not-yet", "Not yet", Field.Kind.CHECK),
                        led("Not yet.", "Please ask again after:"), Optional.of(text("reply/after"))),
                new Block.FieldRow(List.of(new Block.FieldRow.Box("", new Field("reply/limits", "limits",
                        Field.Kind.MULTILINE), 1)), 13),
                new Block.FieldRow(List.of(new Block.FieldRow.Box("Name", text("reply/name"), 0.6),
                        new Block.FieldRow.Box("Date", text("reply/date"), 0.4)), 9));
    }

    static List<Block> pocket() {
        var columns = new ArrayList<>(List.of(column(28, Align.LEFT)));
        List<Cell> head = new ArrayList<>(List.of(cell(plain("Week"))));
        List<Cell> kilograms = new ArrayList<>(List.of(new Cell.Picture(drawing("L"), "The feet.", 15, 20)));
        for (int week = 1; week <= 8; week++) {
            columns.add(column(7.7, Align.CENTRE));
            head.add(cell(bold(Integer.toString(week))));
            kilograms.add(cell(bold("12")));
        }
        var groups = new ArrayList<Block.Table.Group>();
        for (int n = 0; n < 12; n++) {
            groups.add(new Block.Table.Group(List.of(new Block.Table.Row(kilograms, 0))));
        }
        return List.of(new Block.Title("Orla Venn: pocket page", List.of()), para(words("Full plan first.")),
                panelOfOne(), new Block.Table("", columns, List.of(new Block.Table.Row(head, 0)), groups, List.of()));
    }

    private static Block.Panel panelOfOne() {
        return new Block.Panel("Stop and call for help", List.of(new Block.Panel.Group("", List.of(),
                words("chest pain, fainting, sudden weakness"))));
    }

    static Document.Legend legend() {
        return new Document.Legend(List.of(new Document.Legend.Item(drawing(""), 4, 4, "most weight"),
                new Document.Legend.Item(drawing(""), 4, 4, "some weight")), "Drawings: left white, right black");
    }
}
