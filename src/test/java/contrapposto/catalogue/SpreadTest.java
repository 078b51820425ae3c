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
import org.junit.jupiter.params.provider.ValueSource;

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

    /** Each family counts once: arms of one side that are not on the floor and not integrated go to the upper body. */
    @Test
    void seventy_families_spread_over_the_stages() {
        assertTrue(families(f -> true).size() >= 70);
        assertTrue(families(f -> f.stage() == Stage.FLOOR).size() >= 12, "floor");
        assertTrue(families(f -> f.stage() == Stage.SUPPORTED && !oneArm(f)).size() >= 10, "supported");
        assertTrue(families(f -> f.stage() == Stage.STANDING && !oneArm(f)).size() >= 14, "standing, loaded");
        assertTrue(families(f -> (f.stage() == Stage.STANDING || f.stage() == Stage.SUPPORTED) && oneArm(f)).size() >= 12,
                "upper body, one-sided");
        assertTrue(families(f -> f.stage() == Stage.INTEGRATED).size() >= 8, "integrated");
    }

    /** A carry, a lunge with a turn, a chop, a crawl, a march and a drive against what does not give. */
    @ParameterizedTest
    @ValueSource(strings = {"suitcase-carry", "lunge-turn", "standing-chop", "all-fours-crawl", "slow-march", "wall-drive"})
    void integrated_work_has_each_of_its_kinds(String id) {
        assertEquals(1, families(f -> f.id().equals(id) && f.stage() == Stage.INTEGRATED).size());
    }

    /** Rests on the reference's table of muscle findings (D1, D3); the others are marked common practice. */
    @Test
    void a_third_of_the_families_rest_in_part_on_published_findings() {
        int published = families(CatalogueTable::published).size();
        assertTrue(published * 3 >= families(f -> true).size(), () -> "" + published);
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
