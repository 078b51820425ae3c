package contrapposto.select;

import java.util.Arrays;
import java.util.stream.IntStream;

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

    /** The amounts reached on each {@link Goal}; {@code tally} is left as it was. */
    static long[] amounts(Tally tally, Scale scale, int items) {
        var start = new Start(tally, scale, items);
        start.score = scale.score(tally.amounts());
        start.fill();
        while (start.exchange() || start.rebuild()) {
            start.fill();
        }
        long[] amounts = tally.amounts();
        for (int i = 0; i < items; i++) {
            if (start.in[i]) {
                tally.remove(i);
            }
        }
        return amounts;
    }

    private void fill() {
        int next = best(-1);
        while (next >= 0) {
            put(next);
            next = best(-1);
        }
        score = scale.score(tally.amounts());
    }

    /** The one that adds most, this one left aside; −1 when none adds anything. */
    private int best(int aside) {
        int best = -1;
        long most = 0;
        for (int i = 0; i < in.length; i++) {
            if (!in[i] && i != aside && tally.admits(i)) {
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
        return Arrays.stream(chosen()).anyMatch(out -> {
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

    /** Takes two or three out and fills up again without the first of them, if that scores more. */
    private boolean rebuild() {
        int[] chosen = chosen();
        for (int a : chosen) {
            for (int b : chosen) {
                for (int c : chosen) {
                    if (a != b && b <= c && a != c && rebuilt(a, b, c)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean rebuilt(int... out) {
        boolean[] before = in.clone();
        Arrays.stream(out).distinct().forEach(this::take);
        int next = best(out[0]);
        while (next >= 0) {
            put(next);
            next = best(out[0]);
        }
        long other = scale.score(tally.amounts());
        if (other > score) {
            score = other;
            return true;
        }
        for (int i = 0; i < in.length; i++) {
            if (in[i] && !before[i]) {
                take(i);
            } else if (before[i] && !in[i]) {
                put(i);
            }
        }
        return false;
    }

    private int[] chosen() {
        return IntStream.range(0, in.length).filter(i -> in[i]).toArray();
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
