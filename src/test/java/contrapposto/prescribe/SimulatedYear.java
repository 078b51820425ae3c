package contrapposto.prescribe;

import static java.nio.charset.StandardCharsets.UTF_8;

import contrapposto.check.Checks;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.quantity.Side;
import contrapposto.returns.Log;
import contrapposto.returns.NextSpec;
import contrapposto.returns.Returns;
import contrapposto.returns.Review;
import contrapposto.returns.Reviewer;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One invented client through blocks of plan, log and {@code next}, beside two naive rules that start with the same weights.
 * Plans, logs and specs go the whole way as text; set-ups are put together by hand and the mechanics are {@link LinearBody},
 * for the client as for the program: this measures the way back, not the mechanics.
 */
final class SimulatedYear {
    static final List<String> EXERCISES = List.of("split-squat", "staggered-deadlift", "high-to-low-press", "supported-curl");
    private static final LinearBody BODY = new LinearBody();
    private static final Prescriber PRESCRIBER = new Prescriber(BODY);
    private static final int WEEKS = 8;

    /** What the rules do: ours, five percent more every week, the first weight for ever. */
    enum Rule { NEXT, FIVE_PERCENT_A_WEEK, LAST_LOAD }

    /** Errors of capacity as shares, at the end of each block; sessions by how much of the true limit they asked. */
    static final class Score {
        final List<Double> errors = new ArrayList<>();
        /** Of what can be lifted ten times: what loads are written from. */
        final List<Double> atTen = new ArrayList<>();
        int sessions;
        int over;
        int underHalf;

        void add(Score other) {
            errors.addAll(other.errors);
            atTen.addAll(other.atTen);
            sessions += other.sessions;
            over += other.over;
            underHalf += other.underHalf;
        }

        double error(double quantile) {
            return quantile(errors, quantile);
        }

        double errorAtTen(double quantile) {
            return quantile(atTen, quantile);
        }

