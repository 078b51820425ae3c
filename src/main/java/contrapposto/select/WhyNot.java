package contrapposto.select;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Why an exercise that could be done is not in the plan: what the best plan that has it in place of one other would
 * lose first, or which hard rule keeps it out.
 */
final class WhyNot {
    private final Scale scale;
    private final Search.Found found;
    private final Tally tally;

    WhyNot(Frame frame, Scale scale, Search.Found found) {
        this.scale = scale;
        this.found = found;
        this.tally = Tally.all(frame, found.chosen());
    }

    /** A plan with the exercise in it. {@code without} is empty when it was simply added. */
    private record Other(Optional<Item> without, long[] amounts) { }

    Reason of(Item item) {
        Optional<Other> best = Optional.empty();
        for (var without : places()) {
            var other = with(item, without);
            if (other.isPresent() && (best.isEmpty()
                    || scale.score(other.get().amounts()) > scale.score(best.get().amounts()))) {
                best = other;
            }
        }
        return best.map(other -> Reason.of("not-chosen", StandIns.goal(scale, found.amounts(), other.amounts(), other.without().map(w -> Said.of("not-chosen/in-place").exercise("exercise", w.id()))
                        .orElse(Said.of("not-chosen/added"))), Source.SOLVED))
                .orElse(Reason.of("not-chosen", Said.of("not-chosen/no-room"), Source.SOLVED));
    }

    private List<Optional<Item>> places() {
        var places = new ArrayList<Optional<Item>>(List.of(Optional.empty()));
        found.chosen().stream().filter(i -> !i.pinned()).forEach(i -> places.add(Optional.of(i)));
        return places;
    }

    private Optional<Other> with(Item item, Optional<Item> without) {
        return tally.exchanged(without.map(found.chosen()::indexOf).orElse(-1), item).map(amounts -> new Other(without, amounts));
    }
}
