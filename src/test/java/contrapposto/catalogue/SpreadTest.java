package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.Family.Sides;
import contrapposto.catalogue.Family.Works;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The catalogue is broad enough for any person at any stage. The numbers are the house's own aims. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpreadTest {
    /** What the landing side wants, then what the drive side wants: common practice, no source. */
    private static final Set<Muscle> WANTED = EnumSet.of(Muscle.HAMSTRINGS, Muscle.UPPER_ADDUCTORS,
            Muscle.GLUTEUS_MEDIUS_FRONT, Muscle.OBLIQUES_TRANSVERSUS, Muscle.SERRATUS_ANTERIOR, Muscle.GLUTEUS_MAXIMUS,
            Muscle.GLUTEUS_MEDIUS_BACK, Muscle.QUADRICEPS, Muscle.LOWER_TRAPEZIUS, Muscle.TRICEPS_LONG_HEAD);

    private static List<Family> families(Predicate<Family> such) {
        return CatalogueTest.CATALOGUE.families().stream().filter(such).toList();
    }

    private static boolean oneArm(Family f) {
        return f.works() == Works.ARM && f.sides() == Sides.EACH;
    }

    @Test
    void sixty_families_spread_over_the_stages() {
        assertTrue(families(f -> true).size() >= 60);
        assertTrue(families(f -> f.stage() == Stage.FLOOR).size() >= 12, "floor");
        assertTrue(families(f -> f.stage() == Stage.INTEGRATED).size() >= 8, "integrated");
        assertTrue(families(f -> f.stage() == Stage.STANDING && !oneArm(f)).size() >= 14, "standing, loaded");
        // one-sided arm work stands or is supported; what is left of the supported ones still makes ten
        var arms = families(f -> (f.stage() == Stage.STANDING || f.stage() == Stage.SUPPORTED) && oneArm(f)).size();
        var supported = families(f -> f.stage() == Stage.SUPPORTED && !oneArm(f)).size();
        assertTrue(arms + supported >= 22, "upper body one-sided 12 and supported 10: " + arms + " + " + supported);
    }

    @Test
    void three_families_a_stage_train_each_wanted_muscle_from_supported_up() {
        var missing = new ArrayList<String>();
        for (var stage : List.of(Stage.SUPPORTED, Stage.STANDING, Stage.INTEGRATED)) {
            for (var muscle : WANTED) {
                int found = families(f -> f.stage() == stage && Stream.concat(f.muscles().stream(),
                        f.otherSideMuscles().stream()).anyMatch(m -> m.muscle() == muscle)).size();
                if (found < 3) {
                    missing.add(muscle.word() + " " + stage.word() + ": " + found);
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    /** With floor and wall alone and any one thing to keep away from, legs and trunk still have work on every stage but the last. */
    @ParameterizedTest
    @EnumSource(RestrictionTag.class)
    void a_bare_room_keeps_work_under_any_single_restriction(RestrictionTag tag) {
        var left = families(f -> bare(f) && (tag == RestrictionTag.GRIP || !f.tags().contains(tag.word())));
        assertTrue(left.size() >= 12, () -> tag.word() + " leaves " + left.size());
        assertTrue(left.stream().anyMatch(f -> f.works() == Works.LEG), "leg work");
        assertTrue(left.stream().anyMatch(f -> f.works() != Works.LEG), "arm or trunk work");
        var stages = EnumSet.noneOf(Stage.class);
        left.forEach(f -> stages.add(f.stage()));
        assertTrue(stages.containsAll(EnumSet.of(Stage.SUPPORTED, Stage.STANDING)), () -> tag.word() + " " + stages);
    }

    private static boolean bare(Family f) {
        return f.levers().implement().contains(Implement.BODY_WEIGHT) && f.levers().raise().from() == 0
                && List.of("wall", "mat").containsAll(f.levers().needs());
    }
}
