package contrapposto.prescribe;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.prescribe.Plan.Week;
import contrapposto.select.Selection.StageWeeks;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The weeks of the plan: which are easy, which stage leads and how many repeats are kept in reserve. Effort rises once,
 * after the first easy week; someone who is to go slowly keeps the reserve of the beginning.
 */
final class Calendar {
    /** Repeats to spare at least in the first week of a plan, and of an exercise: house. */
    static final int FIRST_WEEK_RESERVE = 3;
    /** Repeats to spare in an easy week: house. */
    static final int EASY_RESERVE = 4;
    /** Repeats to spare at the hardest: house. */
    private static final int LEAST_RESERVE = 2;

    private final CheckedSpec spec;
    private final HouseRules rules;
    private final boolean slower;

    Calendar(CheckedSpec spec, HouseRules rules, boolean slower) {
        this.spec = spec;
        this.rules = rules;
        this.slower = slower;
    }

    List<Week> weeks(List<StageWeeks> stages) {
        int begin = rules.band(spec.client().trainingYears()).inReserve();
        var weeks = new ArrayList<Week>();
        for (int number = 1; number <= spec.schedule().weeks(); number++) {
            boolean easy = rules.deloadEvery() > 0 && number % rules.deloadEvery() == 0;
            boolean later = rules.deloadEvery() > 0 && number > rules.deloadEvery();
            int reserve = number == 1 ? Math.max(begin, FIRST_WEEK_RESERVE) : easy ? EASY_RESERVE
                    : later && !slower ? Math.max(LEAST_RESERVE, begin - 1) : begin;
            weeks.add(new Week(number, spec.schedule().start().plusWeeks(number - 1L), easy, reserve,
                    leading(stages, number)));
        }
        return List.copyOf(weeks);
    }

    private Stage leading(List<StageWeeks> stages, int week) {
        return stages.stream().filter(stage -> stage.firstWeek() <= week && week <= stage.lastWeek())
                .map(StageWeeks::stage).findFirst().orElse(spec.schedule().startStage());
    }

    /** The last day on which the plan may be used without a re-check. */
    LocalDate expires() {
        return spec.schedule().start().plusWeeks(spec.schedule().weeks() + (long) rules.expiryWeeks()).minusDays(1);
    }

    List<Reason> reasons() {
        var reasons = new ArrayList<Reason>();
        reasons.add(new Reason("expiry", "the plan is good until " + expires() + ", " + rules.expiryWeeks()
                + " weeks after its last week; then it wants a re-check", Source.HOUSE, "house-rules: expiry-weeks"));
        if (rules.deloadEvery() > 0 && spec.schedule().weeks() >= rules.deloadEvery()) {
            reasons.add(new Reason("easy-weeks", String.format(Locale.ROOT, "every %d weeks an easy week: fewer sets, a lighter weight "
                    + "that exists, %d in reserve; how often is a house choice, coaches report every 5.8 ± 3.4 weeks. A means, "
                    + "not a proven driver", rules.deloadEvery(), EASY_RESERVE), Source.HOUSE,
                    "house-rules: deload-every; B3.16: Rogerson et al. 2024; B2.5: ACSM 2026"));
        }
        reasons.add(Reason.of("missed-week", "a missed week is repeated, not skipped; after two missed weeks go back one step, "
                + "to the week before the last one done", Source.HOUSE));
        reasons.add(new Reason("reserve", "repeats to spare: judged best within 5 of the limit, so no set asks to stop farther "
                + "from it by feel", Source.PUBLISHED, "A7.3: Hackett et al. 2017"));
        return List.copyOf(reasons);
    }
}
