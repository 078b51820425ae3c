package contrapposto.compose;

import contrapposto.assess.Assessed;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the first page says, as finished words.
 *
 * @param until     the date after which the plan is not to be used, without the year; {@code useUntil} with it
 * @param limits    that screening sets, as words of {@link Assessed.Limit}
 * @param oneVisit  whether the plan is a single session
 */
record OpeningModel(String title, String name, String code, String made, String start, String maker, String practice,
                    String contact, String useUntil, String until, Finding finding, String weeks, String perWeek,
                    String firstSide, String secondSide, boolean oneVisit, boolean unanswered, boolean cautious, boolean young, boolean pregnant,
                    List<String> limits, List<DayModel> days, WarmUp warmUp, List<NeedsModel.Need> needs) {
    /** Under this age someone grown up stands by: common practice, no source. */
    private static final int ADULT = 18;

    /**
     * @param turned  left, right or square
     * @param weight  the side that bears more, empty when not noted
     */
    record Finding(String turned, String degree, Optional<String> landing, Optional<String> drive, Optional<String> weight) { }

    record DayModel(String name, String shortName, boolean training, String minutes, String numbers) { }

    /**
     * @param sets     easy sets before {@code exercise}, the first loaded one on the feet
     * @param exercise its number and name; empty when the plan has none
     */
    record WarmUp(String sets, Optional<String> number, Optional<String> exercise) { }

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
                spec.practice().name(), spec.practice().contact(), units.date(plan.expires()), units.dayOfYear(plan.expires()),
                finding(plan), Integer.toString(plan.weeks().size()), Integer.toString(plan.days().size()), plan.firstSide().word(),
                plan.firstSide().other().word(), oneVisit, !plan.assessed().unanswered().isEmpty(), plan.assessed().cautious(),
                client.age().isPresent() && client.age().getAsInt() < ADULT,
                spec.screening().answers().getOrDefault("pregnant", false), limits, week(words), warmUp(words), NeedsModel.of(words));
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
                    training.map(d -> d.numbers().stream().sorted().map(n -> Integer.toString(n)).collect(Collectors.joining(", "))).orElse("")));
        }
        return days;
    }

    private static String minutes(PlanWords words, Plan.Day day) {
        int least = day.minutes().stream().min(Comparator.naturalOrder()).orElse(0);
        int most = day.minutes().stream().max(Comparator.naturalOrder()).orElse(0);
        return (least == most ? "" : least + "–") + words.units().minutes(most);
    }

    private static WarmUp warmUp(PlanWords words) {
        var first = words.plan().exercises().stream()
                .filter(e -> words.family(e.id()).stage().compareTo(Stage.STANDING) >= 0)
                .filter(e -> e.sides().values().stream().anyMatch(s -> s.doses().stream().anyMatch(d -> d.byEffort() || d.load().isPresent())))
                .findFirst();
        return new WarmUp(Integer.toString(words.plan().catalogue().rules().rampSets()), first.map(e -> Integer.toString(e.number())),
                first.map(e -> words.name(e.id())));
    }
}
