package contrapposto.body;

import contrapposto.body.Contact.Limb;
import contrapposto.body.Stance.Free;
import contrapposto.quantity.Side;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** The body of a {@link StanceModel} in one place: its legs, trunk and arms, the forces of its feet, and what is left to balance. */
final class StanceBody {
    private final PoseProblem problem;
    private final Stance stance;
    private final Loads loads;
    private final List<Contact> hands;
    private final Segments lengths;
    private final SegmentTable table;
    private final double mass;
    private final double stature;
    final TrunkNumbers trunk;
    final LegNumbers left;
    final LegNumbers right;
    final LegNumbers lead;
    final LegNumbers other;
    private final boolean oneFoot;

    private double[] values = new double[Free.values().length];
    private ArmShape leftArm;
    private ArmShape rightArm;
    private double span;
    private double fromX, fromY, wayX, wayY, way, alongX, alongY;

    private double pelvisX, pelvisY, pelvisZ;
    /** Whether the pelvis or what it is placed from has moved since the legs were bent under it. */
    private boolean moved = true;
    private double heldLean;
    private final Angle knee = new Angle();
    private int legsBent;
    private int shapes;
    /** How far a foot is out of the reach of a leg bent as wanted, m. */
    double missing;
    /** The lead foot's share of the weight on the feet. */
    double leadShare;

    private double sumX, sumY, sum;
    private double pullX, pullY, pullZ, momentX, momentY, momentZ;
    private double slipX, slipY;

    StanceBody(PoseProblem problem, Stance stance, Loads loads, List<Contact> hands) {
        this.problem = problem;
        this.stance = stance;
        this.loads = loads;
        this.hands = hands;
        this.lengths = problem.person().segments();
        this.table = problem.person().table();
        this.mass = problem.person().mass();
        this.stature = problem.person().stature();
        this.trunk = new TrunkNumbers(stance.yaw(), stance.turn());
        this.oneFoot = stance.other().isEmpty();
        this.lead = new LegNumbers(stance.lead(), problem.person(), stance.foot(), true);
        this.other = new LegNumbers(stance.lead().other(), problem.person(), stance.other().orElse(stance.foot()), !oneFoot);
        this.left = stance.lead() == Side.LEFT ? lead : other;
        this.right = stance.lead() == Side.LEFT ? other : lead;
        Vector3D to = Stance.reference(stance.foot(), lengths);
        Vector3D from = Stance.reference(stance.other().orElse(stance.foot()), lengths);
        fromX = from.getX();
        fromY = from.getY();
        wayX = to.getX() - fromX;
        wayY = to.getY() - fromY;
        way = StrictMath.sqrt(wayX * wayX + wayY * wayY);
    }

    void hold(double[] at, ArmShape leftShape, ArmShape rightShape) {
        leftArm = leftShape;
        rightArm = rightShape;
        moved = true;
        hold(at);
    }

    /** Sets the variables: the feet stand, the pelvis still hangs on where it is put by {@link #place}. */
    void hold(double[] at) {
        values = at;
        moved |= lead.place(pitch(lead), value(Free.PRESSURE));
        if (oneFoot) {
            alongX = lead.pressureX;
            alongY = lead.pressureY;
        } else {
            moved |= other.place(pitch(other), value(stance.alike() ? Free.PRESSURE : Free.OTHER_PRESSURE));
            alongX = fromX + value(Free.ALONG) * wayX;
            alongY = fromY + value(Free.ALONG) * wayY;
        }
        if (knee.set(value(Free.KNEE))) {
            span = TwoLink.span(lengths.thigh(), lengths.shank(), value(Free.KNEE));
            moved = true;
        }
    }

    private double pitch(LegNumbers leg) {
        return leg.foot().contact() == Foot.Contact.BALL ? value(Free.PITCH) : leg.foot().pitch();
    }

    private double value(Free free) {
        return values[free.ordinal()];
    }

    /**
     * Puts the pelvis {@code shift} across the line of the feet; over one foot, {@code shift} before and {@code beside} it.
     * What does not hang on what has changed since the last time stays as it is: legs only follow the pelvis, and where
     * nothing but a pressure has moved there are only the forces to find.
     */
    void place(double shift, double beside) {
        double x = oneFoot ? alongX + shift : alongX - shift * wayY / way;
        double y = oneFoot ? alongY + beside : alongY + shift * wayX / way;
        double bend = stance.bend() + StanceTrial.BEND_PER_SHIFT * (oneFoot ? beside : shift * wayX / way) / stature;
        boolean legs = moved || x != pelvisX || y != pelvisY;
        if (legs) {
            stand(x, y);
        }
        if (legs || bend != trunk.bend() || value(Free.LEAN) != heldLean) {
            heldLean = value(Free.LEAN);
            trunk.tilt(stance.fold().isPresent() ? foldedLean(stance.fold().getAsDouble(), bend) : heldLean, bend);
            if (oneFoot) {
                hangFree();
            }
            weigh();
            shapes++;
        }
        settle();
    }

