package contrapposto.select;

import java.util.Arrays;

/**
 * A good set found quickly, for {@link Search} to prune by: the exercise that adds most, again and again; then single
 * exchanges while one helps. Not the best there is, and its exercises are not used.
 */
final class Start {
    private final Tally tally;
    private final Scale scale;
    private final boolean[] in;
    private long score;

    private Start(Tally tally, Scale scale, int items) {
        this.tally = tally;
        this.scale = scale;
        this.in = new boolean[items];
    }

    /** The score reached; {@code tally} is left as it was. */
    static long score(Tally tally, Scale scale, int items) {
        var start = new Start(tally, scale, items);
        start.score = scale.score(tally.amounts());
        start.fill();
        while (start.exchange()) {
            start.fill();
        }
        for (int i = 0; i < items; i++) {
            if (start.in[i]) {
                tally.remove(i);
            }
        }
        return start.score;
    }

    private void fill() {
        int next = best();
        while (next >= 0) {
            put(next);
            score = scale.score(tally.amounts());
            next = best();
        }
    }

    /** The one that adds most; −1 when none adds anything. */
    private int best() {
        int best = -1;
        long most = 0;
        for (int i = 0; i < in.length; i++) {
            if (!in[i] && tally.admits(i)) {
                long gain = scale.score(tally.gain(i));
                if (gain > most) {
                    most = gain;
                    best = i;
                }
            }
        }
        return best;
    }

    /** Puts one in for another if that scores more. */
    private boolean exchange() {
        int[] chosen = java.util.stream.IntStream.range(0, in.length).filter(i -> in[i]).toArray();
        return Arrays.stream(chosen).anyMatch(out -> {
            take(out);
            for (int i = 0; i < in.length; i++) {
                if (!in[i] && i != out && tally.admits(i)) {
                    put(i);
                    long other = scale.score(tally.amounts());
                    if (other > score) {
                        score = other;
                        return true;
                    }
                    take(i);
                }
            }
            put(out);
            return false;
        });
    }

    private void put(int i) {
        tally.add(i);
        in[i] = true;
    }

    private void take(int i) {
        tally.remove(i);
        in[i] = false;
    }
}
