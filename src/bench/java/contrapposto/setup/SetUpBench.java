package contrapposto.setup;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessor;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.PoseSolver;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.illustrate.FootMap;
import contrapposto.illustrate.SetUpSketch;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What solving and choosing cost, warm on one core: one pose, ten exercises on both sides
 * (and drawn), the whole catalogue. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:+UseSerialGC", "-Djava.awt.headless=true"})
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 3, time = 2)
public class SetUpBench {
    /** A program's worth: legs on every base, a cable, arms, the floor. */
    private static final List<String> TEN = List.of("split-squat", "staggered-deadlift", "kickstand-hinge", "high-to-low-press",
            "raised-hand-push-up", "supported-curl", "triceps-extension", "step-up", "floor-bridge", "suitcase-carry");

    private static final SetUpSketch.Words WORDS = new SetUpSketch.Words("start", word -> "working", length -> "10 cm", tilt -> "6° back");

    private Assessed assessed;
    private Catalogue all;
    private Catalogue ten;
    private PoseProblem splitSquat;

    /** The first demo of {@code programs}. */
    @Setup
    public void read() throws IOException {
        HouseRules rules = HouseRulesReader.house();
        all = CatalogueReader.house(rules);
        ten = new Catalogue(all.families().stream().filter(f -> TEN.contains(f.id())).toList(), all.words(), rules);
        var checked = Checks.check("newcomer-right.yaml", Files.readAllBytes(Path.of("programs", "newcomer-right.yaml")), all);
        assessed = new Assessor().assess(((Outcome.Done<CheckedSpec>) checked).value(), rules);
        splitSquat = new SetUpChooser().choose(assessed, ten).usable().get("split-squat").values().getFirst().problem();
    }

    @Benchmark
    public PoseOutcome one_split_squat() {
        return PoseSolver.solve(splitSquat);
    }

    @Benchmark
    public SetUps ten_exercises_on_both_sides() {
        return new SetUpChooser().choose(assessed, ten);
    }

    /** With the figures of a card: the sketches of each side, and the foot map, at the sizes of a page. */
    @Benchmark
    public int ten_exercises_on_both_sides_drawn() {
        int marks = 0;
        for (var sides : new SetUpChooser().choose(assessed, ten).usable().values()) {
            for (var shown : SetUpSketch.card(sides, WORDS).values()) {
                marks += switch (shown) {
                    case SetUpSketch.Shown.Together(var drawing) -> drawing.drawn(59, 41, 11).marks().size();
                    case SetUpSketch.Shown.Apart(var start, var working) -> start.drawn(29, 41, 11).marks().size() + working.drawn(29, 41, 11).marks().size();
                };
            }
            for (var side : sides.values()) {
                marks += FootMap.of(side, length -> "10 cm").map(map -> map.drawn(25, 41, 11).marks().size()).orElse(0);
            }
        }
        return marks;
    }

    @Benchmark
    public SetUps the_whole_catalogue() {
        return new SetUpChooser().choose(assessed, all);
    }
}
