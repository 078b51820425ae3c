package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.Family;
import contrapposto.check.CheckedSpec;
import contrapposto.wording.Said;
import contrapposto.wording.Teller;
import contrapposto.wording.Term;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What cannot be had names what binds. Each spec is written twice: with the constraint and without it, so that the test itself
 * loosens what the message names and sees whether that alone mends it.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShortfallsTest {
    private static final int THIN_CLIENTS = Integer.getInteger("contrapposto.thin", 20);
    private static final String SPEC = """
            format: 1
            client: {name: Invented, age: 34, height: 171 cm, mass: 64 kg, training-years: 2}
            assessment: {date: 2026-03-02, pelvis: {turned: right}}
            schedule: {start: 2026-03-09, weeks: %s, days: %s, minutes: %s, start-stage: %s}
            %s
            """;

    private static String spec(String weeks, String days, String minutes, String stage, String rest) {
        return SPEC.formatted(weeks, days, minutes, stage, rest.replace("|", "\n"));
    }

    private static Selection select(String text) {
        return new Selector().select(Invented.setUps(Invented.checked(text)));
    }

    private static boolean has(Selection selection, String id) {
        return selection.exercises().stream().anyMatch(chosen -> chosen.id().equals(id));
    }

    private static List<String> binds(Selection selection) {
        return selection.shortfalls().stream().flatMap(said -> constraints(said).stream()).map(Said::key).toList();
    }

    private static Said how(Said shortfall) {
        return ((Term.Told) shortfall.terms().get("binds")).said();
    }

    private static List<Said> constraints(Said shortfall) {
        return how(shortfall).terms().get("constraints") instanceof Term.Listed(var terms)
                ? terms.stream().map(term -> ((Term.Told) term).said()).toList() : List.of();
    }

    /** What is asked for, what keeps it out, and the same spec with that alone changed. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "binds/equipment; high-to-low-press; equipment: {also: [wall]}|choose: {include: [high-to-low-press]};"
                + "equipment: {also: [wall], cable: {step: 2.5 kg, to: 60 kg}}|choose: {include: [high-to-low-press]}",
        "restriction/avoid; push-up; restrictions: [{avoid: wrist-load, side: both, because: a sprain}]|choose: {include: [push-up]};"
                + "choose: {include: [push-up]}",
        "binds/two-sided; two-leg-deadlift; equipment: {dumbbells: {from: 2 kg, to: 24 kg, step: 2 kg}}|choose: {include: [goblet-squat, two-leg-deadlift]};"
                + "equipment: {dumbbells: {from: 2 kg, to: 24 kg, step: 2 kg}}|choose: {include: [goblet-squat, two-leg-deadlift]}|aims: [strength]"})
    void what_binds_is_named_and_changing_it_alone_lets_the_exercise_in(String key, String id, String held, String loosened) {
        var before = select(spec("8", "[mon, wed, fri]", "50", "standing", held));
        assertTrue(!has(before, id));
        assertTrue(binds(before).contains(key), () -> told(before));
        var after = select(spec("8", "[mon, wed, fri]", "50", "standing", loosened));
        assertTrue(has(after, id), () -> told(after));
        assertEquals(List.of(), after.shortfalls());
    }

    @Test
    void minutes_that_are_too_few_for_all_that_is_asked_for_are_named() {
        String asked = "choose: {include: [wall-split-squat, push-up, wall-hinge, one-leg-calf-raise, half-kneeling-turn]}";
        var before = select(spec("8", "[mon, wed, fri]", "15", "standing", asked));
        assertTrue(binds(before).contains("binds/minutes"), () -> told(before));
        assertEquals(List.of(), select(spec("8", "[mon, wed, fri]", "60", "standing", asked)).shortfalls());
    }

    /** Two exercises asked for at random of clients at random: what is not in the plan has a reason that names what binds. */
    @Test
    void nothing_asked_for_is_left_out_without_naming_what_binds() {
        var families = Invented.CATALOGUE.families();
        int left = 0;
        int named = 0;
        for (int client = 0; client < Integer.getInteger("contrapposto.selection", 4); client++) {
            var chance = new Random(client);
            var asked = List.of(families.get(chance.nextInt(families.size())).id(), families.get(chance.nextInt(families.size())).id());
            var selection = new Selector().select(Invented.with(Invented.setUps(Invented.random(client)), asked, List.of()));
            for (var id : asked.stream().distinct().filter(id -> !has(selection, id)).toList()) {
                var said = selection.shortfalls().stream().filter(s -> s.terms().get("exercise") instanceof Term.Exercise(var of) && of.equals(id)).toList();
                assertEquals(1, said.size(), id);
                assertTrue(!constraints(said.getFirst()).isEmpty(), () -> told(selection));
                left++;
                named += how(said.getFirst()).key().equals("binds/alone") ? 1 : 0;
            }
        }
        if (Integer.getInteger("contrapposto.selection", 4) >= 100) {
            System.out.println("asked for and left out: " + left + ", of which a single constraint binds: " + named);
        }
    }

    /**
     * Clients at random with few weeks, few minutes and up to four things to keep away from: each week in which a day has
     * fewer than three exercises, or that has one kind of work in all, is told of, with the constraints that bind; no other week is.
     */
    @Test
    void no_day_is_empty_or_thin_without_naming_what_binds() {
        int thin = 0;
        int alone = 0;
        for (int client = 0; client < THIN_CLIENTS; client++) {
            var chance = new Random(client * 31L + 5);
            var setUps = Invented.setUps(Invented.restricted(client, chance.nextInt(5)));
            var was = setUps.assessed().spec().schedule();
            var selection = new Selector().select(Invented.with(setUps, new CheckedSpec.Schedule(was.start(), 1 + chance.nextInt(6), was.days(),
                    10 + 5 * chance.nextInt(9), was.startStage(), was.gate())));
            for (int week = 1; week <= selection.stages().getLast().lastWeek(); week++) {
                int now = week;
                var told = selection.shortfalls().stream().filter(said -> within(said, now)).toList();
                if (full(selection, now)) {
                    assertEquals(List.of(), told, "client " + client + ", week " + week);
                } else {
                    assertEquals(1, told.size(), "client " + client + ", week " + week);
                    assertTrue(!constraints(told.getFirst()).isEmpty(), () -> told(selection));
                    thin++;
                    alone += how(told.getFirst()).key().equals("binds/alone") ? 1 : 0;
                }
            }
        }
        assertTrue(thin > 0, "the clients have thin weeks");
        System.out.println(THIN_CLIENTS + " clients; empty or thin weeks: " + thin + ", of which a single constraint binds: " + alone);
    }

    private static boolean within(Said said, int week) {
        return said.terms().get("from") instanceof Term.Count(var from) && said.terms().get("to") instanceof Term.Count(var to)
                && from <= week && week <= to;
    }

    private static boolean full(Selection selection, int week) {
        var days = selection.days().stream().map(day -> works(selection, day, week)).toList();
        return days.stream().allMatch(works -> works.size() >= 3) && days.stream().flatMap(List::stream).distinct().count() >= 2;
    }

    private static List<Family.Works> works(Selection selection, Selection.Day day, int week) {
        return day.numbers().stream().map(number -> selection.exercises().get(number - 1))
                .filter(chosen -> chosen.firstWeek() <= week && week <= chosen.lastWeek())
                .map(chosen -> Invented.CATALOGUE.family(chosen.id()).orElseThrow().works()).toList();
    }

    /** Nothing left at all: no constraint alone is to blame, and it says so. */
    @Test
    void a_person_kept_from_every_movement_gets_no_plan_in_silence() {
        var selection = select(spec("8", "[mon, tue, fri]", "30", "floor", "restrictions:|"
                + String.join("|", List.of("hip", "knee", "shoulder", "elbow", "ankle", "lower-back", "floor", "kneeling").stream()
                .map(what -> "  - {avoid: " + what + ", side: both}").toList())));
        assertEquals(List.of(), selection.exercises());
        assertEquals(List.of("shortfall/empty"), selection.shortfalls().stream().map(said -> said.key()).toList());
    }

    private static String told(Selection selection) {
        return selection.exercises().stream().map(Selection.Chosen::id).toList() + " " + selection.shortfalls().stream().map(Teller.PLAIN::plain).toList();
    }
}
