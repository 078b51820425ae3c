package contrapposto.typeset;

import contrapposto.document.Document.Paper;
import contrapposto.document.Document.Print;
import java.lang.management.ManagementFactory;
import java.util.Locale;

/** Measures what setting the sample handout costs; run by hand, prints what it saw. The thread's own time also counts on a busy machine. */
final class Pace {
    private Pace() { }

    public static void main(String[] arguments) {
        int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 5;
        long before = System.nanoTime();
        var typesetter = new Typesetter();
        System.out.printf(Locale.ROOT, "ready in %.0f ms%n", (System.nanoTime() - before) / 1e6);
        var sample = Samples.every(Paper.A4, Print.PLAIN);
        var clock = ManagementFactory.getThreadMXBean();
        for (int round = 0; round < rounds; round++) {
            int each = 100;
            long start = System.nanoTime();
            long worked = clock.getCurrentThreadCpuTime();
            for (int i = 0; i < each; i++) {
                typesetter.set(sample);
            }
            System.out.printf(Locale.ROOT, "%.1f ms a handout of the thread's own time, %.1f ms by the clock%n",
                    (clock.getCurrentThreadCpuTime() - worked) / 1e6 / each, (System.nanoTime() - start) / 1e6 / each);
        }
    }
}
