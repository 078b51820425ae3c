package contrapposto.sketch;

import contrapposto.body.Joint;
import contrapposto.figure.Bounds;
import contrapposto.figure.Canvas;
import contrapposto.figure.Mark;
import contrapposto.figure.Mark.Weight;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.TextWidth;
import contrapposto.figure.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A scene fitted into a box, painted, and then told about: lengths, heights, shin, arrows, tags, in this order, each
 * where it covers least. Fixed loops and the first minimum win, so that equal input gives equal pictures.
 */
record Layout(Scene scene, List<Wish> wishes) {
    private static final double TOP = .6;
    private static final double SIDE = .8;
    /** Under the ground line, where a caption or a stance stands, in label sizes; PAGE: 5.4 mm at 11 pt. */
    private static final double STRIP = 5.4 / 11;
    private static final double PLAIN_STRIP = .8;
    private static final double LARGE = 60;

    private <T extends Wish> Stream<T> all(Class<T> kind) {
        return wishes.stream().filter(kind::isInstance).map(kind::cast);
    }

    private double strip(double label) {
        boolean words = all(Wish.Caption.class).findAny().isPresent() || all(Wish.Stance.class).findAny().isPresent();
        return words ? STRIP * label : PLAIN_STRIP;
    }

    /** The largest scale at which body, things and the words beside them fit. */
    double fit(double width, double height, double label) {
        Bounds b = scene.bounds();
        double up = b.maxY() - scene.ground();
        double scale = (height - TOP - strip(label)) / up;
        for (int i = 0; i < 4; i++) {
            double[] margins = margins(b, scale, label);
            scale = Math.min(scale, (width - margins[0] - margins[1]) / b.width());
        }
        return scale;
    }

    /** Room for heights and pushes at the left and the right. */
    private double[] margins(Bounds b, double scale, double label) {
        double left = SIDE;
        double right = SIDE;
        for (Wish.Height height : all(Wish.Height.class).toList()) {
            double need = TextWidth.of(height.text(), label, Weight.REGULAR) + 4.2;
            Bounds seen = seen(height);
            if (seen.minX() + seen.maxX() < b.minX() + b.maxX()) {
                left = Math.max(left, need - (seen.minX() - b.minX()) * scale);
            } else {
                right = Math.max(right, need - (b.maxX() - seen.maxX()) * scale);
            }
        }
        for (Wish.Push push : all(Wish.Push.class).toList()) {
            Point p = scene.camera().see(push.from());
            boolean ahead = scene.camera().see(push.from().add(push.direction())).x() > p.x();
            if (ahead) {
                right = Math.max(right, 7.5 - (b.maxX() - p.x()) * scale);
            } else {
                left = Math.max(left, 7.5 - (p.x() - b.minX()) * scale);
            }
        }
        return new double[] {left, right};
    }

    private Bounds seen(Wish.Height height) {
        List<Point> corners = new ArrayList<>();
        for (double x : new double[] {height.low().getX(), height.high().getX()}) {
            for (double y : new double[] {height.low().getY(), height.high().getY()}) {
                corners.add(scene.camera().see(new Vector3D(x, y, 0)));
            }
        }
        return Bounds.of(corners);
    }

    Sheet laid(double width, double height, double label, double scale) {
        Bounds b = scene.bounds();
        double[] margins = margins(b, scale, label);
        double spare = width - margins[0] - margins[1] - scale * b.width();
        Placing placing = new Placing(scale, margins[0] + spare / 2 - scale * b.minX(),
                height - strip(label) + scale * scene.ground());
        Sheet sheet = new Sheet(scene, placing, new Occupancy(width, height), new Canvas(), width, height, label,
                height > LARGE, new ArrayList<>());
        paint(sheet);
        occupy(sheet);
        say(sheet);
        return sheet;
    }

