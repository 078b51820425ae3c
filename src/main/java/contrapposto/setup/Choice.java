package contrapposto.setup;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.catalogue.Family.Ribs;
import contrapposto.catalogue.Family.Toward;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * One family, one side: tries every candidate, keeps the best and the runner-up, and argues for it. Which hand holds what
 * hardly moves the pose but decides the turn, so it is settled first, by its {@link Judge.Promise}: only the candidates
 * that promise most are solved, and the others when none of those can be held.
 */
final class Choice {
    private final Question q;
    private final Judge judge;
    private final Fitting fitting;
    private final Function<PoseProblem, PoseOutcome> solver;

    Choice(Question q, Function<PoseProblem, PoseOutcome> solver) {
        this.q = q;
        this.solver = solver;
        this.judge = new Judge(q);
        this.fitting = new Fitting(q, judge, solver);
    }

    /** @param refusals why there is none; empty when there is one */
    record Answer(Optional<SolvedSetUp> solved, List<Reason> refusals) { }

    /** What trying all candidates left: the best first, and why each of the others is out of the question. */
    private record Field(List<Tried> ranked, List<Reason> refusals) { }

    Answer answer() {
        var refusal = refusal();
        if (refusal.isPresent()) {
            return new Answer(Optional.empty(), List.of(refusal.get()));
        }
        var field = field();
        if (field.ranked().isEmpty() && q.fixedByCoach()) {
            return withoutWish(field.refusals());
        }
        return field.ranked().isEmpty() ? new Answer(Optional.empty(), field.refusals())
                : new Answer(Optional.of(solved(field, List.of())), List.of());
    }

    /** The coach's set-up cannot be held: say so, and offer what can. */
    private Answer withoutWish(List<Reason> why) {
        var free = new Choice(q.withoutWish(), solver);
        var field = free.field();
        var notes = why.stream().map(r -> Reason.of("coach-set-up", Said.of("coach-set-up/not-possible").said("why", r.said()), Source.COACH)).toList();
        return field.ranked().isEmpty() ? new Answer(Optional.empty(), Reason.all(notes, field.refusals()))
                : new Answer(Optional.of(free.solved(field, notes)), List.of());
    }

    /** Why no set-up of this family can serve this side, before any is solved. */
    private Optional<Reason> refusal() {
        var gear = Gear.of(q);
        var missing = gear.missing(q.family());
        if (missing.isPresent()) {
            return missing;
        }
        var ribs = q.family().ribs();
        if (q.target().ribs() != Ribs.NEITHER && ribs != Ribs.NEITHER && ribs != q.target().ribs()) {
            return Optional.of(Reason.of("ribs", Said.of("ribs").side("side", q.side()).word("where", ribs == Ribs.OPENS_BACK ? "back" : "front"),
                    Source.PRACTICE));
        }
        return turnsTo().filter(to -> q.target().turnTo().filter(want -> want != to).isPresent())
                .map(to -> Reason.of("turn", Said.of("turn/working-side").side("side", q.side()).side("turn", to), Source.PRACTICE));
    }

    /** The side that doing the family turns the trunk to, where that does not hang on the weight. */
    private Optional<Side> turnsTo() {
        return switch (q.family().turn().toward()) {
            case WORKING -> Optional.of(q.side());
            case AWAY -> Optional.of(q.side().other());
            case NONE, BY_LOAD_HAND -> Optional.empty();
        };
    }

    private Field field() {
        var tried = new ArrayList<Tried>();
        var refusals = new ArrayList<Reason>();
        var candidates = Candidates.of(q);
        if (candidates.isEmpty()) {
            refusals.add(Reason.of("equipment", Said.of("equipment/no-load").words("implements",
                    q.family().levers().implement().stream().map(i -> i.word()).toList()), Source.PRACTICE));
        }
        var promised = new TreeMap<Judge.Promise, List<SetUp>>();
        for (var candidate : candidates) {
            var against = against(candidate);
            against.ifPresentOrElse(refusals::add,
                    () -> promised.computeIfAbsent(judge.promise(candidate), p -> new ArrayList<>()).add(candidate));
        }
        for (var group : promised.values()) {
            if (tried.isEmpty()) {
                group.forEach(candidate -> tryOut(candidate, candidates.indexOf(candidate), tried, refusals));
            }
        }
        tried.sort(Comparator.comparing(Tried::judgement));
        return new Field(tried, refusals.stream().distinct().toList());
    }

    private Optional<Reason> against(SetUp candidate) {
        return q.restraints().against(q.family(), candidate, q.side()).or(() -> Caution.against(q, candidate))
                .or(() -> judge.staggersWrongWay(candidate) && !q.fixedByCoach() ? Optional.of(Reason.of("turn",
                        Said.of("turn/stagger").side("ahead", candidate.frontFoot()), Source.PRACTICE)) : Optional.empty());
    }

