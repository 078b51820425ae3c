package contrapposto.catalogue;

import contrapposto.catalogue.Family.MuscleUse;
import contrapposto.catalogue.Family.Sides;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    /** Reference id → the movement that was measured and what was found there, after the paper. */
    private static final Map<String, String> FINDINGS = findings();

    private static Map<String, String> findings() {
        var findings = new LinkedHashMap<String, String>();
        findings.put("D1", "level walking | hip abductors and calf carry mid to late stance (phases of gait, textbook tables)");
        findings.put("D3.4", "back squat, split squat, split squat with the rear foot raised | much the same quadriceps and gluteus "
                + "maximus activity, hamstrings apart (DeForest, Cantrell, Schilling 2014)");
        findings.put("D3.6", "split squat, four step lengths | a longer step raises hip moment and hip extensor activity (Song et al. 2023)");
        findings.put("D3.9", "forward lunge, trunk leaned | gluteus maximus 22, biceps femoris 18, vastus lateralis 51 %MVIC (Farrokhi et al. 2008)");
        findings.put("D3.10", "static, stepping and walking lunge | gluteus maximus 31, 54, 58 %MVIC (Bezerra et al. 2021)");
        findings.put("D3.11", "forward lunge, four loads | work rises at hip and ankle, not at the knee (Riemann et al. 2012)");
        findings.put("D3.12", "walking lunge, one dumbbell | gluteus medius about 90 %MVIC with the weight opposite; no clear effect in the "
                + "split squat (Stastny et al. 2015)");
        findings.put("D3.13", "step-up, side-lying | gluteus medius 63 and 61 %MVIC forward and sideways, 100 side-lying (MacAskill et al. 2014)");
        return findings;
    }

    /** Whether any of its muscles rests on a published finding. */
    static boolean published(Family f) {
        return sources(f).findAny().isPresent();
    }

    private static Stream<String> sources(Family f) {
        return Stream.concat(f.muscles().stream(), f.otherSideMuscles().stream()).map(MuscleUse::source)
                .filter(source -> !source.equals("common practice")).distinct();
    }

    private static String evidence(Catalogue catalogue) {
        long published = catalogue.families().stream().filter(CatalogueTable::published).count();
        var out = new StringBuilder("""

                ## What the muscles rest on

                For %d of %d families at least one muscle rests on a published finding; every other entry is common practice, no source. A
                finding was made in the movement named, often in few people: for a family that only resembles it, it is the nearest that was
                measured, not a proof.

                | id | measured in | found | families |
                |---|---|---|---|
                """.formatted(published, catalogue.families().size()));
        FINDINGS.forEach((id, finding) -> out.append("| ").append(id).append(" | ").append(finding).append(" | ")
                .append(catalogue.families().stream().filter(f -> sources(f).anyMatch(id::equals)).map(f -> "`" + f.id() + "`")
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
