package contrapposto.bench;

import contrapposto.assess.Assessed;
import contrapposto.check.CheckedSpec;
import contrapposto.compose.Composer;
import contrapposto.deliver.PlanFile;
import contrapposto.document.Document;
import contrapposto.prescribe.Plan;
import contrapposto.press.Press;
import contrapposto.select.Selection;
import contrapposto.setup.SetUps;
import contrapposto.typeset.Pages;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.io.IOException;
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

/** What each stage costs, warm on one core, and a whole handout (client edition and plan file), of the first demo. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:+UseSerialGC", "-Djava.awt.headless=true"})
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 3, time = 2)
public class StagesBench {
    private Line line;
    private byte[] spec;
    private CheckedSpec checked;
    private Assessed assessed;
    private SetUps setUps;
    private Selection selection;
    private Plan plan;
    private Composer.Illustrated drawn;
    private Document document;
    private int client;

    @Setup
    public void run() throws IOException {
        line = new Line();
        spec = line.specOf(16);
        checked = line.checked(spec);
        assessed = line.assessed(checked);
        setUps = line.setUps(assessed);
        selection = line.selected(setUps);
        plan = line.plan(selection);
        drawn = line.drawn(plan);
        document = line.document(plan, drawn);
        line.pages(document);
    }

    @Benchmark
    public YamlNode s1_read() {
        return Line.value(YamlReader.read(Line.NAME, spec));
    }

    @Benchmark
    public CheckedSpec s2_read_and_check() {
        return line.checked(spec);
    }

    @Benchmark
    public Assessed s3_assess() {
        return line.assessed(checked);
    }

    @Benchmark
    public SetUps s4_set_up() {
        return line.setUps(assessed);
    }

    @Benchmark
    public Selection s5_select() {
        return line.selected(setUps);
    }

    @Benchmark
    public Plan s6_prescribe() {
        return line.plan(selection);
    }

    @Benchmark
    public Composer.Illustrated s7_illustrate() {
        return line.drawn(plan);
    }

    /** The drawings are at hand. */
    @Benchmark
    public Document s8_compose() {
        return line.document(plan, drawn);
    }

    /** The drawings are drawn already, at the sizes this document wants. */
    @Benchmark
    public Pages s9_typeset() {
        return line.pages(document);
    }

    @Benchmark
    public byte[] s10_plan_file() {
        return PlanFile.of(plan);
    }

    /** Another body each time. */
    @Benchmark
    public Press.Pressed whole_handout() {
        return Line.value(line.press.press(Line.NAME, line.specOf(client++)));
    }
}
