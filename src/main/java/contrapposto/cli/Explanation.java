package contrapposto.cli;

import contrapposto.assess.Reason;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.wording.Teller;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The decisions of a plan as plain text: what was chosen and why, what lost and on what, what was left out and why. */
record Explanation(Plan plan) {
    private static final String LANGUAGE = "en";

    boolean withheld() {
        return plan.withheld();
    }

    /** All of it, or what concerns one family and one side. */
    String text(Optional<String> exercise, Optional<Side> side) {
        var text = new StringBuilder();
        if (exercise.isEmpty()) {
            whole(text);
        }
        plan.exercises().stream().filter(e -> exercise.isEmpty() || exercise.get().equals(e.id())).forEach(e -> exercise(text, e, side));
        leftOut(text, exercise);
        return text.toString();
    }

    private void whole(StringBuilder text) {
        var assessed = plan.assessed();
        text.append(plan.spec().client().label()).append(": ").append(assessed.landing()
                .map(landing -> "landing side " + landing.word() + ", drive side " + landing.other().word()).orElse("both sides the same")).append("\n\n");
        text.append("the finding\n");
        reasons(text, assessed.reasons(), "  ");
        text.append("screening\n");
        reasons(text, assessed.verdict().reasons(), "  ");
        if (!plan.reasons().isEmpty() && !withheld()) {
            text.append("the plan\n");
            reasons(text, plan.reasons(), "  ");
        }
        plan.warnings().forEach(warning -> text.append("  to look at: ").append(teller().plain(warning)).append('\n'));
        text.append('\n');
    }

    private void exercise(StringBuilder text, Plan.Exercise exercise, Optional<Side> only) {
        text.append(exercise.number()).append(' ').append(name(exercise.id())).append(" (").append(exercise.id()).append(")\n");
        reasons(text, exercise.reasons(), "  ");
        List<Side> sides = exercise.sides() instanceof Sided.Whole<?> ? List.of(Side.LEFT) : exercise.sides().sides();
        for (Side side : sides) {
            boolean whole = exercise.sides() instanceof Sided.Whole<?>;
            if (whole || only.isEmpty() || only.get() == side) {
                side(text, whole ? "both sides" : side.word(), exercise.sides().on(side));
            }
        }
        text.append('\n');
    }

    private void side(StringBuilder text, String side, Plan.SidePlan told) {
        var solved = told.solved();
        text.append("  ").append(side).append(": ").append(solved.role().word())
                .append(solved.phase().map(phase -> ", " + phase.name().toLowerCase(Locale.ROOT).replace('_', '-')).orElse(""))
                .append(solved.byCoach() ? ", set up by the coach" : "").append('\n');
        reasons(text, solved.reasons(), "    ");
        reasons(text, told.reasons(), "    ");
        solved.lacks().ifPresent(lacks -> text.append("    equipment lacks: ").append(teller().plain(lacks)).append('\n'));
        solved.runnerUp().ifPresent(second -> text.append("    second best: ").append(teller().plain(second.summary())).append("; lost on ")
                .append(teller().plain(second.lostOn())).append('\n'));
    }

    private void leftOut(StringBuilder text, Optional<String> exercise) {
        var out = plan.leftOut().entrySet().stream().filter(e -> exercise.isEmpty() || exercise.get().equals(e.getKey())).toList();
        if (!out.isEmpty()) {
            text.append("not used\n");
            out.forEach(entry -> {
                text.append("  ").append(name(entry.getKey())).append(" (").append(entry.getKey()).append(")\n");
                reasons(text, entry.getValue(), "    ");
            });
        }
    }

    private Teller teller() {
        return Teller.screen(plan.spec().client().units());
    }

    private String name(String id) {
        return plan.catalogue().words(LANGUAGE, id).name();
    }

    private void reasons(StringBuilder text, List<Reason> reasons, String indent) {
        for (Reason reason : reasons) {
            text.append(indent).append("- ").append(teller().plain(reason.said())).append(" [").append(reason.source().name().toLowerCase(Locale.ROOT))
                    .append(reason.reference().isEmpty() ? "" : "; " + reason.reference()).append("]\n");
        }
    }
}
