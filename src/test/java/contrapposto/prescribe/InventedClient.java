package contrapposto.prescribe;

import contrapposto.quantity.Side;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * A client who does not exist: how strong each side truly is, how that grows, how often they can truly lift a share of it,
 * and how badly they judge it. Capacity as {@link Gauge} has it; every number drawn from a seed, which is mixed first: {@link
 * Random} alone begins nearly alike on neighbouring seeds, and so would neighbouring clients.
 */
final class InventedClient {
    private static final double DAY = 0.03;
    private static final double MISSED_WEEK = 0.10;
    private static final double MISSED_SESSION = 0.05;
    private static final double PAINFUL = 0.004;

    private final Random chance;
    private final Map<String, Double> capacity = new TreeMap<>();
    /** The personal curve: share = 1 ÷ (1 + reps ÷ endurance); 30 would be Epley's. People differ widely: A1.13. */
    private final double endurance;
    private final double growth;
    private final double optimism;

    InventedClient(long seed) {
        chance = new Random(new SplittableRandom(seed).nextLong());
        endurance = 30 * StrictMath.exp(0.25 * chance.nextGaussian());
        growth = Math.max(0, 0.006 + 0.004 * chance.nextGaussian());
        optimism = 0.5 * chance.nextGaussian();
    }

    Random chance() {
        return chance;
    }

    void is(String exercise, Side side, double capacity) {
        this.capacity.put(exercise + side, capacity);
    }

    double capacity(String exercise, Side side) {
        return capacity.get(exercise + side);
    }

    /** The share of capacity that can truly be lifted this often. */
    double share(double reps) {
        return reps <= 1 ? 1 : 1 / (1 + (reps - 1) / endurance);
    }

    /** How often {@code asked}, in the unit of capacity, can truly be lifted today; 0 when not even once. */
    double possible(double asked, double today) {
        return asked > today ? 0 : 1 + endurance * (today / asked - 1);
    }

    double today(String exercise, Side side) {
        return capacity(exercise, side) * StrictMath.exp(DAY * chance.nextGaussian());
    }

    /** What is written down for so many truly to spare: misjudged by about a repeat, as A7.3 has it. */
    int said(double spare) {
        return (int) Math.max(0, Math.round(spare + optimism + chance.nextGaussian()));
    }

    boolean missesWeek() {
        return chance.nextDouble() < MISSED_WEEK;
    }

    boolean missesSession() {
        return chance.nextDouble() < MISSED_SESSION;
    }

    int pain() {
        return chance.nextDouble() < PAINFUL ? 6 : chance.nextInt(3);
    }

    /** A week goes by. */
    void week(boolean trained) {
        capacity.replaceAll((side, now) -> now * (1 + (trained ? growth * (0.5 + chance.nextDouble()) : -0.003)));
    }
}
