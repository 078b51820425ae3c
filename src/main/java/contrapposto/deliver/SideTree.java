package contrapposto.deliver;

import contrapposto.body.BaseOfSupport;
import contrapposto.body.Joint;
import contrapposto.body.Pose;
import contrapposto.body.SolvedPose;
import contrapposto.catalogue.Implement;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.quantity.UnitSystem;
import contrapposto.setup.SetUp;
import contrapposto.wording.Teller;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What the plan file says of one side of one exercise: set-up, pose, weeks, reasons. */
record SideTree(UnitSystem units, Teller teller) {
    private static final int US_DECIMALS = 3;

    Map<String, Object> of(Plan.SidePlan side) {
        var solved = side.solved();
        var setUp = solved.setUp();
        var tree = new LinkedHashMap<String, Object>();
        tree.put("role", solved.role().word());
        setUp.workingLeg().ifPresent(leg -> tree.put("working-leg", leg.word()));
        setUp.workingArm().ifPresent(arm -> tree.put("working-arm", arm.word()));
        setUp.frontFoot().ifPresent(foot -> tree.put("front-foot", foot.word()));
        solved.phase().ifPresent(phase -> tree.put("phase", PlanFile.word(phase)));
        tree.put("setup", setUp(setUp, solved.problem().base()));
        tree.put("pose", pose(side, setUp));
        side.capacity().ifPresent(capacity -> tree.put("capacity", capacity(capacity)));
        tree.put("weeks", side.doses().stream().map(this::dose).toList());
        solved.runnerUp().ifPresent(second -> {
            var lost = new LinkedHashMap<String, Object>();
            lost.put("setup", teller.plain(second.summary()));
            lost.put("lost-on", teller.plain(second.lostOn()));
            tree.put("second-best", lost);
        });
        solved.lacks().ifPresent(lacks -> tree.put("equipment-lacks", teller.plain(lacks)));
        if (solved.byCoach()) {
            tree.put("by-coach", true);
        }
        var reasons = PlanFile.reasons(solved.reasons(), teller);
        tree.put("reasons", java.util.stream.Stream.concat(reasons.stream(), PlanFile.reasons(side.reasons(), teller).stream()).toList());
        return tree;
    }

    private Map<String, Object> setUp(SetUp setUp, BaseOfSupport base) {
        var tree = new LinkedHashMap<String, Object>();
        if (base instanceof BaseOfSupport.Split) {
            centimetres(tree, "front-raise-cm", setUp.frontRaise().metres());
            centimetres(tree, "rear-raise-cm", setUp.rearRaise().metres());
        }
        raised(tree, "heel-wedge-cm", setUp.heelWedge());
        setUp.wedgeFoot().filter(foot -> setUp.heelWedge().metres() > 0).ifPresent(foot -> tree.put("wedge-foot", foot.word()));
        raised(tree, "raise-cm", setUp.raise());
        centimetres(tree, "stance-cm", setUp.stance());
        centimetres(tree, "stance-width-cm", setUp.stanceWidth());
        setUp.loadHand().ifPresent(hand -> tree.put("load-hand", hand.word()));
        if (setUp.bothHands() || setUp.eachHand()) {
            tree.put("load-hand", setUp.bothHands() ? "both" : "each");
        }
        if (setUp.workingLeg().isPresent()) {
            tree.put("hip-shift", setUp.hipShift());
        }
        tree.put("hand-support", PlanFile.word(setUp.handSupport()));
        if (setUp.implement() == Implement.CABLE) {
            centimetres(tree, "pulley-cm", setUp.pulley().metres());
            centimetres(tree, "pulley-distance-cm", setUp.pulleyDistance());
        }
        tree.put("implement", setUp.implement().word());
        if (setUp.implement() != Implement.BODY_WEIGHT) {
            tree.put("count", setUp.count());
        }
        return tree;
    }

