package contrapposto.setup;

import contrapposto.body.PoseProblem.Zone;
import contrapposto.body.SolvedPose.Mechanics;
import contrapposto.catalogue.Family.BaseKind;
import contrapposto.catalogue.Family.Toward;
import contrapposto.catalogue.Family.Works;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Marks a solved set-up on every {@link Criterion} for one side's target. All marks are zero or more, smaller is better. */
final class Judge {
    /** A turning moment below this turns nobody, N·m (house default). */
    static final double TURNS = 0.5;
    /** How far inside the window a stance is sought, degrees (house default). */
    private static final double WELL_INSIDE = 2;

    private final Question q;

    Judge(Question q) {
        this.q = q;
    }

    /** @param order of the candidate in the house order */
    Judgement judge(Trial.Held held, int order) {
        var marks = new ArrayList<Double>();
        for (var criterion : Criterion.values()) {
            marks.add(switch (criterion) {
                case SAFETY -> safety(held.setUp());
                case PHASE -> StrictMath.ceil(phaseMiss(held.mechanics()) - 1e-9);
                case WEIGHT -> weight(held.setUp(), held.mechanics());
                case TURN -> turn(held.setUp(), held.mechanics());
                case LINE -> StrictMath.ceil(lineMiss(held.mechanics()) - 1e-9);
                case PRESSURE -> pressure(held.setUp());
                case MUSCLES -> muscles(held.mechanics());
                case LOAD -> load(held.setUp());
                case STEADINESS -> steadiness(held.setUp());
                case THINGS -> (double) held.setUp().things();
                case ORDER -> (double) order;
            });
        }
        return new Judgement(marks);
    }

    /** Someone who needs a hand on something steady and has none. */
    private double safety(SetUp setUp) {
        boolean wanted = q.assessed().cautious() && q.family().levers().handSupport();
        return wanted && setUp.handSupport() == SetUp.Support.NONE ? 1 : 0;
    }

    /**
     * The phase that a pose trains: by its shin at working depth; in a hinge, whose shin hardly moves, by the zone that the
     * foot's pressure is kept in. Empty where no leg stands.
     */
    Optional<Phase> phase(Mechanics m) {
        if (!q.standsOnALeg() || Double.isNaN(m.shinWorking())) {
            return Optional.empty();
        }
        var byShin = m.shinWorking() <= q.rules().shinVertical() ? Phase.EARLY_TO_MID : Phase.MID_TO_LATE;
        return Optional.of(!q.hinges() ? byShin : switch (Posing.zone(q)) {
            case HEEL -> Phase.EARLY_TO_MID;
            case BALL -> Phase.MID_TO_LATE;
            case WHOLE_SOLE -> byShin;
        });
    }

    private Optional<Phase> wanted() {
        return q.target().phases().stream().findFirst();
    }

    /** Degrees between the solved shin and the wanted window; 0 inside it, or where either phase will do. */
    double phaseMiss(Mechanics m) {
        if (phase(m).isEmpty() || q.target().phases().size() != 1 || q.hinges() && phase(m).equals(wanted())) {
            return 0;
        }
        double vertical = q.rules().shinVertical();
        return switch (q.target().phases().getFirst()) {
            case EARLY_TO_MID -> Math.max(0, Math.abs(m.shinWorking()) - vertical) + Math.max(0, m.shinStart());
            case MID_TO_LATE -> Math.max(0, 2 * vertical - m.shinWorking());
        };
    }

    /**
     * How much too far forward (+) or back (−) the shin is for a place well inside the wanted window, so that a little
     * more weight does not push it out; 0 there.
     */
    double shinError(Mechanics m) {
        if (phase(m).isEmpty() || q.target().phases().size() != 1) {
            return 0;
        }
        double vertical = q.rules().shinVertical();
        double shin = m.shinWorking();
        return switch (q.target().phases().getFirst()) {
            case EARLY_TO_MID -> Math.max(0, Math.max(shin - (vertical - WELL_INSIDE), m.shinStart()))
                    + Math.min(0, shin + (vertical - WELL_INSIDE));
            case MID_TO_LATE -> Math.min(0, shin - (2 * vertical + WELL_INSIDE));
        };
    }

    /** In fiftieths: late stance is single support, so the more weight on the leg the better; early stance shares it. */
    private double weight(SetUp setUp, Mechanics m) {
        if (phase(m).isEmpty() || q.target().phases().size() != 1 || Double.isNaN(m.leftShare())) {
            return 0;
        }
        double share = q.side() == Side.LEFT ? m.leftShare() : 1 - m.leftShare();
        return switch (q.target().phases().getFirst()) {
            case EARLY_TO_MID -> StrictMath.ceil(share * 50 - 1e-9);
            case MID_TO_LATE -> StrictMath.ceil((1 - share) * 50 - 1e-9);
        };
    }

    /** Turn of the load, of the stagger and of the hip shift, each 0 toward, 1 neither, 2 against the wanted side. */
    private double turn(SetUp setUp, Mechanics m) {
        return loadTurn(m) + stagger(setUp) + shift(setUp);
    }

    /**
     * What a set-up is worth before any pose is solved: safety, the preferred weight, the turn that its hand promises, and
     * the wedge, which is a rule for the pressure and not a solved effect.
     */
    Promise promise(SetUp setUp) {
        return new Promise(safety(setUp), load(setUp), promisedTurn(setUp) + stagger(setUp) + shift(setUp),
                pressure(setUp));
    }

