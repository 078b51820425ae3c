package contrapposto.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import contrapposto.body.Joint.Part;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Hip and knee moments of solved poses against an outside rigid-body engine: MuJoCo, compiled to WebAssembly
 * (npm, {@code mujoco-js} 0.0.7, Apache 2.0), what the joints of both legs must hold at rest with the forces under the feet. Skipped
 * where there is no node, or neither the package nor a registry to fetch it from.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OutsideEngineTest {
    private static final String PACKAGE = "mujoco-js@0.0.7";
    private static final Path PACKAGES = Path.of("target", "mujoco").toAbsolutePath();

    @TempDir
    private Path folder;

    private record Case(String name, SolvedPose pose, Person person) { }

    @Test
    void hip_and_knee_moments_are_those_of_an_outside_engine() throws Exception {
        assumeTrue(run(folder, 10, List.of("node", "--version")).isPresent(), "no node on this machine");
        assumeTrue(installed(), "mujoco-js is not there and npm cannot fetch it");
        var cases = new ArrayList<Case>();
        for (double stature : new double[] {1.52, 1.93}) {
            Person person = Person.of(stature, 24 * stature * stature, stature < 1.7 ? Sex.FEMALE : Sex.MALE);
            for (Side side : Side.values()) {
                for (Problems.Named named : Problems.all(person, side)) {
                    if (named.problem().base() instanceof BaseOfSupport.Split || named.problem().base() instanceof BaseOfSupport.Staggered
                            || named.problem().base() instanceof BaseOfSupport.Level || named.problem().base() instanceof BaseOfSupport.Step
                            || named.problem().base() instanceof BaseOfSupport.OneLeg) {
                        cases.add(new Case(named.name() + " " + side.word() + " " + stature, assertInstanceOf(PoseOutcome.Solved.class,
                                PoseSolver.solve(named.problem()), named.name()).pose(), person));
                    }
                }
            }
        }
        var command = new ArrayList<String>(List.of("node", script().toString(), PACKAGES.toString()));
        for (int i = 0; i < cases.size(); i++) {
            command.add(write(cases.get(i), i).toString());
        }
        String[] lines = run(folder, 60, command).orElseThrow().strip().split("\n");
        assertEquals(cases.size(), lines.length);
        double worst = 0;
        for (int i = 0; i < lines.length; i++) {
            Case c = cases.get(i);
            String[] torques = lines[i].strip().split(" ");
            int leg = legOf(c) == Side.LEFT ? 0 : 2;
            double hip = Double.parseDouble(torques[leg]);
            double knee = -Double.parseDouble(torques[leg + 1]);
            assertEquals(hip, c.pose().mechanics().hipMoment(), 1e-6, c.name());
            assertEquals(knee, c.pose().mechanics().kneeMoment(), 1e-6, c.name());
            worst = Math.max(worst, Math.abs(hip - c.pose().mechanics().hipMoment()));
        }
        System.out.printf(Locale.ROOT, "body: %d poses against MuJoCo, hips and knees within %.1e N·m%n", cases.size(), worst);
        assertTrue(lines.length > 40, lines.length + " poses");
    }

    /** The leg whose moments are told. */
    private static Side legOf(Case c) {
        return c.name().contains(" left ") ? Side.LEFT : Side.RIGHT;
    }

    private Path write(Case c, int number) throws IOException {
        var xml = new StringBuilder("<mujoco><option gravity=\"0 0 -9.80665\"/><worldbody>");
        var forces = new StringBuilder("0 0 0 0 0 0");
        for (Side side : Side.values()) {
            SegmentTable table = c.person().table();
            Pose pose = c.pose().working();
            Vector3D hip = pose.at(Joint.of(side, Part.HIP));
            Vector3D knee = pose.at(Joint.of(side, Part.KNEE));
            Vector3D ankle = pose.at(Joint.of(side, Part.ANKLE));
            Vector3D ball = pose.at(Joint.of(side, Part.BALL));
            double mass = c.person().mass();
            xml.append(body(Vector3D.ZERO, hip, knee, table.thigh, mass, true)).append(body(hip, knee, ankle, table.shank, mass, true))
                    .append(body(knee, ankle, ball, table.foot, mass, false)).append("</body></body></body>");
            forces.append(" 0 0 0 0 0 0 0 0 0 0 0 0 ").append(under(c, side, Vectors.between(ankle, ball, table.foot.centre())));
        }
        Path file = folder.resolve("model-" + number + ".xml");
        Files.writeString(file, xml.append("</worldbody></mujoco>"), StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("model-" + number + ".forces"), forces, StandardCharsets.UTF_8);
        return file;
    }

    private static String body(Vector3D parent, Vector3D from, Vector3D to, SegmentTable.Part part, double mass, boolean jointed) {
        return "<body pos=\"" + words(from.subtract(parent)) + "\">" + (jointed ? "<joint type=\"hinge\" axis=\"0 1 0\"/>" : "")
                + "<inertial pos=\"" + words(to.subtract(from).scalarMultiply(part.centre())) + "\" mass=\"" + part.mass() * mass
                + "\" diaginertia=\"0.01 0.01 0.01\"/>";
    }

    /** Force and torque about {@code centre} of what the foot stands on. */
    private static String under(Case c, Side side, Vector3D centre) {
        for (SolvedPose.Force force : c.pose().mechanics().forces()) {
            if (force.what().equals(side.word() + "-foot")) {
                return words(force.newton()) + " " + words(force.at().subtract(centre).crossProduct(force.newton()));
            }
        }
        return "0 0 0 0 0 0";
    }

    private static String words(Vector3D v) {
        return v.getX() + " " + v.getY() + " " + v.getZ();
    }

    private Path script() throws IOException {
        try (InputStream in = OutsideEngineTest.class.getResourceAsStream("joint-moments.mjs")) {
            Path script = folder.resolve("joint-moments.mjs");
            Files.write(script, in.readAllBytes());
            return script;
        }
    }

    private static boolean installed() throws Exception {
        if (!Files.isDirectory(PACKAGES.resolve("node_modules/mujoco-js"))) {
            Files.createDirectories(PACKAGES);
            run(PACKAGES, 90, List.of("npm", "install", "--no-audit", "--no-fund", "--prefix", PACKAGES.toString(), PACKAGE));
        }
        return Files.isDirectory(PACKAGES.resolve("node_modules/mujoco-js"));
    }

    /** What a program prints; empty when it is not there, fails or takes too long. */
    private static java.util.Optional<String> run(Path where, int seconds, List<String> command) throws InterruptedException {
        try {
            Path out = Files.createTempFile(where, "run", ".txt");
            Process process = new ProcessBuilder(command).directory(where.toFile()).redirectErrorStream(true).redirectOutput(out.toFile()).start();
            if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                return java.util.Optional.empty();
            }
            return process.exitValue() == 0 ? java.util.Optional.of(Files.readString(out, StandardCharsets.UTF_8)) : java.util.Optional.empty();
        } catch (IOException e) {
            return java.util.Optional.empty();
        }
    }
}
