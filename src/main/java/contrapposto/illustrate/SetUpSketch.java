package contrapposto.illustrate;

import contrapposto.body.Action;
import contrapposto.figure.Drawing;
import contrapposto.quantity.Length;
import contrapposto.quantity.Sided;
import contrapposto.setup.SolvedSetUp;
import contrapposto.sketch.Sketch;
import contrapposto.sketch.Stage;
import contrapposto.sketch.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The sketches of an exercise card: every drawn body is the solved pose of this client. Left set-ups face left and right
 * ones face right; both sides of a card are drawn alike and to one scale.
 */
public final class SetUpSketch {
    /** A start silhouette that is hidden more than this is not worth drawing behind the body. */
    private static final double GHOST_SEEN = .4;
    /** Two small drawings that would have to shrink under this share give way to one large one. */
    private static final double SMALLEST_PAIR = .8;
    /** The same where hardly anything of the start would be seen behind the body, and how much that is. */
    private static final double SMALLER_PAIR = .55;
    private static final double HARDLY_SEEN = .1;
    private static final double STILL = .03;
    /** How much larger than someone upright a body that lies or kneels may be drawn. */
    private static final double LARGEST = 1.5;
    /** The box a figure row gives to sketches at its common height, mm; decides between one drawing and two. */
    private static final double ROW = 59;
    private static final double ROW_HEIGHT = 41;
    private static final double LABEL = 11;
    static final double MM_PER_PT = 25.4 / 72;

    private SetUpSketch() { }

    /**
     * The words on sketches.
     *
     * @param start   under a start position
     * @param working under a working position
     * @param lengths a length with its unit
     * @param tilt    a shin's tilt in degrees, + = forward, as words ("6° back")
     */
    public record Words(String start, Function<WorkingWord, String> working, Function<Length, String> lengths,
                        Function<Double, String> tilt) { }

    /** How a card's two positions are shown. */
    public sealed interface Shown {
        /** The working position over a pale silhouette of the start, or alone where nothing travels. */
        record Together(Drawing drawing) implements Shown { }

        record Apart(Drawing start, Drawing working) implements Shown { }
    }

    /** The sketches of each side; one drawing or two is decided for both sides alike, by what stays visible. */
    public static Sided<Shown> card(Sided<SolvedSetUp> sides, Words words) {
        boolean symmetric = sides instanceof Sided.Whole<SolvedSetUp>;
        Sided<Views> views = sides.map(solved -> Views.of(solved, symmetric, words));
        boolean together = views.values().stream().allMatch(Views::betterTogether);
        Sided<List<Sketch>> drawn = views.map(v -> together ? List.of(v.together()) : v.apart());
        List<Sketch> all = drawn.values().stream().flatMap(List::stream).toList();
        double stature = views.values().getFirst().solved().problem().person().stature();
        return drawn.map(of -> together ? new Shown.Together(scaled(of.getFirst(), all, stature))
                : new Shown.Apart(scaled(of.getFirst(), all, stature), scaled(of.getLast(), all, stature)));
    }

    /** The working position alone with the arc of its shin, for the coach; empty where no leg works on its foot. */
    public static Optional<Drawing> withShin(SolvedSetUp solved, Words words) {
        SetUpWishes wishes = new SetUpWishes(solved, true);
        return wishes.shin(words.tilt()).map(shin -> (width, height, label) -> {
            List<Wish> said = new ArrayList<>(wishes.heights(words.lengths()));
            wishes.stance(words.lengths()).ifPresent(said::add);
            said.add(shin);
            return staged(solved).sketch(Stage.Shown.WORKING, said).drawn(width, height, label);
        });
    }

    private static Stage staged(SolvedSetUp solved) {
        return Stage.of(solved.problem(), WallNeeded.with(solved), solved.problem().working());
    }

    /** One scale for a card: what fits, but never much larger than someone who stands upright. */
    private static Drawing scaled(Sketch sketch, List<Sketch> all, double stature) {
        return (width, height, label) -> {
            double scale = LARGEST * (height - 6.2 * label / LABEL) / (stature + .06);
            for (Sketch other : all) {
                scale = Math.min(scale, other.scale(width, height, label));
            }
            return sketch.drawn(width, height, label, scale);
        };
    }

    /** The ways to show one side, each drawn only when it is asked for. */
    private record Views(SolvedSetUp solved, Stage stage, SetUpWishes wishes, Words words, boolean travels, Sketch together) {
        static Views of(SolvedSetUp solved, boolean symmetric, Words words) {
            SetUpWishes wishes = new SetUpWishes(solved, symmetric);
            Stage stage = staged(solved);
            boolean travels = wishes.travel() > STILL && !(solved.problem().action() instanceof Action.Walk);
            List<Wish> said = said(wishes, words);
            wishes.stance(words.lengths()).ifPresent(said::add);
            return new Views(solved, stage, wishes, words, travels,
                    stage.sketch(travels ? Stage.Shown.END_OVER_START : Stage.Shown.END, said));
        }

        private static List<Wish> said(SetUpWishes wishes, Words words) {
            List<Wish> said = new ArrayList<>(wishes.tags());
            wishes.movement().ifPresent(said::add);
            said.addAll(wishes.heights(words.lengths()));
            said.add(new Wish.Caption(words.working().apply(WorkingWord.of(wishes.solved().problem())), true));
            return said;
        }

        List<Sketch> apart() {
            return List.of(stage.sketch(Stage.Shown.START, List.of(new Wish.Caption(words.start(), false))),
                    stage.sketch(Stage.Shown.END, said(wishes, words)));
        }

        boolean betterTogether() {
            return !travels || together.ghostShare() >= GHOST_SEEN || apart().stream()
                    .mapToDouble(sketch -> sketch.scale(ROW / 2, ROW_HEIGHT, LABEL)).min().orElseThrow()
                    < (together.ghostShare() < HARDLY_SEEN ? SMALLER_PAIR : SMALLEST_PAIR) * together.scale(ROW, ROW_HEIGHT, LABEL);
        }
    }
}
