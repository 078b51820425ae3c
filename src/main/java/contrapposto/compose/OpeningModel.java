package contrapposto.compose;

import contrapposto.assess.Assessed;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Condition;
import contrapposto.prescribe.Gaps;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.select.Balance;
import contrapposto.wording.Units;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the first page says, as finished words.
 *
 * @param until     the date after which the plan is not to be used, without the year; {@code useUntil} with it
 * @param limits    that screening sets, as words of {@link Assessed.Limit}
 * @param balance   numbers of the exercises that train balance where it comes first; empty otherwise
 * @param missing   patterns that restrictions have taken out of the plan altogether
 * @param emergency the practice's number for urgent help; empty where it gave none
 * @param oneVisit  whether the plan is a single session
 */
record OpeningModel(String title, String name, String code, String made, String start, String maker, String practice,
                    String contact, String emergency, String useUntil, String until, Finding finding, String weeks, String perWeek,
                    String firstSide, String secondSide, boolean oneVisit, boolean unanswered, boolean cautious, boolean young, boolean pregnant,
                    List<String> limits, String balance, List<String> missing, List<DayModel> days, WarmUp warmUp, List<NeedsModel.Need> needs) {
    /** Under this age someone grown up stands by: common practice, no source. */
    private static final int ADULT = 18;

    /**
     * @param turned  left, right or square
     * @param weight  the side that bears more, empty when not noted
     */
    record Finding(String turned, String degree, Optional<String> landing, Optional<String> drive, Optional<String> weight) { }

    record DayModel(String name, String shortName, boolean training, String minutes, String numbers) { }

    /**
     * @param number of the first loaded exercise on the feet; empty when it differs from day to day
     * @param ramps  easy sets before it; none when the plan has no such exercise
     */
    record WarmUp(Optional<String> number, List<RampModel> ramps) { }

    /**
     * @param share no-weight, quarter, half, three-quarters, or other with its {@code percent}
     * @param loads finished weights by side, left before right, or one for both; empty when they are not known
     */
    record RampModel(String reps, String share, String percent, List<LoadOf> loads) { }

    record LoadOf(String side, String weight) { }

    static OpeningModel of(PlanWords words) {
        Plan plan = words.plan();
        CheckedSpec spec = words.spec();
        Units units = words.units();
        var client = spec.client();
        var limits = plan.assessed().verdict() instanceof Assessed.Verdict.WithLimits limited
                ? Arrays.stream(Assessed.Limit.values()).filter(limited.limits()::contains).map(Values::word).toList() : List.<String>of();
        boolean oneVisit = plan.weeks().size() == 1 && plan.days().size() == 1;
        return new OpeningModel(spec.title(), client.name().isEmpty() ? client.code() : client.name(), client.code(),
                units.date(spec.assessment().date()), units.date(spec.schedule().start()), spec.practice().preparedBy(),
                spec.practice().name(), spec.practice().contact(), spec.practice().emergency(), units.date(plan.expires()), units.dayOfYear(plan.expires()),
                finding(plan), Integer.toString(plan.weeks().size()), Integer.toString(plan.days().size()), plan.firstSide().word(),
                plan.firstSide().other().word(), oneVisit, !plan.assessed().unanswered().isEmpty(), plan.assessed().cautious(),
                client.age().isPresent() && client.age().getAsInt() < ADULT,
                pregnant(spec), limits, balance(words), Gaps.of(plan).stream().filter(Gaps.Missing::restricted).map(m -> Values.word(m.pattern())).toList(), week(words), warmUp(words), NeedsModel.of(words));
    }

    /** Whether a pregnancy was answered or described. */
    static boolean pregnant(CheckedSpec spec) {
        return spec.screening().answers().getOrDefault("pregnant", false)
                || spec.screening().conditions().stream().anyMatch(c -> c.kind() == Condition.Kind.PREGNANCY);
    }

    private static String balance(PlanWords words) {
        var plan = words.plan();
        return !Balance.first(plan.assessed()) ? "" : words.units().numbers(plan.exercises().stream()
                .filter(e -> plan.catalogue().family(e.id()).filter(Balance::trainedBy).isPresent()).map(Plan.Exercise::number).toList());
    }

    private static Finding finding(Plan plan) {
        var assessment = plan.spec().assessment();
        var landing = plan.assessed().landing();
        return new Finding(Values.word(assessment.turned()), Values.word(assessment.degree()), landing.map(Side::word),
                landing.map(Side::other).map(Side::word), assessment.weightHabit().map(Side::word));
    }

    private static List<DayModel> week(PlanWords words) {
        var days = new ArrayList<DayModel>();
        for (DayOfWeek day : DayOfWeek.values()) {
            var training = words.plan().days().stream().filter(d -> d.day() == day).findFirst();
            days.add(new DayModel(words.units().weekday(day), words.units().shortWeekday(day), training.isPresent(),
                    training.map(d -> minutes(words, d)).orElse(""),
                    training.map(d -> words.units().numbers(d.numbers())).orElse("")));
        }
        return days;
    }

    private static String minutes(PlanWords words, Plan.Day day) {
        int least = day.minutes().stream().min(Comparator.naturalOrder()).orElse(0);
        int most = day.minutes().stream().max(Comparator.naturalOrder()).orElse(0);
        return (least == most ? "" : least + "–") + words.units().minutes(most);
    }

    private static WarmUp warmUp(PlanWords words) {
        var lists = words.plan().days().stream().map(Plan.Day::ramps).filter(r -> !r.isEmpty()).distinct().toList();
        if (lists.isEmpty()) {
            return new WarmUp(Optional.empty(), List.of());
        }
        boolean same = lists.size() == 1;
        return new WarmUp(same ? Optional.of(Integer.toString(lists.getFirst().getFirst().exercise())) : Optional.empty(),
                lists.getFirst().stream().map(ramp -> ramp(words, ramp, same)).toList());
    }

    private static RampModel ramp(PlanWords words, Plan.Ramp ramp, boolean withLoads) {
        var loads = new ArrayList<LoadOf>();
        if (withLoads) {
            PlanWords.rows(ramp.loads()).forEach(side -> ramp.loads().on(side).ifPresent(load ->
                    loads.add(new LoadOf(PlanWords.badge(ramp.loads(), side), words.units().mass(load)))));
        }
        return new RampModel(Integer.toString(ramp.reps()), shareWord(ramp.share()), words.units().percent(ramp.share(), 1), loads);
    }

    private static String shareWord(double share) {
        return share == 0 ? "no-weight" : share == 0.25 ? "quarter" : share == 0.5 ? "half" : share == 0.75 ? "three-quarters" : "other";
    }
}
