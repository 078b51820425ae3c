package contrapposto.prescribe;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.body.PoseProblem;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.prescribe.Plan.Capacity;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.prescribe.Plan.Week;
import contrapposto.setup.SetUp;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/** Writes one side of one exercise: what it can bear, what it is given each week, and why. */
final class SideWriter {
    /** Rest of a heavy leg lift, seconds: ACSM 2009, at least 2 to 3 min (B1.6). */
    private static final int HEAVY_REST = 120;

    private final SetUps setUps;
    private final Assessed assessed;
    private final HouseRules rules;
    private final RepCurve curve;
    private final Strengths strengths;
    private final Function<PoseProblem, Demand> demands;
    private final Bench bench;
    private final boolean longRest;
    private final List<String> warnings = new ArrayList<>();

    /**
     * @param demands  the demand of a set-up, remembered between calls
     * @param longRest whether heavy leg lifts may rest longer than their family asks
     */
    SideWriter(SetUps setUps, RepCurve curve, Strengths strengths, Function<PoseProblem, Demand> demands, Bench bench,
               boolean longRest) {
        this.setUps = setUps;
        this.assessed = setUps.assessed();
        this.rules = setUps.catalogue().rules();
        this.curve = curve;
        this.strengths = strengths;
        this.demands = demands;
        this.bench = bench;
        this.longRest = longRest;
    }

    /** What the coach is to be told, in the order it came up. */
    List<String> warnings() {
        return List.copyOf(warnings);
    }

    /**
     * @param weeks     in which the exercise is done
     * @param sets      per side and session in a week, if it is not easy
     * @param bothSides whether the set-up serves both sides at once
     */
    SidePlan write(SolvedSetUp solved, List<Week> weeks, ToIntFunction<Week> sets, boolean bothSides) {
        var frame = frame(solved, sets);
        var demand = demands.apply(solved.problem());
        var reasons = new ArrayList<Reason>();
        reasons.add(setsReason(sets.applyAsInt(weeks.getFirst())));
        reasons.add(restReason(solved, frame));
        reasons.add(new Reason("tempo", "tempo " + frame.family().tempo() + " (lowering, pause, lifting, in seconds): a means to "
                + "move under control, not a proven driver", Source.PRACTICE, "B2.5: ACSM 2026"));
        var strength = carriesWeight(solved) || legGroup(solved) ? strengths.of(solved, demand, bothSides)
                : Optional.<Strength>empty();
        var weighed = strength.flatMap(known -> weighed(solved, demand, known, frame, weeks, reasons));
        return weighed.orElseGet(() -> unweighed(solved, frame, weeks, reasons));
    }

    private Frame frame(SolvedSetUp solved, ToIntFunction<Week> sets) {
        var dose = solved.family().dose();
        boolean heavy = longRest && legGroup(solved) && !assessed.spec().aims().isEmpty()
                && assessed.spec().aims().getFirst() == Aim.STRENGTH;
        return new Frame(dose, sets, heavy ? Math.max(HEAVY_REST, dose.rest()) : dose.rest(), curve, rules.progression(),
                assessed.verdict().limits().contains(Limit.SLOWER_PROGRESSION));
    }

    private Optional<SidePlan> weighed(SolvedSetUp solved, Demand demand, Strength strength, Frame frame, List<Week> weeks,
                                       List<Reason> reasons) {
        var band = ShareBand.of(assessed, rules, solved.family().group().countsBodyMass());
        var weights = carriesWeight(solved) ? Weights.of(assessed.spec(), solved.setUp().implement(), solved.problem().load())
                : new Weights(List.of(0.0), Double.POSITIVE_INFINITY, new MassWords(assessed.spec().client().units()));
        var rise = new WeighedRise(frame, strength.asking(), weights, band.range());
        return Loading.of(strength.asking(), weights, band.range(), rise.firstShare(), mostToBegin(solved, strength)).map(loading -> {
            loading.warning().ifPresent(said -> warnings.add(solved.family().id() + " " + solved.side().word() + ": " + said));
            var doses = (loading.held() ? new WeighedRise(frame, strength.asking(), weights.upTo(loading.load()), band.range()) : rise)
                    .doses(weeks, loading.load());
            reasons.addAll(strength.reasons());
            reasons.add(band.reason());
            reasons.addAll(loading.reasons());
            reasons.add(repsReason(doses.getFirst(), frame));
            reasons.add(progressionReason(solved, frame, doses));
            var capacity = new Capacity(strength.joint().word(), strength.moment(), strength.together(), strength.oneRepMax(), loading.exact(),
                    curve.formula().words(), Strengths.ERROR, strength.tests());
            return new SidePlan(posed(solved, firstWeight(doses)), firstWeight(doses), Optional.of(capacity), doses,
                    List.copyOf(reasons));
        });
    }

    /** The most to begin with, kg per implement: the heaviest weight lifted in a test. */
    private static double mostToBegin(SolvedSetUp solved, Strength strength) {
        return strength.mostToBegin() / (solved.setUp().eachHand() ? 2 : 1);
    }

