package contrapposto.select;

import contrapposto.catalogue.Family.Dose;
import java.util.Arrays;

/**
 * How long things take in a session: the one sum that selection plans with and prescription prints.
 *
 * <p>A set is repeats × tempo, or the seconds of a hold or walk. Both sides make one round with a short change between
 * them; the rest follows each round, the last one included, since it is needed before the next exercise.
 */
public final class SessionTime {
    /** From one side to the other within a round, seconds (house default). */
    public static final int CHANGE_SIDES = 15;
    /** One easy warm-up set with its pause, seconds (house default). */
    public static final int RAMP_SET = 75;

    private SessionTime() { }

    /**
     * Seconds of one exercise in one session, fetching and arranging included.
     *
     * @param sides   that are done one after the other: 1 or 2
     * @param seconds of a hold or walk in place of repeats; 0 when repeats count
     * @param tempo   lowering-pause-lifting seconds, as {@code 3-1-1}
     * @param rest    seconds
     */
    public static double seconds(double setUpMinutes, int sides, int sets, int reps, int seconds, String tempo, int rest) {
        double work = seconds > 0 ? seconds : (double) reps * tempoSeconds(tempo);
        return setUpMinutes * 60 + sets * (sides * work + (sides - 1) * CHANGE_SIDES + rest);
    }

    /** The same at the family's own dose, at the most repeats it goes to. */
    static double seconds(Dose dose, int sides, int sets) {
        return seconds(dose.setUpMinutes(), sides, sets, dose.repsTo(), dose.seconds(), dose.tempo(), dose.rest());
    }

    /** One repeat. */
    private static int tempoSeconds(String tempo) {
        return Arrays.stream(tempo.split("-")).mapToInt(Integer::parseInt).sum();
    }
}
