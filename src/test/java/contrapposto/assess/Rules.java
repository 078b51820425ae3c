package contrapposto.assess;

import contrapposto.body.PoseProblem.Effort;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.HouseRules.Band;
import contrapposto.catalogue.HouseRules.Range;
import contrapposto.catalogue.Stage;
import java.util.List;
import java.util.Map;

/** House rules made by hand for tests: the bands of the trade's table, common practice for the direction, house for the values. */
public final class Rules {
    private Rules() { }

    public static HouseRules house() {
        return new HouseRules(List.of(
                new Band(1, new Range(0.68, 0.76), new Range(0.70, 0.80), new Range(0.60, 0.72), new Range(0.65, 0.75), 2, 3),
                new Band(3, new Range(0.64, 0.72), new Range(0.75, 0.85), new Range(0.52, 0.65), new Range(0.70, 0.80), 3, 3),
                new Band(Double.POSITIVE_INFINITY, new Range(0.60, 0.68), new Range(0.80, 0.90), new Range(0.40, 0.55),
                        new Range(0.75, 0.85), 3, 2)),
                Map.of(Stage.FLOOR, 0.8, Stage.SUPPORTED, 0.8, Stage.STANDING, 0.6, Stage.INTEGRATED, 0.4),
                new Effort(3, 2.5, 10, 20), new Effort(3, 2.5, 40, 20), Map.of("hip internal rotation", 5.0), 2, 4,
                new Range(0.02, 0.10), "Brzycki", 4, 5, new Range(4, 20), 10, 5, new HouseRules.Placing(0.14, 0.28, 0.28, 0.55, 0.72, 0.40, 1, 5), Map.of());
    }
}
