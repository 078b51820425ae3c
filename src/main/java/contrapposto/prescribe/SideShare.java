package contrapposto.prescribe;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.Family.Works;
import contrapposto.prescribe.Plan.Week;
import contrapposto.quantity.Sided;
import contrapposto.select.Selection;
import contrapposto.select.Selection.Chosen;
import contrapposto.select.Selection.StageWeeks;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/**
 * Lets the share of lower-body sets that are set up per side fall from stage to stage, as movement returns: a set less of
 * an exercise that has its own set-up on each side, a set more of one that is the same on both. What the house wants is met
 * as nearly as whole sets allow. Held where the coach has set a gate, and where the pelvis is square.
 */
final class SideShare {
    private static final int LEAST_SETS = 2;
    private static final int MOST_SETS = 4;

    private final Selection selection;
    private final ToIntFunction<Chosen> base;
    private final boolean moreSets;
    private final Map<Integer, Map<Integer, Integer>> setsByWeek = new TreeMap<>();
    private final List<Reason> reasons = new ArrayList<>();

    /**
     * @param base     sets of an exercise before the shares are looked at
     * @param moreSets whether there are minutes for a further set of an exercise that is the same on both sides
     */
    SideShare(Selection selection, ToIntFunction<Chosen> base, boolean moreSets) {
        this.selection = selection;
        this.base = base;
        this.moreSets = moreSets;
        var assessed = selection.setUps().assessed();
        if (assessed.landing().isEmpty()) {
            return;
        }
        if (assessed.spec().schedule().gate().isPresent()) {
            reasons.add(Reason.of("side-specific", Said.of("side-specific/held"), Source.COACH));
            return;
        }
        selection.stages().forEach(this::settle);
    }

    /** Sets of an exercise in a week that is not easy. */
    int sets(Chosen chosen, Week week) {
        return setsByWeek.getOrDefault(chosen.number(), Map.of()).getOrDefault(week.number(), base.applyAsInt(chosen));
    }

    List<Reason> reasons() {
        return List.copyOf(reasons);
    }

    private void settle(StageWeeks stage) {
        var lower = selection.exercises().stream().filter(chosen -> chosen.firstWeek() <= stage.lastWeek()
                && chosen.lastWeek() >= stage.firstWeek() && lower(chosen)).toList();
        if (lower.stream().noneMatch(SideShare::specific) || lower.stream().allMatch(SideShare::specific)) {
            return;
        }
        double wanted = selection.setUps().catalogue().rules().sideSpecific().getOrDefault(stage.stage(), 1.0);
        int[] now = lower.stream().mapToInt(base).toArray();
        int[] best = now.clone();
        double before = share(lower, now);
        search(lower, now, 0, wanted, best);
        for (int i = 0; i < best.length; i++) {
            for (int week = stage.firstWeek(); week <= stage.lastWeek(); week++) {
                setsByWeek.computeIfAbsent(lower.get(i).number(), key -> new TreeMap<>()).put(week, best[i]);
            }
        }
        reasons.add(new Reason("side-specific", Said.of("side-specific").word("stage", "stage-" + stage.stage().word())
                .count("first", stage.firstWeek()).count("last", stage.lastWeek()).percent("share", share(lower, best), 0)
                .percent("wanted", wanted, 0).percent("before", before, 0), Source.HOUSE, "house-rules: side-specific"));
    }

    /** Every way of one set less or more; the nearest to {@code wanted} wins, among equals the one found first. */
    private void search(List<Chosen> lower, int[] now, int at, double wanted, int[] best) {
        if (at == lower.size()) {
            if (away(lower, now, wanted) < away(lower, best, wanted) - 1e-9) {
                System.arraycopy(now, 0, best, 0, now.length);
            }
            return;
        }
        search(lower, now, at + 1, wanted, best);
        int own = now[at];
        boolean specific = specific(lower.get(at));
        if (specific ? own > LEAST_SETS : moreSets && own < MOST_SETS) {
            now[at] = specific ? own - 1 : own + 1;
            search(lower, now, at + 1, wanted, best);
            now[at] = own;
        }
    }

    /** How far over the wanted share; a share under it is as good as met. */
    private double away(List<Chosen> lower, int[] sets, double wanted) {
        return Math.max(0, share(lower, sets) - wanted);
    }

    private double share(List<Chosen> lower, int[] sets) {
        double own = 0;
        double all = 0;
        for (int i = 0; i < sets.length; i++) {
            int number = lower.get(i).number();
            long weekly = sets[i] * selection.days().stream().filter(day -> day.numbers().contains(number)).count();
            own += specific(lower.get(i)) ? weekly : 0;
            all += weekly;
        }
        return all == 0 ? 0 : own / all;
    }

    private static boolean lower(Chosen chosen) {
        return chosen.sides().values().getFirst().family().works() == Works.LEG;
    }

    private static boolean specific(Chosen chosen) {
        return !(chosen.sides() instanceof Sided.Whole<SolvedSetUp>);
    }
}
