package contrapposto.prescribe;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.body.PoseProblem;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.prescribe.Plan.Capacity;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.prescribe.Plan.Week;
import contrapposto.setup.SetUp;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/** Writes one side of one exercise: what it can bear, what it is given each week, and why. */
final class SideWriter {
    /** Rest of a heavy leg lift, seconds: ACSM 2009, at least 2 to 3 min (B1.6). */
    private static final int HEAVY_REST = 120;
    private static final String PROGRESSION = "B1.1: ACSM 2009, wording of the evidence table, two sessions in a row; G1.22";

    private final SetUps setUps;
    private final Assessed assessed;
    private final HouseRules rules;
    private final RepCurve curve;
    private final Strengths strengths;
    private final Function<PoseProblem, Demand> demands;
    private final Bench bench;
    private final boolean longRest;
    private final List<Said> warnings = new ArrayList<>();

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
    List<Said> warnings() {
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
        reasons.add(new Reason("tempo", Said.of("tempo").text("tempo", frame.family().tempo()), Source.PRACTICE, "B2.5: ACSM 2026"));
        var strength = carriesWeight(solved) || legGroup(solved) ? strengths.of(solved, demand, bothSides)
                : Optional.<Strength>empty();
        var weighed = strength.flatMap(known -> weighed(solved, demand, known, frame, weeks, reasons));
        return weighed.orElseGet(() -> unweighed(solved, frame, weeks, reasons));
    }

    private Frame frame(SolvedSetUp solved, ToIntFunction<Week> sets) {
        var dose = solved.family().dose();
        boolean heavy = longRest && legGroup(solved) && (older() || !assessed.spec().aims().isEmpty()
                && assessed.spec().aims().getFirst() == Aim.STRENGTH);
        return new Frame(dose, sets, heavy ? Math.max(HEAVY_REST, dose.rest()) : dose.rest(), curve, rules.progression(),
                assessed.verdict().limits().contains(Limit.SLOWER_PROGRESSION), assessed.spec().schedule().scheme());
    }

    /** From 65 on the position stand for older adults rests two minutes between sets (NSCA 2019, B3.18). */
    private boolean older() {
        return assessed.spec().client().age().orElse(0) >= 65;
    }

    private Optional<SidePlan> weighed(SolvedSetUp solved, Demand demand, Strength strength, Frame frame, List<Week> weeks,
                                       List<Reason> reasons) {
        var band = ShareBand.of(assessed, rules, solved.family().group().countsBodyMass());
        var weights = carriesWeight(solved) ? Weights.of(assessed.spec(), solved.setUp().implement(), solved.problem().load())
                : new Weights(List.of(0.0), Double.POSITIVE_INFINITY);
        var rise = new WeighedRise(frame, strength.asking(), weights, band.range());
        return Loading.of(strength.asking(), weights, band.range(), rise.firstShare(), mostToBegin(solved, strength)).map(loading -> {
            loading.warning().ifPresent(said -> warnings.add(Said.of("warning/exercise").exercise("exercise", solved.family().id())
                    .side("side", solved.side()).said("said", said)));
            var doses = (loading.held() ? new WeighedRise(frame, strength.asking(), weights.upTo(loading.load()), band.range()) : rise)
                    .doses(weeks, loading.load());
            reasons.addAll(strength.reasons());
            reasons.add(band.reason());
            reasons.addAll(loading.reasons());
            if (loading.warning().isPresent() && loading.load() <= 0) {
                easier(solved).ifPresent(reasons::add);
            }
            reasons.add(repsReason(doses.getFirst(), frame));
            reasons.add(progressionReason(solved, frame, doses));
            var capacity = new Capacity(strength.joint().word(), strength.moment(), strength.together(), strength.oneRepMax(), rise.firstShare(), loading.exact(),
                    curve.formula().words(), strength.error(), strength.tests());
            return new SidePlan(posed(solved, firstWeight(doses)), firstWeight(doses), Optional.of(capacity), doses,
                    List.copyOf(reasons));
        });
    }

