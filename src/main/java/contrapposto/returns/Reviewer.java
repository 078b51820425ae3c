package contrapposto.returns;

import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Test;
import contrapposto.prescribe.Gauge;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.returns.Log.DayNote;
import contrapposto.returns.Log.Slot;
import contrapposto.returns.Review.Alarm;
import contrapposto.returns.Review.Balance;
import contrapposto.returns.Review.Estimate;
import contrapposto.returns.Review.SideReview;
import contrapposto.returns.Review.Why;
import contrapposto.returns.SideHistory.Session;
import contrapposto.returns.StrengthFilter.State;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a log that belongs to its plan as a review. The same plan and log give the same review. */
public final class Reviewer {
    /** Pain over this stops a set, and is told to the coach: Silbernagel et al. 2007, up to 5 of 10 (E3.2). */
    static final int PAIN_CEILING = 5;
    /** Fewer done than this, as a share, say too little to go up: house. */
    private static final double ENOUGH_DONE = 0.5;
    /** From here on a side counts as stronger, the least step of the published rule (ACSM 2009, B1.1); or as weaker: house. */
    private static final double STRONGER = 0.02;
    private static final double WEAKER = 0.05;
    /** How much a side that found two sessions easy is taken up: inside the 2 to 10 % of the published rule (B1.1); which of them is house. */
    static final double EASY_STEP = 1.05;
    /** What is left of a capacity that is backed off: house. */
    static final double BACKED_OFF = 0.9;

    private final Plan plan;
    private final Gauge gauge;
    private final StrengthFilter filter;
    private final Log log;
    private final List<Alarm> alarms = new ArrayList<>();

    private Reviewer(Plan plan, Gauge gauge, Log log) {
        this.plan = plan;
        this.gauge = gauge;
        this.log = log;
        filter = new StrengthFilter(gauge.curve());
    }

    /** The review of a log that {@link Returns} has accepted for {@code plan}. */
    public static Review review(Plan plan, Log log) {
        return review(plan, new Gauge(plan), log);
    }

    /** As {@link #review(Plan, Log)}, with the gauge that reads the sets. */
    public static Review review(Plan plan, Gauge gauge, Log log) {
        return new Reviewer(plan, gauge, log).review();
    }

    private Review review() {
        int last = log.lines().stream().mapToInt(line -> line.slot().week()).max().orElse(0);
        var recheck = new Recheck(plan.spec(), log.recheck());
        var starts = starts(recheck);
        var sides = Asked.all(plan).stream().map(asked -> side(history(asked, last), starts)).toList();
        log.days().stream().filter(Reviewer::badMorning).forEach(note -> alarms.add(new Alarm(Why.MORNING_PAIN, Optional.empty(),
                Optional.empty(), note.slot().week(), note.slot().day(), note.morningPain().getAsInt())));
        int done = (int) log.lines().stream().map(line -> line.slot().week()).distinct().count();
        return new Review(plan, sides, balances(sides), List.copyOf(alarms), recheck.measures(), recheck.gate(), done, starts,
                stage(last, recheck), log.told());
    }

    /** The day after the block, or the same weekday after a later re-check. */
    private LocalDate starts(Recheck recheck) {
        var starts = plan.spec().schedule().start().plusWeeks(plan.spec().schedule().weeks());
        while (recheck.day().isPresent() && starts.isBefore(recheck.day().get())) {
            starts = starts.plusWeeks(1);
        }
        return starts;
    }

    /** The stage of the last week that was done; the one the block began in while a gate is not met. */
    private Stage stage(int last, Recheck recheck) {
        boolean held = recheck.gate().isPresent() && !recheck.gate().get().met();
        return held || last == 0 ? plan.spec().schedule().startStage() : plan.weeks().get(last - 1).stage();
    }

    private SideHistory history(Asked asked, int last) {
        var sessions = log.lines().stream().filter(asked::answeredBy).distinct()
                .sorted(Comparator.comparing(line -> line.slot())).map(line -> new Session(date(line.slot()), line,
                        asked.dose(line.slot().week()).orElseThrow())).toList();
        int expected = (int) plan.days().stream().filter(day -> day.numbers().contains(asked.exercise().number()))
                .mapToLong(day -> asked.plan().doses().stream().filter(dose -> dose.week() <= last).count()).sum();
        return new SideHistory(asked, sessions, expected);
    }

    /** The day that was written down, else the one planned. */
    private LocalDate date(Slot slot) {
        return log.days().stream().filter(note -> note.slot().equals(slot)).flatMap(note -> note.date().stream()).findFirst()
                .orElseGet(() -> planned(slot));
    }

    private LocalDate planned(Slot slot) {
        var starts = plan.weeks().get(slot.week() - 1).starts();
        return starts.plusDays(Math.floorMod(slot.day().getValue() - starts.getDayOfWeek().getValue(), 7));
    }

    private SideReview side(SideHistory history, LocalDate until) {
        var asked = history.asked();
        var before = before(asked);
        var now = history.followed(filter, gauge, before, tested(asked), until);
        boolean shown = now.isPresent() && now.get().sets() > before.map(State::sets).orElse(0);
        var why = why(history, before, now, shown);
        alarm(history, why);
        var next = now.map(known -> next(known, before, why));
        return new SideReview(asked.exercise().id(), asked.side(), history.done(), history.askedSessions(), before.map(Reviewer::estimate),
                now.map(Reviewer::estimate), next.map(Reviewer::estimate), history.heaviest(), history.worstPain(), why,
                why == Why.PAIN_TWICE ? asked.exercise().ifItHurts() : Optional.empty());
    }

