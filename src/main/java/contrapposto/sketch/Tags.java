package contrapposto.sketch;

import contrapposto.body.Joint;
import contrapposto.figure.Bounds;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Half pills beside feet and hands, with a leader where they cannot stand at once. */
record Tags(Sheet sheet) {
    private static final double[] RINGS = {1.15, 1.7, 2.4, 3.2, 4.2, 5.4, 0};
    private static final int DIRECTIONS = 16;
    private static final double WITHOUT_LEADER = 1.3;
    /** A tag that would cover more than this is left out: the shade of the limb says the side too. */
    private static final double DEAREST = 150;
    /** What a leader pays for each weight and millimetre it crosses, an anchor for being covered, and for each that was nearer to what is meant. */
    private static final double UNDER_LEADER = .7;
    private static final double HIDDEN = 60;
    private static final double LATER = 4;

    void place(Wish.Tag tag) {
        double height = Pill.heightFor(sheet.label());
        double radius = height / 2;
        double least = DEAREST;
        Point from = new Point(0, 0);
        Point best = from;
        double ring = 0;
        for (Anchor anchor : anchors(tag)) {
            Point p = sheet.at(anchor.at());
            for (double r : RINGS) {
                for (int i = 0; i < (r == 0 ? 1 : DIRECTIONS); i++) {
                    Point q = p.polar(r * radius, -StrictMath.PI / 2 + 2 * StrictMath.PI * i / DIRECTIONS);
                    double near = anchor.price() + 1.6 * r * radius;
                    double cost = near >= least ? least : near + sheet.occupancy().cost(box(q, height))
                            + (r > 0 ? UNDER_LEADER * sheet.occupancy().lineCost(q, p) : 0);
                    if (cost < least) {
                        least = cost;
                        best = q;
                        from = p;
                        ring = r;
                    }
                }
            }
        }
        if (least >= DEAREST) {
            return;
        }
        draw(tag.side(), from, best, ring > WITHOUT_LEADER, height);
    }

    /** A point of the limb to tag, and what it costs that something covers it. */
    private record Anchor(Vector3D at, double price) { }

    /** Points of the limb that are seen best, the first of equals first; a hand that is hidden has its forearm. */
    private List<Anchor> anchors(Wish.Tag tag) {
        Sitter sitter = sheet.scene().body().sitter();
        Side side = tag.side();
        Vector3D toe = sitter.at(side, Joint.Part.TOE);
        Vector3D ball = sitter.at(side, Joint.Part.BALL);
        Vector3D heel = sitter.at(side, Joint.Part.HEEL);
        Vector3D hand = Arm.gripCentre(sitter, side);
        Vector3D elbow = sitter.at(side, Joint.Part.ELBOW);
        Vector3D wrist = sitter.at(side, Joint.Part.WRIST);
        List<Vector3D> points = switch (tag.on()) {
            case FOOT -> List.of(Directions.between(ball, toe, .3), heel, toe, Directions.between(heel, ball, .5));
            case KNEE -> List.of(sitter.at(side, Joint.Part.KNEE));
            case HAND -> List.of(hand, hand.add(.09, Directions.AHEAD), hand.add(-.09, Directions.AHEAD),
                    Directions.between(elbow, wrist, .7), Directions.between(elbow, wrist, .3));
            case ELBOW -> List.of(elbow);
        };
        Piece owner = Piece.of(side, switch (tag.on()) {
            case FOOT, KNEE -> Piece.Limb.SHANK;
            case HAND, ELBOW -> Piece.Limb.FOREARM;
        });
        List<Anchor> anchors = new ArrayList<>();
        for (Vector3D p : points) {
            double hidden = 1 - Visibility.share(sheet.scene(), owner, p, .02);
            anchors.add(new Anchor(p, HIDDEN * hidden + LATER * anchors.size()));
        }
        return anchors;
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