    /** Smaller is better, the first difference decides. */
    record Promise(double safety, double load, double turn, double pressure) implements Comparable<Promise> {
        private static final Comparator<Promise> ORDER = Comparator.comparingDouble(Promise::safety)
                .thenComparingDouble(Promise::load).thenComparingDouble(Promise::turn).thenComparingDouble(Promise::pressure);

        @Override
        public int compareTo(Promise other) {
            return ORDER.compare(this, other);
        }
    }

    /** A weight in one hand turns the leaning trunk away from that hand. */
    private double promisedTurn(SetUp setUp) {
        if (q.target().turnTo().isEmpty()) {
            return setUp.loadHand().isPresent() && q.family().turn().toward() == Toward.BY_LOAD_HAND ? 1 : 0;
        }
        if (q.family().turn().toward() != Toward.BY_LOAD_HAND) {
            return 0;
        }
        return setUp.loadHand().map(hand -> hand == q.target().turnTo().get() ? 2.0 : 0.0).orElse(1.0);
    }

    private double loadTurn(Mechanics m) {
        double moment = Double.isNaN(m.turnMoment()) ? 0 : m.turnMoment();
        if (q.target().turnTo().isEmpty()) {
            return q.family().turn().toward() == Toward.BY_LOAD_HAND && Math.abs(moment) >= TURNS ? 1 : 0;
        }
        if (q.family().turn().toward() == Toward.NONE) {
            return 0;
        }
        double toward = moment * q.target().turnTo().get().sign() * (loadCarries() ? 1 : -1);
        return toward > TURNS ? 0 : toward < -TURNS ? 2 : 1;
    }

    /** A weight in one hand carries the trunk round; a family may say that muscles turn it against the load instead. */
    private boolean loadCarries() {
        return q.family().turn().carried() || q.family().turn().toward() == Toward.BY_LOAD_HAND;
    }

    /** The foot ahead carries its half of the pelvis forward: the pelvis turns toward the foot behind. */
    private double stagger(SetUp setUp) {
        return q.staggered() && q.target().turnTo().isPresent()
                && setUp.frontFoot().equals(q.target().turnTo()) ? 2 : 0;
    }

    private double shift(SetUp setUp) {
        return setUp.hipShift() == q.target().turnTo().equals(Optional.of(q.side())) || !q.family().levers().hipShift()
                ? 0 : 1;
    }

    /** Whether the load turns the person the way they already turn. */
    boolean turnsWrongWay(Trial.Held held) {
        return q.family().turn().toward() != Toward.NONE && q.target().turnTo().isPresent() && loadTurn(held.mechanics()) == 2;
    }

    /** Whether the stagger of a hinge carries the pelvis the way it already turns. */
    boolean staggersWrongWay(SetUp setUp) {
        return q.family().base() == BaseKind.STAGGERED && q.family().works() == Works.LEG
                && q.family().turn().toward() != Toward.NONE && stagger(setUp) > 0;
    }

    /** Degrees between the cable's slope and the wanted range. */
    double lineMiss(Mechanics m) {
        return outside(m.lineOfPull(), 0);
    }

    /** Degrees from a slope to one well inside the wanted range; 0 where there is no line. */
    double lineError(double slope) {
        return outside(slope, WELL_INSIDE);
    }

    private double outside(double slope, double margin) {
        double from = Math.min(q.family().levers().slopeFrom(), q.family().levers().slopeTo()) + margin;
        double to = Math.max(q.family().levers().slopeFrom(), q.family().levers().slopeTo()) - margin;
        return Double.isNaN(slope) || from >= to ? 0 : Math.max(0, Math.max(from - slope, slope - to));
    }

    /** The zone under the working foot, and a wedge where the heel is wanted (a rule: the wedge is not a solved effect). */
    private double pressure(SetUp setUp) {
        if (q.symmetric() || q.target().turnTo().isEmpty()) {
            return 0;
        }
        boolean wedgeWanted = q.family().levers().heelWedge() && q.target().pressure() == Zone.HEEL;
        return wedgeWanted == setUp.heelWedge().metres() > 0 ? 0 : 1;
    }

    /** What is missed of the wanted muscles: the first wanted weighs most. */
    private double muscles(Mechanics m) {
        var trained = TrainedMuscles.of(q.family().muscles(), phase(m));
        List<Muscle> wanted = q.target().muscles();
        double missed = 0;
        for (int i = 0; i < wanted.size(); i++) {
            missed += (wanted.size() - i) * (1 - trained.getOrDefault(wanted.get(i), 0.0));
        }
        return missed;
    }

    private double load(SetUp setUp) {
        int place = q.family().levers().implement().indexOf(setUp.implement());
        return place < 0 ? 0 : place;
    }

    /** Centimetres off the usual stance; in the first years of training (house rules: novice-years) also those of the rear foot off the floor. */
    private double steadiness(SetUp setUp) {
        double usual = Fitting.usualStance(q);
        double off = Double.isNaN(usual) ? 0 : Math.abs(setUp.stance() - usual) * 100;
        double high = q.spec().client().trainingYears() < q.rules().placing().noviceYears() ? setUp.rearRaise().centimetres() : 0;
        return StrictMath.rint(off + high);
    }
}
