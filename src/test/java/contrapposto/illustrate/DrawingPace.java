package contrapposto.illustrate;

import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Sided;
import contrapposto.setup.SolvedSetUp;
import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.Map;

/** Measures what drawing costs once warm, in the thread's own time; run by hand, prints what it saw. */
final class DrawingPace {
    private DrawingPace() { }

    public static void main(String[] arguments) {
        Map<String, Sided<SolvedSetUp>> cards = SolvedCards.of(1.70, Turned.RIGHT);
        var clock = ManagementFactory.getThreadMXBean();
        for (int round = 0; round < 12; round++) {
            long chosen = 0;
            long drawn = 0;
            int count = 0;
            for (Sided<SolvedSetUp> sides : cards.values()) {
                long start = clock.getCurrentThreadCpuTime();
                Sided<SetUpSketch.Shown> card = SetUpSketch.card(sides, SolvedCards.words());
                chosen += clock.getCurrentThreadCpuTime() - start;
                for (SetUpSketch.Shown shown : card.values()) {
                    long before = clock.getCurrentThreadCpuTime();
                    switch (shown) {
                        case SetUpSketch.Shown.Together(var drawing) -> drawing.drawn(59, 41, 11);
                        case SetUpSketch.Shown.Apart(var first, var second) -> {
                            first.drawn(29, 41, 11);
                            second.drawn(30, 41, 11);
                        }
                    }
                    drawn += clock.getCurrentThreadCpuTime() - before;
                    count++;
                }
            }
            System.out.printf(Locale.ROOT, "%d sides: camera and layout %.2f ms a side, drawing %.2f ms a side%n", count,
                    chosen / 1e6 / count, drawn / 1e6 / count);
        }
    }
}
