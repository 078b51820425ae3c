package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.check.CheckedSpec;
import contrapposto.document.Document;
import contrapposto.notice.NoticeText;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ComposerTest {
    static final Composer.Order CLIENT = new Composer.Order(CheckedSpec.Edition.CLIENT, CheckedSpec.Paper.A4, CheckedSpec.Print.PLAIN, true);
    static final Composer.Order COACH = new Composer.Order(CheckedSpec.Edition.COACH, CheckedSpec.Paper.A4, CheckedSpec.Print.PLAIN, true);

    @Test
    void a_client_edition_has_its_five_parts_in_order() {
        assertEquals(List.of("Your plan", "Exercises", "Weeks", "Log", "Rules"), names(composed(Plans.turnedRight(), CLIENT)));
    }

    @Test
    void a_coach_edition_adds_findings_reasons_and_sources() {
        assertEquals(List.of("Your plan", "Exercises", "Weeks", "Rules", "Findings", "Reasons", "Sources"), names(composed(Plans.turnedRight(), COACH)));
    }

    @Test
    void a_withheld_plan_gives_the_referral_page_alone() {
        assertEquals(List.of("Referral"), names(composed(Plans.withheld(), CLIENT)));
    }

    static List<String> names(Document document) {
        return document.parts().stream().map(Document.Part::name).toList();
    }

    /** The document; a test that meets a notice fails and shows it. */
    static Document composed(Plan plan, Composer.Order order) {
        var outcome = new Composer(Templates.own()).compose(plan, order);
        assertEquals("", outcome.notices().stream().map(NoticeText::of).reduce("", String::concat));
        return ((Outcome.Done<Document>) outcome).value();
    }
}
