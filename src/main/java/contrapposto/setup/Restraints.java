package contrapposto.setup;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.assess.Restrained;
import contrapposto.body.JointLimits;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.wording.Said;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What this person must keep away from on the day the plan starts. A restriction that has run out by then is void; one
 * that runs out later binds the whole plan, since a set-up is kept for all weeks.
 *
 * @param active  what binds the plan
 * @param verdict limits of the screening
 * @param limits  how far each side's joints may be asked to move
 */
record Restraints(List<Restrained> active, Set<Limit> verdict, Sided<JointLimits> limits) {
    /** @param rules for how much less than measured an ankle is asked for */
    static Restraints of(Assessed assessed, HouseRules rules) {
        var spec = assessed.spec();
        var active = assessed.restrained();
        return new Restraints(active, assessed.verdict().limits(), new Sided.Each<>(limits(spec, active, rules, Side.LEFT),
                limits(spec, active, rules, Side.RIGHT)));
    }

    private static JointLimits limits(CheckedSpec spec, List<Restrained> active, HouseRules rules, Side side) {
        var common = JointLimits.COMMON;
        return new JointLimits(
                range(spec, active, side, "hip-flexion", 0, common.hipFlexion()),
                range(spec, active, side, "hip-extension", 0, common.hipExtension()),
                range(spec, active, side, "knee-flexion", 0, common.kneeFlexion()),
                range(spec, active, side, "dorsiflexion", rules.placing().ankleReserve(), common.ankleDorsiflexion()),
                range(spec, active, side, "plantarflexion", 0, common.anklePlantarflexion()),
                common.toeExtension(),
                range(spec, active, side, "shoulder-flexion", 0, common.shoulderFlexion()),
                range(spec, active, side, "elbow-flexion", 0, common.elbowFlexion()));
    }

    /** The person's own measure where given, less {@code reserve}; never beyond what a restriction allows. */
    private static double range(CheckedSpec spec, List<Restrained> active, Side side, String what, double reserve,
                                double common) {
        var own = spec.assessment().measures().stream()
                .filter(m -> m.unit().equals("deg") && words(m.what()).endsWith(words(what))).findFirst()
                .map(m -> (side == Side.LEFT ? m.left() : m.right()) - reserve);
        double limit = own.orElse(common);
        for (var restriction : active) {
            limit = switch (restriction.restriction()) {
                case Restriction.LimitRange(var joint, var sides, var to, var until, var because)
                        when sides.contains(side) && words(joint).endsWith(words(what)) -> Math.min(limit, to.degrees());
                case Restriction.LimitRange other -> limit;
                case Restriction.LimitLoad load -> limit;
                case Restriction.Avoid avoid -> limit;
            };
        }
        return Math.max(0, limit);
    }

    private static String words(String what) {
        return what.replace('-', ' ');
    }

    /** The most one hand may hold, kg; infinite without such a restriction. */
    double handLoad() {
        return active.stream().mapToDouble(r -> switch (r.restriction()) {
            case Restriction.LimitLoad(var perHand, var until, var because) -> perHand.kilograms();
            case Restriction.LimitRange range -> Double.POSITIVE_INFINITY;
            case Restriction.Avoid avoid -> Double.POSITIVE_INFINITY;
        }).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** Why this set-up is not for this person, if so. */
    Optional<Reason> against(Family family, SetUp setUp, Side working) {
        if (verdict.contains(Limit.NO_SUPINE) && family.tags().contains(RestrictionTag.SUPINE.word())) {
            return Optional.of(Reason.of("screening-limit", Said.of("screening-limit/supine"), Source.PRACTICE));
        }
        if (verdict.contains(Limit.NO_IMPACT) && family.impact()) {
            return Optional.of(Reason.of("screening-limit", Said.of("screening-limit/impact"), Source.PRACTICE));
        }
        if (verdict.contains(Limit.NO_BREATH_HOLD) && family.tags().contains(RestrictionTag.BREATH_HOLD.word())) {
            return Optional.of(Reason.of("screening-limit", Said.of("screening-limit/breath"), Source.PRACTICE));
        }
        return active.stream().flatMap(r -> switch (r.restriction()) {
            case Restriction.Avoid avoid when hits(avoid, family, setUp, working) -> Optional.of(r.why()).stream();
            case Restriction.Avoid avoid -> Optional.<Reason>empty().stream();
            case Restriction.LimitLoad load -> Optional.<Reason>empty().stream();
            case Restriction.LimitRange range -> Optional.<Reason>empty().stream();
        }).findFirst();
    }

    private static boolean hits(Restriction.Avoid avoid, Family family, SetUp setUp, Side working) {
        if (avoid.what().equals(family.id())) {
            return avoid.sides().contains(working) || family.sides() == Family.Sides.BOTH;
        }
        return RestrictionTag.of(avoid.what()).filter(tag -> family.tags().contains(tag.movement().word()))
                .filter(tag -> tag == tag.movement() || setUp.implement() != Implement.BODY_WEIGHT)
                .map(tag -> sidesUnder(tag, family, setUp, working)).orElseGet(() -> EnumSet.noneOf(Side.class))
                .stream().anyMatch(avoid.sides()::contains);
    }

    /** The sides of the body that the tagged demand falls on; both where it cannot be told apart. */
    private static EnumSet<Side> sidesUnder(RestrictionTag tag, Family family, SetUp setUp, Side working) {
        var both = EnumSet.allOf(Side.class);
        if (tag == RestrictionTag.GRIP && setUp.implement() == Implement.BODY_WEIGHT) {
            return EnumSet.noneOf(Side.class);
        }
        if (family.sides() == Family.Sides.BOTH) {
            return both;
        }
        return switch (tag) {
            case KNEELING -> family.base() == Family.BaseKind.HALF_KNEELING
                    ? EnumSet.of(setUp.frontFoot().orElse(working).other()) : both;
            case SINGLE_LEG, DEEP_HIP -> EnumSet.of(working);
            case OVERHEAD, GRIP, SHOULDER, ELBOW, WRIST -> armsUnder(family, setUp, working);
            case HIP, KNEE, ANKLE -> family.base() == Family.BaseKind.ONE_LEG ? EnumSet.of(working) : both;
            case WRIST_LOAD, PRONE, SUPINE, SIDE_LYING, FLOOR, HEAD_BELOW_HEART, SPINE_FLEXION, BREATH_HOLD, IMPACT, DEEP_KNEE, TWISTING,
                    LOADED_SPINE_FLEXION, LOADED_TWISTING, NECK, LOWER_BACK -> both;
        };
    }

    private static EnumSet<Side> armsUnder(Family family, SetUp setUp, Side working) {
        var both = EnumSet.allOf(Side.class);
        return switch (family.base()) {
            case PLANK, ALL_FOURS, KNEELING_AT_SUPPORT -> both;
            case SPLIT, STAGGERED, LEVEL, STEP, ONE_LEG, HALF_KNEELING, TALL_KNEELING, SUPINE, SIDE_LYING, SEATED ->
                    setUp.bothHands() || setUp.eachHand() ? both : EnumSet.of(setUp.loadHand().orElse(working));
        };
    }
}
