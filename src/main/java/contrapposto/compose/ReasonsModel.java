package contrapposto.compose;

import contrapposto.body.SolvedPose.Mechanics;
import contrapposto.catalogue.Family;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.wording.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Why one exercise is set up and loaded as it is: a card of the coach's pages, as finished words.
 *
 * @param kind   pair, single or both
 * @param halves left, right or both → the case for that half
 */
record ReasonsModel(String id, String number, String name, String kind, String purpose, Optional<String> single,
                    Map<String, Case> halves, List<CoachModel.Statement> statements) {
    /**
     * @param phase   early-to-mid or mid-to-late; empty where no leg works
     * @param numbers what was computed for this side
     * @param lacks   what the equipment lacks
     * @param shin    the key of the drawing with the arc of the working shin; empty where no leg works on its foot
     */
    record Case(String side, String role, Optional<String> phase, List<Number> numbers, List<CoachModel.Statement> statements,
                Optional<Second> second, Optional<String> lacks, boolean byCoach, Optional<String> shin) { }

    /** @param kind names what the value is; the template words it */
    record Number(String kind, String value, String more) { }

    /** @param lostOn what decided */
    record Second(String summary, String lostOn) { }

    /** Everything it says, the exercise's own last. */
    List<CoachModel.Statement> all() {
        return Stream.concat(halves.values().stream().flatMap(c -> c.statements().stream()), statements.stream()).toList();
    }

    /** The same without statements that are printed elsewhere. */
    ReasonsModel without(List<CoachModel.Statement> elsewhere) {
        var kept = new LinkedHashMap<String, Case>();
        halves.forEach((side, c) -> kept.put(side, new Case(c.side(), c.role(), c.phase(), c.numbers(),
                c.statements().stream().filter(s -> !elsewhere.contains(s)).toList(), c.second(), c.lacks(), c.byCoach(), c.shin())));
        return new ReasonsModel(id, number, name, kind, purpose, single, kept, statements.stream().filter(s -> !elsewhere.contains(s)).toList());
    }

    static ReasonsModel of(PlanWords words, Plan.Exercise exercise) {
        var sides = exercise.sides();
        var halves = new LinkedHashMap<String, Case>();
        for (Side side : PlanWords.rows(sides)) {
            halves.put(PlanWords.badge(sides, side), half(words, exercise.id(), sides.on(side), PlanWords.badge(sides, side)));
        }
        String kind = switch (sides) {
            case Sided.Whole<?> whole -> "both";
            case Sided.Each<?> each -> "pair";
            case Sided.Only<?> only -> "single";
        };
        return new ReasonsModel(exercise.id(), Integer.toString(exercise.number()), words.name(exercise.id()), kind,
                words.words(exercise.id()).purpose(),
                sides instanceof Sided.Only<Plan.SidePlan> only ? Optional.of(only.side().word()) : Optional.empty(), halves,
                CoachModel.Statement.of(words, exercise.reasons()));
    }

    private static Case half(PlanWords words, String id, Plan.SidePlan side, String badge) {
        var solved = side.solved();
        var statements = new ArrayList<>(CoachModel.Statement.of(words, solved.reasons()));
        statements.addAll(CoachModel.Statement.of(words, side.reasons()));
        return new Case(badge, solved.role().word(), solved.phase().map(Values::word), numbers(words, side), statements,
                solved.runnerUp().map(r -> new Second(words.told(r.summary()), words.told(r.lostOn()))), solved.lacks().map(words::told), solved.byCoach(),
                Units.known(solved.pose().mechanics().shinWorking()).isPresent() && solved.setUp().workingLeg().isPresent()
                        ? Optional.of(id + "/" + badge + "/shin") : Optional.empty());
    }

    private static List<Number> numbers(PlanWords words, Plan.SidePlan side) {
        var units = words.units();
        Mechanics m = side.solved().pose().mechanics();
        var rows = new Rows(units, new ArrayList<>());
        rows.angle("shin", m.shinWorking(), m.shinStart());
        rows.share(m.frontShare(), m.leftShare(), side.solved().side());
        rows.plainAngle("knee-flexion", m.kneeFlexion());
        rows.angle("lean", m.trunkLean(), Double.NaN);
        if (side.solved().family().works() == Family.Works.ARM) {
            rows.moment("shoulder", m.shoulderMoment());
            rows.moment("elbow", m.elbowMoment());
        } else {
            rows.moment("hip", m.hipMoment());
            rows.moment("knee", m.kneeMoment());
        }
        rows.turning("turn", m.turnMoment());
        rows.turning("bend", m.sideMoment());
        Units.known(m.rearKneeClear()).ifPresent(clear -> rows.add("rear-knee", units.length(Math.max(0, clear)), ""));
        rows.plainAngle("line-of-pull", m.lineOfPull());
        rows.load(side);
        return rows.made();
    }

    private record Rows(Units units, List<Number> made) {
        /** Below this a moment is not worth a line, N·m. */
        private static final double SLIGHT = 0.5;
        /** The least weight that prints as more than nothing, kg. */
        private static final double LEAST = 0.05;
        private static final char NO_BREAK = '\u00a0';

        void add(String kind, String value, String more) {
            made.add(new Number(kind, value, more));
        }

        void angle(String kind, double working, double start) {
            Units.known(working).ifPresent(at -> add(kind, units.signedDegrees(at),
                    Double.isNaN(start) ? "" : units.signedDegrees(start)));
        }

        void plainAngle(String kind, double degrees) {
            Units.known(degrees).ifPresent(at -> add(kind, units.measured(Math.round(at), "deg"), ""));
        }

        /** The weight on the foot in front, or where none is in front on the foot of this side. */
        void share(double front, double left, Side side) {
            if (!Double.isNaN(front)) {
                add("front-share", units.percent(front, 1), "");
            } else {
                Units.known(side == Side.LEFT ? left : 1 - left).ifPresent(share -> add(side.word() + "-share", units.percent(share, 1), ""));
            }
        }

        void moment(String joint, double newtonMetres) {
            if (Math.abs(newtonMetres) >= SLIGHT) {      // false for NaN
                add(joint + "-moment", units.moment(newtonMetres), "");
            }
        }

        /** A moment whose sign is told in words: left of zero is left for a turn, right for a bend. */
        void turning(String kind, double newtonMetres) {
            if (Math.abs(newtonMetres) >= SLIGHT) {
                boolean left = kind.equals("turn") == newtonMetres > 0;
                add(kind, units.moment(Math.abs(newtonMetres)), left ? "left" : "right");
            }
        }

        void load(Plan.SidePlan side) {
            var first = side.doses().getFirst();
            side.capacity().ifPresent(capacity -> {
                add("capacity", units.moment(capacity.moment()), capacity.joint());
                if (capacity.together() > capacity.moment()) {
                    add("capacity-together", units.moment(capacity.together()), "");
                }
                add("one-rep-max", units.mass(capacity.oneRepMax()), capacity.formula().replace(' ', NO_BREAK).replaceFirst(":" + NO_BREAK, ": "));
                if (capacity.exactLoad() >= LEAST) {
                    add("load-exact", units.mass(tenths(capacity.exactLoad())), "");
                }
            });
            first.load().ifPresent(load -> add("load", load > 0 ? units.mass(load) : "0", ""));
            first.share().ifPresent(share -> add("share", units.percent(share, 1), ""));
        }

        private static double tenths(double value) {
            return Math.round(value * 10) / 10.0;
        }
    }
}
