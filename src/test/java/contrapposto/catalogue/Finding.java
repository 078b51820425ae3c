package contrapposto.catalogue;

import static contrapposto.catalogue.Family.BaseKind.LEVEL;
import static contrapposto.catalogue.Family.BaseKind.ONE_LEG;
import static contrapposto.catalogue.Family.BaseKind.SIDE_LYING;
import static contrapposto.catalogue.Family.BaseKind.SPLIT;
import static contrapposto.catalogue.Family.BaseKind.STAGGERED;
import static contrapposto.catalogue.Family.BaseKind.STEP;
import static contrapposto.catalogue.Muscle.CALF;
import static contrapposto.catalogue.Muscle.GLUTEUS_MAXIMUS;
import static contrapposto.catalogue.Muscle.GLUTEUS_MEDIUS_BACK;
import static contrapposto.catalogue.Muscle.GLUTEUS_MEDIUS_FRONT;
import static contrapposto.catalogue.Muscle.QUADRICEPS;

import contrapposto.catalogue.Family.BaseKind;
import contrapposto.catalogue.Family.MuscleUse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A published finding about muscles, and the families that rest on it (reference D1, D3.4, D3.6, D3.9–D3.14, each read again on
 * 1 December 2026). What a family that is not the movement measured has in common with it is our reading, common practice.
 *
 * @param measured the movement that was measured
 * @param found    there, after the paper
 * @param muscles  it speaks of
 * @param bases    what a family must stand or lie on to be like that movement
 * @param same     families that are the movement measured
 * @param like     families like it, each with what is like and what is not
 */
record Finding(String id, String measured, String found, Set<Muscle> muscles, Set<BaseKind> bases, List<String> same, Map<String, String> like) {
    static final List<Finding> ALL = List.of(
            new Finding("D1", "level walking", "hip abductors and calf carry mid to late stance (phases of gait, textbook tables)",
                    Set.of(GLUTEUS_MEDIUS_BACK, CALF), Set.of(LEVEL, ONE_LEG, STAGGERED), List.of("suitcase-carry", "chest-carry", "two-weight-carry"),
                    like("slow-march", "walking in slow motion", "wall-one-leg-stand", "mid stance, held", "wall-hip-shift", "the weight goes over one foot",
                            "wall-drive", "late stance, hands at a wall", "calf-raise", "the heel leaves the floor as in late stance, on both feet",
                            "one-leg-calf-raise", "the same on one foot", "wall-calf-raise", "the same, hands at a wall")),
            new Finding("D3.4", "back squat, split squat, split squat with the rear foot raised",
                    "much the same quadriceps and gluteus maximus activity, hamstrings apart (DeForest, Cantrell, Schilling 2014)",
                    Set.of(QUADRICEPS, GLUTEUS_MAXIMUS), Set.of(LEVEL, STAGGERED), List.of(), like("goblet-squat", "a squat, the weight in front, lighter",
                            "two-weight-squat", "a squat, the weight in the hands, lighter", "wall-squat", "a shallower squat without a weight",
                            "staggered-squat", "a squat between the level and the split stance, both measured")),
            new Finding("D3.6", "split squat, four step lengths", "a longer step raises hip moment and hip extensor activity (Song et al. 2023)",
                    Set.of(GLUTEUS_MAXIMUS), Set.of(SPLIT), List.of("split-squat", "goblet-split-squat"),
                    like("wall-split-squat", "a split squat, hands at a wall")),
            new Finding("D3.9", "forward lunge, trunk leaned", "gluteus maximus 22, biceps femoris 18, vastus lateralis 51 %MVIC (Farrokhi et al. 2008)",
                    Set.of(GLUTEUS_MAXIMUS, QUADRICEPS), Set.of(SPLIT), List.of("walking-lunge"), like("lunge-reach", "a lunge with a reach",
                            "lunge-turn", "the bottom of a lunge, held", "split-squat", "the same bottom without the step",
                            "goblet-split-squat", "the same bottom without the step", "wall-split-squat", "the same bottom without the step, hands at a wall")),
            new Finding("D3.10", "static, stepping and walking lunge, trunk leaned", "gluteus maximus 31, 54, 58 %MVIC (Bezerra et al. 2021)",
                    Set.of(GLUTEUS_MAXIMUS), Set.of(SPLIT), List.of("walking-lunge", "split-squat"),
                    like("goblet-split-squat", "the static lunge, the weight in front", "wall-split-squat", "the static lunge without a weight, hands at a wall",
                            "lunge-turn", "the static lunge, held")),
            new Finding("D3.11", "forward lunge, four loads", "work rises at hip and ankle, not at the knee (Riemann et al. 2012)",
                    Set.of(GLUTEUS_MAXIMUS, CALF), Set.of(SPLIT), List.of(), like("walking-lunge", "the same step, walked on; work of joints, not of muscles")),
            new Finding("D3.12", "walking lunge, one dumbbell", "gluteus medius about 90 %MVIC with the weight opposite; no clear effect in the split squat "
                    + "(Stastny et al. 2015)", Set.of(GLUTEUS_MEDIUS_BACK, GLUTEUS_MEDIUS_FRONT), Set.of(SPLIT), List.of("walking-lunge"), Map.of()),
            new Finding("D3.13", "step-up forward and sideways, hip lifted sideways lying", "gluteus medius 63, 61 and 100 %MVIC (MacAskill et al. 2014)",
                    Set.of(GLUTEUS_MEDIUS_BACK), Set.of(STEP, SIDE_LYING), List.of("step-up"), like("wall-step-up", "a step-up without a weight, hands at a wall",
                            "step-up-press", "a step-up with a press on top", "step-down", "the way down of a step",
                            "side-lying-knee-lift", "the same hip lifted against its own weight, knees bent and feet together")),
            new Finding("D3.14", "squat, heels raised", "more work at the knee (Lu et al. 2022)", Set.of(QUADRICEPS), Set.of(LEVEL), List.of(), Map.of()));

    private static Map<String, String> like(String... idAndHow) {
        var like = new LinkedHashMap<String, String>();
        for (int i = 0; i < idAndHow.length; i += 2) {
            like.put(idAndHow[i], idAndHow[i + 1]);
        }
        return like;
    }

    Stream<String> families() {
        return Stream.concat(same.stream(), like.keySet().stream());
    }

    /** Uses of muscles that are not merely common practice. */
    static Stream<MuscleUse> published(Family family) {
        return Stream.concat(family.muscles().stream(), family.otherSideMuscles().stream()).filter(use -> !use.source().equals("common practice"));
    }
}
