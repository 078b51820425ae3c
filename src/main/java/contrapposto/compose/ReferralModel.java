package contrapposto.compose;

import contrapposto.assess.Assessed.Verdict;
import contrapposto.catalogue.Implement;
import contrapposto.quantity.Mass;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the referral page says when the plan is withheld, as finished words.
 *
 * @param urgent   whether the answers are signs of an emergency
 * @param answers  the questions whose answers hold the plan back, as the spec writes them
 * @param see      whom to see, as words: doctor, surgeon, midwife
 * @param pressure resting blood pressure, upper and lower number; empty when not measured
 * @param heaviest the heaviest weight there is; empty when there is none
 */
record ReferralModel(boolean urgent, List<String> answers, List<String> see, Optional<Pressure> pressure, Optional<String> heaviest, String weeks,
                     String perWeek) {
    private static final Set<String> SURGEON = Set.of("recent-surgery", "surgery", "joint-replacement");
    private static final Set<String> MIDWIFE = Set.of("pregnant", "pregnancy", "birth", "caesarean-birth");

    record Pressure(String upper, String lower) { }

    static ReferralModel of(PlanWords words) {
        var spec = words.spec();
        var screening = spec.screening();
        var heaviest = Arrays.stream(Implement.values()).flatMap(i -> spec.equipment().weights(i).stream()).max(Mass::compareTo);
        var pressure = screening.systolic().isPresent() && screening.diastolic().isPresent()
                ? Optional.of(new Pressure(Integer.toString(screening.systolic().getAsInt()), Integer.toString(screening.diastolic().getAsInt())))
                : Optional.<Pressure>empty();
        var verdict = words.plan().assessed().verdict();
        var answers = switch (verdict) {
            case Verdict.Stop(var held, var reasons) -> held;
            case Verdict.NeedsClearance(var held, var reasons) -> held;
            case Verdict.Clear clear -> List.<String>of();
            case Verdict.WithLimits limits -> List.<String>of();
        };
        boolean described = answers.stream().anyMatch(List.of("surgery", "joint-replacement")::contains);
        var told = answers.stream().filter(answer -> !described || !answer.equals("recent-surgery")).toList();
        return new ReferralModel(verdict instanceof Verdict.Stop, told, see(told), pressure, heaviest.map(m -> words.units().mass(m.kilograms())),
                Integer.toString(spec.schedule().weeks()), Integer.toString(spec.schedule().days().size()));
    }

    /** Who knows most about these answers; each once. */
    private static List<String> see(List<String> answers) {
        return answers.stream().map(answer -> SURGEON.contains(answer) ? "surgeon" : MIDWIFE.contains(answer) ? "midwife" : "doctor")
                .distinct().sorted().toList();
    }
}
