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
 * @param boxes    the bounds of each part of the order
 * @param floor    empty where a mat fills the view from the front
 */
record Scene(Mannequin body, List<Part> order, List<Part> over, Optional<List<Outline>> ghost,
             Optional<Floor> floor, List<Prop> props, List<Bounds> boxes) {

    static Scene of(Sitter sitter, Map<Side, Grip> grips, List<Prop> props) {
        Mannequin body = Mannequin.of(sitter, grips);
        double handX = sitter.at(Joint.PELVIS).getX();
        List<Part> furniture = Furniture.of(props, sitter.camera(), handX);
        Held held = Held.of(props, sitter);
        List<Order.Tied> tied = new ArrayList<>(Contacts.of(sitter, grips, props));
        tied.addAll(held.tied());
        Optional<Floor> floor = sitter.camera().sideways() ? Optional.of(Floor.under(sitter.pose(), furniture))
                : Optional.empty();
        List<Part> order = Order.of(body, furniture, tied);
        return new Scene(body, order, held.over(), Optional.empty(), floor,
                props, order.stream().map(Part::bounds).toList());
    }

    /** The same before the silhouette of another pose, without those of its shapes that the body hides anyway. */
    Scene before(Pose other) {
        List<Outline> seen = new ArrayList<>(new Silhouette(body.sitter().posed(other)).outlines());
        List<Outline> before = order.stream().flatMap(part -> part.edge().stream()).toList();
        Cover cover = Cover.of(before);
        seen.removeIf(cover::hides);
        return new Scene(body, order, over, seen.isEmpty() ? Optional.empty() : Optional.of(List.copyOf(seen)), floor, props, boxes);
    }

    Camera camera() {
        return body.sitter().camera();
    }

    /** What has to fit into the box, in picture metres. */
    Bounds bounds() {
        Bounds all = Bounds.NONE;
        for (Bounds box : boxes) {
            all = all.join(box);
        }
        for (Part part : over) {
            all = all.join(part.bounds());
        }
        if (ghost.isPresent()) {
            all = all.join(Bounds.ofOutlines(ghost.get()));
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
        ghost.get().forEach(o -> shadow.outline(placing.place(o), 1));
        for (Part part : order) {
            for (Outline o : part.edge()) {
                front.outline(placing.place(o), 1);
            }
        }
        return shadow.areaOutside(1, front) / Math.max(1e-9, shadow.area(1));
    }
}
