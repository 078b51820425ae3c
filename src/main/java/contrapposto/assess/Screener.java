package contrapposto.assess;

import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Assessed.Verdict;
import contrapposto.assess.Reason.Source;
import contrapposto.assess.ScreeningTable.Weight;
import contrapposto.check.CheckedSpec;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Reads the screening answers against {@link ScreeningTable}. The heaviest line decides: stop, then clearance, then
 * limits. A clearance not older than 12 months at the start of the program lifts the lines that a clinician may lift,
 * and leaves their limits; it never lifts a stop.
 */
final class Screener {
    /** How long a clearance serves, months; reference E1.6 (and E1.9 for a declaration). */
    static final int CLEARANCE_MONTHS = 12;
    /** From this age on the cautions for older adults hold; also for an unknown age. */
    static final int OLDER_FROM = 65;
    /** Under this age the cautions for the young hold. */
    static final int ADULT_FROM = 18;

    private final CheckedSpec spec;
    private final Set<Limit> limits = EnumSet.noneOf(Limit.class);
    private final List<String> toClear = new ArrayList<>();
    private final List<String> stops = new ArrayList<>();
    private final List<Reason> reasons = new ArrayList<>();

    private Screener(CheckedSpec spec) {
        this.spec = spec;
    }

    static Verdict verdict(CheckedSpec spec) {
        var screener = new Screener(spec);
        screener.readAnswers();
        screener.readPressure();
        screener.readConditions();
        screener.readAge();
        return screener.verdict();
    }

    /** Whether the cautions for 65 and over (or age unknown) or for under 18 hold. */
    static boolean cautious(CheckedSpec spec) {
        return older(spec) || spec.client().age().getAsInt() < ADULT_FROM;
    }

    /** Questions of the table that the spec does not answer, in order. */
    static List<String> unanswered(CheckedSpec spec) {
        return ScreeningTable.QUESTIONS.stream().filter(question -> question.equals(ScreeningTable.PRESSURE)
                ? spec.screening().systolic().isEmpty() || spec.screening().diastolic().isEmpty()
                : !spec.screening().answers().containsKey(question)).toList();
    }

    private static boolean older(CheckedSpec spec) {
        return spec.client().age().isEmpty() || spec.client().age().getAsInt() >= OLDER_FROM;
    }

    private void readAnswers() {
        var answers = spec.screening().answers();
        for (var row : ScreeningTable.ROWS) {
            boolean described = row.question().equals(ScreeningTable.PREGNANT) && Conditions.describesPregnancy(spec);
            if (!described && answers.containsKey(row.question()) && answers.get(row.question()) == row.answer()) {
                var said = Said.of("screening/answer").word("question", row.question()).word("answer", row.answer() ? "yes" : "no");
                weigh(row.question(), said, row.weight(), row.limits(), row.because(), row.reference());
            }
        }
    }

    private void readPressure() {
        int systolic = spec.screening().systolic().orElse(0);
        int diastolic = spec.screening().diastolic().orElse(0);
        ScreeningTable.PRESSURE_ROWS.stream()
                .filter(row -> row.over(systolic, diastolic) && (!row.olderOnly() || older(spec))).findFirst()
                .ifPresent(row -> weigh(ScreeningTable.PRESSURE,
                        Said.of("screening/pressure").count("systolic", systolic).count("diastolic", diastolic), row.weight(),
                        row.limits(), row.because(), row.reference()));
    }

    private void readConditions() {
        for (var held : Conditions.of(spec)) {
            var condition = held.condition();
            var kind = Said.of("screening/condition").word("kind", condition.kind().word())
                    .word("where", condition.where().map(where -> where.word()).orElse("none"));
            var said = condition.date().map(date -> kind.day("date", date)).orElse(kind.text("date", ""));
            weigh(condition.kind().word(), said, held.row().weight(), held.row().limits(), held.row().because(), held.row().reference());
        }
    }

    private void readAge() {
        var age = spec.client().age();
        if (!cautious(spec)) {
            return;
        }
        limits.addAll(List.of(Limit.HAND_SUPPORT_FOR_REAR_RAISE, Limit.BALANCE_FIRST, Limit.SLOWER_PROGRESSION, Limit.SUPERVISION));
        reasons.add(Reason.of("screening-age", age.isEmpty() ? Said.of("screening/age-unknown").count("age", OLDER_FROM)
                : Said.of("screening/age").count("age", age.getAsInt()), Source.HOUSE));
    }

    private void weigh(String question, Said said, Weight weight, List<Limit> rowLimits, Said because,
                       String reference) {
        var source = reference.isEmpty() ? Source.PRACTICE : Source.PUBLISHED;
        boolean lifted = weight == Weight.CLEARANCE && cleared();
        var outcome = switch (weight) {
            case LIMITS -> Said.of("screening/limits");
            case CLEARANCE -> lifted ? Said.of("screening/cleared").text("by", spec.clearance().orElseThrow().by())
                    .day("date", spec.clearance().orElseThrow().date()) : needs();
            case STOP -> Said.of("screening/stop");
        };
        reasons.add(new Reason("screening-" + question, said.said("because", because).said("outcome", outcome),
                source, reference));
        switch (weight) {
            case LIMITS -> limits.addAll(rowLimits);
            case CLEARANCE -> {
                if (lifted) {
                    limits.addAll(rowLimits);
                } else {
                    toClear.add(question);
                }
            }
            case STOP -> stops.add(question);
        }
    }

    private Said needs() {
        return spec.clearance().map(c -> Said.of("screening/old-clearance").day("date", c.date()).count("months", CLEARANCE_MONTHS)
                .day("start", spec.schedule().start())).orElse(Said.of("screening/needs-clearance"));
    }

    private boolean cleared() {
        return spec.clearance().filter(c -> !c.date().isBefore(spec.schedule().start().minusMonths(CLEARANCE_MONTHS)))
                .isPresent();
    }

    private Verdict verdict() {
        spec.clearance().map(CheckedSpec.Clearance::limits).map(String::strip)
                .filter(text -> !text.isEmpty() && !text.toLowerCase(Locale.ROOT).equals("none")).ifPresent(text -> {
                    limits.add(Limit.MODERATE_LOAD);
                    reasons.add(Reason.of("clearance-limits", Said.of("clearance-limits").text("limits", text), Source.HOUSE));
                });
        if (!stops.isEmpty()) {
            var all = new ArrayList<>(stops);
            all.addAll(toClear);
            return new Verdict.Stop(List.copyOf(all), List.copyOf(reasons));
        }
        if (!toClear.isEmpty()) {
            return new Verdict.NeedsClearance(List.copyOf(toClear), List.copyOf(reasons));
        }
        return limits.isEmpty() ? new Verdict.Clear(List.copyOf(reasons))
                : new Verdict.WithLimits(Collections.unmodifiableSet(EnumSet.copyOf(limits)), List.copyOf(reasons));
    }
}
