package contrapposto.typeset;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A finished PDF and what can be said of its pages.
 *
 * @param bytes  the whole file
 * @param count  of pages
 * @param parts  first page of each part, from 1
 * @param cards  page of each card by its key; of its left side in the large print
 * @param rows   stretch of each page's figure rows and log rows, 0 tightest to 1 widest; 1 where nothing stretches
 */
public record Pages(byte[] bytes, int count, Map<String, Integer> parts, Map<String, Integer> cards,
                    List<Double> rows) {
    public Pages {
        parts = new TreeMap<>(parts);
        cards = new TreeMap<>(cards);
        rows = List.copyOf(rows);
    }
}
