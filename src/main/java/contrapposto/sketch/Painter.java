package contrapposto.sketch;

import contrapposto.figure.Mark;
import contrapposto.figure.Outline;
import contrapposto.figure.Tone;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Parts in painting order → marks. Each part is stroked twice as wide as its line, then filled over it: what stays is
 * one even line outside the shape. (A fill first and a stroke second would show every inner line.)
 *
 * @param line the figure's line width, mm
 */
record Painter(Placing placing, double line) {

    List<Mark> paint(List<Part> order, List<Patch> patches) {
        List<Mark> marks = new ArrayList<>();
        List<Patch> waiting = new ArrayList<>(patches);
        Set<Piece> done = EnumSet.noneOf(Piece.class);
        for (Part part : order) {
            paint(part, marks);
            if (part.piece() != Piece.THING) {
                done.add(part.piece());
                for (Patch patch : List.copyOf(waiting)) {
                    if (done.contains(patch.limb()) && done.contains(patch.neighbour())) {
                        waiting.remove(patch);
                        if (!patch.onlyOver() || part.piece() == patch.limb()) {
                            paint(patch, marks);
                        }
                    }
                }
            }
        }
        return marks;
    }

    private void paint(Part part, List<Mark> marks) {
        double edge = line * part.line() * (part.far() ? Pen.FAR : 1);
        if (!part.edge().isEmpty()) {
            marks.add(stroke(part.edge(), Tones.BLACK, 2 * edge));
        }
        for (Part.Cord cord : part.cords()) {
            double width = cord.metres() * placing.scale();
            marks.add(stroke(List.of(cord.path()), Tones.BLACK, width + 2 * edge));
            marks.add(stroke(List.of(cord.path()), cord.tone(), width));
        }
        fill(part.fills(), part.far(), marks);
        crease(part.creases(), part.far(), marks);
    }

    private void paint(Patch patch, List<Mark> marks) {
        for (Part.Cord joint : patch.joints()) {
            marks.add(stroke(List.of(joint.path()), patch.far() ? Tones.far(joint.tone()) : joint.tone(),
                    joint.metres() * placing.scale()));
        }
        fill(patch.shapes(), patch.far(), marks);
        crease(patch.creases(), patch.far(), marks);
    }

    /** Runs of equal tone become one mark. */
    private void fill(List<Part.Shape> shapes, boolean far, List<Mark> marks) {
        List<Outline> run = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            double tone = shapes.get(i).tone();
            run.add(placing.place(shapes.get(i).outline()));
            if (i + 1 == shapes.size() || shapes.get(i + 1).tone() != tone) {
                marks.add(new Mark.Fill(run, new Tone.Grey(far ? Tones.far(tone) : tone)));
                run = new ArrayList<>();
            }
        }
    }

    /** Runs of equal width and tone become one mark. */
    private void crease(List<Part.Crease> creases, boolean far, List<Mark> marks) {
        List<Outline> run = new ArrayList<>();
        for (int i = 0; i < creases.size(); i++) {
            Part.Crease crease = creases.get(i);
            run.add(crease.outline());
            boolean last = i + 1 == creases.size() || creases.get(i + 1).width() != crease.width()
                    || creases.get(i + 1).tone() != crease.tone();
            if (last) {
                marks.add(stroke(run, crease.tone(), line * crease.width() * (far ? .8 : 1)));
                run = new ArrayList<>();
            }
        }
    }

    Mark stroke(List<Outline> outlines, double tone, double width) {
        return new Mark.Stroke(outlines.stream().map(placing::place).toList(), new Tone.Grey(tone),
                Math.max(Pen.THINNEST, width), List.of());
    }
}
