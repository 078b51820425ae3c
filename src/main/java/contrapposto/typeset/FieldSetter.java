package contrapposto.typeset;

import contrapposto.document.Block.Choice;
import contrapposto.document.Block.FieldLine;
import contrapposto.document.Block.FieldRow;

/** Sets blocks with boxes to fill. */
final class FieldSetter {
    private static final double TICK = 5;

    private final Desk desk;

    FieldSetter(Desk desk) {
        this.desk = desk;
    }

    FieldLineSlab line(FieldLine line, double measure) {
        var body = desk.lines(desk.type().body());
        var boxes = line.fields().stream().map(f -> new FieldLineSlab.Box(body.single(f.label(), false), f.field(),
                desk.gap(f.width()), body.single(f.after(), false))).toList();
        return new FieldLineSlab(desk.lines(desk.type().day()).single(line.heading(), true), desk.type().day(), boxes,
                desk.type().body(), measure);
    }

    FieldRowSlab row(FieldRow row, double measure) {
        var body = desk.lines(desk.type().body());
        double room = measure - FieldRowSlab.GAP * (row.boxes().size() - 1);
        return new FieldRowSlab(row.boxes().stream().map(b -> new FieldRowSlab.Box(
                body.broken(b.label(), false, room * b.share()), b.field(), b.share())).toList(), desk.type().body(),
                row.height(), measure);
    }

    ChoiceSlab choice(Choice choice, double measure) {
        double side = desk.gap(TICK);
        return new ChoiceSlab(choice.field(), desk.lines(desk.type().body()).broken(choice.runs(),
                measure - ChoiceSlab.indent(side)), choice.detail(), desk.type().body(), side);
    }
}
