package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.prescribe.Plan;
import contrapposto.prescribe.Prescriber;
import contrapposto.select.Selector;
import contrapposto.setup.SetUpChooser;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dumbbells and no box: the best that exists is given, and the coach's page says what it lacks and what would help. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LackOnThePageTest {
    private static Plan plan;

    @BeforeAll
    static void prescribe() {
        var catalogue = CatalogueReader.house(HouseRulesReader.house());
        var squat = new Catalogue(List.of(catalogue.family("split-squat").orElseThrow()), catalogue.words(), catalogue.rules());
        var gym = Specs.gym();
        var bare = new Equipment(gym.dumbbells(), false, List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of());
        var assessed = new Assessor().assess(Specs.turned(Turned.RIGHT).equipped(bare).spec(), catalogue.rules());
        plan = new Prescriber().prescribe(new Selector().select(new SetUpChooser().choose(assessed, squat)));
    }

    private static String page(String language) {
        var order = new Composer.Order(Edition.COACH, Paper.A4, Print.PLAIN, false, Optional.of(language));
        return String.join("\n", DocumentText.of(ComposerTest.composed(plan, order).parts()));
    }

    @ParameterizedTest
    @CsvSource({"en, Equipment lacks:, a step 10 cm to 15 cm high would change the weight on the working leg from", "es, '', 10 cm", "de, '', 10 cm"})
    void the_coach_reads_what_would_help(String language, String head, String words) {
        String page = page(language).replace('\u00a0', ' ');
        assertTrue(page.contains(head), page);
        assertTrue(page.toLowerCase(java.util.Locale.ROOT).contains(words), page);
    }

    @Test
    void the_exercise_is_in_the_program_all_the_same() {
        assertTrue(plan.exercises().stream().anyMatch(e -> e.id().equals("split-squat")));
    }
}