    /** What is easier, where even the lightest weight or the body alone asks too much: the catalogue's own easier step. */
    private static Optional<Reason> easier(SolvedSetUp solved) {
        return solved.family().easier().stream().filter(link -> !link.family().equals(solved.family().id())).findFirst()
                .map(link -> Reason.of("easier-way", Said.of("easier-way").exercise("easier", link.family()), Source.PRACTICE));
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
        var bands = assessed.spec().equipment().bands();
        boolean band = solved.setUp().implement() == Implement.BAND;
        if (band && !bands.isEmpty()) {
            reasons.add(new Reason("bands", Said.of("bands").listed("bands", bands.stream().map(SideWriter::said).toList()), Source.COACH, "G1.20"));
        }
        reasons.add(byEffort ? Reason.of("by-effort", Said.of("by-effort").word("what", band ? "band" : "weight"),
                Source.PRACTICE) : Reason.of("own-weight", Said.of("own-weight"), Source.PRACTICE));
        return new SidePlan(solved, Demand.mass(solved.problem().load()), Optional.empty(),
                new SteadyRise(frame).doses(weeks, byEffort), List.copyOf(reasons));
    }

    private static Said said(CheckedSpec.Band band) {
        return band.measured().map(pull -> Said.of("bands/measured").text("name", band.name()).mass("pull", pull.pull().kilograms())
                .length("at", pull.at().metres())).orElseGet(() -> Said.of("bands/named").text("name", band.name()));
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
        return new Reason("sets", Said.of("sets").count("sets", sets), Source.PUBLISHED, "B1.5: ACSM 2009; B2.2: ACSM 2026");
    }

    private Reason restReason(SolvedSetUp solved, Frame frame) {
        return frame.rest() > solved.family().dose().rest()
                ? older() ? new Reason("rest", Said.of("rest/older").count("rest", frame.rest()), Source.PUBLISHED, "B3.18: Fragala et al. 2019")
                : new Reason("rest", Said.of("rest/heavy").count("rest", frame.rest()), Source.PUBLISHED, "B1.6: ACSM 2009")
                : new Reason("rest", Said.of("rest/assistance").count("rest", frame.rest()), Source.PUBLISHED, "B1.7: ACSM 2009");
    }

    private Reason repsReason(Dose first, Frame frame) {
        OptionalDouble share = first.share();
        double possible = share.isPresent() && share.getAsDouble() > 0 ? curve.reps(share.getAsDouble()) : 0;
        return new Reason("reps", Said.of("reps").percent("share", share.orElse(0), 0).number("possible", Math.min(possible, 99), 0)
                .text("formula", curve.formula().author()).count("reps", first.reps()).count("from", frame.family().repsFrom())
                .count("to", frame.family().repsTo()).word("leaves", possible - first.reps() > Frame.MOST_RESERVE + 1 ? "at-least" : "about")
                .count("spare", first.inReserve()), Source.PUBLISHED, "A1: " + curve.formula().author() + " read backward; starting load, people differ (A1.13)");
    }

    private Reason progressionReason(SolvedSetUp solved, Frame frame, List<Dose> doses) {
        boolean body = solved.family().group().countsBodyMass();
        long rises = doses.stream().filter(Dose::heavier).count();
        var rose = rises > 0 ? Said.of("progression/rises").count("rises", rises) : Said.of("progression/no-rise");
        if (frame.waves()) {
            return new Reason("progression", Said.of("progression/wave").number("low", 100 * frame.rise().low(), 0).percent("high", frame.rise().high(), 0)
                    .word("counted", body ? "body-and-weight" : "weight-alone").said("rises", rose), Source.COACH, PROGRESSION + "; B2.5: ACSM 2026");
        }
        return new Reason("progression", Said.of("progression").number("low", 100 * frame.rise().low(), 0).percent("high", frame.rise().high(), 0)
                .word("counted", body ? "body-and-weight" : "weight-alone").count("weeks", WeighedRise.weeksWithOneWeight(frame.slower()))
                .said("rises", rose), Source.PUBLISHED, PROGRESSION);
    }
}
