package contrapposto.body;

import contrapposto.body.Breaches.Kind;
import contrapposto.body.Contact.Limb;
import contrapposto.body.Joint.Part;
import contrapposto.body.Stance.Free;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * One try at a {@link Stance}: a whole body put together from the free variables, moved sideways until it is in
 * balance, and judged.
 */
final class StanceTrial {
    /** How far a weight moves the whole body's mass centre as the pelvis moves: a first guess for the balance search. */
    static final double PELVIS_TO_CENTRE = 0.87;
    /** The trunk bends this many degrees away from a load for each share of stature that the pelvis gives way: house. */
    static final double BEND_PER_SHIFT = 140;
    /** A leg that carries is never quite straight: least bend of its knee, degrees (house). */
    static final double SOFT_KNEE = 3;
    /** Inside the limits by this much while searching, so that the result keeps them. */
    static final double MARGIN = 0.3;
    /** The same margin for shares and for lengths in statures, for each degree of it. */
    static final double SHARE_MARGIN = 0.005;
    static final double LENGTH_MARGIN = 0.0012;
    /** A free foot is at least this far above the floor, share of stature (house). */
    static final double FREE_FOOT = 0.012;

    /** Where either leg might set the height, the hips are this much lower than the straighter one allows, share of stature. */
    private static final double RIDGE = 0.0012;

    private final PoseProblem problem;
    private final Stance stance;
    private final Position position;
    private final Arms arms;
    private final Loads loads;
    private final List<Contact> hands;
    private final double[] values;
    private final double firstShift;
    private final Segments lengths;
    private final double stature;

    final Skeleton skeleton;
    final List<Contact> contacts = new ArrayList<>(4);
    private final List<PointMass> masses = new ArrayList<>(18);
    private final List<PointForce> pulls = new ArrayList<>(2);
    private Vector3D leadPressure = Vector3D.ZERO;
    private Vector3D otherPressure = Vector3D.ZERO;
    private double leanUsed;
    private double missing;
    private double shifted;
    private double slipX;
    private double slipY;

    StanceTrial(PoseProblem problem, Stance stance, Position position, Arms arms, Loads loads, List<Contact> hands,
                double[] values, double firstShift, double tolerance) {
        this.problem = problem;
        this.stance = stance;
        this.position = position;
        this.arms = arms;
        this.loads = loads;
        this.hands = hands;
        this.values = values;
        this.firstShift = firstShift;
        this.lengths = problem.person().segments();
        this.stature = problem.person().stature();
        this.skeleton = new Skeleton(problem.person());
        placeFeet();
        if (stance.other().isPresent()) {
            balanceOnTwo(tolerance);
        } else {
            balanceOnOne(tolerance);
        }
    }

    private double value(Free free) {
        return values[free.ordinal()];
    }

    private void placeFeet() {
        Foot foot = stance.foot();
        foot.place(skeleton, foot.contact() == Foot.Contact.BALL ? value(Free.PITCH) : foot.pitch());
        leadPressure = foot.pressure(skeleton, value(Free.PRESSURE));
        stance.other().ifPresent(other -> {
            other.place(skeleton, other.contact() == Foot.Contact.BALL ? value(Free.PITCH) : other.pitch());
            otherPressure = other.pressure(skeleton, value(stance.alike() ? Free.PRESSURE : Free.OTHER_PRESSURE));
        });
    }

    /** Shifts the pelvis across the line of the feet until the weight falls on the line between the pressures. */
    private void balanceOnTwo(double tolerance) {
        Vector3D from = Stance.reference(stance.other().orElseThrow(), lengths);
        Vector3D to = Stance.reference(stance.foot(), lengths);
        double dx = to.getX() - from.getX();
        double dy = to.getY() - from.getY();
        double d = StrictMath.sqrt(dx * dx + dy * dy);
        double x = from.getX() + value(Free.ALONG) * dx;
        double y = from.getY() + value(Free.ALONG) * dy;
        double shift = firstShift;
        double last = 0;
        double lastSlip = 0;
        for (int round = 0; round < 15; round++) {
            double slip = build(x - shift * dy / d, y + shift * dx / d, shift * dx / d);
            if (Math.abs(slip) < tolerance) {
                shifted = shift;
                return;
            }
            double slope = round == 0 ? PELVIS_TO_CENTRE : Math.clamp((slip - lastSlip) / (shift - last), 0.3, 3.0);
            last = shift;
            lastSlip = slip;
            shift -= slip / slope;
        }
    }

