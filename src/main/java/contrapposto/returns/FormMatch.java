package contrapposto.returns;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import contrapposto.prescribe.Plan;
import contrapposto.prescribe.Plan.Dose;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Holds a form against the plan it should belong to: its boxes, and the solved plan that travels inside. */
final class FormMatch {
    private static final Pattern SHA = Pattern.compile("(?m)^spec-sha256: ['\"]?([0-9a-f]{64})");
    /** A form that lacks more than this share of the plan's boxes belongs to another plan: house. */
    private static final double FEW = 0.5;

    private final Plan plan;

    FormMatch(Plan plan) {
        this.plan = plan;
    }

    /** The form itself, perhaps with warnings; refused where it belongs to another plan. */
    Outcome<Form> held(String file, Form form) {
        var notices = new ArrayList<Notice>();
        if (form.names().stream().anyMatch(name -> FormLog.LINE.matcher(name).matches())) {
            var expected = expected();
            var missing = new TreeSet<>(expected);
            missing.removeAll(form.names());
            if (missing.size() > FEW * expected.size()) {
                return new Outcome.Refused<>(List.of(Notice.error("form-other-plan", Span.whole(file), missing.size() + " of the "
                        + expected.size() + " boxes of this spec's log are not in it, such as `" + missing.first() + "`",
                        "give the spec it was built from, as it was then, and the same catalogue and rules")));
            }
            if (!missing.isEmpty()) {
                notices.add(Notice.warning("form-boxes-missing", Span.whole(file), missing.size() + " of " + expected.size()
                        + " boxes are missing, such as `" + missing.first() + "`: the form was edited, or the spec has changed since",
                        "check that both belong together; what is missing counts as not filled"));
            }
        }
        form.plan().map(bytes -> SHA.matcher(new String(bytes, StandardCharsets.UTF_8))).filter(found -> found.find()
                && !found.group(1).equals(plan.spec().sha256())).ifPresent(found -> notices.add(Notice.warning("form-other-spec",
                Span.whole(file), "the plan inside was made from another state of the spec than the one given",
                "give the spec it was built from, if there is one; else check the sets and weights in the next one")));
        return new Outcome.Done<>(form, notices);
    }

    /** The names of the boxes for sets that the plan asks for. */
    private TreeSet<String> expected() {
        var names = new TreeSet<String>();
        for (var week : plan.weeks()) {
            for (var day : plan.days()) {
                for (int number : day.numbers()) {
                    for (var asked : Asked.of(plan, number)) {
                        String at = new Log.Slot(week.number(), day.day()).word() + "/" + asked.word() + "/";
                        asked.plan().doses().stream().filter(d -> d.week() == week.number()).findFirst()
                                .ifPresent(dose -> boxes(names, at, dose));
                    }
                }
            }
        }
        return names;
    }

    private static void boxes(TreeSet<String> names, String at, Dose dose) {
        for (int set = 1; set <= dose.sets(); set++) {
            names.add(at + "set" + set);
        }
        names.add(at + "spare");
        names.add(at + "pain");
    }
}
