package contrapposto.prescribe;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.body.PoseProblem;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.HouseRules;
import contrapposto.prescribe.Plan.Day;
import contrapposto.prescribe.Plan.Exercise;
import contrapposto.prescribe.Plan.Week;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.select.Selection;
import contrapposto.select.Selection.Chosen;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Gives every side of every chosen exercise its sets, repeats and loads for each week, and every day its minutes. Total: a
 * selection always has a plan. What does not fit the minutes is dropped, and the plan says what.
 */
public final class Prescriber {
    private final Bench bench;

    public Prescriber() {
        this(Bench.solved());
    }

    Prescriber(Bench bench) {
        this.bench = bench;
    }

    /** The plan of a selection; one without days where the screening withholds it. */
    public Plan prescribe(Selection selection) {
        var assessed = selection.setUps().assessed();
        return assessed.verdict().withheld() ? withheld(assessed, selection.setUps().catalogue())
                : new Writing(selection).plan();
    }

    /** What is written where the screening withholds the program: no days, no exercises. */
    public static Plan withheld(Assessed assessed, Catalogue catalogue) {
        return new Plan(assessed, catalogue, first(assessed), assessed.spec().schedule().start(), List.of(), List.of(),
                List.of(), Map.of(), Map.of(), List.of(), List.of());
    }

    private static Side first(Assessed assessed) {
        return assessed.landing().orElse(Side.LEFT);
    }

    /** One plan on its way. */
    private final class Writing {
        private final Selection selection;
        private final Assessed assessed;
        private final HouseRules rules;
        private final Calendar calendar;
        private final List<Week> weeks;
        private final Strengths strengths;
        private final RepCurve curve;
        private final Sessions sessions;
        private final Map<PoseProblem, Demand> demands = new LinkedHashMap<>();
        private SideShare shares;

        Writing(Selection selection) {
            this.selection = selection;
            assessed = selection.setUps().assessed();
            rules = selection.setUps().catalogue().rules();
            calendar = new Calendar(assessed.spec(), rules, assessed.verdict().limits().contains(Limit.SLOWER_PROGRESSION));
            weeks = calendar.weeks(selection.stages());
            curve = new RepCurve(RepFormula.named(rules.oneRepMaxFormula()).orElse(RepFormula.EPLEY), rules.repsForFormula(),
                    rules.inReserveForEstimate());
            strengths = new Strengths(selection.setUps(), curve, bench);
            sessions = new Sessions(rules.rampSets(), side -> Weights.of(assessed.spec(), side.solved().setUp().implement(),
                    side.solved().problem().load()));
        }

        Plan plan() {
            var fit = new Fit(selection, assessed.spec().schedule().minutes());
            var draft = draft(fit);
            while (fit.tighten(draft.days())) {
                draft = draft(fit);
            }
            var kept = draft.days().stream().flatMap(day -> day.numbers().stream()).distinct().toList();
            var exercises = draft.exercises().stream().filter(exercise -> kept.contains(exercise.number())).toList();
            var volume = Volume.of(exercises, draft.days());
            var warnings = new ArrayList<>(selection.shortfalls());
            warnings.addAll(fit.said());
            warnings.addAll(draft.warnings());
            warnings.addAll(Volume.warnings(volume, rules.weeklySets()));
            Frequency.warning(assessed.spec()).ifPresent(warnings::add);
            var leftOut = new LinkedHashMap<>(selection.leftOut());
            draft.exercises().stream().filter(exercise -> !kept.contains(exercise.number())).forEach(exercise -> leftOut.put(
                    exercise.id(), List.of(Reason.of("minutes", Said.of("minutes/no-day"), Source.SOLVED))));
            warnings.addAll(Gaps.said(assessed, selection.setUps().catalogue(), exercises, leftOut));
            return new Plan(assessed, selection.setUps().catalogue(), first(assessed), calendar.expires(), weeks, exercises,
                    draft.days(), volume, java.util.Collections.unmodifiableMap(leftOut), reasons(fit, draft.days()), List.copyOf(warnings));
        }

        private record Draft(List<Exercise> exercises, List<Day> days, List<Said> warnings) { }

        private Draft draft(Fit fit) {
            shares = new SideShare(selection, fit::sets, fit.moreSets());
            var writer = new SideWriter(selection.setUps(), curve, strengths, this::demand, bench, fit.longRest());
            var exercises = selection.exercises().stream().map(chosen -> exercise(chosen, writer)).toList();
            var days = selection.days().stream().map(day -> sessions.day(day, fit.numbers(day), exercises, weeks)).toList();
            return new Draft(exercises, days, writer.warnings());
        }

        private Demand demand(PoseProblem problem) {
            return demands.computeIfAbsent(problem, key -> new Demand(key, bench::solve));
        }

        private Exercise exercise(Chosen chosen, SideWriter writer) {
            var own = weeks.stream().filter(week -> chosen.firstWeek() <= week.number() && week.number() <= chosen.lastWeek())
                    .toList();
            boolean both = chosen.sides() instanceof Sided.Whole<SolvedSetUp>;
            return new Exercise(chosen.number(), chosen.id(), chosen.sides().map(solved -> writer.write(solved, own,
                    week -> shares.sets(chosen, week), both)), chosen.instead(), chosen.reasons());
        }

        private List<Reason> reasons(Fit fit, List<Day> days) {
            var reasons = new ArrayList<Reason>();
            reasons.add(Reason.of("first-side", assessed.landing().map(side -> Said.of("first-side/landing").side("side", side))
                    .orElse(Said.of("first-side/left")), Source.HOUSE));
            if (rules.rampSets() > 0) {
                reasons.add(new Reason("warm-up", Said.of("warm-up").count("sets", rules.rampSets()), Source.HOUSE, "house-rules: ramp-sets"));
            }
            reasons.addAll(calendar.reasons());
            reasons.add(new Reason("formula", Said.of("formula").text("formula", curve.formula().words()).number("from", 10.6, 1)
                    .percent("to", Strengths.ERROR, 1), Source.PUBLISHED, "A1.12: Hutchins and Gearhart 2010"));
            reasons.addAll(strengths.refused());
            reasons.addAll(shares.reasons());
            reasons.addAll(fit.reasons());
            ShortSessions.reason(days, assessed.spec().schedule().minutes()).ifPresent(reasons::add);
            assessed.spec().schedule().gate().ifPresent(gate -> reasons.add(Reason.of("gate",
                    Said.of("gate").word("what", gate.what().replace(' ', '-')).number("under", gate.differenceUnder(), 1)
                            .word("unit", gate.unit()), Source.COACH)));
            return List.copyOf(reasons);
        }
    }
}