    /** The first weight of the weeks, kg; 0 when every week goes without. It is what the card shows in the hand. */
    private static double firstWeight(List<Dose> doses) {
        return doses.stream().map(Dose::load).filter(OptionalDouble::isPresent).mapToDouble(OptionalDouble::getAsDouble)
                .findFirst().orElse(0);
    }

    private SidePlan unweighed(SolvedSetUp solved, Frame frame, List<Week> weeks, List<Reason> reasons) {
        boolean byEffort = carriesWeight(solved) || solved.setUp().implement() == Implement.BAND;
        reasons.add(byEffort ? Reason.of("by-effort", "no test that counts for this set-up, so no kilograms: the client finds the "
                + (solved.setUp().implement() == Implement.BAND ? "band" : "weight") + " that leaves the repeats to spare and writes it down",
                Source.PRACTICE) : Reason.of("own-weight", "the body is the load; repeats rise through the family's range",
                Source.PRACTICE));
        return new SidePlan(solved, Demand.mass(solved.problem().load()), Optional.empty(),
                new SteadyRise(frame).doses(weeks, byEffort), List.copyOf(reasons));
    }

    /** The set-up solved with its first weight; without anything in the hand where no week has one. */
    private SolvedSetUp posed(SolvedSetUp solved, double load) {
        var posed = bench.resolve(setUps, solved, load).orElse(solved);
        return load > 0 || !carriesWeight(solved) ? posed : new SolvedSetUp(posed.family(), posed.side(), posed.role(),
                empty(posed.setUp()), posed.problem(), posed.pose(), posed.phase(), posed.muscles(), posed.otherSideMuscles(),
                posed.reasons(), posed.runnerUp(), posed.lacks(), posed.byCoach());
    }

    private static SetUp empty(SetUp s) {
        return new SetUp(s.workingLeg(), s.workingArm(), s.frontFoot(), s.frontRaise(), s.rearRaise(), s.raise(),
                s.heelWedge(), s.wedgeFoot(), s.stance(), s.stanceWidth(), Optional.empty(), false, false, s.hipShift(),
                s.handSupport(), s.pulley(), s.pulleyDistance(), Implement.BODY_WEIGHT, 0);
    }

    private static boolean carriesWeight(SolvedSetUp solved) {
        return switch (solved.setUp().implement()) {
            case DUMBBELL, KETTLEBELL, BARBELL, CABLE -> true;
            case BODY_WEIGHT, BAND -> false;
        };
    }

    private static boolean legGroup(SolvedSetUp solved) {
        var group = solved.family().group();
        return group == CapacityGroup.KNEE_BEND || group == CapacityGroup.HINGE;
    }

    private static Reason setsReason(int sets) {
        return new Reason("sets", sets + (sets == 1 ? " set" : " sets") + " a side and session; published: 1 to 3 for "
                + "newcomers, 2 to 3 for strength", Source.PUBLISHED, "B1.5: ACSM 2009; B2.2: ACSM 2026");
    }

    private static Reason restReason(SolvedSetUp solved, Frame frame) {
        return frame.rest() > solved.family().dose().rest()
                ? new Reason("rest", frame.rest() + " s: a heavy leg lift wants at least 2 to 3 min", Source.PUBLISHED, "B1.6: ACSM 2009")
                : new Reason("rest", frame.rest() + " s: assistance work wants 1 to 2 min, less where nothing tires", Source.PUBLISHED,
                "B1.7: ACSM 2009");
    }

    private Reason repsReason(Dose first, Frame frame) {
        OptionalDouble share = first.share();
        double possible = share.isPresent() && share.getAsDouble() > 0 ? curve.reps(share.getAsDouble()) : 0;
        return new Reason("reps", String.format(Locale.ROOT, "%.0f %% of capacity can be done about %.0f times (%s); the first week "
                        + "asks %d in the range of %d to %d and leaves %s %d", 100 * share.orElse(0), Math.min(possible, 99),
                curve.formula().author(), first.reps(), frame.family().repsFrom(), frame.family().repsTo(),
                possible - first.reps() > Frame.MOST_RESERVE + 1 ? "at least" : "about", first.inReserve()), Source.PUBLISHED,
                "A1: " + curve.formula().author() + " read backward; starting load, people differ (A1.13)");
    }

    private Reason progressionReason(SolvedSetUp solved, Frame frame, List<Dose> doses) {
        boolean body = solved.family().group().countsBodyMass();
        long rises = doses.stream().filter(Dose::heavier).count();
        return new Reason("progression", String.format(Locale.ROOT, "repeats first, then a weight %.0f to %.0f %% up (%s)%s; %s",
                100 * frame.rise().low(), 100 * frame.rise().high(),
                body ? "body and weight counted together" : "the weight alone counted",
                frame.slower() ? ", after the repeats were held two weeks" : "",
                rises > 0 ? rises + (rises == 1 ? " rise" : " rises") + " planned; the capacity is taken as tested, so real gains come on top"
                        : "no heavier weight lies inside the rule and the band: repeats rise instead, and a new test decides"),
                Source.PUBLISHED, "B1.1: ACSM 2009, wording of the evidence table, two sessions in a row; G1.22");
    }
}
