package contrapposto.setup;

import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.wording.Phrasebook;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CriterionWordsTest {
    @ParameterizedTest
    @EnumSource(Criterion.class)
    void each_criterion_can_be_lost_on(Criterion criterion) {
        assertTrue(Phrasebook.of("en").keys().contains("lost-on/" + criterion.name().toLowerCase(Locale.ROOT)));
    }
}
