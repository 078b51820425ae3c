package contrapposto.compose;

import contrapposto.catalogue.Muscle;
import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.illustrate.FindingPicture;
import contrapposto.illustrate.FootMap;
import contrapposto.illustrate.LegendSigns;
import contrapposto.illustrate.LoadPlot;
import contrapposto.illustrate.MirroredBars;
import contrapposto.illustrate.SetUpSketch;
import contrapposto.illustrate.TurnView;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** Every drawing of a plan by the key that templates use; the keys are listed in templates/README.md. */
final class Drawings {
    private final PlanWords words;
    private final Labels labels;
    private final Map<String, Drawing> byKey = new LinkedHashMap<>();

    private Drawings(PlanWords words, Labels labels) {
        this.words = words;
        this.labels = labels;
    }

    static Map<String, Drawing> of(PlanWords words, Labels labels) {
        var drawings = new Drawings(words, labels);
        drawings.finding();
        drawings.legend();
        drawings.bars();
        for (Plan.Exercise exercise : words.plan().exercises()) {
            Sided<SetUpSketch.Shown> card = drawings.card(exercise);
            PlanWords.rows(exercise.sides()).forEach(side -> drawings.half(exercise, side, card.on(side)));
            drawings.byKey.put("load/" + exercise.id(), drawings.load(exercise));
        }
        drawings.byKey.replaceAll((key, drawing) -> lettered(drawing, labels).remembered());
        return Collections.unmodifiableMap(drawings.byKey);
    }

    /** The drawing with the language's letters for left and right in its pills. */
    private static Drawing lettered(Drawing drawing, Labels labels) {
        var letters = Map.of("L", labels.of("letter/left"), "R", labels.of("letter/right"));
        if (letters.get("L").equals("L") && letters.get("R").equals("R")) {
            return drawing;
        }
        return (width, height, size) -> {
            var figure = drawing.drawn(width, height, size);
            return new Figure(figure.width(), figure.height(), figure.marks().stream().map(mark -> mark instanceof Mark.Label label
                    && letters.containsKey(label.text()) ? new Mark.Label(label.at(), letters.get(label.text()), label.size(), label.weight(),
                    label.anchor(), label.tone(), label.halo()) : mark).toList());
        };
    }

    private void finding() {
        var assessment = words.spec().assessment();
        byKey.put("finding/now", FindingPicture.now(assessment, new FindingPicture.Words(labels.of("straight-ahead"), labels.of("pelvis"),
                labels.of("ribs"))));
        byKey.put("finding/learn", FindingPicture.toLearn(assessment));
    }

    private void legend() {
        byKey.put("legend/most", LegendSigns.mostWeight());
        byKey.put("legend/some", LegendSigns.someWeight());
        byKey.put("legend/heel-up", LegendSigns.heelUp());
        byKey.put("legend/box", LegendSigns.onBox());
        byKey.put("legend/wedge", LegendSigns.wedge());
    }

    private void bars() {
        var volume = words.plan().volume();
        byKey.put("bars", MirroredBars.of(Arrays.stream(Muscle.values()).filter(volume::containsKey)
                .map(m -> new MirroredBars.Bar(labels.of("muscle/" + m.word()), volume.get(m).left(), volume.get(m).right())).toList(),
                labels.of("sets-a-week")));
    }

    private Sided<SetUpSketch.Shown> card(Plan.Exercise exercise) {
        return SetUpSketch.card(exercise.sides().map(Plan.SidePlan::solved), sketchWords());
    }

    private SetUpSketch.Words sketchWords() {
        return new SetUpSketch.Words(labels.of("start"), word -> labels.of("working/" + word.word()), words.units()::length,
                degrees -> words.units().degrees(Math.abs(degrees)) + " " + labels.of(degrees < 0 ? "tilt/back" : "tilt/forward"));
    }

    private void half(Plan.Exercise exercise, Side side, SetUpSketch.Shown shown) {
        var solved = exercise.sides().on(side).solved();
        String key = exercise.id() + "/" + PlanWords.badge(exercise.sides(), side);
        switch (shown) {
            case SetUpSketch.Shown.Together(var drawing) -> byKey.put(key + "/working", drawing);
            case SetUpSketch.Shown.Apart(var start, var working) -> {
                byKey.put(key + "/start", start);
                byKey.put(key + "/working", working);
            }
        }
        FootMap.of(solved, words.units()::length).or(() -> TurnView.of(solved, new TurnView.Words(labels.of("view/above"),
                labels.of("view/head")))).ifPresent(map -> byKey.put(key + "/map", map));
        SetUpSketch.withShin(solved, sketchWords()).ifPresent(shin -> byKey.put(key + "/shin", shin));
        FootMap.small(solved).ifPresent(map -> byKey.put(key + "/small", map));
    }

    private Drawing load(Plan.Exercise exercise) {
        var weeks = words.plan().weeks().stream().map(week -> new LoadPlot.Week(week.number(), week.easy(),
                load(exercise, Side.LEFT, week.number()), load(exercise, Side.RIGHT, week.number()))).toList();
        return LoadPlot.of(weeks, new LoadPlot.Words(words.units().massUnit(), labels.of("week")));
    }

    private OptionalDouble load(Plan.Exercise exercise, Side side, int week) {
        return !exercise.sides().has(side) ? OptionalDouble.empty()
                : exercise.sides().on(side).doses().stream().filter(d -> d.week() == week && d.load().isPresent())
                        .mapToDouble(d -> words.units().massNumber(d.load().getAsDouble())).findFirst();
    }
}
