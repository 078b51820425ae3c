package contrapposto.compose;

import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the index page of a pack lists: the handouts of the set in order, and what became of each.
 *
 * @param paper what the call asks for in place of the specs' own; likewise {@code print} and {@code language}
 */
public record PackIndex(String title, List<Line> lines, Optional<Paper> paper, Optional<Print> print, Optional<String> language) {
    public PackIndex {
        lines = List.copyOf(lines);
    }

    /**
     * One handout of the set.
     *
     * @param number that stands on the handout, its folder and here
     * @param name   the values chosen, as the handout has them
     * @param fate   what the run made of it
     */
    public record Line(String number, String name, Fate fate) { }

    /** How one handout ended. */
    public sealed interface Fate {
        /** @param printed its editions with their pages, in order */
        record Made(CheckedSpec spec, List<Printed> printed) implements Fate {
            public Made {
                printed = List.copyOf(printed);
            }
        }

        /** Screening holds its program back: a referral page stands in its place. */
        record Withheld(CheckedSpec spec) implements Fate { }

        /** Nothing was printed; the run's manifest says why. */
        record Failed() implements Fate { }
    }

    public record Printed(Edition edition, int pages) { }

    /** The first spec of the set that is sound: it gives the page its date, practice, units and, unless asked otherwise, paper and language. */
    public Optional<CheckedSpec> lead() {
        return lines.stream().flatMap(PackIndex::spec).findFirst();
    }

    static Stream<CheckedSpec> spec(Line line) {
        return switch (line.fate()) {
            case Fate.Made(var spec, var printed) -> Stream.of(spec);
            case Fate.Withheld(var spec) -> Stream.of(spec);
            case Fate.Failed failed -> Stream.empty();
        };
    }
}
