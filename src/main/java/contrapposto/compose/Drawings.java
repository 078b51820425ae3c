package contrapposto.compose;

import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.prescribe.Plan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every drawing of a plan by the key that templates use; the keys are listed in templates/README.md. */
final class Drawings {
    private Drawings() { }

    static Map<String, Drawing> of(PlanWords words, Labels labels) {
        var drawings = new LinkedHashMap<String, Drawing>();
        Drawing blank = (w, h, size) -> new Figure(w, h, List.of());
        for (String key : List.of("finding/now", "finding/learn", "legend/most", "legend/some", "legend/heel-up", "legend/box",
                "legend/wedge", "bars")) {
            drawings.put(key, blank);
        }
        for (Plan.Exercise exercise : words.plan().exercises()) {
            for (var side : PlanWords.rows(exercise.sides())) {
                for (String part : List.of("start", "working", "map")) {
                    drawings.put(exercise.id() + "/" + PlanWords.badge(exercise.sides(), side) + "/" + part, blank);
                }
            }
            drawings.put("load/" + exercise.id(), blank);
        }
        return drawings;
    }
}
