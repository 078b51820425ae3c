package contrapposto.compose;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessed.Verdict;
import contrapposto.assess.Reason;
import contrapposto.check.CheckedSpec;
import contrapposto.illustrate.MirroredBars;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the coach's pages say beyond the client's, as finished words.
 *
 * @param verdict    clear, with-limits, needs-clearance or stop
 * @param unanswered questions to ask, as the spec writes them
 * @param shared     reasons that several exercises have in common; not repeated with each
 * @param demands    exercises of which a side was tested, left and right together
 * @param plots      exercises whose load over the weeks is drawn
 * @param sources    references that some reason names
 * @param qualification of who made the plan, {@code setting} where it is done; empty where the spec does not say
 */
record CoachModel(List<Agreement> agreements, List<Statement> finding, String verdict, List<Statement> screening,
                  List<String> unanswered, Optional<Clearance> clearance, List<Restriction> restrictions,
                  List<Statement> plan, List<String> warnings, List<Shared> shared,
                  List<DemandModel> demands, List<ReasonsModel> exercises, List<LeftOut> leftOut,
                  boolean volume, String barsHeight, List<Plot> plots, List<String> sources,
                  String qualification, String setting) {
    /** @param reference where the source is published or a house rule; may be empty */
    record Statement(String text, String source, String reference) {
        static List<Statement> of(PlanWords words, List<Reason> reasons) {
            return reasons.stream().map(r -> new Statement(words.told(r.said()), Values.word(r.source()), r.reference())).toList();
        }
    }

    /**
     * A statement that holds for several exercises and is printed once.
     *
     * @param numbers of these exercises
     */
    record Shared(Statement statement, String numbers) {
        /** What at least two exercises say in the same words, in the order first said. */
        static List<Shared> among(List<ReasonsModel> exercises) {
            var sayers = new LinkedHashMap<Statement, Set<String>>();
            for (var exercise : exercises) {
                exercise.all().forEach(s -> sayers.computeIfAbsent(s, fresh -> new LinkedHashSet<>()).add(exercise.number()));
            }
            return sayers.entrySet().stream().filter(e -> e.getValue().size() > 1)
                    .map(e -> new Shared(e.getKey(), String.join(", ", e.getValue()))).toList();
        }
    }

    record Agreement(String what, String left, String right, String difference, String error, String agrees) { }

    record Clearance(String by, String date, String limits) { }

    /** @param kind avoid, load or range; {@code words} says {@code what} in the language */
    record Restriction(String kind, String what, String words, String sides, String to, Optional<String> until, String because) { }

    /** @param names of the families that fell away for the same reasons */
    record LeftOut(List<String> names, List<Statement> why) { }

    record Plot(String id, String number, String name) { }

    static CoachModel of(PlanWords words) {
        var plan = words.plan();
        var assessed = plan.assessed();
        var said = Reason.all(assessed.reasons(), assessed.verdict().reasons());
        var told = plan.exercises().stream().map(e -> ReasonsModel.of(words, e)).toList();
        var shared = Shared.among(told);
        var exercises = told.stream().map(e -> e.without(shared.stream().map(Shared::statement).toList())).toList();
        var byReason = new LinkedHashMap<List<Statement>, List<String>>();
        plan.leftOut().forEach((id, reasons) -> byReason.computeIfAbsent(Statement.of(words, reasons), fresh -> new ArrayList<>()).add(words.name(id)));
        var leftOut = byReason.entrySet().stream().map(e -> new LeftOut(e.getValue(), e.getKey())).toList();
        var plots = plan.exercises().stream()
                .filter(e -> e.sides().values().stream().anyMatch(s -> s.doses().stream().anyMatch(d -> d.load().isPresent() && d.load().getAsDouble() > 0)))
                .map(e -> new Plot(e.id(), Integer.toString(e.number()), words.name(e.id()))).toList();
        return new CoachModel(agreements(words), Statement.of(words, assessed.reasons()), verdict(assessed.verdict()),
                Statement.of(words, assessed.verdict().reasons()), assessed.unanswered(),
                words.spec().clearance().map(c -> new Clearance(c.by(), words.units().date(c.date()), c.limits())),
                words.spec().restrictions().stream().map(r -> restriction(words, r)).toList(), Statement.of(words, plan.reasons().stream().filter(r -> !said.contains(r)).toList()),
                plan.warnings().stream().map(words::told).toList(), shared, DemandModel.of(words), exercises, leftOut, !plan.volume().isEmpty(),
                WeeksModel.millimetres(MirroredBars.height(plan.volume().size())), plots, sources(words),
                words.spec().practice().qualification(), words.spec().practice().setting());
    }

    private static String verdict(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Clear clear -> "clear";
            case Verdict.WithLimits limits -> "with-limits";
            case Verdict.NeedsClearance needs -> "needs-clearance";
            case Verdict.Stop stop -> "stop";
        };
    }

    private static List<Agreement> agreements(PlanWords words) {
        return words.plan().assessed().agreements().stream().map(a -> {
            var measure = a.measure();
            var units = words.units();
            return new Agreement(words.word(measure.what().replace(' ', '-')), units.measured(measure.left(), measure.unit()), units.measured(measure.right(), measure.unit()),
                    units.measured(Math.abs(measure.left() - measure.right()), measure.unit()), units.measured(a.error(), measure.unit()),
                    Values.word(a.agrees()));
        }).toList();
    }

    private static Restriction restriction(PlanWords words, CheckedSpec.Restriction restriction) {
        var units = words.units();
        var until = restriction.until().map(units::date);
        return switch (restriction) {
            case CheckedSpec.Restriction.Avoid(var what, var sides, var end, var because) ->
                    new Restriction("avoid", what, words.restricted(what), sides(sides), "", until, because);
            case CheckedSpec.Restriction.LimitLoad(var perHand, var end, var because) ->
                    new Restriction("load", "", "", "both", units.mass(perHand.kilograms()), until, because);
            case CheckedSpec.Restriction.LimitRange(var what, var sides, var to, var end, var because) ->
                    new Restriction("range", what, words.restricted(what), sides(sides), units.measured(to.degrees(), "deg"), until, because);
        };
    }

    private static String sides(Set<Side> sides) {
        return sides.size() == 1 ? sides.iterator().next().word() : "both";
    }

    /** The references that reasons name, each once, in order. */
    private static List<String> sources(PlanWords words) {
        var found = new TreeSet<String>();
        var plan = words.plan();
        var all = new ArrayList<Reason>(plan.reasons());
        all.addAll(plan.assessed().reasons());
        all.addAll(plan.assessed().verdict().reasons());
        plan.leftOut().values().forEach(all::addAll);
        plan.exercises().forEach(e -> {
            all.addAll(e.reasons());
            e.sides().values().forEach(s -> {
                all.addAll(s.reasons());
                all.addAll(s.solved().reasons());
            });
        });
        all.stream().map(Reason::reference).filter(r -> !r.isEmpty()).forEach(found::add);
        return List.copyOf(found);
    }
}
