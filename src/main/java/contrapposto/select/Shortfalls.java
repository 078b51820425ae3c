package contrapposto.select;

import contrapposto.select.Selection.StageWeeks;
import contrapposto.setup.SetUps;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Where a selection could not do what it should: an exercise the coach asked for that is not in the plan, and weeks in which
 * a session has nothing to do. Each names what binds: every hard constraint whose loosening alone would mend it.
 */
final class Shortfalls {
    private final SetUps setUps;
    private final Selection selection;
    private final Function<SetUps, Selection> choosing;

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
        var missing = missing();
        emptyWeeks().forEach(weeks -> said.add(empty(weeks)));
        missing.forEach(id -> said.add(asked(id)));
        return List.copyOf(said);
    }

    /** Runs of weeks in which some day has nothing to do, each as long as it goes. */
    private List<StageWeeks> emptyWeeks() {
        var runs = new ArrayList<StageWeeks>();
        for (var block : selection.stages()) {
            if (empty(selection, block)) {
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

    /** Whether some day of these weeks has nothing to do. */
    private static boolean empty(Selection selection, StageWeeks block) {
        return selection.days().stream().anyMatch(day -> day.numbers().stream().map(number -> selection.exercises().get(number - 1))
                .noneMatch(chosen -> chosen.firstWeek() <= block.lastWeek() && chosen.lastWeek() >= block.firstWeek()));
    }

    private Said asked(String id) {
        var binds = binding(Loosening.forExercise(setUps, id), looser -> has(looser, id));
        var said = Said.of(binds.isEmpty() ? "shortfall/asked-together" : "shortfall/asked").exercise("exercise", id);
        return said.listed("binds", binds.isEmpty() ? selection.leftOut().getOrDefault(id, List.of()).stream().map(r -> r.said()).toList() : binds);
    }

    private Said empty(StageWeeks block) {
        var binds = binding(Loosening.ofAll(setUps), looser -> looser.stages().stream().noneMatch(b -> empty(looser, b)));
        var said = Said.of(binds.isEmpty() ? "shortfall/empty-together" : "shortfall/empty").count("from", block.firstWeek())
                .count("to", block.lastWeek());
        return binds.isEmpty() ? said : said.listed("binds", binds);
    }

    private List<Said> binding(List<Loosening> loosenings, Predicate<Selection> mended) {
        return loosenings.stream().filter(loosening -> mended.test(choosing.apply(loosening.setUps().get()))).map(Loosening::said).toList();
    }
}