    private Map<String, Object> pose(Plan.SidePlan side, SetUp setUp) {
        SolvedPose pose = side.solved().pose();
        var m = pose.mechanics();
        var tree = new LinkedHashMap<String, Object>();
        if (!Double.isNaN(m.shinWorking())) {
            var shin = new LinkedHashMap<String, Object>();
            known(shin, "start", m.shinStart());
            known(shin, "working", m.shinWorking());
            tree.put("shin-deg", shin);
        }
        known(tree, "front-share", m.frontShare());
        known(tree, "left-share", m.leftShare());
        known(tree, "trunk-lean-deg", m.trunkLean());
        known(tree, "knee-flexion-deg", m.kneeFlexion());
        known(tree, "hip-moment-nm", m.hipMoment());
        known(tree, "knee-moment-nm", m.kneeMoment());
        known(tree, "shoulder-moment-nm", m.shoulderMoment());
        known(tree, "elbow-moment-nm", m.elbowMoment());
        known(tree, "turn-moment-nm", m.turnMoment());
        known(tree, "side-moment-nm", m.sideMoment());
        known(tree, "rear-knee-clear-m", m.rearKneeClear());
        known(tree, "line-of-pull-deg", m.lineOfPull());
        tree.put("joints", both(joints(pose.start()), joints(pose.working())));
        tree.put("centre-of-mass", both(point(m.massCentreStart()), point(m.massCentreWorking())));
        tree.put("forces", m.forces().stream().map(SideTree::force).toList());
        tree.put("weeks-load-used-kg", kilograms(side.loadUsed(), units));
        return tree;
    }

    private static Map<String, Object> both(Object start, Object working) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("start", start);
        tree.put("working", working);
        return tree;
    }

    private static Map<String, Object> joints(Pose pose) {
        var tree = new LinkedHashMap<String, Object>();
        for (Joint joint : Joint.values()) {
            tree.put(joint.word(), point(pose.at(joint)));
        }
        return tree;
    }

    private static Map<String, Object> force(SolvedPose.Force force) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("what", force.what());
        tree.put("at", point(force.at()));
        tree.put("newton", point(force.newton()));
        return tree;
    }

    private static List<Double> point(Vector3D v) {
        return List.of(v.getX(), v.getY(), v.getZ());
    }

    private Map<String, Object> capacity(Plan.Capacity capacity) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("joint", capacity.joint());
        known(tree, "moment-nm", capacity.moment());
        known(tree, "together-nm", capacity.together());
        tree.put("one-rep-max-kg", kilograms(capacity.oneRepMax(), units));
        known(tree, "wanted-share", capacity.wanted());
        tree.put("exact-load-kg", kilograms(capacity.exactLoad(), units));
        tree.put("formula", capacity.formula());
        known(tree, "error-share", capacity.error());
        tree.put("tests", capacity.tests());
        return tree;
    }

    private Map<String, Object> dose(Plan.Dose dose) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("week", dose.week());
        tree.put("sets", dose.sets());
        if (dose.seconds() > 0) {
            tree.put("seconds", dose.seconds());
        } else {
            tree.put("reps", dose.reps());
        }
        load(tree, "load-kg", dose.load());
        if (dose.byEffort()) {
            tree.put("by-effort", true);
        }
        tree.put("in-reserve", dose.inReserve());
        tree.put("tempo", dose.tempo());
        tree.put("rest-s", dose.rest());
        if (dose.heavier()) {
            tree.put("heavier", true);
        }
        dose.share().ifPresent(share -> known(tree, "share-of-capacity", share));
        return tree;
    }

    /** Easy sets before an exercise, with the weight per side where it is known. */
    Map<String, Object> ramp(Plan.Ramp ramp) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("exercise", ramp.exercise());
        tree.put("reps", ramp.reps());
        known(tree, "share-of-load", ramp.share());
        switch (ramp.loads()) {
            case Sided.Whole<OptionalDouble>(var both) -> load(tree, "both-kg", both);
            case Sided.Each<OptionalDouble>(var left, var right) -> {
                load(tree, "left-kg", left);
                load(tree, "right-kg", right);
            }
            case Sided.Only<OptionalDouble>(Side side, var only) -> load(tree, side.word() + "-kg", only);
        }
        return tree;
    }

    private void load(Map<String, Object> tree, String key, OptionalDouble kilograms) {
        kilograms.ifPresent(load -> tree.put(key, kilograms(load, units)));
    }

    /** As loaded; in US units with three decimals, so that the pounds can be had back. */
    static Number kilograms(double kilograms, UnitSystem units) {
        return switch (units) {
            case METRIC -> kilograms;
            case US -> BigDecimal.valueOf(kilograms).setScale(US_DECIMALS, RoundingMode.HALF_UP);
        };
    }

    private static void centimetres(Map<String, Object> tree, String key, double metres) {
        known(tree, key, metres * 100);
    }

    private static void raised(Map<String, Object> tree, String key, Length height) {
        if (height.metres() > 0) {
            centimetres(tree, key, height.metres());
        }
    }

    private static void known(Map<String, Object> tree, String key, double value) {
        if (!Double.isNaN(value)) {
            tree.put(key, value);
        }
    }
}
