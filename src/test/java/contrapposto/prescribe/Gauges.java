package contrapposto.prescribe;

/** Gauges and plans on {@link LinearBody}, for tests that are about logs and not about mechanics. */
public final class Gauges {
    private Gauges() { }

    public static Gauge linear(Plan plan) {
        return new Gauge(plan, new LinearBody());
    }
}
