package contrapposto.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.assess.Reason;
import contrapposto.body.Joint;
import contrapposto.body.Joint.Part;
import contrapposto.body.JointLimits;
import contrapposto.body.PelvisSums;
import contrapposto.body.Pose;
import contrapposto.body.Segments;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.notice.Outcome;
import contrapposto.quantity.Side;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Laws of every set-up of every family: people of 1.45 to 2.00 m, three masses, both sexes × both sides × sets of
 * equipment × findings. Each is a pose that keeps its contacts, lengths, limits and balance, or is left out with a reason.
 * A sample of people runs always; {@code -Dgrid=all} runs them all. People and rooms are invented.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FamilyGridTest {
    private static final String SPEC = """
            format: 1
            client: {name: Grid Point, age: 34, sex: %s, height: %.2f m, mass: %.1f kg, training-years: 2}
            assessment: {date: 2026-03-02, pelvis: {turned: %s}}
            equipment: %s
            schedule: {start: 2026-03-09, weeks: 8, days: [mon, wed, fri], minutes: 50}
            """;
    private static final Map<String, String> ROOMS = new TreeMap<>(Map.of(
            "bare", "{also: [wall]}",
            "home", "{dumbbells: {from: 2 kg, to: 12 kg, step: 2 kg}, boxes: [15 cm, 45 cm], also: [mat, wall, chair]}",
            "gym", "{dumbbells: {from: 2 kg, to: 24 kg, step: 2 kg}, kettlebells: [8 kg, 12 kg, 16 kg], "
                    + "cable: {step: 2.5 kg, to: 60 kg, pulley: {from: 20 cm, to: 210 cm}}, boxes: [10 cm, 15 cm, 30 cm, 45 cm], "
                    + "bench: 43 cm, wedges: [3 cm], also: [mat, wall, band]}"));
    private static final double GRAVITY = 9.80665;

    private int solved;
    private int leftOut;
    private int oneSide;

    @Test
    void every_set_up_holds_or_says_why_not() {
        boolean all = "all".equals(System.getProperty("grid"));
        double[] statures = all ? new double[] {1.45, 1.60, 1.75, 1.90, 2.00} : new double[] {1.45, 2.00};
        double[] indices = all ? new double[] {19, 24, 32} : new double[] {24};
        var reasons = new TreeMap<String, Integer>();
        for (double stature : statures) {
            for (double index : indices) {
                for (String sex : List.of("female", "male")) {
                    if (all || (stature < 1.7) == sex.equals("female")) {
                        for (String turned : all ? List.of("left", "right", "square") : List.of("right")) {
                            ROOMS.forEach((room, equipment) -> room(String.format(Locale.ROOT, SPEC, sex, stature,
                                    index * stature * stature, turned, equipment), reasons));
                        }
                    }
                }
            }
        }
        System.out.printf(Locale.ROOT, "set-ups: %d solved and lawful, %d families left out and %d sides spared, each with a reason: %s%n",
                solved, leftOut, oneSide, reasons);
        assertTrue(solved > 300, solved + " set-ups");
    }

    private void room(String text, Map<String, Integer> reasons) {
        var rules = HouseRulesReader.house();
        var catalogue = CatalogueReader.house(rules);
        var spec = ((Outcome.Done<CheckedSpec>) Checks.check("grid.yaml", text.getBytes(StandardCharsets.UTF_8), catalogue)).value();
        var setUps = new SetUpChooser().choose(new Assessor().assess(spec, rules), catalogue);
        setUps.usable().forEach((id, sides) -> sides.values().forEach(one -> lawful(id + " " + one.side().word() + "\n" + text, one)));
        setUps.leftOut().values().forEach(why -> leftOut += told(why, reasons));
        setUps.refused().values().forEach(sides -> sides.values().forEach(why -> oneSide += told(why, reasons)));
        assertEquals(catalogue.families().size(), setUps.usable().size() + setUps.leftOut().size());
    }

    private static int told(List<Reason> why, Map<String, Integer> reasons) {
        assertTrue(!why.isEmpty());
        reasons.merge(why.getFirst().rule(), 1, Integer::sum);
        return 1;
    }

    private void lawful(String name, SolvedSetUp one) {
        solved++;
        for (Pose pose : List.of(one.pose().start(), one.pose().working())) {
            lengths(name, pose, one.problem().person().segments());
            for (Side side : Side.values()) {
                limits(name, pose, one.problem().limits().on(side), side);
            }
            pose.joints().forEach((joint, at) -> assertTrue(at.getZ() > -1e-6 || joint.word().endsWith("-hand") && grips(pose, joint, one),
                    () -> joint + " under the floor, " + name));
        }
        balance(name, one);
        double apart = PelvisSums.of(one.problem(), one.pose()).disagreement();
        assertTrue(apart < 1e-6, () -> "from the hands down and from the feet up differ by " + apart + ", " + name);
    }

    /** Fingers close around a handle: where they would reach under the floor, the grip (0.046 of stature from the wrist) is above it. */
    private static boolean grips(Pose pose, Joint hand, SolvedSetUp one) {
        double wrist = pose.at(Joint.of(hand == Joint.LEFT_HAND ? Side.LEFT : Side.RIGHT, Part.WRIST)).getZ();
        double share = 0.046 * one.problem().person().stature() / one.problem().person().segments().hand();
        return wrist + share * (pose.at(hand).getZ() - wrist) > -1e-6;
    }

    private static void lengths(String name, Pose pose, Segments s) {
        for (Side side : Side.values()) {
            apart(name, pose, side, Part.HIP, Part.KNEE, s.thigh());
            apart(name, pose, side, Part.KNEE, Part.ANKLE, s.shank());
            apart(name, pose, side, Part.HEEL, Part.BALL, s.heelToBall());
            apart(name, pose, side, Part.SHOULDER, Part.ELBOW, s.upperArm());
            apart(name, pose, side, Part.ELBOW, Part.WRIST, s.forearm());
        }
        assertEquals(s.trunk(), pose.at(Joint.PELVIS).distance(pose.at(Joint.NECK)), 1e-6, name);
    }

    private static void apart(String name, Pose pose, Side side, Part from, Part to, double length) {
        assertEquals(length, pose.at(Joint.of(side, from)).distance(pose.at(Joint.of(side, to))), 1e-4, () -> from + " " + name);
    }

    private static void limits(String name, Pose pose, JointLimits limits, Side side) {
        Vector3D thigh = pose.at(Joint.of(side, Part.KNEE)).subtract(pose.at(Joint.of(side, Part.HIP)));
        Vector3D shank = pose.at(Joint.of(side, Part.ANKLE)).subtract(pose.at(Joint.of(side, Part.KNEE)));
        assertTrue(StrictMath.toDegrees(Vector3D.angle(thigh, shank)) < limits.kneeFlexion() + 0.1, () -> "knee, " + name);
    }

    /** Sum and moment of all forces vanish; supports push; what carries is at its support's height, to a millimetre. */
    private static void balance(String name, SolvedSetUp one) {
        var mechanics = one.pose().mechanics();
        double pulls = 0;
        Vector3D sum = Vector3D.ZERO;
        Vector3D moment = Vector3D.ZERO;
        for (var force : mechanics.forces()) {
            sum = sum.add(force.newton());
            moment = moment.add(force.at().subtract(mechanics.massCentreWorking()).crossProduct(force.newton()));
            pulls += force.what().equals("cable") ? 1 : 0;
            assertTrue(force.what().equals("cable") || force.newton().getZ() >= -1e-6, () -> force + " " + name);
            if (force.what().endsWith("-foot") && force.at().getZ() < 1e-3) {
                assertEquals(0, force.at().getZ(), 1e-3, name);
            }
        }
        double weight = sum.getZ();
        double body = one.problem().person().mass() * GRAVITY;
        assertTrue(weight >= body - 1e-6 * body, () -> "forces carry " + weight + " N of " + body + ", " + name);
        assertEquals(0, StrictMath.sqrt(sum.getX() * sum.getX() + sum.getY() * sum.getY()) / body, 1e-6, name);
        assertEquals(0, moment.getNorm() / body, 1e-6, name);
    }
}
