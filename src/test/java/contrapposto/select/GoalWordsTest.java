package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.wording.Phrasebook;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GoalWordsTest {
    @ParameterizedTest
    @EnumSource(Goal.class)
    void each_goal_has_its_word(Goal goal) {
        assertTrue(Phrasebook.of("en").words().contains("goal-" + goal.word()));
    }
}
