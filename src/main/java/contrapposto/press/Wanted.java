package contrapposto.press;

import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.compose.Composer;
import contrapposto.prescribe.Plan;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a call asks for; where it says nothing the spec's own {@code handout} decides.
 *
 * @param attach whether the plan goes into the PDFs as a file
 */
public record Wanted(List<Edition> chosen, Optional<Paper> paper, Optional<Print> print, boolean html, Optional<String> language,
                     boolean attach) {
    /** Nothing but what each spec asks for. */
    public static final Wanted AS_THE_SPEC_SAYS = new Wanted(List.of(), Optional.empty(), Optional.empty(), false);

    /** In the client's language, the plan attached. */
    public Wanted(List<Edition> chosen, Optional<Paper> paper, Optional<Print> print, boolean html) {
        this(chosen, paper, print, html, Optional.empty(), true);
    }

    /** The editions to print; one for a withheld plan, whose referral page is the same for all. */
    List<Edition> editions(Plan plan) {
        return plan.withheld() ? List.of(Edition.CLIENT) : chosen.isEmpty() ? plan.spec().handout().editions() : chosen;
    }

    /** What is composed for that edition. The pocket sheet is small by what it is for: it has no large print. */
    Composer.Order order(Plan plan, Edition edition) {
        var handout = plan.spec().handout();
        var size = edition == Edition.POCKET ? Print.PLAIN : print.orElse(handout.print());
        return new Composer.Order(edition, paper.orElse(handout.paper()), size, handout.log(), language);
    }

    /** The file name without spec and ending. */
    String name(Plan plan, Edition edition) {
        return plan.withheld() ? "referral" : edition.name().toLowerCase(Locale.ROOT);
    }
}