    /** Shifts the pelvis until the weight falls on the one pressure. */
    private void balanceOnOne(double tolerance) {
        double x = leadPressure.getX();
        double y = leadPressure.getY();
        double lastX = x;
        double lastY = y;
        double lastSlipX = 0;
        double lastSlipY = 0;
        double middle = y;
        for (int round = 0; round < 25; round++) {
            build(x, y, y - middle);
            if (Math.abs(slipX) < tolerance && Math.abs(slipY) < tolerance) {
                return;
            }
            double slopeX = round == 0 || x == lastX ? PELVIS_TO_CENTRE : Math.clamp((slipX - lastSlipX) / (x - lastX), 0.3, 3.0);
            double slopeY = round == 0 || y == lastY ? PELVIS_TO_CENTRE : Math.clamp((slipY - lastSlipY) / (y - lastY), 0.3, 3.0);
            lastX = x;
            lastY = y;
            lastSlipX = slipX;
            lastSlipY = slipY;
            x -= slipX / slopeX;
            y -= slipY / slopeY;
        }
    }

    /** Puts the body together with its pelvis over (x, y). @return what is left to balance, m */
    private double build(double x, double y, double givingWay) {
        double bend = stance.bend() + BEND_PER_SHIFT * givingWay / stature;
        double z = height(x, y);
        Vector3D pelvis = new Vector3D(x, y, z);
        if (stance.fold().isPresent()) {
            skeleton.trunk(Torso.upright(pelvis, stance.yaw(), 0, bend, stance.turn()), Vector3D.PLUS_K);
            placeLegs();
            leanUsed = foldedLean(stance.fold().getAsDouble(), z);
        } else {
            leanUsed = value(Free.LEAN);
        }
        skeleton.trunk(Torso.upright(pelvis, stance.yaw(), leanUsed, bend, stance.turn()), Vector3D.PLUS_K);
        placeLegs();
        arms.place(skeleton, position);
        weigh();
        return settle();
    }

    /** Height of the hips over (x, y) so that the knees are bent as wanted. */
    private double height(double x, double y) {
        double span = TwoLink.span(lengths.thigh(), lengths.shank(), value(Free.KNEE));
        missing = 0;
        double lead = above(stance.lead(), x, y, span);
        return stance.tall() && stance.other().isPresent() ? lower(lead, above(stance.lead().other(), x, y, span), stature) : lead;
    }

    /** The lower of two heights, rounded off where they meet so that a search does not catch on the ridge. */
    static double lower(double one, double other, double stature) {
        double ridge = RIDGE * stature;
        double half = (one - other) / 2;
        return (one + other) / 2 - StrictMath.sqrt(half * half + ridge * ridge);
    }

    private double above(Side side, double x, double y, double span) {
        Vector3D ankle = skeleton.at(side, Part.ANKLE);
        double half = side.sign() * lengths.hipSpacing() / 2;
        double dx = x - half * Degrees.sin(stance.yaw()) - ankle.getX();
        double dy = y + half * Degrees.cos(stance.yaw()) - ankle.getY();
        double left = span * span - dx * dx - dy * dy;
        double least = 0.05 * span;
        missing = Math.max(missing, StrictMath.sqrt(dx * dx + dy * dy) - span);
        return ankle.getZ() + (left > least * least ? StrictMath.sqrt(left) : least);
    }

    /** The lean that brings a hanging hand down to {@code target}, as far as the hips allow. */
    private double foldedLean(double target, double z) {
        double drop = lengths.upperArm() * 0.9927 + (lengths.forearm() + Segments.GRIP * stature) * 0.9974;
        double side = handSign() * lengths.shoulderSpacing() / 2 * Degrees.sin(stance.turn());
        double size = StrictMath.sqrt(lengths.trunk() * lengths.trunk() + side * side);
        double cosine = (target + drop - z) / size;
        double wanted = cosine >= 1 ? 0 : Degrees.acos(cosine) + Degrees.atan2(side, lengths.trunk());
        double hips = value(Free.LEAN);
        for (Side leg : Side.values()) {
            if (leg == stance.lead() || stance.other().isPresent()) {
                hips = Math.min(hips, problem.limits().on(leg).hipFlexion() - 2 * MARGIN - skeleton.hipFlexion(leg));
            }
        }
        return Math.clamp(wanted, 0, Math.max(0, hips));
    }

