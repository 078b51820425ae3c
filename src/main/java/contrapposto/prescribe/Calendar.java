package contrapposto.prescribe;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.prescribe.Plan.Week;
import contrapposto.select.Selection.StageWeeks;
import contrapposto.wording.Said;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

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
            boolean easy = easyEvery() > 0 && number % easyEvery() == 0;
            boolean later = easyEvery() > 0 && number > easyEvery();
            int reserve = number == 1 ? Math.max(begin, FIRST_WEEK_RESERVE) : easy ? EASY_RESERVE
                    : later && !slower ? Math.max(LEAST_RESERVE, begin - 1) : begin;
            weeks.add(new Week(number, spec.schedule().start().plusWeeks(number - 1L), easy, reserve,
                    leading(stages, number)));
        }
        return List.copyOf(weeks);
    }

    /** Weeks from one easy week to the next, 0 for none: as the coach has it, else as the house. */
    private int easyEvery() {
        return spec.schedule().easyEvery().orElse(rules.deloadEvery());
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
        reasons.add(new Reason("expiry", Said.of("expiry").day("until", expires()).count("weeks", rules.expiryWeeks()), Source.HOUSE, "house-rules: expiry-weeks"));
        if (easyEvery() > 0 && spec.schedule().weeks() >= easyEvery()) {
            reasons.add(new Reason("easy-weeks", Said.of("easy-weeks").count("every", easyEvery()).count("reserve", EASY_RESERVE)
                    .number("reported", 5.8, 1).number("spread", 3.4, 1), spec.schedule().easyEvery().isPresent() ? Source.COACH : Source.HOUSE,
                    (spec.schedule().easyEvery().isPresent() ? "" : "house-rules: deload-every; ") + "B3.16: Rogerson et al. 2024; B2.5: ACSM 2026"));
        }
        reasons.add(Reason.of("missed-week", Said.of("missed-week"), Source.HOUSE));
        reasons.add(new Reason("reserve", Said.of("reserve"), Source.PUBLISHED, "A7.3: Hackett et al. 2017"));
        return List.copyOf(reasons);
    }
}
