package contrapposto.spec;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word someone probably meant. */
public final class Nearest {
    private Nearest() { }

    /**
     * The word of {@code words} that is fewest edits away (letter added, dropped, changed or swapped with its neighbour;
     * case does not count), the first of equals; empty if more than about a third of it would have to change. A word of
     * three letters or more that begins the one written is near as well: {@code fri} for "Friday".
     */
    public static Optional<String> of(String written, Collection<String> words) {
        if (written.length() > 60) {
            return Optional.empty();
        }
        var lower = written.toLowerCase(Locale.ROOT);
        var begun = words.stream().filter(word -> word.length() >= 3 && lower.startsWith(word)).findFirst();
        return begun.isPresent() ? begun : words.stream().min(Comparator.comparingInt(word -> edits(written, word)))
                .filter(word -> edits(written, word) <= Math.max(1, (Math.max(word.length(), written.length()) + 1) / 3));
    }

    /** Edit distance with swaps of neighbours (optimal string alignment). */
    static int edits(String one, String other) {
        var a = one.toLowerCase(Locale.ROOT);
        var b = other.toLowerCase(Locale.ROOT);
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            cost[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            cost[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least = Math.min(cost[i - 1][j - 1] + same, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
                boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                cost[i][j] = swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
            }
        }
        return cost[a.length()][b.length()];
    }
}