    private int handSign() {
        return problem.load() instanceof Load.InHand(var hand, var mass) ? hand.sign() : 0;
    }

    private void placeLegs() {
        bend(stance.foot());
        if (stance.other().isPresent()) {
            bend(stance.other().get());
        } else {
            hangFree(stance.lead().other());
        }
    }

    private void bend(Foot foot) {
        double down = foot.contact() == Foot.Contact.SOLE ? 0.15 : -0.35;
        Vector3D pole = foot.contact() == Foot.Contact.LACES ? new Vector3D(1, 0, -0.5)
                : new Vector3D(0.6 * Degrees.cos(stance.yaw()) + 0.6 * Degrees.cos(foot.yaw()),
                        0.6 * Degrees.sin(stance.yaw()) + 0.6 * Degrees.sin(foot.yaw()) + 0.05 * foot.side().sign(), down);
        skeleton.bendKnee(foot.side(), pole);
    }

    private void hangFree(Side side) {
        Stance.AirLeg air = stance.air();
        double thigh = air.thigh() - (air.inLine() ? leanUsed : 0);
        double shank = thigh - air.knee();
        double toes = shank + air.ankle();
        skeleton.leg(side, new Vector3D(Degrees.sin(thigh), 0, -Degrees.cos(thigh)),
                new Vector3D(Degrees.sin(shank), 0, -Degrees.cos(shank)),
                new Vector3D(Degrees.cos(toes), 0, Degrees.sin(toes)), new Vector3D(Degrees.sin(toes), 0, -Degrees.cos(toes)));
    }

    private void weigh() {
        masses.clear();
        pulls.clear();
        skeleton.trunkWeights(masses);
        for (Side side : Side.values()) {
            skeleton.legWeights(side, masses);
            skeleton.armWeights(side, masses);
            loads.inHand(skeleton, side, masses);
            loads.pull(skeleton, side, pulls);
        }
        loads.onPelvis(skeleton, masses);
    }

    /** Finds the forces of the feet. @return how far the resultant passes beside the line of the feet, m */
    private double settle() {
        PointMass centre = PointMass.centre(masses);
        double fx = 0;
        double fy = 0;
        double fz = -centre.mass() * PointMass.GRAVITY;
        Vector3D about = stance.other().isPresent() ? otherPressure : leadPressure;
        Vector3D moment = centre.weight().momentAbout(about);
        for (PointForce pull : pulls) {
            fx += pull.newton().getX();
            fy += pull.newton().getY();
            fz += pull.newton().getZ();
            moment = moment.add(pull.momentAbout(about));
        }
        contacts.clear();
        for (Contact hand : hands) {
            Side side = hand.limb() == Limb.LEFT_ARM ? Side.LEFT : Side.RIGHT;
            Contact placed = new Contact(hand.what(), hand.limb(), skeleton.at(side, Part.WRIST), hand.newton());
            contacts.add(placed);
            fz += placed.newton().getZ();
            moment = moment.add(placed.force().momentAbout(about));
        }
        Vector3D force = new Vector3D(fx, fy, fz);
        if (stance.other().isEmpty()) {
            slipX = moment.getY() / -fz;
            slipY = moment.getX() / fz;
            contacts.add(onFoot(stance.lead(), leadPressure, force.negate()));
            return Math.max(Math.abs(slipX), Math.abs(slipY));
        }
        GroundReaction reaction = GroundReaction.of(leadPressure, otherPressure, force, moment);
        contacts.add(onFoot(stance.lead(), leadPressure, reaction.first()));
        contacts.add(onFoot(stance.lead().other(), otherPressure, reaction.second()));
        return reaction.slip();
    }

    private static Contact onFoot(Side side, Vector3D at, Vector3D newton) {
        return new Contact(side == Side.LEFT ? "left-foot" : "right-foot", Statics.leg(side), at, newton);
    }

