package contrapposto.setup;

import java.util.List;

/**
 * One set-up's marks, a number for each {@link Criterion} in order; smaller is better.
 *
 * @param marks as many as there are criteria, none NaN
 */
record Judgement(List<Double> marks) implements Comparable<Judgement> {
    Judgement {
        marks = List.copyOf(marks);
        if (marks.size() != Criterion.values().length || marks.stream().anyMatch(m -> m.isNaN())) {
            throw new IllegalArgumentException("A judgement has a number for each criterion, but was " + marks + ".");
        }
    }

    double on(Criterion criterion) {
        return marks.get(criterion.ordinal());
    }

    /** The criterion that decides between this and {@code other}. */
    Criterion decidedBy(Judgement other) {
        for (var criterion : Criterion.values()) {
            if (on(criterion) != other.on(criterion)) {
                return criterion;
            }
        }
        return Criterion.ORDER;
    }

    @Override
    public int compareTo(Judgement other) {
        var decisive = decidedBy(other);
        return Double.compare(on(decisive), other.on(decisive));
    }
}
