package contrapposto.prescribe;

import contrapposto.assess.Assessed;
import contrapposto.assess.Reason;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Muscle;
import contrapposto.prescribe.Plan.Exercise;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.select.Balance;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a finished program lacks to be a balanced one, over all its weeks: a push, a pull, a squat, a hinge; balance work
 * where it is to come first; a set, direct or not, for each muscle that a side wants (common practice). The page says it
 * rather than leave it to be found out.
 */
public final class Gaps {
    /** A pattern of movement, with the families that have it. */
    public enum Pattern {
        PUSH, PULL, SQUAT, HINGE, BALANCE;

        boolean in(Family family) {
            return switch (this) {
                case PUSH -> family.group() == CapacityGroup.PRESS;
                case PULL -> family.group() == CapacityGroup.PULL;
                case SQUAT -> family.group() == CapacityGroup.KNEE_BEND;
                case HINGE -> family.group() == CapacityGroup.HINGE;
                case BALANCE -> Balance.trainedBy(family);
            };
        }

        /** {@code pattern-push}, … */
        String word() {
            return "pattern-" + name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** Why families are not in a plan. */
    public enum Cause {
        /** A restriction, a condition, or a limit of screening. */
        RESTRICTION,
        EQUIPMENT,
        /** Others did more for this client, or they come later, ask more skill, or do not fit the minutes. */
        CHOICE;

        private static Cause of(List<Reason> reasons) {
            return reasons.stream().map(Reason::rule).anyMatch(rule -> rule.equals("restriction") || rule.equals("screening-limit")
                    || rule.equals("hand-support") || rule.startsWith("condition-"))
                    ? RESTRICTION : reasons.stream().map(Reason::rule).anyMatch("equipment"::equals) ? EQUIPMENT : CHOICE;
        }
    }

    /** @param left how many families that have it fell away for each cause */
    public record Missing(Pattern pattern, Map<Cause, Integer> left) {
        /** Whether it was restricted away: something was, and nothing of it was merely not chosen. */
        public boolean restricted() {
            return left.containsKey(Cause.RESTRICTION) && !left.containsKey(Cause.CHOICE);
        }

        Said said() {
            return Said.of("gap/pattern").word("pattern", pattern.word()).listed("causes", left.entrySet().stream().map(e -> switch (e.getKey()) {
                case RESTRICTION -> Said.of("gap/restricted").count("count", e.getValue());
                case EQUIPMENT -> Said.of("gap/equipment").count("count", e.getValue());
                case CHOICE -> Said.of("gap/choice").count("count", e.getValue());
            }).toList());
        }
    }

    private final Assessed assessed;
    private final Catalogue catalogue;
    private final List<Exercise> exercises;
    private final Map<String, List<Reason>> leftOut;

    private Gaps(Assessed assessed, Catalogue catalogue, List<Exercise> exercises, Map<String, List<Reason>> leftOut) {
        this.assessed = assessed;
        this.catalogue = catalogue;
        this.exercises = exercises;
        this.leftOut = leftOut;
    }

    /** The patterns that a finished plan lacks, in order; none of a withheld one. */
    public static List<Missing> of(Plan plan) {
        return plan.withheld() ? List.of() : new Gaps(plan.assessed(), plan.catalogue(), plan.exercises(), plan.leftOut()).patterns();
    }

    /** A line for the coach for each pattern that is missing, and one for the muscles. */
    static List<Said> said(Assessed assessed, Catalogue catalogue, List<Exercise> exercises, Map<String, List<Reason>> leftOut) {
        var gaps = new Gaps(assessed, catalogue, exercises, leftOut);
        var lines = new ArrayList<>(gaps.patterns().stream().map(Missing::said).toList());
        var muscles = gaps.muscles();
        if (!muscles.isEmpty()) {
            lines.add(Said.of("gap/muscles").listed("muscles", muscles));
        }
        return List.copyOf(lines);
    }

    private List<Missing> patterns() {
        return Arrays.stream(Pattern.values()).filter(pattern -> pattern != Pattern.BALANCE || Balance.first(assessed))
                .filter(pattern -> exercises.stream().flatMap(e -> catalogue.family(e.id()).stream()).noneMatch(pattern::in))
                .map(pattern -> new Missing(pattern, causes(pattern))).toList();
    }

    private Map<Cause, Integer> causes(Pattern pattern) {
        var causes = new EnumMap<Cause, Integer>(Cause.class);
        leftOut.forEach((id, reasons) -> catalogue.family(id).filter(pattern::in).ifPresent(family -> causes.merge(Cause.of(reasons), 1, Integer::sum)));
        return causes;
    }

    private List<Said> muscles() {
        var missing = new ArrayList<Said>();
        for (var side : Side.values()) {
            var trained = trained(side);
            assessed.target(side).muscles().stream().filter(muscle -> !trained.contains(muscle))
                    .forEach(muscle -> missing.add(Said.of("gap/muscle").word("muscle", muscle.word()).side("side", side)));
        }
        return missing;
    }

    private Set<Muscle> trained(Side side) {
        var trained = EnumSet.noneOf(Muscle.class);
        exercises.forEach(exercise -> trained.addAll(switch (exercise.sides()) {
            case Sided.Whole<Plan.SidePlan>(var both) -> both.solved().muscles().keySet();
            case Sided.Each<Plan.SidePlan>(var left, var right) -> union((side == Side.LEFT ? left : right).solved().muscles().keySet(),
                    (side == Side.LEFT ? right : left).solved().otherSideMuscles().keySet());
            case Sided.Only<Plan.SidePlan>(var only, var plan) -> only == side ? plan.solved().muscles().keySet() : plan.solved().otherSideMuscles().keySet();
        }));
        return trained;
    }

    private static Set<Muscle> union(Set<Muscle> one, Set<Muscle> two) {
        var both = EnumSet.noneOf(Muscle.class);
        both.addAll(one);
        both.addAll(two);
        return both;
    }
}
