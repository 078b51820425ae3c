package contrapposto.setup;

import contrapposto.body.ArmTask;
import contrapposto.body.Load;
import contrapposto.body.PoseProblem;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family.BaseKind;
import contrapposto.catalogue.Family.FootPlace;
import contrapposto.catalogue.Family.LoadHand;
import contrapposto.catalogue.Family.Works;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.Optional;

/** The set-up of a test: what was said about it, and for the rest flat feet, the usual stance and the weight in both hands. */
final class Tested {
    private Tested() { }

    /**
     * The pressure may lie anywhere under a sole: a test is done as it comes, so both sides are read alike. In a knee bend a weight in both
     * hands is held before the chest: hanging, it would be where the front thigh goes.
     */
    static PoseProblem problem(Question q, SetUpWish wish, double kg) {
        var p = Posing.problem(q, setUp(q, wish), kg);
        boolean chest = q.family().group() == CapacityGroup.KNEE_BEND && p.load() instanceof Load.InBothHands;
        return new PoseProblem(p.person(), p.working(), p.limits(), p.base(), p.action(), held(p.left(), chest), held(p.right(), chest), p.load(),
                p.hipShift(), p.handSupport(), new Sided.Whole<>(Zone.WHOLE_SOLE), p.effort());
    }

    private static ArmTask held(ArmTask arm, boolean chest) {
        return chest && arm instanceof ArmTask.Hang ? new ArmTask.AtChest() : arm;
    }

    private static SetUp setUp(Question q, SetUpWish wish) {
        var levers = q.family().levers();
        boolean arm = q.family().works() != Works.LEG;
        boolean one = arm || wish.loadHand().isPresent();
        Side hand = wish.loadHand().orElse(levers.loadHands().contains(LoadHand.SAME) ? q.side() : q.side().other());
        boolean ahead = levers.workingFoot().isEmpty() || levers.workingFoot().contains(FootPlace.AHEAD);
        Length raise = Gear.of(q).raises(q.family()).stream().findFirst()
                .orElse(Length.ofMetres(levers.raise().from()));
        var implement = levers.implement().stream().filter(i -> i != Implement.BODY_WEIGHT).findFirst()
                .orElse(Implement.BODY_WEIGHT);
        boolean cable = implement == Implement.CABLE;
        return new SetUp(arm || q.symmetric() ? Optional.empty() : Optional.of(q.side()),
                arm && !q.symmetric() ? Optional.of(q.side()) : Optional.empty(),
                q.family().base() == BaseKind.SPLIT || q.staggered() ? Optional.of(ahead ? q.side() : q.side().other())
                        : Optional.empty(),
                wish.frontRaise().orElse(Length.ZERO), wish.rearRaise().orElse(Length.ZERO), raise,
                wish.heelWedge().orElse(Length.ZERO), wish.heelWedge().map(h -> q.side()),
                wish.stance().map(Length::metres).orElse(Fitting.usualStance(q)), Posing.width(q),
                one ? Optional.of(hand) : Optional.empty(), !one, false, false, SetUp.Support.NONE,
                cable ? wish.pulley().orElse(pulley(q)) : Length.ZERO,
                cable ? wish.pulleyDistance().orElse(levers.pulleyDistance() * q.stature()) : Double.NaN, implement, 1);
    }

    private static Length pulley(Question q) {
        var heights = Posing.pulleys(q, Implement.CABLE);
        return heights.isEmpty() ? Length.ofMetres(q.family().levers().pulleyFrom() * q.stature())
                : heights.get(heights.size() / 2);
    }
}
