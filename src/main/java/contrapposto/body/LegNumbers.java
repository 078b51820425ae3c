package contrapposto.body;

import contrapposto.body.Foot.Contact;
import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** One leg of a {@link StanceModel} in plain numbers, m and N; written over with every trial. */
final class LegNumbers {
    final Side side;
    private final Segments lengths;
    private final SegmentTable table;
    private final Foot foot;
    final boolean grounded;
    final double yawCosine;
    final double yawSine;

    double hipX, hipY, hipZ;
    double kneeX, kneeY, kneeZ;
    double ankleX, ankleY, ankleZ;
    double heelX, heelY, heelZ;
    double ballX, ballY, ballZ;
    double toeX, toeY, toeZ;
    /** Mass centre of the foot. */
    double footX, footY, footZ;
    double pressureX, pressureY, pressureZ;
    double forceX, forceY, forceZ;
    double span;
    private final Angle pitched = new Angle();
    private final Angle thighHangs = new Angle();
    private final Angle shankHangs = new Angle();
    private final Angle toesHang = new Angle();

    LegNumbers(Side side, Person person, Foot foot, boolean grounded) {
        this.side = side;
        this.lengths = person.segments();
        this.table = person.table();
        this.foot = foot;
        this.grounded = grounded;
        this.yawCosine = Degrees.cos(foot.yaw());
        this.yawSine = Degrees.sin(foot.yaw());
        if (grounded && !moves()) {
            var k = new Skeleton(person);
            foot.place(k, foot.pitch());
            Vector3D press = foot.pressure(k);
            ankle(k.at(side, Part.ANKLE));
            heel(k.at(side, Part.HEEL));
            ball(k.at(side, Part.BALL));
            toe(k.at(side, Part.TOE));
            pressureX = press.getX();
            pressureY = press.getY();
            pressureZ = press.getZ();
            footCentre();
        }
    }

    Foot foot() {
        return foot;
    }

    private boolean moves() {
        return foot.contact() == Contact.SOLE || foot.contact() == Contact.BALL;
    }

    /** Places a foot on its sole or its ball, pressing at {@code share} of its length. @return whether its ankle moved */
    boolean place(double pitch, double share) {
        if (!moves()) {
            return false;
        }
        boolean turned = pitched.set(pitch);
        if (turned) {
            standOn(pitched.cosine(), pitched.sine());
        }
        press(share);
        return turned;
    }

    private void standOn(double c, double s) {
        double aX = yawCosine * c;
        double aY = yawSine * c;
        double aZ = -s;
        ballX = foot.anchor().getX();
        ballY = foot.anchor().getY();
        ballZ = foot.anchor().getZ();
        heelX = ballX - lengths.heelToBall() * aX;
        heelY = ballY - lengths.heelToBall() * aY;
        heelZ = ballZ - lengths.heelToBall() * aZ;
        ankleX = heelX + lengths.heelToAnkle() * aX + lengths.ankleHeight() * yawCosine * s;
        ankleY = heelY + lengths.heelToAnkle() * aY + lengths.ankleHeight() * yawSine * s;
        ankleZ = heelZ + lengths.heelToAnkle() * aZ + lengths.ankleHeight() * c;
        double toes = lengths.foot() - lengths.heelToBall();
        toeX = ballX + toes * yawCosine;
        toeY = ballY + toes * yawSine;
        toeZ = ballZ;
        footCentre();
    }

    /** Moves the centre of pressure to {@code share} of its length. */
    private void press(double share) {
        double along = share * lengths.foot();
        double ball = lengths.heelToBall();
        if (along <= ball) {
            double t = along / ball;
            pressureX = heelX + t * (ballX - heelX);
            pressureY = heelY + t * (ballY - heelY);
            pressureZ = heelZ + t * (ballZ - heelZ);
        } else {
            double t = (along - ball) / (lengths.foot() - ball);
            pressureX = ballX + t * (toeX - ballX);
            pressureY = ballY + t * (toeY - ballY);
            pressureZ = ballZ + t * (toeZ - ballZ);
        }
    }