    Statics statics() {
        return new Statics(skeleton, loads, contacts);
    }

    /** Mass centre of body and load. */
    Vector3D centre() {
        return PointMass.centre(masses).at();
    }

    /** The lead foot's share of the weight on the feet. */
    double leadShare() {
        if (stance.other().isEmpty()) {
            return 1;
        }
        double lead = contacts.get(contacts.size() - 2).newton().getZ();
        return lead / (lead + contacts.getLast().newton().getZ());
    }

    /** How far the pelvis was moved across the line of the feet: a good first guess for a neighbour of this try. */
    double shifted() {
        return shifted;
    }

    /** The objective: efforts of hips and knees, the wanted lean, and the squares of every breach times {@code strictness}. */
    double cost(double strictness) {
        PoseProblem.Effort effort = problem.effort();
        double mass = problem.person().mass();
        Statics statics = statics();
        double sum = 0;
        for (Side side : Side.values()) {
            double hip = statics.hip(side) / (effort.hip() * mass);
            double knee = statics.knee(side) / (effort.knee() * mass);
            sum += hip * hip + knee * knee;
        }
        double lean = (leanUsed - stance.wantedLean()) / effort.leanScale();
        return sum + (stance.fold().isPresent() ? 0 : lean * lean) + strictness * breaches(MARGIN).penalty();
    }

    /** What this try breaks, with every limit of an angle tightened by {@code margin} degrees. */
    Breaches breaches(double margin) {
        var breaches = new Breaches(stature);
        for (Side side : Side.values()) {
            boolean grounded = side == stance.lead() || stance.other().isPresent();
            JointLimits limits = problem.limits().on(side);
            double hip = skeleton.hipFlexion(side);
            breaches.atMost(Kind.HIP_FLEXION, side, hip, limits.hipFlexion() - margin);
            breaches.atMost(Kind.HIP_EXTENSION, side, -hip, limits.hipExtension() - margin);
            double knee = skeleton.kneeFlexion(side);
            breaches.atMost(Kind.KNEE_FLEXION, side, knee, limits.kneeFlexion() - margin);
            double clear = skeleton.at(side, Part.KNEE).getZ();
            breaches.atLeast(Kind.KNEE_FLOOR, side, clear, (Segments.KNEE_RADIUS + margin * LENGTH_MARGIN) * stature);
            if (grounded) {
                grounded(breaches, side, limits, margin);
            } else {
                double low = Math.min(skeleton.at(side, Part.TOE).getZ(), skeleton.at(side, Part.HEEL).getZ());
                breaches.atLeast(Kind.FOOT_FLOOR, side, low, FREE_FOOT * stature);
            }
        }
        breaches.atMost(Kind.LEG_REACH, stance.lead(), lengths.thigh() + lengths.shank() + missing,
                lengths.thigh() + lengths.shank());
        if (stance.other().isPresent()) {
            double share = leadShare();
            breaches.atLeast(Kind.FOOT_LIFT, stance.lead(), share, stance.leastLeadShare() + margin * SHARE_MARGIN);
            breaches.atLeast(Kind.FOOT_LIFT, stance.lead().other(), 1 - share,
                    stance.leastShare() + margin * SHARE_MARGIN);
        }
        return breaches;
    }

    private void grounded(Breaches breaches, Side side, JointLimits limits, double margin) {
        double span = skeleton.at(side, Part.HIP).distance(skeleton.at(side, Part.ANKLE));
        breaches.atMost(Kind.LEG_REACH, side, span, TwoLink.span(lengths.thigh(), lengths.shank(), SOFT_KNEE + margin));
        Foot foot = side == stance.lead() ? stance.foot() : stance.other().orElseThrow();
        breaches.atMost(Kind.KNEE_FLEXION, side, skeleton.kneeFlexion(side), stance.mostKnee() - margin);
        if (foot.contact() != Foot.Contact.LACES) {
            double tilt = foot.contact() == Foot.Contact.SOLE ? skeleton.shin(side) - foot.pitch() : 0;
            breaches.atMost(Kind.ANKLE, side, Math.max(tilt, skeleton.ankleBend(side)), limits.ankleDorsiflexion() - margin);
        }
    }
}
