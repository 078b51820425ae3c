package contrapposto.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.body.Joint;
import contrapposto.figure.Bounds;
import contrapposto.figure.Point;
import contrapposto.quantity.Side;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class MannequinTest {
    @ParameterizedTest
    @ValueSource(strings = {"split-squat-left", "split-squat-right", "cable-press", "half-kneeling-press"})
    void the_drawn_body_reaches_from_the_sole_to_the_crown(String name) {
        Mannequin body = drawn(name);
        Bounds bounds = Bounds.ofOutlines(body.outlines());
        Point crown = body.sitter().camera().see(body.sitter().at(Joint.HEAD_TOP));
        assertEquals(crown.y(), bounds.maxY(), .02);
        Point heel = body.sitter().camera().see(body.sitter().at(Side.RIGHT, Joint.Part.HEEL));
        assertTrue(bounds.minY() <= heel.y());
    }

    @ParameterizedTest
    @ValueSource(strings = {"split-squat-left", "pushup", "allfours", "bridge", "side-lying"})
    void every_outline_is_finite(String name) {
        drawn(name).outlines().forEach(outline -> outline.flattened().forEach(p ->
                assertTrue(Double.isFinite(p.x()) && Double.isFinite(p.y()))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"split-squat-left", "pushup", "allfours", "cable-press"})
    void the_camera_keeps_the_shin_angle(String name) {
        Mannequin body = drawn(name);
        for (Side side : Side.values()) {
            var ankle = body.sitter().at(side, Joint.Part.ANKLE);
            var knee = body.sitter().at(side, Joint.Part.KNEE);
            var level = new org.hipparchus.geometry.euclidean.threed.Vector3D(knee.getX(), ankle.getY(), knee.getZ());
            Point seen = body.sitter().camera().see(level).minus(body.sitter().camera().see(ankle));
            assertEquals(StrictMath.atan2(knee.getX() - ankle.getX(), knee.getZ() - ankle.getZ()),
                    StrictMath.atan2(seen.x(), seen.y()), 1e-12);
        }
    }

    private static Mannequin drawn(String name) {
        Sitter sitter = Sitter.of(StudyPoses.working(name), Camera.fromSide(22, 10), StudyPoses.STATURE, 1,
                new Dress(Side.RIGHT), Set.of());
        return Mannequin.of(sitter, Map.of(Side.LEFT, new Grip.Relaxed(), Side.RIGHT, new Grip.Fist()));
    }
}
