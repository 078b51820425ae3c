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
