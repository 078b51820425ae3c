package contrapposto.sketch;

import contrapposto.body.Joint;
import contrapposto.body.Pose;
import contrapposto.body.Prop;
import contrapposto.figure.Bounds;
import contrapposto.figure.Outline;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that is painted, in order, without a size: body, things, contacts, floor and perhaps a ghost.
 *
 * @param order    parts in painting order
 * @param over     painted after all of them
 * @param ghost    the other position as one flat silhouette
 * @param floor    empty where a mat fills the view from the front
 */
record Scene(Mannequin body, List<Part> order, List<Part> over, Optional<Mannequin> ghost, Optional<Floor> floor,
             List<Prop> props) {

    static Scene of(Sitter sitter, Map<Side, Grip> grips, List<Prop> props, Optional<Ghost> ghost) {
        Mannequin body = Mannequin.of(sitter, grips);
        double handX = sitter.at(Joint.PELVIS).getX();
        List<Part> furniture = Furniture.of(props, sitter.camera(), handX);
        Held held = Held.of(props, sitter);
        List<Order.Tied> tied = new ArrayList<>(Contacts.of(sitter, grips, props));
        tied.addAll(held.tied());
        Optional<Floor> floor = sitter.camera().sideways() ? Optional.of(Floor.under(sitter.pose(), furniture))
                : Optional.empty();
        Optional<Mannequin> other = ghost.map(g -> Mannequin.of(Sitter.of(g.pose(), sitter.camera(), sitter.stature(),
                sitter.girth(), sitter.dress(), sitter.emphasised()), g.grips()));
        return new Scene(body, Order.of(body, furniture, tied), held.over(), other, floor, props);
    }

    /** The other position, to be shown behind the body. */
    record Ghost(Pose pose, Map<Side, Grip> grips) { }

    Camera camera() {
        return body.sitter().camera();
    }

    /** What has to fit into the box, in picture metres. */
    Bounds bounds() {
        Bounds all = Bounds.NONE;
        for (Part part : order) {
            all = all.join(part.bounds());
        }
        for (Part part : over) {
            all = all.join(part.bounds());
        }
        if (ghost.isPresent()) {
            all = all.join(Bounds.ofOutlines(ghost.get().outlines()));
        }
        if (floor.isPresent()) {
            all = all.join(Bounds.ofOutlines(List.of(floor.get().outline(camera()))));
        }
        return all;
    }

    /** The level on which it stands: the floor's front edge, or the lowest thing. */
    double ground() {
        return floor.map(f -> f.onFrontEdge(camera(), 0).y()).orElseGet(() -> bounds().minY());
    }

    /** How much of the ghost the body and its things leave to be seen, 0 to 1. */
    double ghostShare() {
        if (ghost.isEmpty()) {
            return 0;
        }
        Bounds b = bounds();
        double scale = 45 / Math.max(.5, b.height());
        Placing placing = new Placing(scale, 1 - b.minX() * scale, 1 + b.maxY() * scale);
        Occupancy shadow = new Occupancy(b.width() * scale + 2, b.height() * scale + 2);
        Occupancy front = new Occupancy(b.width() * scale + 2, b.height() * scale + 2);
        ghost.get().outlines().forEach(o -> shadow.outline(placing.place(o), 1));
        for (Part part : order) {
            for (Outline o : part.edge()) {
                front.outline(placing.place(o), 1);
            }
        }
        return shadow.areaOutside(1, front) / Math.max(1e-9, shadow.area(1));
    }
}
