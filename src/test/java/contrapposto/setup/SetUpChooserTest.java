package contrapposto.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.body.Joint;
import contrapposto.body.Pose;
import contrapposto.body.Joint;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.catalogue.Phase;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.check.CheckedSpec.Measure;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import contrapposto.wording.Teller;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The reference set-ups of the trade (common practice, no source): they must come out of levers, targets and solved poses.
 * Written for a pelvis turned right or left by roles, so that one statement checks both.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SetUpChooserTest {
    static final HouseRules RULES = HouseRulesReader.house();
    static final Catalogue CATALOGUE = CatalogueReader.house(RULES);

    /** Only these families, so that a test solves no more than it looks at. */
    static Catalogue only(String... ids) {
        return new Catalogue(CATALOGUE.families().stream().filter(f -> List.of(ids).contains(f.id())).toList(),
                CATALOGUE.words(), RULES);
    }

    static SetUps chosen(Specs specs, String... ids) {
        return new SetUpChooser().choose(new Assessor().assess(specs.spec(), RULES), only(ids));
    }

    private static Side landing(Turned turned) {
        return turned == Turned.RIGHT ? Side.LEFT : Side.RIGHT;
    }

    @ParameterizedTest
    @EnumSource(names = {"LEFT", "RIGHT"})
    void a_split_squat_lands_on_a_raised_front_foot_and_drives_from_a_raised_rear_foot(Turned turned) {
        var landing = landing(turned);
        var sides = chosen(Specs.turned(turned), "split-squat").usable().get("split-squat");
        var lands = sides.on(landing);
        assertEquals(Optional.of(landing), lands.setUp().frontFoot());
        assertTrue(lands.setUp().frontRaise().metres() > 0 && lands.setUp().rearRaise().metres() == 0);
        assertEquals(Optional.of(landing.other()), lands.setUp().loadHand());
        assertTrue(lands.setUp().hipShift());
        assertEquals(Optional.of(Phase.EARLY_TO_MID), lands.phase());
        assertTrue(Math.abs(lands.pose().mechanics().shinWorking()) <= 5, "shin about vertical");
        assertTrue(lands.pose().mechanics().shinStart() < 0, "starts tilted back");

        var drives = sides.on(landing.other());
        assertEquals(Optional.of(landing.other()), drives.setUp().frontFoot());
        assertTrue(drives.setUp().rearRaise().metres() > 0 && drives.setUp().frontRaise().metres() == 0);
        assertEquals(Optional.of(landing.other()), drives.setUp().loadHand());
        assertFalse(drives.setUp().hipShift());
        assertEquals(Optional.of(Phase.MID_TO_LATE), drives.phase());
        assertTrue(drives.pose().mechanics().shinWorking() > 10, "shin tilted forward");

        for (var side : sides.values()) {
            assertTrue(side.pose().mechanics().turnMoment() * landing.sign() > 0, "the weight turns toward the landing side");
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"LEFT", "RIGHT"})
    void a_high_to_low_press_is_done_by_the_drive_side_arm_with_that_foot_ahead(Turned turned) {
        var landing = landing(turned);
        var setUps = chosen(Specs.turned(turned), "high-to-low-press");
        var sides = setUps.usable().get("high-to-low-press");
        assertEquals(List.of(landing.other()), sides.sides());
        var press = sides.on(landing.other());
        assertEquals(Optional.of(landing.other()), press.setUp().frontFoot());
        assertEquals(Optional.of(landing.other()), press.setUp().loadHand());
        double slope = press.pose().mechanics().lineOfPull();
        assertTrue(slope >= 10 && slope <= 20, () -> "slopes down " + slope);
        assertTrue(press.setUp().pulley().metres() > press.pose().working().at(Joint.HEAD_TOP).getZ() - 0.25, "head height or above");
        assertEquals("turn", setUps.refused().get("high-to-low-press").get(landing).getFirst().rule());
    }

    @ParameterizedTest
    @EnumSource(names = {"LEFT", "RIGHT"})
    void a_kickstand_hinge_drives_with_the_weight_in_the_same_hand(Turned turned) {
        var landing = landing(turned);
        var sides = chosen(Specs.turned(turned), "kickstand-hinge").usable().get("kickstand-hinge");
        assertEquals(List.of(landing.other()), sides.sides());
        var drives = sides.on(landing.other());
        assertEquals(Optional.of(landing.other()), drives.setUp().frontFoot());
        assertEquals(Optional.of(landing.other()), drives.setUp().loadHand());
    }

    @ParameterizedTest
    @EnumSource(names = {"LEFT", "RIGHT"})
    void a_staggered_hinge_lands_on_the_foot_behind_with_its_heel_raised_and_drives_on_the_foot_ahead(Turned turned) {
        var landing = landing(turned);
        var sides = chosen(Specs.turned(turned), "staggered-deadlift").usable().get("staggered-deadlift");
        var lands = sides.on(landing);
        assertEquals(Optional.of(landing.other()), lands.setUp().frontFoot());
        assertEquals(Optional.of(landing), lands.setUp().wedgeFoot());
        assertTrue(lands.setUp().heelWedge().metres() > 0);
        assertEquals(Optional.of(landing.other()), lands.setUp().loadHand());
        var drives = sides.on(landing.other());
        assertEquals(Optional.of(landing.other()), drives.setUp().frontFoot());
        assertEquals(Optional.of(landing.other()), drives.setUp().loadHand());
        assertEquals(0, drives.setUp().heelWedge().metres());
    }

    @ParameterizedTest
    @EnumSource(names = {"LEFT", "RIGHT"})
    void what_opens_ribs_or_turns_is_done_on_the_side_that_needs_it_alone(Turned turned) {
        var landing = landing(turned);
        var usable = chosen(Specs.turned(turned), "raised-hand-push-up", "supported-curl", "triceps-extension").usable();
        assertEquals(List.of(landing), usable.get("raised-hand-push-up").sides());
        assertTrue(usable.get("raised-hand-push-up").on(landing).setUp().raise().metres() > 0);
        assertEquals(List.of(landing), usable.get("supported-curl").sides());
        assertEquals(Optional.of(landing), usable.get("supported-curl").on(landing).setUp().loadHand());
        assertEquals(List.of(landing.other()), usable.get("triceps-extension").sides());
    }

    @Test
    void a_square_pelvis_does_what_turns_on_both_sides() {
        var usable = chosen(Specs.turned(Turned.SQUARE), "raised-hand-push-up", "supported-curl").usable();
        usable.values().forEach(sides -> assertEquals(List.of(Side.LEFT, Side.RIGHT), sides.sides()));
    }

    @Test
    void without_a_box_the_best_there_is_says_what_would_help() {
        var gym = Specs.gym();
        var bare = new Equipment(gym.dumbbells(), false, List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(),
                List.of(), Set.of());
        var sides = chosen(Specs.turned(Turned.RIGHT).equipped(bare), "split-squat").usable().get("split-squat");
        assertEquals(0, sides.on(Side.LEFT).setUp().frontRaise().metres());
        assertTrue(sides.on(Side.LEFT).lacks().orElseThrow().keys().contains("thing/step"), () -> "" + sides.on(Side.LEFT).lacks());
        assertTrue(sides.on(Side.RIGHT).lacks().orElseThrow().keys().contains("thing/bench"), () -> "" + sides.on(Side.RIGHT).lacks());
    }

    @Test
    void a_restriction_takes_away_only_the_side_it_names_and_only_while_it_lasts() {
        var knee = new Restriction.Avoid("kneeling", Set.of(Side.RIGHT), Optional.of(Specs.START.plusWeeks(8)), "bruised kneecap");
        var over = new Restriction.Avoid("kneeling", Set.of(Side.RIGHT), Optional.of(Specs.START.minusDays(1)), "healed");
        var free = chosen(Specs.turned(Turned.RIGHT), "half-kneeling-press").usable().get("half-kneeling-press");
        var kept = chosen(Specs.turned(Turned.RIGHT).restricted(over), "half-kneeling-press").usable();
        assertEquals(free.sides(), kept.get("half-kneeling-press").sides());
        var limited = chosen(Specs.turned(Turned.RIGHT).restricted(knee), "half-kneeling-press");
        for (var side : limited.usable().containsKey("half-kneeling-press")
                ? limited.usable().get("half-kneeling-press").sides() : List.<Side>of()) {
            var setUp = limited.usable().get("half-kneeling-press").on(side).setUp();
            assertEquals(Side.LEFT, setUp.frontFoot().orElseThrow().other(), "only the left knee is down");
        }
        var reasons = limited.refused().getOrDefault("half-kneeling-press", Map.of()).values().stream().flatMap(List::stream)
                .toList();
        assertTrue(reasons.stream().anyMatch(r -> r.because().contains("bruised kneecap")), reasons::toString);
    }

    @Test
    void a_stiff_ankle_is_never_asked_for_more_than_it_has_less_five_degrees() {
        var stiff = new Measure("ankle dorsiflexion", 20, 20, "deg");
        var setUps = chosen(Specs.turned(Turned.RIGHT).measured(stiff), "split-squat");
        var sides = setUps.usable().get("split-squat");
        for (var side : sides.values()) {
            assertTrue(side.pose().mechanics().shinWorking() <= 15.1, () -> "shin " + side.pose().mechanics().shinWorking());
        }
    }

    /** The client's own hip: a hinge folds no farther on the stiff side, and as far as ever on the other. */
    @ParameterizedTest
    @ValueSource(strings = {"staggered-deadlift", "split-squat", "kickstand-hinge"})
    void a_stiff_hip_is_never_bent_farther_than_it_was_measured(String id) {
        var free = chosen(Specs.turned(Turned.RIGHT), id).usable().get(id);
        var stiff = chosen(Specs.turned(Turned.RIGHT).measured(new Measure("hip flexion", 55, 120, "deg")), id);
        assertTrue(stiff.usable().containsKey(id), () -> stiff.leftOut().toString());
        for (var side : stiff.usable().get(id).values()) {
            for (var pose : List.of(side.pose().start(), side.pose().working())) {
                assertTrue(hipFlexion(pose, Side.LEFT) < 55.5, () -> side.side() + ": " + hipFlexion(pose, Side.LEFT));
            }
        }
        var most = free.values().stream().mapToDouble(side -> hipFlexion(side.pose().working(), Side.LEFT)).max().orElseThrow();
        assertTrue(most > 60, () -> "without the measure it bends " + most + ", so the limit is what held it");
    }

    /** Between thigh and trunk, 0 = in line, degrees. */
    private static double hipFlexion(Pose pose, Side side) {
        var thigh = pose.at(Joint.of(side, Joint.Part.KNEE)).subtract(pose.at(Joint.of(side, Joint.Part.HIP)));
        var trunk = pose.at(Joint.NECK).subtract(pose.at(Joint.PELVIS));
        var forward = pose.at(Joint.LEFT_HIP).subtract(pose.at(Joint.RIGHT_HIP)).crossProduct(trunk);
        return StrictMath.toDegrees(StrictMath.atan2(thigh.dotProduct(forward.normalize()), -thigh.dotProduct(trunk.normalize())));
    }

    @Test
    void the_older_raise_a_rear_foot_only_with_a_hand_on_something_steady() {
        var alone = chosen(Specs.turned(Turned.RIGHT).aged(OptionalInt.of(70)), "split-squat").usable().get("split-squat");
        assertEquals(0, alone.on(Side.RIGHT).setUp().rearRaise().metres(), "nothing to hold on to");
        var gym = Specs.gym();
        var chair = new Equipment(gym.dumbbells(), false, gym.kettlebells(), List.of(), Optional.empty(), gym.boxes(), gym.bench(),
                List.of(), Set.of("chair"));
        var held = chosen(Specs.turned(Turned.RIGHT).aged(OptionalInt.of(70)).equipped(chair), "split-squat").usable()
                .get("split-squat");
        held.values().forEach(side -> assertEquals(SetUp.Support.CHAIR, side.setUp().handSupport()));
    }

    @Test
    void the_runner_up_says_what_it_lost_on() {
        var sides = chosen(Specs.turned(Turned.RIGHT), "split-squat").usable().get("split-squat");
        sides.values().forEach(side -> {
            var next = side.runnerUp().orElseThrow();
            assertFalse(Teller.PLAIN.plain(next.summary()).isBlank());
            assertFalse(Teller.PLAIN.plain(next.lostOn()).isBlank());
            assertFalse(next.setUp().equals(side.setUp()));
        });
    }

    @Test
    void a_turn_the_other_way_gives_the_mirror_image() {
        var right = chosen(Specs.turned(Turned.RIGHT), "split-squat", "high-to-low-press");
        var left = chosen(Specs.turned(Turned.LEFT), "split-squat", "high-to-low-press");
        assertEquals(right.usable().keySet(), left.usable().keySet());
        right.usable().forEach((id, sides) -> {
            for (var side : sides.sides()) {
                var one = sides.on(side);
                var other = left.usable().get(id).on(side.other());
                assertEquals(one.setUp().mirrored(), other.setUp());
                for (var joint : Joint.values()) {
                    var apart = one.pose().working().mirrored().at(joint).distance(other.pose().working().at(joint));
                    assertTrue(apart < 1e-9, () -> id + " " + joint + " " + apart);
                }
            }
        });
    }

    @Test
    void a_square_pelvis_gives_both_sides_the_same() {
        var sides = chosen(Specs.turned(Turned.SQUARE), "split-squat").usable().get("split-squat");
        assertEquals(sides.on(Side.LEFT).setUp().mirrored(), sides.on(Side.RIGHT).setUp());
        assertFalse(sides.on(Side.LEFT).setUp().hipShift());
    }
}
