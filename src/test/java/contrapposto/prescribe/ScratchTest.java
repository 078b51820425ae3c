package contrapposto.prescribe;
import contrapposto.body.*;
import contrapposto.quantity.*;
import contrapposto.assess.*;
import org.junit.jupiter.api.Test;
class ScratchTest {
    @Test void look() {
        for (double[] raise : new double[][] {{0,0},{0.15,0},{0,0.43}}) {
            for (double load : new double[] {0, 4, 8, 12, 16, 20, 24, 32, 48, 64}) {
                long t = System.nanoTime();
                var both = PoseSolver.solve(SplitSquats.problem(Side.LEFT, raise[0], raise[1], load == 0 ? new Load.None() : new Load.InBothHands(load)));
                long dt = (System.nanoTime() - t) / 1000000;
                var one = PoseSolver.solve(SplitSquats.problem(Side.LEFT, raise[0], raise[1], load == 0 ? new Load.None() : new Load.InHand(Side.RIGHT, load)));
                System.out.println(raise[0] + " " + raise[1] + " " + load + " " + dt + "ms " + say(both) + " | " + say(one));
            }
        }
    }
    static String say(PoseOutcome o) {
        return switch (o) {
            case PoseOutcome.Solved(var p) -> String.format("hip %.1f knee %.1f lean %.1f shin %.1f share %.2f sigma %.2f", p.mechanics().hipMoment(), p.mechanics().kneeMoment(), p.mechanics().trunkLean(), p.mechanics().shinWorking(), p.mechanics().frontShare(), Math.max(p.mechanics().hipMoment()/2.8, p.mechanics().kneeMoment()/2.4));
            case PoseOutcome.Impossible(var c, var by, var u) -> "IMPOSSIBLE " + c + " " + by + u;
        };
    }
}