        private static double quantile(List<Double> errors, double quantile) {
            var sorted = errors.stream().sorted().toList();
            return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(quantile * sorted.size())));
        }
    }

    private final InventedClient client;
    private final Map<Rule, Score> scores = new TreeMap<>();
    /** Side → weight of the first week, kg, and what the first test made of its capacity. */
    private final Map<String, Double> firstLoad = new TreeMap<>();
    private final Map<String, Integer> firstReps = new TreeMap<>();
    private final Map<String, Double> firstEstimate = new TreeMap<>();
    private int week;

    SimulatedYear(long seed) {
        client = new InventedClient(seed);
        for (var rule : Rule.values()) {
            scores.put(rule, new Score());
        }
    }

    Map<Rule, Score> run(int blocks) {
        String spec = firstSpec();
        for (int block = 0; block < blocks; block++) {
            var checked = done(Checks.check("year.yaml", spec.getBytes(UTF_8), Programs.CATALOGUE));
            var ids = EXERCISES.stream().filter(id -> !checked.choices().exclude().contains(id)).toList();
            if (ids.isEmpty()) {
                break;
            }
            var plan = PRESCRIBER.prescribe(Programs.selection(checked, ids));
            var gauge = new Gauge(plan, BODY);
            String csv = log(plan, gauge);
            if (csv.lines().count() < 2) {
                continue;
            }
            Log log = done(Returns.read(plan, List.of(new Returns.Returned("log.csv", csv.getBytes(UTF_8)))));
            var review = Reviewer.review(plan, gauge, log);
            review.sides().forEach(this::score);
            spec = done(NextSpec.write(review, log, gauge, "year.yaml", spec.getBytes(UTF_8), Programs.CATALOGUE));
        }
        return scores;
    }

    private static <T> T done(Outcome<T> outcome) {
        return switch (outcome) {
            case Outcome.Done<T>(var value, var notices) -> value;
            case Outcome.Refused<T>(var notices) -> throw new AssertionError(notices);
        };
    }

    private void score(Review.SideReview side) {
        double truth = client.capacity(side.exercise(), side.side().orElseThrow());
        String key = side.exercise() + side.side().orElseThrow();
        side.now().ifPresent(now -> {
            double first = firstEstimate.get(key);
            error(Rule.NEXT, now.capacity(), truth);
            error(Rule.LAST_LOAD, first, truth);
            error(Rule.FIVE_PERCENT_A_WEEK, first * StrictMath.pow(1.05, week), truth);
        });
    }

    private void error(Rule rule, double estimate, double truth) {
        double told = estimate / (1 + 10 / 30.0);
        double lifted = truth * client.share(10);
        scores.get(rule).errors.add(Math.abs(estimate / truth - 1));
        scores.get(rule).atTen.add(Math.abs(told / lifted - 1));
    }

    /** A spec with one test a side, done in the set-up in which tests are done, with all the noise of the client. */
    private String firstSpec() {
        var tests = new StringBuilder();
        for (var id : EXERCISES) {
            boolean leg = id.equals("split-squat") || id.equals("staggered-deadlift");
            for (var side : Side.values()) {
                double strong = (leg ? 24 : 12) * StrictMath.exp(0.3 * client.chance().nextGaussian());
                var demand = new Demand(SplitSquats.tested(side, strong), BODY::solve);
                client.is(id, side, leg ? demand.support(strong).orElseThrow() : strong);
                tests.append(test(id, side, leg ? Optional.of(demand) : Optional.empty()));
            }
        }
        return """
                format: 1
                title: Year of nobody, block 1
                client: {name: Nobody At All, height: 171 cm, mass: 64 kg, training-years: 1}
                assessment:
                  date: 2026-01-01
                  pelvis: {turned: right, degree: clear}
                  tests:
                %sequipment:
                  dumbbells: {from: 1 kg, to: 80 kg, step: 1 kg}
                  cable: {step: 1.25 kg, to: 100 kg}
                schedule:
                  start: 2026-01-05
                  weeks: %d
                  days: [mon, thu]
                  minutes: 120
                  start-stage: standing
                """.formatted(tests, WEEKS);
    }

    /** The heaviest weight with which ten feel possible: eight are done, and it is said how many would still have gone. */
    private String test(String id, Side side, Optional<Demand> leg) {
        double today = client.today(id, side);
        double load = 1;
        while (client.possible(asked(leg, load + 1), today) >= 9) {
            load++;
        }
        int spare = Math.min(2, client.said(client.possible(asked(leg, load), today) - 8));
        return String.format(Locale.ROOT, "    - {exercise: %s, side: %s, load: %.0f kg, reps: 8, in-reserve: %d}%n", id, side.word(), load, spare);
    }

    private static double asked(Optional<Demand> leg, double load) {
        return leg.map(demand -> demand.support(load).orElseThrow()).orElse(load);
    }

    private String log(Plan plan, Gauge gauge) {
        var csv = new StringBuilder("week,day,exercise,side,kg,set1,set2,set3,set4,spare,pain\n");
        for (var one : plan.weeks()) {
            boolean away = client.missesWeek();
            for (var day : plan.days()) {
                for (var exercise : plan.exercises()) {
                    for (var side : exercise.sides().sides()) {
                        session(csv, gauge, one.number(), day.day(), exercise.id(), side, exercise.sides().on(side), away);
                    }
                }
            }
            client.week(!away);
            week++;
        }
        return csv.toString();
    }

    private void session(StringBuilder csv, Gauge gauge, int number, DayOfWeek day, String id, Side side, SidePlan plan, boolean away) {
        var dose = plan.doses().stream().filter(d -> d.week() == number).findFirst().orElseThrow();
        String key = id + side;
        double today = client.today(id, side);
        double load = dose.load().orElse(0);
        firstLoad.putIfAbsent(key, load);
        firstReps.putIfAbsent(key, dose.reps());
        gauge.capacity(plan).ifPresent(capacity -> firstEstimate.putIfAbsent(key, capacity));
        count(Rule.NEXT, gauge, plan, load, dose.reps(), today);
        count(Rule.LAST_LOAD, gauge, plan, firstLoad.get(key), firstReps.get(key), today);
        count(Rule.FIVE_PERCENT_A_WEEK, gauge, plan, Math.floor(firstLoad.get(key) * StrictMath.pow(1.05, week)), firstReps.get(key), today);
        if (!away && !client.missesSession()) {
            done(csv, gauge, number, day, id, side, plan, dose, load, today);
        }
    }

    private void done(StringBuilder csv, Gauge gauge, int number, DayOfWeek day, String id, Side side, SidePlan plan, Dose dose, double load,
                      double today) {
        double possible = load <= 0 && !gauge.countsBody(plan) ? 20 : client.possible(demand(gauge, plan, load), today);
        var sets = new StringBuilder();
        int reps = 0;
        for (int set = 1; set <= 4; set++) {
            double fresh = possible - 0.4 * (set - 1);
            if (set <= dose.sets()) {
                reps = (int) Math.max(0, Math.min(dose.reps(), Math.floor(fresh)));
                sets.append(reps);
            }
            sets.append(',');
        }
        int spare = client.said(possible - 0.4 * (dose.sets() - 1) - reps);
        csv.append(String.format(Locale.ROOT, "%d,%s,%s,%s,%s,%s%d,%d%n", number, day.name().substring(0, 3).toLowerCase(Locale.ROOT), id, side.word(),
                load > 0 ? String.format(Locale.ROOT, "%.2f", load) : "", sets, Math.min(spare, 20), client.pain()));
    }

    /** What a weight asks in the unit of capacity: one repeat of it would need just that. */
    private static double demand(Gauge gauge, SidePlan plan, double load) {
        return gauge.shown(plan, load, 1).orElse(0);
    }

    /** Over the true limit: the repeats asked cannot all be done; under half: twice as much could be. */
    private void count(Rule rule, Gauge gauge, SidePlan plan, double load, int reps, double today) {
        if (load <= 0) {
            return;
        }
        double needed = demand(gauge, plan, load) / client.share(reps);
        var score = scores.get(rule);
        score.sessions++;
        score.over += needed > today ? 1 : 0;
        score.underHalf += needed < 0.5 * today ? 1 : 0;
    }
}
