package contrapposto.assess;

import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Assessed.Verdict;
import contrapposto.assess.Reason.Source;
import contrapposto.assess.ScreeningTable.Weight;
import contrapposto.check.CheckedSpec;
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
                String said = row.question() + ": " + (row.answer() ? "yes" : "no");
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
                        ScreeningTable.PRESSURE + ": " + systolic + "/" + diastolic + " mmHg", row.weight(), row.limits(),
                        row.because(), row.reference()));
    }

    private void readConditions() {
        for (var held : Conditions.of(spec)) {
            var condition = held.condition();
            String said = condition.kind().word() + condition.where().map(where -> " of the " + where.word()).orElse("")
                    + condition.date().map(date -> ", " + date).orElse("");
            weigh(condition.kind().word(), said, held.row().weight(), held.row().limits(), held.row().because(), held.row().reference());
        }
    }

    private void readAge() {
        var age = spec.client().age();
        if (!cautious(spec)) {
            return;
        }
        limits.addAll(List.of(Limit.HAND_SUPPORT_FOR_REAR_RAISE, Limit.SLOWER_PROGRESSION, Limit.SUPERVISION));
        String who = age.isEmpty() ? "age unknown: the cautions for " + OLDER_FROM + " and over hold"
                : "age " + age.getAsInt();
        reasons.add(Reason.of("screening-age", who + ": balance first, slower progression, a hand support when the rear foot is "
                + "raised, someone in the room", Source.HOUSE));
    }

    private void weigh(String question, String said, Weight weight, List<Limit> rowLimits, String because,
                       String reference) {
        var source = reference.isEmpty() ? Source.PRACTICE : Source.PUBLISHED;
        boolean lifted = weight == Weight.CLEARANCE && cleared();
        String outcome = switch (weight) {
            case LIMITS -> "go on with limits";
            case CLEARANCE -> lifted ? "cleared by " + spec.clearance().orElseThrow().by() + " on "
                    + spec.clearance().orElseThrow().date() + ", with limits" : needs();
            case STOP -> "no program, and no clearance on file lifts this";
        };
        reasons.add(new Reason("screening-" + question, said + "; " + because + ": " + outcome, source, reference));
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

    private String needs() {
        return spec.clearance().map(c -> "the clearance of " + c.date() + " is older than " + CLEARANCE_MONTHS
                + " months at the start, " + spec.schedule().start()).orElse("needs clearance");
    }

    private boolean cleared() {
        return spec.clearance().filter(c -> !c.date().isBefore(spec.schedule().start().minusMonths(CLEARANCE_MONTHS)))
                .isPresent();
    }

    private Verdict verdict() {
        spec.clearance().map(CheckedSpec.Clearance::limits).map(String::strip)
                .filter(text -> !text.isEmpty() && !text.toLowerCase(Locale.ROOT).equals("none")).ifPresent(text -> {
                    limits.add(Limit.MODERATE_LOAD);
                    reasons.add(Reason.of("clearance-limits", "the clearance sets limits: " + text
                            + "; loads stay at the low end, and a person has to check the plan against these words",
                            Source.HOUSE));
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
