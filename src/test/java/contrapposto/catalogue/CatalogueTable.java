package contrapposto.catalogue;

import contrapposto.catalogue.Family.MuscleUse;
import contrapposto.catalogue.Family.Sides;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The catalogue as the table of {@code docs/catalogue.md}. */
final class CatalogueTable {
    private CatalogueTable() { }

    static String of(Catalogue catalogue) {
        var out = new StringBuilder("""
                # The catalogue

                Written by `CatalogueTableTest` from the family files; do not edit by hand. %d families: %d floor, %d supported,
                %d standing, %d integrated. "Turn" is where the chest turns, seen from the working side; "by weight" means the hand
                that holds the weight decides. Muscles in brackets count half a set; "early" and "late" name the part of stance.
                """.formatted(catalogue.families().size(), count(catalogue, Stage.FLOOR), count(catalogue, Stage.SUPPORTED),
                count(catalogue, Stage.STANDING), count(catalogue, Stage.INTEGRATED)));
        for (var stage : Stage.values()) {
            out.append("\n## ").append(stage.word()).append("\n\n")
                    .append("| id | name | works | turn | opens | loads | muscles | keeps away when avoiding |\n")
                    .append("|---|---|---|---|---|---|---|---|\n");
            catalogue.families().stream().filter(f -> f.stage() == stage).forEach(f -> out.append(row(catalogue, f)));
        }
        return out.append(evidence(catalogue)).toString();
    }

    /** Whether any of its muscles rests on a published finding. */
    static boolean published(Family f) {
        return Finding.published(f).findAny().isPresent();
    }

    private static String evidence(Catalogue catalogue) {
        long published = catalogue.families().stream().filter(CatalogueTable::published).count();
        long same = Finding.ALL.stream().flatMap(f -> f.same().stream()).distinct().count();
        long late = Finding.ALL.stream().skip(3).flatMap(Finding::families).distinct().count();
        var out = new StringBuilder("""

                ## What the muscles rest on

                For %d of %d families at least one muscle rests on a published finding, for %d of them one made in the family's own movement;
                %d families rest on D3.9 to D3.14. Every other entry is common practice, no source. A finding was made in the movement named, often in few people: for a family
                that is only like it, it is the nearest that was measured, not a proof, and what is like is our own reading. `FindingsTest`
                holds this list against the families. No family squats on raised heels, so D3.14 backs none.

                | id | measured in | found | the same movement | like it |
                |---|---|---|---|---|
                """.formatted(published, catalogue.families().size(), same, late));
        Finding.ALL.forEach(f -> out.append("| ").append(f.id()).append(" | ").append(f.measured()).append(" | ").append(f.found()).append(" | ")
                .append(f.same().isEmpty() ? "–" : f.same().stream().map(id -> "`" + id + "`").collect(Collectors.joining(", "))).append(" | ")
                .append(f.like().isEmpty() ? "–" : f.like().entrySet().stream().map(e -> "`" + e.getKey() + "` (" + e.getValue() + ")")
                        .collect(Collectors.joining(", "))).append(" |\n"));
        return out.toString();
    }

    private static long count(Catalogue catalogue, Stage stage) {
        return catalogue.families().stream().filter(f -> f.stage() == stage).count();
    }

    private static String row(Catalogue catalogue, Family f) {
        var works = Words.of(f.works()) + (f.sides() == Sides.BOTH ? "s, both sides the same" : ", each side");
        var turn = switch (f.turn().toward()) {
            case WORKING -> "toward";
            case AWAY -> "away";
            case BY_LOAD_HAND -> "by weight";
            case NONE -> "–";
        };
        var ribs = switch (f.ribs()) {
            case OPENS_BACK -> "back ribs";
            case OPENS_FRONT -> "front ribs";
            case NEITHER -> "–";
        };
        return "| `" + f.id() + "` | " + catalogue.words("en", f.id()).name() + " | " + works + " | " + turn + " | " + ribs
                + " | " + f.levers().implement().stream().map(Implement::word).collect(Collectors.joining(", ")) + " | "
                + muscles(f.muscles()) + other(f.otherSideMuscles()) + " | " + String.join(", ", f.tags()) + " |\n";
    }

    private static String other(List<MuscleUse> uses) {
        return uses.isEmpty() ? "" : "; other side: " + muscles(uses);
    }

    private static String muscles(List<MuscleUse> uses) {
        Predicate<MuscleUse> direct = MuscleUse::direct;
        return Stream.concat(uses.stream().filter(direct).map(CatalogueTable::word),
                uses.stream().filter(direct.negate()).map(u -> "(" + word(u) + ")")).collect(Collectors.joining(", "));
    }

    private static String word(MuscleUse use) {
        var source = use.source().equals("common practice") ? "" : " " + use.source();
        return use.muscle().word() + source + switch (use.when()) {
            case ALWAYS -> "";
            case EARLY_TO_MID -> " early";
            case MID_TO_LATE -> " late";
        };
    }
}
