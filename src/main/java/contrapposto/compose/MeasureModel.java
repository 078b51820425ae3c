package contrapposto.compose;

import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.Load;
import contrapposto.body.PoseProblem;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUp;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Units;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of a set-up that a tape or an eye can check. The template words it by its kind.
 *
 * @param kind  what is meant; the kinds are listed in templates/README.md
 * @param value a finished length, or empty where the kind names a foot, hand or knee
 * @param side  the side it is about, or the side ahead
 * @param other the other one
 * @param thing what is held or leaned on, as a word; empty where the kind says it
 */
record MeasureModel(String kind, String value, String side, String other, String thing) {
    /** Below this nobody measures: 5 mm. */
    private static final double SLIGHT = 0.005;

    static List<MeasureModel> of(SolvedSetUp solved, Units units) {
        var lines = new Lines(units, solved.setUp().implement().word());
        lines.base(solved.problem().base(), solved.problem().action());
        lines.pulley(solved.setUp(), solved.side());
        lines.load(solved.problem().load());
        lines.support(solved.problem(), solved.setUp());
        return lines.made;
    }

    /** The lines in the order in which a person sets things up. */
    private record Lines(Units units, String implement, List<MeasureModel> made) {
        Lines(Units units, String implement) {
            this(units, implement, new ArrayList<>());
        }

        void base(BaseOfSupport base, Action action) {
            switch (base) {
                case BaseOfSupport.Split(var front, var stance, var width, var frontRaise, var rearRaise, var onLaces) -> {
                    length("front-raise", frontRaise, front);
                    length(onLaces ? "rear-laces" : "rear-raise", rearRaise, front.other());
                    length("stance", stance, front);
                    length("width", width, front);
                }
                case BaseOfSupport.Staggered(var ahead, var stance, var width, var wedgeFoot, var wedge, var heelUp) -> {
                    length("wedge", wedge, wedgeFoot);
                    length(stance > 0 ? "stance" : "overlap", Math.abs(stance), ahead);
                    length("width", width, ahead);
                    if (heelUp) {
                        word("kickstand", ahead.other());
                    }
                }
                case BaseOfSupport.Level(var width, var raise) -> {
                    length(action instanceof Action.HeelRise ? "balls-raise" : "feet-raise", raise, Side.LEFT);
                    length("heels", width, Side.LEFT);
                }
                case BaseOfSupport.Step(var up, var box, var width) -> {
                    length("step", box, up);
                    length("width", width, up);
                }
                case BaseOfSupport.OneLeg(var standing) -> word("one-leg", standing);
                case BaseOfSupport.HalfKneeling(var down, var width) -> {
                    word("half-kneeling", down);
                    length("knee-width", width, down);
                }
                case BaseOfSupport.TallKneeling(var width) -> {
                    word("tall-kneeling", Side.LEFT);
                    length("knees", width, Side.LEFT);
                }
                case BaseOfSupport.KneelingAtSupport(var height, var width) -> {
                    length("kneel-support", height, Side.LEFT);
                    length("knees", width, Side.LEFT);
                }
                case BaseOfSupport.AllFours(var width) -> {
                    word("all-fours", Side.LEFT);
                    length("hands-width", width, Side.LEFT);
                }
                case BaseOfSupport.Plank(var left, var right, var width, var onKnees) -> {
                    plank(left, right, onKnees);
                    length("hands-width", width, Side.LEFT);
                }
                case BaseOfSupport.Supine(var raise, var width) -> {
                    length("heels-raise", raise, Side.LEFT);
                    if (raise <= SLIGHT) {
                        word("supine", Side.LEFT);
                    }
                    length("feet-width", width, Side.LEFT);
                }
                case BaseOfSupport.SideLying(var below) -> word("side-lying", below);
                case BaseOfSupport.Seated(var height, var width) -> {
                    length("seat", height, Side.LEFT);
                    length("feet-width", width, Side.LEFT);
                }
            }
        }

        private void plank(double left, double right, boolean onKnees) {
            if (Math.abs(left - right) <= SLIGHT) {
                length("hands-raise", left, Side.LEFT);
            } else {
                length("hand-raise", Math.max(left, right), left > right ? Side.LEFT : Side.RIGHT);
            }
            if (onKnees) {
                word("knees-down", Side.LEFT);
            }
        }

        void pulley(SetUp setUp, Side side) {
            length("pulley", setUp.pulley().metres(), side);
            Units.known(setUp.pulleyDistance()).ifPresent(d -> length("pulley-distance", d, side));
        }

        void load(Load load) {
            switch (load) {
                case Load.None none -> { }
                case Load.InHand(var hand, var mass) -> word("hand-load", hand);
                case Load.InEachHand each -> word("each-hand", Side.LEFT);
                case Load.InBothHands both -> word("both-hands", Side.LEFT);
                case Load.OnHips hips -> word("on-hips", Side.LEFT);
                case Load.Cable cable -> word("handle", cable.hand());
                case Load.Band band -> word("band", band.hand());
            }
        }

        void support(PoseProblem problem, SetUp setUp) {
            if (setUp.handSupport() != SetUp.Support.NONE) {
                Side hand = problem.left() instanceof ArmTask.OnSupport ? Side.LEFT : Side.RIGHT;
                made.add(new MeasureModel("support", "", hand.word(), hand.other().word(), Values.word(setUp.handSupport())));
            }
        }

        private void length(String kind, double metres, Side side) {
            if (metres > SLIGHT) {      // false for NaN, "does not apply"
                made.add(new MeasureModel(kind, units.length(metres), side.word(), side.other().word(), implement));
            }
        }

        private void word(String kind, Side side) {
            made.add(new MeasureModel(kind, "", side.word(), side.other().word(), implement));
        }
    }
}
