package contrapposto.prescribe;

import contrapposto.check.CheckedSpec;
import contrapposto.wording.Said;
import java.util.Optional;

/**
 * Training days a week against what is published. Least: two for adults (WHO 2020, B3.1; ACSM 2026, B2.6), three for 65 and
 * over (balance and strength, B3.2) and under 18 (B3.4). Most, by training status: three for novices, four for
 * intermediates, five for the advanced (ACSM 2009, B1.2). A line for the coach, no rule: light practice may be daily.
 */
record Frequency(int least, int most) {
    /** From about half a year of regular training on a person counts as intermediate (ACSM 2009, B1.15). */
    static final double INTERMEDIATE = 0.5;
    /** "Years" of it make advanced; three, as in the bands: house. */
    static final double ADVANCED = 3;

    static Frequency of(CheckedSpec.Client client) {
        int age = client.age().orElse(18);
        double years = client.trainingYears();
        return new Frequency(age >= 65 || age < 18 ? 3 : 2, years < INTERMEDIATE ? 3 : years < ADVANCED ? 4 : 5);
    }

    /** What the coach is told; nothing about a single session, which is no program. */
    static Optional<Said> warning(CheckedSpec spec) {
        var published = of(spec.client());
        int days = spec.schedule().days().size();
        boolean single = spec.schedule().weeks() == 1 && days == 1;
        return single || days >= published.least && days <= published.most ? Optional.empty()
                : Optional.of(Said.of(days < published.least ? "frequency/under" : "frequency/over").count("days", days)
                        .count("least", published.least).count("most", published.most));
    }
}
