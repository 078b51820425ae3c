package contrapposto.sketch;

import contrapposto.body.Joint;
import contrapposto.figure.Bounds;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.quantity.Side;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Half pills beside feet and hands, with a leader where they cannot stand at once. */
record Tags(Sheet sheet) {
    private static final double[] RINGS = {1.15, 1.7, 2.4, 3.2, 4.2, 5.4, 0};
    private static final int DIRECTIONS = 16;
    private static final double WITHOUT_LEADER = 1.3;
    /** A tag that would cover more than this is left out: the shade of the limb says the side too. */
    private static final double DEAREST = 150;

    void place(Wish.Tag tag) {
        Vector3D anchor = anchor(tag);
        double height = Pill.heightFor(sheet.label());
        double radius = height / 2;
        Point p = sheet.at(anchor);
        double least = DEAREST;
        Point best = p;
        double ring = 0;
        for (double r : RINGS) {
            for (int i = 0; i < (r == 0 ? 1 : DIRECTIONS); i++) {
                Point q = p.polar(r * radius, -StrictMath.PI / 2 + 2 * StrictMath.PI * i / DIRECTIONS);
                double cost = sheet.occupancy().cost(box(q, height)) + 1.6 * r * radius
                        + (r > 0 ? .35 * sheet.occupancy().lineCost(q, p) : 0);
                if (cost < least) {
                    least = cost;
                    best = q;
                    ring = r;
                }
            }
        }
        if (least >= DEAREST) {
            return;
        }
        draw(tag.side(), p, best, ring > WITHOUT_LEADER, height);
    }

    /** The point of the limb that is seen best, the first of equals. */
    private Vector3D anchor(Wish.Tag tag) {
        Sitter sitter = sheet.scene().body().sitter();
        Side side = tag.side();
        Vector3D toe = sitter.at(side, Joint.Part.TOE);
        Vector3D ball = sitter.at(side, Joint.Part.BALL);
        Vector3D hand = Arm.gripCentre(sitter, side);
        List<Vector3D> points = switch (tag.on()) {
            case FOOT -> List.of(Directions.between(ball, toe, .3), sitter.at(side, Joint.Part.HEEL), toe);
            case KNEE -> List.of(sitter.at(side, Joint.Part.KNEE));
            case HAND -> List.of(hand, hand.add(.09, Directions.AHEAD), hand.add(-.09, Directions.AHEAD));
            case ELBOW -> List.of(sitter.at(side, Joint.Part.ELBOW));
        };
        Piece owner = Piece.of(side, switch (tag.on()) {
            case FOOT, KNEE -> Piece.Limb.SHANK;
            case HAND, ELBOW -> Piece.Limb.FOREARM;
        });
        Vector3D best = points.getFirst();
        double most = -1;
        for (Vector3D p : points) {
            double seen = Visibility.share(sheet.scene(), owner, p, .02);
            if (seen > most + .05) {
                most = seen;
                best = p;
            }
        }
        return best;
    }

    private static Bounds box(Point centre, double height) {
        double half = height / 2 + .35;
        return new Bounds(centre.x() - half, centre.y() - half, centre.x() + half, centre.y() + half);
    }

    private void draw(Side side, Point anchor, Point centre, boolean leader, double height) {
        if (leader) {
            Point d = anchor.minus(centre).unit();
            Outline line = Outline.polyline(centre.along(d, height / 2), anchor);
            sheet.clear(sheet.thin() + .7, line);
            sheet.canvas().line(1.2 * sheet.thin(), line).line(.9, anchor, anchor.plus(.01, 0));
        }
        Side truly = sheet.scene().body().sitter().dress().truly(side);
        sheet.pills().add(new Pill(truly, centre, height));
        sheet.occupancy().claim(box(centre, height), Occupancy.TAG);
    }
}