    /** Puts the pelvis over (x, y) and bends the legs that stand. */
    private void stand(double x, double y) {
        pelvisX = x;
        pelvisY = y;
        pelvisZ = height(x, y);
        hip(left);
        hip(right);
        bend(lead);
        if (!oneFoot) {
            bend(other);
        }
        moved = false;
        legsBent++;
    }

    /** Changes whenever the legs that stand have been bent anew. */
    int legsBent() {
        return legsBent;
    }

    /** Changes whenever anything but the forces has been worked out anew. */
    int shapes() {
        return shapes;
    }

    private double height(double x, double y) {
        missing = 0;
        double high = above(lead, x, y);
        return stance.tall() && !oneFoot ? StanceTrial.lower(high, above(other, x, y), stature) : high;
    }

    private double above(LegNumbers leg, double x, double y) {
        double half = leg.side.sign() * lengths.hipSpacing() / 2;
        double dx = x - half * trunk.yawSine() - leg.ankleX;
        double dy = y + half * trunk.yawCosine() - leg.ankleY;
        double flat = dx * dx + dy * dy;
        double rest = span * span - flat;
        double least = 0.05 * span;
        missing = Math.max(missing, StrictMath.sqrt(flat) - span);
        return leg.ankleZ + (rest > least * least ? StrictMath.sqrt(rest) : least);
    }

    private void hip(LegNumbers leg) {
        double half = leg.side.sign() * lengths.hipSpacing() / 2;
        leg.hipX = pelvisX - half * trunk.yawSine();
        leg.hipY = pelvisY + half * trunk.yawCosine();
        leg.hipZ = pelvisZ;
    }

    private void hangFree() {
        Stance.AirLeg air = stance.air();
        double thigh = air.thigh() - (air.inLine() ? trunk.lean() : 0);
        double shank = thigh - air.knee();
        other.hang(thigh, shank, shank + air.ankle());
    }

    private void bend(LegNumbers leg) {
        Foot foot = leg.foot();
        if (foot.contact() == Foot.Contact.LACES) {
            leg.bend(1, 0, -0.5);
        } else {
            leg.bend(0.6 * trunk.yawCosine() + 0.6 * leg.yawCosine, 0.6 * trunk.yawSine() + 0.6 * leg.yawSine + 0.05 * leg.side.sign(),
                    foot.contact() == Foot.Contact.SOLE ? 0.15 : -0.35);
        }
    }

    /** As {@link StanceTrial} has it. */
    private double foldedLean(double target, double bend) {
        trunk.tilt(0, bend);
        double drop = lengths.upperArm() * 0.9927 + (lengths.forearm() + Segments.GRIP * stature) * 0.9974;
        int hand = problem.load() instanceof Load.InHand(var loaded, var kg) ? loaded.sign() : 0;
        double across = hand * lengths.shoulderSpacing() / 2 * trunk.turnSine();
        double size = StrictMath.sqrt(lengths.trunk() * lengths.trunk() + across * across);
        double cosine = (target + drop - pelvisZ) / size;
        double wanted = cosine >= 1 ? 0 : Degrees.acos(cosine) + Degrees.atan2(across, lengths.trunk());
        double hips = Math.min(value(Free.LEAN), bendLeft(lead));
        hips = oneFoot ? hips : Math.min(hips, bendLeft(other));
        return Math.clamp(wanted, 0, Math.max(0, hips));
    }

    private double bendLeft(LegNumbers leg) {
        return problem.limits().on(leg.side).hipFlexion() - 2 * StanceTrial.MARGIN - trunk.hipFlexion(leg);
    }

    private void weigh() {
        sum = 0;
        sumX = 0;
        sumY = 0;
        pullX = 0;
        pullY = 0;
        pullZ = 0;
        momentX = 0;
        momentY = 0;
        momentZ = 0;
        double neckX = pelvisX + lengths.trunk() * trunk.upX;
        double neckY = pelvisY + lengths.trunk() * trunk.upY;
        double neckZ = pelvisZ + lengths.trunk() * trunk.upZ;
        double t = table.trunk.centre();
        add(table.trunk.mass() * mass, pelvisX + t * (neckX - pelvisX), pelvisY + t * (neckY - pelvisY));
        if (table.head.mass() > 0) {
            double z = trunk.upZ + 0.25;
            double reach = table.head.centre() * lengths.neckHead() / StrictMath.sqrt(trunk.upX * trunk.upX + trunk.upY * trunk.upY + z * z);
            add(table.head.mass() * mass, neckX + reach * trunk.upX, neckY + reach * trunk.upY);
        }
        weigh(left);
        weigh(right);
        arm(leftArm, Side.LEFT, neckX, neckY, neckZ);
        arm(rightArm, Side.RIGHT, neckX, neckY, neckZ);
        if (problem.load() instanceof Load.OnHips(var kg)) {
            add(kg, pelvisX + Loads.HIP_CREASE * stature * trunk.aheadX, pelvisY + Loads.HIP_CREASE * stature * trunk.aheadY);
        }
    }

    private void add(double kg, double x, double y) {
        sum += kg;
        sumX += kg * x;
        sumY += kg * y;
    }

