package contrapposto.select;

import contrapposto.catalogue.Family;
import contrapposto.select.Selection.StageWeeks;
import contrapposto.setup.SetUpChooser;
import contrapposto.setup.SetUps;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Where a selection could not do what it should: a start later than asked for, weeks in which a day has nothing or too little to do,
 * an exercise the coach asked for that is not in the plan. Each names what binds: every hard constraint whose loosening alone would
 * mend it; where there is none, the fewest that must go together, found by putting them back one by one.
 */
final class Shortfalls {
    private final SetUps setUps;
    private final Selection selection;
    private final Function<SetUps, Selection> choosing;
    private final SetUpChooser chooser = new SetUpChooser().remembering();

    private Shortfalls(SetUps setUps, Selection selection, Function<SetUps, Selection> choosing) {
        this.setUps = setUps;
        this.selection = selection;
        this.choosing = choosing;
    }

    /** @param choosing how a selection is made, without its shortfalls */
    static List<Said> of(SetUps setUps, Selection selection, Function<SetUps, Selection> choosing) {
        return new Shortfalls(setUps, selection, choosing).all();
    }

    private List<Said> all() {
        var said = new ArrayList<Said>();
        later().ifPresent(said::add);
        runs(this::empty).forEach(weeks -> said.add(few(Said.of("shortfall/empty"), weeks, this::empty)));
        runs(this::thin).forEach(weeks -> said.add(few(Said.of("shortfall/thin"), weeks, this::thin)));
        missing().forEach(id -> said.add(asked(id)));
        return List.copyOf(said);
    }

    /** Whether something is so of a selection in one week of it. */
    private interface OfWeek {
        boolean is(Selection selection, int week);
    }

    /** Where the plan starts later than the stage asked for, by the stage that leads week 1. */
    private Optional<Said> later() {
        return asAsked(selection) ? Optional.empty() : Optional.of(Said.of("shortfall/starts-later")
                .word("asked", "stage-" + setUps.assessed().spec().schedule().startStage().word())
                .word("starts", "stage-" + selection.stages().getFirst().stage().word())
                .said("binds", binds(Loosening.ofSetUps(setUps), Loosening.ofSetUps(setUps), Shortfalls::asAsked)));
    }

    private static boolean asAsked(Selection chosen) {
        return chosen.stages().getFirst().stage() == Stages.of(chosen.setUps().assessed().spec().schedule()).blocks().getFirst().stage();
    }

    /** Runs of weeks in which this is so, each as long as it goes. */
    private List<StageWeeks> runs(OfWeek what) {
        var runs = new ArrayList<StageWeeks>();
        for (var block : selection.stages()) {
            if (what.is(selection, block.firstWeek())) {
                boolean goesOn = !runs.isEmpty() && runs.getLast().lastWeek() + 1 == block.firstWeek();
                runs.add(goesOn ? new StageWeeks(block.stage(), runs.removeLast().firstWeek(), block.lastWeek()) : block);
            }
        }
        return runs;
    }

    /** Asked for by name or by a test, known to the catalogue, and not in the plan. */
    private List<String> missing() {
        var spec = setUps.assessed().spec();
        var asked = new LinkedHashSet<>(spec.choices().include());
        spec.assessment().tests().forEach(test -> asked.add(test.exercise()));
        return asked.stream().filter(id -> setUps.catalogue().family(id).isPresent() && !has(selection, id)).toList();
    }

    private static boolean has(Selection selection, String id) {
        return selection.exercises().stream().anyMatch(chosen -> chosen.id().equals(id));
    }

    /** Whether some day of this week has nothing to do. */
    private boolean empty(Selection chosen, int week) {
        return chosen.days().stream().anyMatch(day -> works(chosen, day, week).isEmpty());
    }

    /** Whether each day of this week has something to do, but some has too little, or all have one kind of work. */
    private boolean thin(Selection chosen, int week) {
        return !empty(chosen, week) && poor(chosen, week);
    }

    /** Days that take turns may each have their own kind of work: one for the legs, one for the arms. */
    private boolean poor(Selection chosen, int week) {
        return chosen.days().stream().anyMatch(day -> works(chosen, day, week).size() < Enough.EXERCISES)
                || !Enough.in(chosen.days().stream().flatMap(day -> works(chosen, day, week).stream()).toList());
    }

    private List<Family.Works> works(Selection chosen, Selection.Day day, int week) {
        return day.numbers().stream().map(number -> chosen.exercises().get(number - 1))
                .filter(exercise -> exercise.firstWeek() <= week && week <= exercise.lastWeek())
                .map(exercise -> exercise.sides().values().getFirst().family().works()).toList();
    }

    private Said asked(String id) {
        return Said.of("shortfall/asked").exercise("exercise", id).said("binds", binds(Loosening.forExercise(setUps, id), Loosening.ofAll(setUps, id), looser -> has(looser, id)));
    }

    private Said few(Said said, StageWeeks weeks, OfWeek what) {
        return said.count("from", weeks.firstWeek()).count("to", weeks.lastWeek()).said("binds", binds(Loosening.ofAll(setUps, ""), Loosening.ofAll(setUps, ""),
                looser -> IntStream.rangeClosed(weeks.firstWeek(), weeks.lastWeek()).noneMatch(week -> empty(looser, week) || what.is(looser, week))));
    }

    /**
     * @param likely constraints that may bind alone
     * @param all    that may bind together
     */
    private Said binds(List<Loosening> likely, List<Loosening> all, Predicate<Selection> mended) {
        var alone = likely.stream().filter(loosening -> mended.test(without(List.of(loosening)))).map(Loosening::said).toList();
        if (!alone.isEmpty()) {
            return Said.of("binds/alone").listed("constraints", alone);
        }
        var together = together(all, mended).stream().map(Loosening::said).toList();
        return together.isEmpty() ? Said.of("binds/more") : Said.of("binds/together").listed("constraints", together);
    }

    /** Some that mend it together, none of which may be put back, in the order given; none where all together do not mend it. */
    private List<Loosening> together(List<Loosening> loosenings, Predicate<Selection> mended) {
        var left = loosenings;
        if (!mended.test(without(left))) {
            return List.of();
        }
        for (var loosening : loosenings) {
            var fewer = left.stream().filter(kept -> !kept.equals(loosening)).toList();
            left = mended.test(without(fewer)) ? fewer : left;
        }
        return left;
    }

    private Selection without(List<Loosening> loosenings) {
        return choosing.apply(Loosening.without(setUps, loosenings, chooser));
    }
}
