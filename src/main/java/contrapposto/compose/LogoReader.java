package contrapposto.compose;

import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Outline;
import contrapposto.figure.Tone;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A practice's logo, {@code logo.svg} in its templates → a drawing that fits any box. Read are filled paths, rectangles, circles and polygons,
 * in groups or not, in their own colours: a logo says who made the paper and nothing else, so that no reader and no printer loses by its
 * greys. Anything else is named, never left out in silence.
 */
final class LogoReader {
    private static final int MOST_ELEMENTS = 400;
    private static final String WAY_OUT = "export it as plain SVG with text as paths and transforms applied: filled paths, rectangles, circles, polygons";

    private final String file;
    private final List<Notice> notices = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    private LogoReader(String file) {
        this.file = file;
    }

    /** @param file the name that notices show */
    static Outcome<Drawing> read(String file, String svg) {
        return switch (MarkupParser.parse(svg, file)) {
            case Outcome.Refused<Piece.Element> refused -> new Outcome.Refused<>(List.of(slip(file, "the logo is no well-formed XML")));
            case Outcome.Done<Piece.Element>(var root, var none) -> new LogoReader(file).logo(root);
        };
    }

    private Outcome<Drawing> logo(Piece.Element root) {
        var box = numbers(root.attribute("viewBox").orElse(""));
        if (!root.name().equals("svg") || box.size() != 4 || box.get(2) <= 0 || box.get(3) <= 0) {
            return new Outcome.Refused<>(List.of(slip(file, "the logo is no `<svg>` with a `viewBox` of four numbers")));
        }
        inside(root, Optional.empty());
        if (marks.isEmpty() && notices.isEmpty()) {
            notices.add(slip(file, "the logo draws nothing"));
        }
        if (marks.size() > MOST_ELEMENTS) {
            notices.add(slip(file, "the logo has more parts than the limit of " + MOST_ELEMENTS));
        }
        var shifted = new Figure(box.get(2), box.get(3), marks).scaled(1, -box.get(0), -box.get(1), box.get(2), box.get(3));
        return Outcome.of((width, height, size) -> {
            double factor = Math.min(width / shifted.width(), height / shifted.height());
            return shifted.scaled(factor, 0, (height - factor * shifted.height()) / 2, width, height);
        }, notices);
    }

    private void inside(Piece.Element group, Optional<Tone> inherited) {
        for (var element : group.elements()) {
            element.attribute("transform").or(() -> element.attribute("style")).or(() -> element.attribute("stroke").filter(s -> !s.equals("none")))
                    .ifPresent(such -> notices.add(slip(file, "the logo's `<" + element.name() + ">` is turned, styled or stroked by `" + such + "`")));
            var tone = element.attribute("fill").flatMap(this::tone).or(() -> inherited);
            boolean drawn = !element.attribute("fill").orElse("").equals("none");
            switch (element.name()) {
                case "g" -> inside(element, tone);
                case "title", "desc", "metadata" -> { }
                case "path", "rect", "circle", "polygon" -> {
                    var outlines = outlines(element);
                    if (drawn && !outlines.isEmpty()) {
                        marks.add(new Mark.Fill(outlines, tone.orElse(Tone.BLACK)));
                    }
                }
                default -> notices.add(slip(file, "the logo has a `<" + element.name() + ">`, which is not read"));
            }
        }
    }

    private List<Outline> outlines(Piece.Element element) {
        try {
            return switch (element.name()) {
                case "rect" -> List.of(Outline.rectangle(number(element, "x"), number(element, "y"), number(element, "width"), number(element, "height")));
                case "circle" -> LogoPath.circle(number(element, "cx"), number(element, "cy"), number(element, "r"));
                case "polygon" -> LogoPath.read("M " + element.attribute("points").orElse("") + " Z");
                default -> LogoPath.read(element.attribute("d").orElse(""));
            };
        } catch (IllegalArgumentException unreadable) {
            notices.add(slip(file, "the logo's `<" + element.name() + ">` cannot be read: " + unreadable.getMessage()));
            return List.of();
        }
    }

    private static double number(Piece.Element element, String name) {
        return Double.parseDouble(element.attribute(name).orElse("0"));
    }

    private static List<Double> numbers(String text) {
        try {
            return text.isBlank() ? List.of() : Arrays.stream(text.strip().split("[ ,]+")).map(Double::valueOf).toList();
        } catch (NumberFormatException none) {
            return List.of();
        }
    }

    /** {@code #rgb} or {@code #rrggbb}, black and white; empty, and a notice, for another word. */
    private Optional<Tone> tone(String fill) {
        var hex = fill.matches("#[0-9a-fA-F]{3}") ? fill.replaceAll("([0-9a-fA-F])", "$1$1") : fill;
        if (hex.matches("#[0-9a-fA-F]{6}")) {
            int rgb = Integer.parseInt(hex.substring(1), 16);
            return Optional.of(Tone.of(rgb >> 16, rgb >> 8 & 0xFF, rgb & 0xFF));
        }
        return switch (fill) {
            case "black", "currentColor" -> Optional.of(Tone.BLACK);
            case "white" -> Optional.of(Tone.WHITE);
            case "none" -> Optional.empty();
            default -> {
                notices.add(slip(file, "the logo's fill `" + fill + "` is no `#rrggbb`, black or white"));
                yield Optional.empty();
            }
        };
    }

    private static Notice slip(String file, String message) {
        return Notice.error("template-slip", Span.whole(file), message, WAY_OUT);
    }
}
