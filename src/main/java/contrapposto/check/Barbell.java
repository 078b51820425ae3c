package contrapposto.check;

import contrapposto.quantity.Mass;
import contrapposto.spec.Written;
import java.util.List;
import java.util.TreeSet;

/** Every load that a bar and its plates can make, the same on both ends. */
final class Barbell {
    static final int MOST_LOADS = 2000;
    /** Loads nearer than this are one: 1 mg. */
    private static final double SAME = 1e-6;

    private Barbell() { }

    /** Ascending, the bare bar first; empty without a bar; cut off soon after {@link #MOST_LOADS}. */
    static List<Mass> loads(Written.Fields barbell) {
        var bar = barbell.amount("bar");
        if (bar.isEmpty()) {
            return List.of();
        }
        var loads = new TreeSet<Double>((a, b) -> Math.abs(a - b) < SAME ? 0 : Double.compare(a, b));
        loads.add(bar.get().standard());
        for (var plate : barbell.pairs("plates")) {
            double pair = 2 * ((Written.Amount) plate.key()).standard();
            int pairs = (int) ((Written.Number) plate.value()).number() / 2;
            for (double load : List.copyOf(loads)) {
                for (int i = 1; i <= pairs; i++) {
                    loads.add(load + i * pair);
                }
            }
            if (loads.size() > MOST_LOADS) {
                break;
            }
        }
        return loads.stream().map(Mass::ofKilograms).toList();
    }
}
