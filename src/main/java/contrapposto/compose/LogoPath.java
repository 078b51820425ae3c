package contrapposto.compose;

import contrapposto.figure.Outline;
import contrapposto.figure.Outline.Segment;
import contrapposto.figure.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The path data of SVG 1.1 (chapter 8.3) without arcs → outlines. */
final class LogoPath {
    private static final Pattern TOKEN = Pattern.compile("([MmLlHhVvCcSsQqTtAaZz])|([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)|([ ,\\r\\n\\t]+)|(.)");
    /** Control points of a quarter circle, as a share of the radius: 4 (√2 − 1) ÷ 3. */
    private static final double QUARTER = 0.5522847498307936;

    private final List<String> tokens;
    private int next;
    private Point here = new Point(0, 0);
    private Point start = here;
    private Point lastControl = here;
    private final List<Segment> segments = new ArrayList<>();
    private final List<Outline> outlines = new ArrayList<>();

    private LogoPath(List<String> tokens) {
        this.tokens = tokens;
    }

    /** @throws IllegalArgumentException with what is wrong, for an arc or anything that is no path */
    static List<Outline> read(String data) {
        var tokens = new ArrayList<String>();
        Matcher token = TOKEN.matcher(data);
        while (token.find()) {
            if (token.start(4) >= 0) {
                throw new IllegalArgumentException("`" + token.group() + "` is no part of a path");
            }
            if (token.start(3) < 0) {
                tokens.add(token.group());
            }
        }
        return new LogoPath(tokens).outlines();
    }

    static List<Outline> circle(double x, double y, double r) {
        double k = QUARTER * r;
        var right = new Point(x + r, y);
        return List.of(new Outline(right, List.of(
                new Segment.Curve(new Point(x + r, y + k), new Point(x + k, y + r), new Point(x, y + r)),
                new Segment.Curve(new Point(x - k, y + r), new Point(x - r, y + k), new Point(x - r, y)),
                new Segment.Curve(new Point(x - r, y - k), new Point(x - k, y - r), new Point(x, y - r)),
                new Segment.Curve(new Point(x + k, y - r), new Point(x + r, y - k), right)), true));
    }

    private List<Outline> outlines() {
        char command = ' ';
        while (next < tokens.size()) {
            if (Character.isLetter(tokens.get(next).charAt(0))) {
                command = tokens.get(next++).charAt(0);
            } else if (command == ' ' || command == 'Z' || command == 'z') {
                throw new IllegalArgumentException("a number stands where a command is expected");
            }
            step(command);
            command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
        }
        end(false);
        return List.copyOf(outlines);
    }

    private void step(char command) {
        boolean relative = Character.isLowerCase(command);
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                end(false);
                here = point(relative);
                start = here;
            }
            case 'L' -> line(point(relative));
            case 'H' -> line(new Point(number() + (relative ? here.x() : 0), here.y()));
            case 'V' -> line(new Point(here.x(), number() + (relative ? here.y() : 0)));
            case 'C' -> curve(point(relative), point(relative), point(relative));
            case 'S' -> curve(here.plus(here.minus(lastControl)), point(relative), point(relative));
            case 'Q' -> {
                var control = point(relative);
                var to = point(relative);
                curve(here.toward(control, 2.0 / 3), to.toward(control, 2.0 / 3), to);
            }
            case 'Z' -> end(true);
            default -> throw new IllegalArgumentException("the command `" + command + "` is not read");
        }
    }

    private void line(Point to) {
        segments.add(new Segment.Line(to));
        here = to;
        lastControl = to;
    }

    private void curve(Point first, Point second, Point to) {
        segments.add(new Segment.Curve(first, second, to));
        here = to;
        lastControl = second;
    }

    private void end(boolean closed) {
        if (!segments.isEmpty()) {
            outlines.add(new Outline(start, segments, closed));
            segments.clear();
        }
        here = start;
        lastControl = start;
    }

    private Point point(boolean relative) {
        double x = number();
        double y = number();
        return relative ? here.plus(x, y) : new Point(x, y);
    }

    private double number() {
        if (next >= tokens.size() || Character.isLetter(tokens.get(next).charAt(0))) {
            throw new IllegalArgumentException("a number is missing");
        }
        return Double.parseDouble(tokens.get(next++));
    }
}
