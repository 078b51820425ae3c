package contrapposto.sketch;

import contrapposto.figure.Outline;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The drawn body of a sitter: its parts in no order yet, and the patches that join them. */
record Mannequin(Sitter sitter, List<Part> parts, List<Patch> patches) {
    Mannequin {
        parts = List.copyOf(parts);
        patches = List.copyOf(patches);
    }

    /** @param grips what each hand does */
    static Mannequin of(Sitter sitter, Map<Side, Grip> grips) {
        List<Part> parts = new ArrayList<>();
        List<Patch> patches = new ArrayList<>();
        for (Side side : Side.values()) {
            Leg leg = Leg.of(sitter, side);
            Arm arm = Arm.of(sitter, side, grips.get(side));
            parts.addAll(List.of(leg.thighPart(), leg.shankPart(), arm.upperPart(), arm.forePart()));
            patches.addAll(leg.patches());
            patches.addAll(arm.patches());
        }
        Head head = new Head(sitter);
        parts.addAll(List.of(Trunk.of(sitter).part(), head.neck(), head.head()));
        return new Mannequin(sitter, parts, patches);
    }

    Part part(Piece piece) {
        return parts.stream().filter(p -> p.piece() == piece).findFirst().orElseThrow();
    }

    List<Outline> outlines() {
        return parts.stream().flatMap(p -> p.extent().stream()).toList();
    }
}
