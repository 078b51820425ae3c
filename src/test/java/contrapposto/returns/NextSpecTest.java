package contrapposto.returns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Rules;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.compose.Plans;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Gauges;
import contrapposto.prescribe.Plan;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NextSpecTest {
    private static final Catalogue CATALOGUE = CatalogueReader.house(Rules.house());
    private static final String SPEC = """
            # An invented client.
            format: 1
            title: Back in the boat, block 1
            schedule:            # before the client, as some like it
              weeks: 10
              days: [mon, thu]   # never on Fridays
              minutes: 50
              start: 2026-03-09
            client: {name: Invented Example, height: 171 cm, mass: 64 kg}
            # what was found
            assessment:
              date: 2026-03-02
              pelvis: {turned: right, degree: clear}
              # both by the same hand
              measures:
                - {what: hip internal rotation, left: 24 deg, right: 41 deg}
                - {what: seated trunk turn, left: 38 deg, right: 55 deg}
              tests:
                - {exercise: goblet-squat, load: 12 kg, reps: 8, in-reserve: 2}
            restrictions:
              - {avoid: kneeling, until: 2026-05-01, because: bruised kneecap}
              - {limit: hand-load, to: 20 kg}
            """;
    private static final String LOG = """
            format: 1
            log:
              - {week: 1, day: mon, exercise: split-squat, side: left, kg: 8, set1: 8, set2: 8, set3: 8, spare: 3, pain: 7}
              - {week: 1, day: thu, exercise: split-squat, side: left, kg: 8, set1: 8, set2: 8, set3: 8, spare: 3, pain: 6}
              - {week: 1, day: mon, exercise: split-squat, side: right, kg: 10, set1: 8, set2: 8, set3: 8, spare: 3, pain: 0}
              - {week: 1, day: thu, exercise: split-squat, side: right, kg: 10, set1: 8, set2: 8, set3: 8, spare: 3, pain: 0}
            """;
    private static final String RECHECK = """
            assessment:
              date: 2026-05-20
              measures:
                - {what: hip internal rotation, left: 33 deg, right: 40 deg}
            """;

    private static CheckedSpec checked(String text) {
        return switch (Checks.check("next.yaml", text.getBytes(UTF_8), CATALOGUE)) {
            case Outcome.Done<CheckedSpec>(var spec, var notices) -> spec;
            case Outcome.Refused<CheckedSpec>(var notices) -> throw new AssertionError(notices + "\n" + text);
        };
    }

    static String next(String spec, String log) {
        Plan plan = Plans.of(checked(spec));
        var gauge = Gauges.linear(plan);
        return switch (Returns.read(plan, List.of(new Returns.Returned("log.yaml", log.getBytes(UTF_8))))) {
            case Outcome.Refused<Log>(var notices) -> throw new AssertionError(notices);
            case Outcome.Done<Log>(var read, var warnings) -> switch (NextSpec.write(Reviewer.review(plan, gauge, read), read, gauge,
                    "spec.yaml", spec.getBytes(UTF_8), CATALOGUE)) {
                case Outcome.Done<String>(var text, var none) -> text;
                case Outcome.Refused<String>(var notices) -> throw new AssertionError(notices);
            };
        };
    }

    @Test
    void what_the_author_wrote_stays_where_it_stood() {
        var next = next(SPEC, LOG);
        assertTrue(next.contains("# An invented client.\nformat: 1\n"), next);
        assertTrue(next.contains("schedule:            # before the client, as some like it\n"), next);
        assertTrue(next.contains("  days: [mon, thu]   # never on Fridays\n"), next);
        assertTrue(next.contains("  # both by the same hand\n"), next);
        assertTrue(next.indexOf("schedule:") < next.indexOf("client:") && next.indexOf("client:") < next.indexOf("assessment:"), next);
        assertTrue(next.startsWith(NextSpec.HEAD), next);
    }

    @Test
    void it_counts_the_block_starts_the_day_after_and_says_why() {
        var next = next(SPEC, LOG);
        var spec = checked(next);
        assertEquals("Back in the boat, block 2", spec.title());
        assertEquals("2026-05-18", spec.schedule().start().toString());
        assertEquals(10, spec.schedule().weeks());
        assertTrue(next.contains("FOR THE COACH: split-squat left, week 1 mon: pain 7 of 10"), next);
        assertTrue(next.contains("split-squat left: 2 of 2 sessions; swap"), next);
    }

    @Test
    void pain_twice_swaps_the_exercise() {
        var spec = checked(next(SPEC, LOG));
        assertEquals(List.of("split-squat"), spec.choices().exclude());
        assertEquals(List.of("step-up"), spec.choices().include());
    }

    @Test
    void what_was_not_in_the_log_is_kept_and_what_was_is_written_as_a_set() {
        var spec = checked(next(SPEC, LOG));
        var squat = spec.assessment().tests().stream().filter(t -> t.exercise().equals("goblet-squat")).findFirst().orElseThrow();
        assertEquals(Optional.empty(), squat.side());
        var right = spec.assessment().tests().stream().filter(t -> t.exercise().equals("split-squat")
                && t.side().equals(Optional.of(contrapposto.quantity.Side.RIGHT))).findFirst().orElseThrow();
        assertTrue(right.error().orElseThrow() > 0.05 && right.error().orElseThrow() < 0.2, right.toString());
        assertTrue(right.date().isBefore(spec.schedule().start()));
    }

    @Test
    void a_recheck_brings_new_measures_and_takes_out_what_is_over() {
        var next = next(SPEC, LOG + RECHECK);
        var spec = checked(next);
        assertEquals("2026-05-20", spec.assessment().date().toString());
        assertEquals("2026-05-25", spec.schedule().start().toString(), "the same weekday after the re-check");
        assertEquals(33, spec.assessment().measures().stream().filter(m -> m.what().equals("hip internal rotation")).findFirst().orElseThrow().left());
        assertEquals(2, spec.assessment().measures().size());
        assertEquals(1, spec.restrictions().size());
        assertTrue(next.contains("# before: 24 and 41"), next);
    }

    @Test
    void a_gate_holds_the_stage_until_it_is_met() {
        var gated = SPEC.replace("  minutes: 50\n", "  minutes: 50\n  start-stage: floor\n  gate: {what: hip internal rotation, difference-under: 10 deg}\n");
        assertEquals("floor", checked(next(gated, LOG)).schedule().startStage().word());
        assertEquals("standing", checked(next(gated, LOG + RECHECK)).schedule().startStage().word(), "7 degrees apart");
        assertEquals("standing", checked(next(SPEC.replace("minutes: 50", "minutes: 50\n  start-stage: supported"), LOG)).schedule().startStage().word());
    }

    @Test
    void the_head_of_the_block_before_gives_way_to_the_next() {
        var second = next(SPEC, LOG);
        var third = next(second.replace("exclude: [split-squat]", "exclude: [step-down]").replace("include: [step-up]", "include: [goblet-squat]"), LOG);
        assertEquals(1, third.lines().filter(line -> line.contains("Written by `contrapposto next`")).count(), third);
        assertEquals("Back in the boat, block 3", checked(third).title());
    }

    @Test
    void a_spec_in_one_line_is_written_anew_a_key_a_line() {
        var flow = "{format: 1, client: {name: Invented Example, height: 171 cm, mass: 64 kg}, assessment: {pelvis: {turned: right}},"
                + " schedule: {start: 2026-03-09, weeks: 10, days: [mon, thu], minutes: 50}, title: \"A block: 1 of many\"}";
        var next = next(flow, LOG);
        assertEquals("2026-05-18", checked(next).schedule().start().toString());
        assertTrue(next.lines().count() > 10, next);
    }
}