    private void paint(Sheet sheet) {
        double line = Pen.line(sheet.height());
        Canvas canvas = sheet.canvas();
        Placing placing = sheet.placing();
        scene.floor().ifPresent(floor -> canvas
                .fill(new Tone.Grey(Tones.FLOOR), placing.place(floor.outline(scene.camera())))
                .stroke(new Tone.Grey(Tones.FLOOR_EDGE), Math.max(Pen.THINNEST, Pen.FLOOR * line),
                        List.of(placing.place(floor.frontEdge(scene.camera())))));
        scene.ghost().ifPresent(ghost -> {
            List<Outline> outlines = ghost.stream().map(placing::place).toList();
            canvas.stroke(new Tone.Grey(Tones.GHOST_LINE), 2 * Pen.GHOST * line, outlines)
                    .fill(new Tone.Grey(Tones.GHOST), outlines);
        });
        Painter painter = new Painter(placing, line);
        List<Mark> marks = new ArrayList<>(painter.paint(scene.order(), scene.body().patches()));
        marks.addAll(painter.paint(scene.over(), List.of()));
        canvas.addAll(marks);
    }

    private void occupy(Sheet sheet) {
        Occupancy taken = sheet.occupancy();
        Placing placing = sheet.placing();
        scene.ghost().ifPresent(ghost -> ghost.forEach(o -> taken.outline(placing.place(o), Occupancy.GHOST)));
        for (Part part : scene.order()) {
            if (!part.isBlot()) {
                double weight = weight(part);
                part.edge().forEach(o -> taken.outline(placing.place(o), weight));
                part.cords().forEach(cord -> taken.path(placing.place(cord.path()), Math.min(weight, Occupancy.CORD),
                        cord.metres() * placing.scale() + .4));
            }
        }
        scene.floor().ifPresent(floor -> taken.path(placing.place(floor.frontEdge(scene.camera())), 1, .6));
        boolean words = all(Wish.Height.class).findAny().isPresent() || all(Wish.Shin.class).findAny().isPresent();
        if (words) {
            lines(taken, placing);
        }
    }

    /** Words beside the body may stand on a surface, but not on a line. */
    private void lines(Occupancy taken, Placing placing) {
        scene.ghost().ifPresent(ghost -> ghost.forEach(o -> taken.edge(placing.place(o), Occupancy.LINE)));
        for (Part part : scene.order()) {
            part.edge().forEach(o -> taken.edge(placing.place(o), Occupancy.LINE));
            part.creases().forEach(crease -> taken.edge(placing.place(crease.outline()), Occupancy.LINE));
        }
        scene.floor().ifPresent(floor -> taken.edge(placing.place(floor.frontEdge(scene.camera())), Occupancy.LINE));
    }

    private static double weight(Part part) {
        boolean flat = part.piece() == Piece.THING && part.samples().stream().allMatch(p -> p.getZ() < .02);
        boolean tall = part.piece() == Piece.THING && part.samples().stream().anyMatch(p -> p.getZ() > 1.1);
        return part.piece() == Piece.HEAD ? Occupancy.HEAD : flat ? Occupancy.MAT : tall ? Occupancy.COLUMN : Occupancy.BODY;
    }

    private void say(Sheet sheet) {
        Measures measures = new Measures(sheet);
        Arrows arrows = new Arrows(sheet);
        Tags tags = new Tags(sheet);
        all(Wish.Stance.class).forEach(measures::stance);
        all(Wish.Caption.class).forEach(c -> measures.caption(c, sheet.at(scene.body().sitter().at(Joint.PELVIS)).x(),
                sheet.height() - strip(sheet.label()) + measures.stanceDrop() + sheet.capHeight() / 2));
        all(Wish.Height.class).forEach(measures::height);
        all(Wish.Shin.class).forEach(measures::shin);
        all(Wish.Push.class).forEach(arrows::push);
        all(Wish.Squeeze.class).forEach(arrows::squeeze);
        all(Wish.Move.class).forEach(arrows::move);
        all(Wish.Curl.class).forEach(arrows::curl);
        all(Wish.Turn.class).forEach(arrows::turn);
        all(Wish.Tag.class).forEach(tags::place);
    }
}