    /** Bends the knee of a leg on the ground toward a pole. */
    void bend(double poleX, double poleY, double poleZ) {
        double dx = ankleX - hipX;
        double dy = ankleY - hipY;
        double dz = ankleZ - hipZ;
        span = StrictMath.sqrt(dx * dx + dy * dy + dz * dz);
        dx /= span;
        dy /= span;
        dz /= span;
        double thigh = lengths.thigh();
        double shank = lengths.shank();
        double x = Math.clamp((thigh * thigh - shank * shank + span * span) / (2 * span), -thigh, thigh);
        double h = StrictMath.sqrt(thigh * thigh - x * x);
        double dot = poleX * dx + poleY * dy + poleZ * dz;
        double acrossX = poleX - dot * dx;
        double acrossY = poleY - dot * dy;
        double acrossZ = poleZ - dot * dz;
        double size = h / StrictMath.sqrt(acrossX * acrossX + acrossY * acrossY + acrossZ * acrossZ);
        kneeX = hipX + x * dx + size * acrossX;
        kneeY = hipY + x * dy + size * acrossY;
        kneeZ = hipZ + x * dz + size * acrossZ;
    }

    /** Bend of the knee of a leg on the ground, 0 = straight, degrees. */
    double flexion() {
        double thigh = lengths.thigh();
        double shank = lengths.shank();
        return span >= thigh + shank ? 0 : TwoLink.flexion(thigh, shank, span);
    }

    void force(double x, double y, double z) {
        forceX = x;
        forceY = y;
        forceZ = z;
    }

    /** Hangs the leg from its hip by angles in the side view, degrees. */
    void hang(double thigh, double shank, double toes) {
        thighHangs.set(thigh);
        shankHangs.set(shank);
        toesHang.set(toes);
        kneeX = hipX + lengths.thigh() * thighHangs.sine();
        kneeY = hipY;
        kneeZ = hipZ - lengths.thigh() * thighHangs.cosine();
        ankleX = kneeX + lengths.shank() * shankHangs.sine();
        ankleY = hipY;
        ankleZ = kneeZ - lengths.shank() * shankHangs.cosine();
        double c = toesHang.cosine();
        double s = toesHang.sine();
        heelX = ankleX - lengths.heelToAnkle() * c + lengths.ankleHeight() * s;
        heelY = hipY;
        heelZ = ankleZ - lengths.heelToAnkle() * s - lengths.ankleHeight() * c;
        ballX = heelX + lengths.heelToBall() * c;
        ballY = hipY;
        ballZ = heelZ + lengths.heelToBall() * s;
        toeX = heelX + lengths.foot() * c;
        toeY = hipY;
        toeZ = heelZ + lengths.foot() * s;
        footCentre();
    }

    private void footCentre() {
        double t = table.foot.centre();
        if (table.footFromHeel) {
            footX = heelX + t * (toeX - heelX);
            footY = heelY + t * (toeY - heelY);
            footZ = heelZ + t * (toeZ - heelZ);
        } else {
            footX = ankleX + t * (ballX - ankleX);
            footY = ankleY + t * (ballY - ankleY);
            footZ = ankleZ + t * (ballZ - ankleZ);
        }
    }

    private void ankle(Vector3D at) {
        ankleX = at.getX();
        ankleY = at.getY();
        ankleZ = at.getZ();
    }

    private void heel(Vector3D at) {
        heelX = at.getX();
        heelY = at.getY();
        heelZ = at.getZ();
    }

    private void ball(Vector3D at) {
        ballX = at.getX();
        ballY = at.getY();
        ballZ = at.getZ();
    }

    private void toe(Vector3D at) {
        toeX = at.getX();
        toeY = at.getY();
        toeZ = at.getZ();
    }
}