    private void weigh(LegNumbers leg) {
        double t = table.thigh.centre();
        add(table.thigh.mass() * mass, leg.hipX + t * (leg.kneeX - leg.hipX), leg.hipY + t * (leg.kneeY - leg.hipY));
        double s = table.shank.centre();
        add(table.shank.mass() * mass, leg.kneeX + s * (leg.ankleX - leg.kneeX), leg.kneeY + s * (leg.ankleY - leg.kneeY));
        add(table.foot.mass() * mass, leg.footX, leg.footY);
    }

    private void arm(ArmShape arm, Side side, double neckX, double neckY, double neckZ) {
        double half = side.sign() * lengths.shoulderSpacing() / 2;
        double shoulderX = neckX + half * trunk.ribsLeftX;
        double shoulderY = neckY + half * trunk.ribsLeftY;
        add(arm.mass(), shoulderX + trunk.worldX(arm, arm.centre()), shoulderY + trunk.worldY(arm, arm.centre()));
        if (problem.load() instanceof Load.Cable cable && cable.hand() == side) {
            double shoulderZ = neckZ + half * trunk.ribsLeftZ;
            double x = shoulderX + trunk.worldX(arm, arm.grip());
            double y = shoulderY + trunk.worldY(arm, arm.grip());
            double z = shoulderZ + trunk.worldZ(arm, arm.grip());
            double wayX = loads.pulley().getX() - x;
            double wayY = loads.pulley().getY() - y;
            double wayZ = loads.pulley().getZ() - z;
            double newton = cable.mass() * PointMass.GRAVITY / cable.ratio()
                    / StrictMath.sqrt(wayX * wayX + wayY * wayY + wayZ * wayZ);
            push(x, y, z, newton * wayX, newton * wayY, newton * wayZ);
        }
        for (int i = 0; i < hands.size(); i++) {
            if (hands.get(i).limb() == (side == Side.LEFT ? Limb.LEFT_ARM : Limb.RIGHT_ARM)) {
                boolean still = arm.planted();
                push(arm.wrist().getX() + (still ? 0 : shoulderX), arm.wrist().getY() + (still ? 0 : shoulderY), 0, 0, 0,
                        hands.get(i).newton().getZ());
            }
        }
    }

    /** A force besides the weights and the feet; its moment is about the origin. */
    private void push(double x, double y, double z, double fx, double fy, double fz) {
        pullX += fx;
        pullY += fy;
        pullZ += fz;
        momentX += y * fz - z * fy;
        momentY += z * fx - x * fz;
        momentZ += x * fy - y * fx;
    }

    /** As {@link GroundReaction} has it. */
    private void settle() {
        LegNumbers about = oneFoot ? lead : other;
        double px = about.pressureX;
        double py = about.pressureY;
        double pz = about.pressureZ;
        double weight = sum * PointMass.GRAVITY;
        double fz = pullZ - weight;
        double mx = momentX - (py * pullZ - pz * pullY) - (sumY - sum * py) * PointMass.GRAVITY;
        double my = momentY - (pz * pullX - px * pullZ) + (sumX - sum * px) * PointMass.GRAVITY;
        double mz = momentZ - (px * pullY - py * pullX);
        double up = -fz;
        if (oneFoot) {
            slipX = my / up;
            slipY = -mx / up;
            lead.force(-pullX, -pullY, up);
            other.force(0, 0, 0);
            leadShare = 1;
            return;
        }
        double dx = lead.pressureX - px;
        double dy = lead.pressureY - py;
        double dz = lead.pressureZ - pz;
        double flat = StrictMath.sqrt(dx * dx + dy * dy);
        if (pullX == 0 && pullY == 0) {
            double x = my / up;
            double y = -mx / up;
            double share = (x * dx + y * dy) / (flat * flat);
            slipX = (dx * y - dy * x) / flat;
            lead.force(0, 0, share * up);
            other.force(0, 0, (1 - share) * up);
        } else {
            double square = dx * dx + dy * dy + dz * dz;
            double bareX = -(my * dz - mz * dy) / square;
            double bareY = -(mz * dx - mx * dz) / square;
            double bareZ = -(mx * dy - my * dx) / square;
            double pull = -(pullX * dx + pullY * dy) / flat / up;
            double stretch = (bareZ * pull - (bareX * dx + bareY * dy) / flat) / (flat - dz * pull);
            slipX = -(mx * dx + my * dy + mz * dz) / StrictMath.sqrt(square) / up;
            lead.force(bareX + stretch * dx, bareY + stretch * dy, bareZ + stretch * dz);
            other.force(-pullX - lead.forceX, -pullY - lead.forceY, up - lead.forceZ);
        }
        leadShare = lead.forceZ / (lead.forceZ + other.forceZ);
    }

    /** Beside the line of the feet; over one foot, before it. */
    double slipX() {
        return slipX;
    }

    /** Over one foot, beside it. */
    double slipY() {
        return slipY;
    }

    Vector3D pelvis() {
        return new Vector3D(pelvisX, pelvisY, pelvisZ);
    }

    double lean() {
        return trunk.lean();
    }

    double bend() {
        return trunk.bend();
    }
}
