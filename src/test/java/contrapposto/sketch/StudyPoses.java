package contrapposto.sketch;

import contrapposto.body.Joint;
import contrapposto.body.Pose;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Poses made by hand for our figure study, of a person of 1.70 m; not solved, so balance is not kept. */
public final class StudyPoses {
    public static final double STATURE = 1.70;

    private static final Map<String, Pose> ALL = read();

    private StudyPoses() { }

    public static Pose working(String name) {
        return ALL.get(name + " working");
    }

    public static Pose start(String name) {
        return ALL.get(name + " start");
    }

    private static Map<String, Pose> read() {
        Map<String, Map<String, Vector3D>> points = new LinkedHashMap<>();
        try (InputStream in = StudyPoses.class.getResourceAsStream("poses.txt")) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                String[] w = line.split(" ");
                points.computeIfAbsent(w[0] + " " + w[1], key -> new LinkedHashMap<>()).put(w[2], new Vector3D(
                        Double.parseDouble(w[3]), Double.parseDouble(w[4]), Double.parseDouble(w[5])));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, Pose> poses = new LinkedHashMap<>();
        points.forEach((name, at) -> {
            Map<Joint, Vector3D> joints = new EnumMap<>(Joint.class);
            for (Joint joint : Joint.values()) {
                joints.put(joint, at.get(joint.word()));
            }
            poses.put(name, new Pose(joints, at.get("ribs-forward"), at.get("facing")));
        });
        return poses;
    }
}
