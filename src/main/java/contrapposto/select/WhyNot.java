package contrapposto.select;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Why an exercise that could be done is not in the plan: what the best plan that has it in place of one other would
 * lose first, or which hard rule keeps it out.
 */
final class WhyNot {
    private final Frame frame;
    private final Scale scale;
    private final Search.Found found;

    WhyNot(Frame frame, Scale scale, Search.Found found) {
        this.frame = frame;
        this.scale = scale;
        this.found = found;
    }

    /** A plan with the exercise in it. {@code without} is empty when it was simply added. */
    private record Other(Optional<Item> without, long score, long[] amounts) { }

    Reason of(Item item) {
        Optional<Other> best = Optional.empty();
        for (var without : places()) {
            for (var duty : Duty.values()) {
                var other = duty == Duty.OUT || frame.sessions() == 1 && duty != Duty.A ? Optional.<Other>empty()
                        : with(item, duty, without);
                if (other.isPresent() && (best.isEmpty() || other.get().score() > best.get().score())) {
                    best = other;
                }
            }
        }
        return best.map(other -> Reason.of("not-chosen", (other.without().map(w -> "in place of " + w.id() + " it would cost ")
                        .orElse("added to the plan it would cost "))
                        + scale.decides(other.amounts(), found.amounts()).words(), Source.SOLVED))
                .orElse(Reason.of("not-chosen", "it does not fit beside what the coach asked for: minutes, exercises a session or "
                        + "a day's rest between hard days for the same muscle", Source.SOLVED));
    }

    private List<Optional<Item>> places() {
        var places = new ArrayList<Optional<Item>>(List.of(Optional.empty()));
        found.chosen().stream().filter(i -> !i.pinned()).forEach(i -> places.add(Optional.of(i)));
        return places;
    }

    private Optional<Other> with(Item item, Duty duty, Optional<Item> without) {
        var tally = new Tally(frame, scale);
        for (var kept : found.chosen()) {
            if (without.filter(kept::equals).isEmpty()) {
                tally.add(kept, found.duty(kept));
            }
        }
        if (!tally.admits(item, duty)) {
            return Optional.empty();
        }
        tally.add(item, duty);
        return Optional.of(new Other(without, tally.score(), Arrays.copyOf(tally.amounts(), Goal.values().length)));
    }
}
