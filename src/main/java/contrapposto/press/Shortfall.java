package contrapposto.press;

import contrapposto.check.CheckedSpec;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import contrapposto.prescribe.Plan;
import contrapposto.wording.Said;
import contrapposto.wording.Teller;
import java.util.ArrayList;
import java.util.List;

/** Says on the screen what a plan could not do, and refuses a plan that has nothing to do. */
final class Shortfall {
    private static final String WAY_OUT = "change one of the constraints named, or take the exercise out of `choose.include`";

    private Shortfall() { }

    /** The plan with a warning for each shortfall; refused where it holds no exercise at all. */
    static Outcome<Plan> told(Plan plan, CheckedSpec spec) {
        var place = Span.whole(spec.fileName());
        var notices = new ArrayList<Notice>();
        for (Said warning : plan.warnings()) {
            if (warning.key().startsWith("shortfall/empty") && plan.exercises().isEmpty()) {
                notices.add(Notice.error("nothing-to-do", place, Teller.PLAIN.plain(warning),
                        "change one of the constraints named; `contrapposto explain` says for each exercise what keeps it out"));
            } else if (warning.key().startsWith("shortfall/")) {
                notices.add(Notice.warning("plan-falls-short", place, Teller.PLAIN.plain(warning), WAY_OUT));
            }
        }
        return plan.exercises().isEmpty() && !plan.withheld() && !notices.isEmpty() ? new Outcome.Refused<>(List.copyOf(notices))
                : new Outcome.Done<>(plan, List.copyOf(notices));
    }
}
