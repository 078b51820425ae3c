package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.body.Load;
import contrapposto.body.PoseProblem.Effort;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The way from a load to moments and back, on bodies whose moments are known functions of the load. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DemandTest {
    private final List<Double> asked = new ArrayList<>();

    private Demand demand(DoubleUnaryOperator hip, DoubleUnaryOperator knee, double from, double most) {
        return new Demand(SplitSquats.tested(Side.LEFT, 8), problem -> {
            asked.add(Demand.mass(problem.load()));
            return Handmade.outcome(problem, hip, knee, from, most);
        });
    }

    /** 100 N·m by the body, 4 more with each kilogram. */
    private Demand line() {
        return demand(load -> 60 + 3 * load, load -> 40 + load, 0, Double.POSITIVE_INFINITY);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 2, 9.99, 10, 10.01, 37, 120, 399})
    void a_load_is_found_to_a_twentieth_of_a_kilogram_and_never_beyond(double load) {
        double found = line().loadFor(100 + 4 * load).orElseThrow();
        assertTrue(found <= load + 1e-9 && found >= load - 0.05 - 1e-9, load + " kg read as " + found);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 8, 25, 90, 300})
    void bent_curves_are_read_as_exactly(double load) {
        DoubleUnaryOperator slower = kg -> 50 + 30 * StrictMath.sqrt(kg);
        DoubleUnaryOperator faster = kg -> 50 + 0.02 * kg * kg;
        for (var curve : List.of(slower, faster)) {
            double found = demand(curve, curve, 0, Double.POSITIVE_INFINITY).loadFor(2 * curve.applyAsDouble(load)).orElseThrow();
            assertTrue(found <= load + 1e-9 && found >= load - 0.05 - 1e-9, load + " kg read as " + found);
        }
    }

    /** A pose takes milliseconds; on a straight line the first guess beyond the answer is nearly it. */
    @Test
    void a_straight_line_takes_few_poses_and_each_load_only_one() {
        var demand = line();
        demand.loadFor(100 + 4 * 37);
        assertTrue(asked.size() <= 6, asked.toString());
        int before = asked.size();
        demand.loadFor(100 + 4 * 37);
        demand.support(10);
        demand.moment(BindingJoint.HIP, 10.0004);
        assertEquals(before, asked.size(), "told apart down to a gram: " + asked);
        demand.support(10.002);
        assertEquals(before + 1, asked.size());
    }

    @Test
    void where_the_body_alone_asks_as_much_the_load_is_nothing() {
        assertEquals(OptionalDouble.of(0), line().loadFor(100));
        assertEquals(OptionalDouble.of(0), line().loadFor(60));
    }

    @Test
    void beyond_four_hundred_kilograms_nothing_is_looked_for() {
        assertEquals(OptionalDouble.empty(), line().loadFor(100 + 4 * 401));
        assertTrue(asked.stream().allMatch(load -> load <= 400), asked.toString());
        assertTrue(demand(load -> 100, load -> 0, 0, 1e9).loadFor(101).isEmpty(), "a body that asks no more under any load");
    }

    @Test
    void a_missing_pose_on_the_way_leaves_the_load_unknown() {
        assertEquals(OptionalDouble.empty(), demand(load -> 60 + 3 * load, load -> 40, 1, 1e9).loadFor(200), "none without a load");
        assertEquals(OptionalDouble.empty(), demand(load -> 60 + 3 * load, load -> 40, 0, 50).loadFor(100 + 3 * 100), "none at 100 kg");
        assertTrue(demand(load -> 60 + 3 * load, load -> 40, 0, 50).loadFor(100 + 3 * 30).isPresent(), "30 kg lies before the end");
    }

    @Test
    void without_a_pose_there_is_no_support_no_moment_and_no_joint() {
        var none = demand(load -> 60, load -> 40, 0, 20);
        assertEquals(OptionalDouble.empty(), none.support(21));
        assertEquals(0, none.moment(BindingJoint.HIP, 21));
        assertEquals(Optional.empty(), none.binding(21));
        assertEquals(Optional.empty(), none.pose(21));
    }

    @Test
    void the_support_moment_adds_the_extensors_and_leaves_flexors_out() {
        assertEquals(100 + 4 * 5, line().support(5).orElseThrow(), 1e-9);
        assertEquals(40, demand(load -> -25, load -> 40, 0, 100).support(5).orElseThrow(), "a hip that flexes bears nothing");
        assertEquals(60, demand(load -> 60, load -> -1, 0, 100).support(5).orElseThrow());
    }

    /** Against 2.8 N·m/kg at the hip and 2.4 at the knee, the house's c: 28 and 24 are alike, and the hip is named. */
    @Test
    void the_joint_that_binds_has_the_larger_moment_for_its_size() {
        assertEquals(new Effort(2.8, 2.4, 10, 20), SplitSquats.CATALOGUE.rules().legEffort());
        assertEquals(Optional.of(BindingJoint.HIP), demand(load -> 28, load -> 24, 0, 100).binding(5));
        assertEquals(Optional.of(BindingJoint.KNEE), demand(load -> 27.9, load -> 24, 0, 100).binding(5));
        assertEquals(Optional.of(BindingJoint.HIP), demand(load -> 28.1, load -> 24, 0, 100).binding(5));
    }

    @Test
    void joints_of_the_arm_are_read_by_size_and_never_compared_with_a_leg() {
        assertEquals(7, line().moment(BindingJoint.SHOULDER, 5));
        assertEquals(5, line().moment(BindingJoint.ELBOW, 5));
        for (var joint : List.of(BindingJoint.SHOULDER, BindingJoint.ELBOW)) {
            var refused = assertThrows(IllegalArgumentException.class, () -> joint.scale(new Effort(2.8, 2.4, 10, 20)));
            assertTrue(refused.getMessage().contains(joint.word()), refused.getMessage());
        }
        assertEquals(List.of("hip", "knee", "shoulder", "elbow"), java.util.Arrays.stream(BindingJoint.values()).map(BindingJoint::word).toList());
    }

    @Test
    void another_weight_is_held_as_the_one_before_and_none_at_all_is_nothing() {
        var cable = new Load.Cable(Side.RIGHT, 5, 2, 1.8, 1.1, true, 0.2);
        var band = new Load.Band(Side.LEFT, 1, 0.5, true);
        for (Load load : List.of(new Load.InHand(Side.LEFT, 8), new Load.InEachHand(8), new Load.InBothHands(8), new Load.OnHips(8), cable)) {
            var heavier = Demand.loaded(load, 12);
            assertEquals(12, Demand.mass(heavier));
            assertEquals(load.getClass(), heavier.getClass());
            assertEquals(new Load.None(), Demand.loaded(load, 0));
        }
        assertEquals(new Load.Cable(Side.RIGHT, 12, 2, 1.8, 1.1, true, 0.2), Demand.loaded(cable, 12));
        assertEquals(new Load.InHand(Side.LEFT, 12), Demand.loaded(new Load.InHand(Side.LEFT, 8), 12));
        assertEquals(band, Demand.loaded(band, 12));
        assertEquals(new Load.None(), Demand.loaded(new Load.None(), 12));
        assertEquals(List.of(0.0, 0.0), List.of(Demand.mass(band), Demand.mass(new Load.None())));
    }

    @Test
    void shares_of_a_leg_are_of_its_capacity_and_of_the_joint_that_bound() {
        var asking = new Asking.BodyAndLoad(line(), 200, BindingJoint.HIP, 120);
        assertEquals(0.6, asking.share(5).orElseThrow(), 1e-12, "120 of 200 N·m");
        assertEquals(75.0 / 120, asking.bindingShare(5).orElseThrow(), 1e-12);
        assertEquals(15, asking.loadAt(0.8).orElseThrow(), 0.05, "160 N·m");
        var ending = new Asking.BodyAndLoad(demand(load -> 60, load -> 40, 0, 20), 200, BindingJoint.HIP, 120);
        assertEquals(List.of(OptionalDouble.empty(), OptionalDouble.empty()), List.of(ending.share(21), ending.bindingShare(21)));
    }
}
