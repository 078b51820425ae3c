package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.assess.Specs;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.select.Selection.Chosen;
import contrapposto.select.Selection.StageWeeks;
import contrapposto.setup.SetUpChooser;
import contrapposto.setup.SetUps;
import contrapposto.wording.Said;
import contrapposto.wording.Term;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What is short and what binds, where the choice is ours: a choice that is mended by one constraint alone names that one. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShortfallsByHandTest {
    private static final String ASKED = "floor-bridge";
    /** Enough for a day: three exercises of two kinds. */
    private static final List<String> HELD = List.of("supported-curl", "raised-hand-push-up", "wall-one-leg-stand");

    private static CheckedSpec asking(String... ids) {
        return Specs.turned(Turned.RIGHT).spec().choosing(new CheckedSpec.Choices(List.of(ids), List.of("split-squat"), Map.of(), Map.of()));
    }

    /** The catalogue knows little, so that little is set up anew. */
    private static SetUps able(CheckedSpec spec, String... known) {
        return Arranged.knowing(Arranged.among(spec, Stream.concat(HELD.stream(), Stream.of(ASKED, "goblet-squat")).toList()), List.of(known));
    }

    private static Selection holding(SetUps setUps, String... more) {
        var ids = Stream.concat(HELD.stream(), Stream.of(more)).toList();
        var chosen = ids.stream().map(id -> new Chosen(ids.indexOf(id) + 1, id, setUps.usable().get(id), 1, 8, 2, Instead.NONE, List.of())).toList();
        return new Selection(setUps, chosen, List.of(new Selection.Day(DayOfWeek.MONDAY, chosen.stream().map(Chosen::number).toList())),
                List.of(new StageWeeks(setUps.assessed().spec().schedule().startStage(), 1, 8)), Map.of(), List.of());
    }

    /** The shortfalls of a plan with three exercises, where a choice holds what is asked for too once the spec is as this says. */
    private static List<Said> shortfalls(CheckedSpec spec, Predicate<CheckedSpec> mended) {
        var setUps = able(spec, ASKED, "goblet-squat");
        return Shortfalls.of(setUps, holding(setUps), looser -> mended.test(looser.assessed().spec()) ? holding(setUps, ASKED, "goblet-squat") : holding(setUps));
    }

    private static List<Said> of(String key, List<Said> shortfalls) {
        return shortfalls.stream().filter(said -> said.key().equals(key)).toList();
    }

    private static Said how(Said said) {
        return ((Term.Told) said.terms().get("binds")).said();
    }

    private static List<String> binds(Said said) {
        return constraints(said).stream().map(Said::key).toList();
    }

    private static List<Said> constraints(Said said) {
        return how(said).terms().get("constraints") instanceof Term.Listed listed ? listed.inside().toList() : List.of();
    }

    private static String exercise(Said said) {
        return ((Term.Exercise) said.terms().get("exercise")).id();
    }

    private static void bound(String key, CheckedSpec spec, Predicate<CheckedSpec> mended) {
        var said = shortfalls(spec, mended);
        assertEquals(List.of(ASKED), said.stream().map(ShortfallsByHandTest::exercise).toList());
        assertEquals("shortfall/asked", said.getFirst().key());
        assertEquals(List.of(key), binds(said.getFirst()));
    }

    @Test
    void each_constraint_of_time_is_named_when_it_alone_is_in_the_way() {
        bound("binds/minutes", asking(ASKED), spec -> spec.schedule().minutes() == 240);
        bound("binds/days", asking(ASKED), spec -> spec.schedule().days().size() == 1);
        bound("binds/stage", asking(ASKED), spec -> spec.schedule().startStage() == Stage.INTEGRATED);
        bound("binds/excluded", asking(ASKED), spec -> spec.choices().exclude().isEmpty());
        bound("binds/two-sided", asking(ASKED), spec -> spec.aims().getFirst() == Aim.STRENGTH);
        var test = new CheckedSpec.Test("supported-curl", Optional.of(Side.LEFT), Mass.ofKilograms(8), 8, 2, SetUpWish.NONE, Specs.START);
        bound("binds/asked", Specs.turned(Turned.RIGHT).tested(List.of(test)).spec().choosing(new CheckedSpec.Choices(List.of(ASKED), List.of(), Map.of(), Map.of())),
                spec -> spec.assessment().tests().isEmpty());
        bound("binds/two-sided", asking(ASKED).aiming(List.of()), spec -> !spec.aims().isEmpty());
        var said = shortfalls(asking(ASKED, "supported-curl"), spec -> spec.choices().include().equals(List.of(ASKED)) && spec.assessment().tests().isEmpty());
        assertEquals(List.of("binds/asked"), binds(said.getFirst()));
    }

    @Test
    void what_is_no_constraint_here_is_not_looked_at() {
        var s = asking(ASKED).schedule();
        var alone = asking(ASKED).scheduled(new CheckedSpec.Schedule(s.start(), s.weeks(), List.of(DayOfWeek.MONDAY), s.minutes(), Stage.INTEGRATED, s.gate()))
                .choosing(new CheckedSpec.Choices(List.of(ASKED), List.of(), Map.of(), Map.of())).aiming(List.of(Aim.STRENGTH));
        var said = shortfalls(alone, spec -> true).getFirst();
        assertEquals(List.of("binds/minutes"), binds(said));
        assertEquals(50, ((Term.Count) constraints(said).getFirst().terms().get("minutes")).count());
    }

    @Test
    void several_that_would_each_mend_it_are_all_named_in_order() {
        var said = shortfalls(asking(ASKED), spec -> spec.schedule().minutes() == 240 || spec.schedule().days().size() == 1).getFirst();
        assertEquals(List.of("binds/minutes", "binds/days"), binds(said));
        assertEquals(Said.of("binds/days").words("days", List.of("monday", "wednesday", "friday")), constraints(said).getLast());
    }

    @Test
    void several_that_only_mend_it_together_are_named_together_and_no_other() {
        var said = shortfalls(asking(ASKED), spec -> spec.schedule().minutes() == 240 && spec.schedule().days().size() == 1).getFirst();
        assertEquals("binds/together", how(said).key());
        assertEquals(List.of("binds/minutes", "binds/days"), binds(said));
    }

    @Test
    void what_no_constraint_mends_says_so() {
        assertEquals("binds/more", how(shortfalls(asking(ASKED), spec -> false).getFirst()).key());
    }

    @Test
    void tests_ask_too_once_each_and_unknown_exercises_do_not() {
        var test = new CheckedSpec.Test(ASKED, Optional.of(Side.LEFT), Mass.ofKilograms(8), 8, 2, SetUpWish.NONE, Specs.START);
        var spec = Specs.turned(Turned.RIGHT).tested(List.of(test, test)).spec().choosing(new CheckedSpec.Choices(List.of("goblet-squat", "no-such-family", "supported-curl"), List.of(), Map.of(), Map.of()));
        assertEquals(List.of("goblet-squat", ASKED), shortfalls(spec, any -> true).stream().map(ShortfallsByHandTest::exercise).toList());
        assertEquals(List.of(), shortfalls(asking("supported-curl"), any -> false));
    }

    private static Selection weeks(SetUps setUps, List<StageWeeks> stages, int... windows) {
        var chosen = new java.util.ArrayList<Chosen>();
        for (int i = 0; i < windows.length; i += 2) {
            chosen.add(new Chosen(i / 2 + 1, "supported-curl", setUps.usable().get("supported-curl"), windows[i], windows[i + 1], 2, Instead.NONE, List.of()));
        }
        var numbers = chosen.stream().map(Chosen::number).toList();
        return new Selection(setUps, chosen, List.of(new Selection.Day(DayOfWeek.MONDAY, numbers), new Selection.Day(DayOfWeek.THURSDAY, numbers)), stages, Map.of(), List.of());
    }

    private static List<String> empty(List<StageWeeks> stages, int... windows) {
        var setUps = able(asking());
        return of("shortfall/empty", Shortfalls.of(setUps, weeks(setUps, stages, windows), looser -> weeks(setUps, stages, windows))).stream()
                .map(said -> said.key() + " " + ((Term.Count) said.terms().get("from")).count() + "-" + ((Term.Count) said.terms().get("to")).count()).toList();
    }

    @Test
    void weeks_without_work_are_told_as_long_as_they_go() {
        var three = List.of(new StageWeeks(Stage.FLOOR, 1, 2), new StageWeeks(Stage.SUPPORTED, 3, 4), new StageWeeks(Stage.STANDING, 5, 8));
        assertEquals(List.of(), empty(three, 1, 8));
        assertEquals(List.of(), empty(three, 1, 2, 3, 5));
        assertEquals(List.of("shortfall/empty 5-8"), empty(three, 1, 4));
        assertEquals(List.of("shortfall/empty 3-8"), empty(three, 1, 2), "two runs that touch are one");
        assertEquals(List.of("shortfall/empty 1-2", "shortfall/empty 5-8"), empty(three, 3, 4));
        assertEquals(List.of("shortfall/empty 1-8"), empty(three));
    }

    @Test
    void one_day_without_work_is_enough() {
        var setUps = able(asking());
        var full = weeks(setUps, List.of(new StageWeeks(Stage.STANDING, 1, 8)), 1, 8);
        var half = new Selection(setUps, full.exercises(), List.of(full.days().getFirst(), new Selection.Day(DayOfWeek.THURSDAY, List.of())), full.stages(), Map.of(), List.of());
        assertEquals(1, of("shortfall/empty", Shortfalls.of(setUps, half, looser -> half)).size());
    }

    /** A day with something, but fewer than three exercises or one kind of work, is told as thin, not as empty. */
    @Test
    void a_day_with_too_little_is_thin() {
        var setUps = able(asking());
        var one = weeks(setUps, List.of(new StageWeeks(Stage.STANDING, 1, 8)), 1, 8);
        var said = of("shortfall/thin", Shortfalls.of(setUps, one, looser -> one));
        assertEquals(1, said.size());
        assertEquals("binds/more", how(said.getFirst()).key());
        assertEquals(List.of(), of("shortfall/empty", Shortfalls.of(setUps, one, looser -> one)));
    }

    private static List<String> mending(CheckedSpec spec, Predicate<SetUps> mended) {
        var setUps = able(spec);
        var stages = List.of(new StageWeeks(Stage.STANDING, 1, 8));
        var said = of("shortfall/empty", Shortfalls.of(setUps, weeks(setUps, stages), looser -> mended.test(looser) ? weeks(setUps, stages, 1, 8) : weeks(setUps, stages)));
        return binds(said.getFirst());
    }

    @Test
    void empty_weeks_name_room_restrictions_and_person_too() {
        var restricted = Specs.turned(Turned.RIGHT).restricted(new Restriction.Avoid(RestrictionTag.KNEELING.word(), EnumSet.allOf(Side.class), Optional.empty(), "")).spec();
        assertEquals(List.of("binds/equipment"), mending(restricted, setUps -> setUps.assessed().spec().equipment().also().contains("rail")));
        assertEquals(List.of("restriction/avoid"), mending(restricted, setUps -> setUps.assessed().restrained().isEmpty()));
        assertEquals(List.of("binds/person"), mending(restricted, setUps -> setUps.assessed().spec().client().trainingYears() == 5));
        assertEquals(List.of("binds/minutes"), mending(restricted, setUps -> setUps.assessed().spec().schedule().minutes() == 240));
    }

    /** Where an exercise cannot be set up at all, its room, body and finding are looked at, not the time. */
    @Test
    void an_exercise_that_cannot_be_set_up_names_what_keeps_it_out() {
        var setUps = able(asking());
        assertEquals(List.of("binds/equipment", "binds/person", "binds/finding"), Loosening.forExercise(setUps, "step-up").stream().map(one -> one.said().key()).toList());
        var square = able(Specs.turned(Turned.SQUARE).spec());
        assertEquals(List.of("binds/equipment", "binds/person"), Loosening.forExercise(square, "step-up").stream().map(one -> one.said().key()).toList());
        var found = Loosening.without(setUps, List.of(Loosening.forExercise(setUps, "step-up").getLast()), new SetUpChooser());
        assertEquals(Turned.SQUARE, found.assessed().spec().assessment().turned());
        var furnished = Loosening.without(setUps, List.of(Loosening.forExercise(setUps, "step-up").getFirst()), new SetUpChooser()).assessed().spec().equipment();
        assertEquals(List.of(1.0, 40.0, 40.0), List.of(furnished.dumbbells().getFirst().kilograms(), furnished.dumbbells().getLast().kilograms(), (double) furnished.dumbbells().size()));
        assertEquals(List.of(5, 60, 12), List.of((int) Math.round(furnished.boxes().getFirst().metres() * 100), (int) Math.round(furnished.boxes().getLast().metres() * 100), furnished.boxes().size()));
    }
}