    private Optional<State> before(Asked asked) {
        var known = gauge.capacity(asked.plan());
        return known.isEmpty() ? Optional.empty() : asked.plan().capacity().map(capacity ->
                State.of(known.getAsDouble(), capacity.error(), capacity.tests()));
    }

    /** The day of the side's newest test, else of the assessment. */
    private LocalDate tested(Asked asked) {
        return plan.spec().assessment().tests().stream().filter(test -> test.exercise().equals(asked.exercise().id())
                        && test.side().equals(asked.side())).map(Test::date).max(Comparator.naturalOrder())
                .orElse(plan.spec().assessment().date());
    }

    private Why why(SideHistory history, Optional<State> before, Optional<State> now, boolean shown) {
        int painful = history.painful(PAIN_CEILING).size();
        if (painful > 0) {
            return painful > 1 ? Why.PAIN_TWICE : Why.PAIN;
        }
        if (history.worseTwice().isPresent()) {
            return Why.WORSE_TWICE;
        }
        if (history.sessions().stream().anyMatch(session -> log.days().stream().anyMatch(note -> badMorning(note)
                && note.slot().equals(session.line().slot())))) {
            return Why.MORNING_PAIN;
        }
        if (history.done() < ENOUGH_DONE * history.askedSessions()) {
            return Why.FEW_SESSIONS;
        }
        if (before.isEmpty()) {
            return shown ? Why.FIRST_ESTIMATE : Why.NOTHING_MEASURED;
        }
        if (history.easyTwice() && (!shown || now.orElseThrow().capacity() < before.get().capacity() * EASY_STEP)) {
            return Why.EASY_TWICE;
        }
        if (!shown) {
            return Why.NOTHING_MEASURED;
        }
        double change = now.orElseThrow().capacity() / before.get().capacity() - 1;
        return change >= STRONGER ? Why.STRONGER : change <= -WEAKER ? Why.WEAKER : Why.SAME;
    }

    private static boolean badMorning(DayNote note) {
        return note.morningPain().orElse(0) > PAIN_CEILING;
    }

    private void alarm(SideHistory history, Why why) {
        var asked = history.asked();
        history.painful(PAIN_CEILING).forEach(session -> alarms.add(alarm(why, asked, session, session.line().pain().getAsInt())));
        history.worseTwice().ifPresent(session -> alarms.add(alarm(Why.WORSE_TWICE, asked, session, 0)));
    }

    private static Alarm alarm(Why why, Asked asked, Session session, int pain) {
        var slot = session.line().slot();
        return new Alarm(why, Optional.of(asked.exercise().id()), asked.side(), slot.week(), slot.day(), pain);
    }

    /** What the next block is written for: never more than before where something speaks against going up. */
    private static State next(State now, Optional<State> before, Why why) {
        double least = Math.min(now.log(), before.map(State::log).orElse(now.log()));
        return switch (why) {
            case PAIN_TWICE, PAIN, WORSE_TWICE -> new State(least + StrictMath.log(BACKED_OFF), now.variance(), now.sets());
            case MORNING_PAIN, FEW_SESSIONS -> new State(least, now.variance(), now.sets());
            case EASY_TWICE -> new State(Math.max(now.log(), before.map(State::log).orElse(now.log()) + StrictMath.log(EASY_STEP)), now.variance(),
                    now.sets());
            case NOTHING_MEASURED, FIRST_ESTIMATE, STRONGER, WEAKER, SAME -> now;
        };
    }

    private static Estimate estimate(State state) {
        return new Estimate(state.capacity(), state.error(), state.sets());
    }

    /** Whether left and right were tested alike: only then does a difference between them belong to the sides. */
    private boolean testedAlike(String exercise) {
        var left = arrangement(exercise, Side.LEFT);
        return left.isPresent() && left.equals(arrangement(exercise, Side.RIGHT));
    }

    /** How a side's first test was arranged, but for the hand. */
    private Optional<SetUpWish> arrangement(String exercise, Side side) {
        return plan.spec().assessment().tests().stream().filter(test -> test.exercise().equals(exercise) && test.side().equals(Optional.of(side)))
                .findFirst().map(Test::setup).map(wish -> new SetUpWish(wish.frontRaise(), wish.rearRaise(), wish.heelWedge(), wish.stance(),
                        Optional.empty(), false, wish.pulley(), wish.pulleyDistance()));
    }

    private List<Balance> balances(List<SideReview> sides) {
        var balances = new ArrayList<Balance>();
        for (var left : sides) {
            sides.stream().filter(right -> left.side().equals(Optional.of(Side.LEFT)) && right.side().equals(Optional.of(Side.RIGHT))
                    && left.exercise().equals(right.exercise()) && testedAlike(left.exercise()) && left.now().isPresent() && right.now().isPresent()).forEach(right -> {
                        double l = left.now().get().capacity();
                        double r = right.now().get().capacity();
                        var before = left.before().isPresent() && right.before().isPresent() ? OptionalDouble.of(Review.EQUATION.of(
                                left.before().get().capacity(), right.before().get().capacity())) : OptionalDouble.empty();
                        balances.add(Balance.of(left.exercise(), before, l, r));
                    });
        }
        return List.copyOf(balances);
    }
}