    private void tryOut(SetUp candidate, int order, List<Tried> tried, List<Reason> refusals) {
        switch (fitting.fit(candidate)) {
            case Trial.Held held when !q.fixedByCoach() && judge.turnsWrongWay(held) -> refusals.add(Reason.of("turn",
                    Said.of("turn/same-way"), Source.EXPECTED));
            case Trial.Held held -> tried.add(new Tried(held, judge.judge(held, order)));
            case Trial.Unheld(var constraint, var by, var unit) ->
                    refusals.add(Reason.of("pose", Said.of("pose").said("constraint", constraint), Source.SOLVED));
        }
    }

    private SolvedSetUp solved(Field field, List<Reason> notes) {
        var best = field.ranked().getFirst();
        var m = best.mechanics();
        var phase = judge.phase(m);
        var argument = new Argument(q, judge);
        var runnerUp = field.ranked().stream().skip(1).findFirst().map(next -> argument.runnerUp(best, next));
        var reasons = Reason.all(Reason.all(notes, limits(field.refusals())), Reason.all(argument.ofChoice(best, field.ranked()), argument.ofPose(best.held())));
        return new SolvedSetUp(q.family(), q.side(), q.role(), best.setUp(), best.held().problem(), best.held().pose(),
                phase, TrainedMuscles.of(q.family().muscles(), phase),
                TrainedMuscles.of(q.family().otherSideMuscles(), phase), reasons, runnerUp, lacks(best),
                q.fixedByCoach());
    }

    /** What restrictions and limits took from the choice, where they left some of it. */
    private static List<Reason> limits(List<Reason> refusals) {
        return refusals.stream().filter(r -> r.rule().equals("restriction") || r.rule().equals("screening-limit") || r.rule().startsWith("condition-"))
                .map(r -> new Reason(r.rule(), Said.of("set-up-limited").said("why", r.said()), r.source(), r.reference())).toList();
    }

    /** What more gear would do, tried on this person: the one thing that would make the best set-up. */
    private Optional<Said> lacks(Tried best) {
        if (q.fixedByCoach()) {
            return Optional.empty();
        }
        Optional<Tried> most = Optional.empty();
        Optional<Said> said = Optional.empty();
        for (var thing : Gear.of(q).helpful()) {
            var richer = new Choice(q.with(thing.equipment()), solver).field().ranked().stream().findFirst();
            if (richer.isPresent() && gains(richer.get(), best) && (most.isEmpty() || gains(richer.get(), most.get()))) {
                most = richer;
                said = Optional.of(new Argument(q, judge).lack(thing.words(), best, richer.get(), gainOn(richer.get(), best)));
            }
        }
        return said;
    }

    /** Whether one set-up is better than another by more than steadiness or tidiness. */
    private boolean gains(Tried one, Tried other) {
        int promise = judge.promise(one.setUp()).compareTo(judge.promise(other.setUp()));
        return promise < 0 || promise == 0 && one.judgement().compareTo(other.judgement()) < 0
                && one.judgement().decidedBy(other.judgement()).compareTo(Criterion.STEADINESS) < 0;
    }

    /** The criterion on which it is better. */
    private Criterion gainOn(Tried richer, Tried best) {
        return judge.promise(richer.setUp()).compareTo(judge.promise(best.setUp())) < 0 ? firstOf(best, richer)
                : richer.judgement().decidedBy(best.judgement());
    }

    /** The criterion of the promise on which the richer set-up is better. */
    private Criterion firstOf(Tried best, Tried richer) {
        var one = judge.promise(best.setUp());
        var other = judge.promise(richer.setUp());
        return one.safety() != other.safety() ? Criterion.SAFETY : one.load() != other.load() ? Criterion.LOAD
                : one.turn() != other.turn() ? Criterion.TURN : Criterion.PRESSURE;
    }

    Optional<SolvedSetUp> resolve(SolvedSetUp chosen, double kg) {
        return switch (fitting.solve(chosen.setUp(), kg)) {
            case Trial.Unheld unheld -> Optional.empty();
            case Trial.Held held -> {
                var phase = judge.phase(held.mechanics());
                var kept = chosen.reasons().stream().filter(r -> !Argument.OF_POSE.contains(r.rule())).toList();
                yield Optional.of(new SolvedSetUp(chosen.family(), chosen.side(), chosen.role(), chosen.setUp(),
                        held.problem(), held.pose(), phase, TrainedMuscles.of(chosen.family().muscles(), phase),
                        TrainedMuscles.of(chosen.family().otherSideMuscles(), phase),
                        Reason.all(kept, new Argument(q, judge).ofPose(held)), chosen.runnerUp(), chosen.lacks(),
                        chosen.byCoach()));
            }
        };
    }
}
