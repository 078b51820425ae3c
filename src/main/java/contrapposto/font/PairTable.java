package contrapposto.font;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The pairs of glyphs that feature {@code kern} of table {@code GPOS} sets closer or wider: lookups of type 2, also
 * inside extensions (type 9). Only the advance of the first glyph is read, which is all that fonts for Latin, Greek
 * and Cyrillic use. Source: OpenType specification, "GPOS — Glyph Positioning Table".
 */
final class PairTable {
    private static final int PAIR = 2;
    private static final int EXTENSION = 9;
    private static final int X_ADVANCE = 4;

    /** In each lookup the first subtable that knows the pair decides. */
    private final List<List<Subtable>> lookups;

    PairTable(Sfnt font, int glyphs) {
        lookups = font.table("GPOS").map(gpos -> read(font, gpos, glyphs)).orElse(List.of());
    }

    /** What is added to the advance of {@code left} before {@code right}, in font units. */
    int between(int left, int right) {
        int sum = 0;
        for (var lookup : lookups) {
            sum += first(lookup, left, right);
        }
        return sum;
    }

    private static int first(List<Subtable> lookup, int left, int right) {
        for (var subtable : lookup) {
            int index = subtable.covered()[left];
            if (index >= 0) {
                int value = subtable.value(index, left, right);
                if (value != Subtable.UNKNOWN) {
                    return value;
                }
            }
        }
        return 0;
    }

    private static List<List<Subtable>> read(Sfnt font, int gpos, int glyphs) {
        int lookupList = gpos + font.u16(gpos + 8);
        var read = new ArrayList<List<Subtable>>();
        for (int index : kernLookups(font, gpos + font.u16(gpos + 6))) {
            var subtables = subtables(font, lookupList + font.u16(lookupList + 2 + 2 * index), glyphs);
            if (!subtables.isEmpty()) {
                read.add(subtables);
            }
        }
        return List.copyOf(read);
    }

    /** The lookups of the first {@code kern} feature; its twins for other scripts name the same ones. */
    private static List<Integer> kernLookups(Sfnt font, int features) {
        int count = font.u16(features);
        for (int i = 0; i < count; i++) {
            int entry = features + 2 + 6 * i;
            if (font.tag(entry).equals("kern")) {
                int feature = features + font.u16(entry + 4);
                var lookups = new ArrayList<Integer>();
                for (int k = 0; k < font.u16(feature + 2); k++) {
                    lookups.add(font.u16(feature + 4 + 2 * k));
                }
                return lookups;
            }
        }
        return List.of();
    }

    private static List<Subtable> subtables(Sfnt font, int lookup, int glyphs) {
        int type = font.u16(lookup);
        var read = new ArrayList<Subtable>();
        for (int i = 0; i < font.u16(lookup + 4); i++) {
            int at = lookup + font.u16(lookup + 6 + 2 * i);
            boolean extension = type == EXTENSION;
            int actual = extension ? font.u16(at + 2) : type;
            if (actual == PAIR) {
                read.add(subtable(font, extension ? at + font.u32(at + 4) : at, glyphs));
            }
        }
        return read;
    }

    private static Subtable subtable(Sfnt font, int at, int glyphs) {
        int[] covered = coverage(font, at + font.u16(at + 2), glyphs);
        int first = font.u16(at + 4);
        int size = 2 * (Integer.bitCount(first) + Integer.bitCount(font.u16(at + 6)));
        int place = 2 * Integer.bitCount(first & X_ADVANCE - 1);
        boolean advances = (first & X_ADVANCE) != 0;
        return font.u16(at) == 1
                ? new Listed(font, at, covered, size, place, advances)
                : new Classed(font, at, covered, size, place, advances,
                        classes(font, at + font.u16(at + 8), glyphs), classes(font, at + font.u16(at + 10), glyphs));
    }

    private static int[] coverage(Sfnt font, int at, int glyphs) {
        int[] covered = new int[glyphs];
        Arrays.fill(covered, -1);
        int count = font.u16(at + 2);
        for (int i = 0; i < count; i++) {
            if (font.u16(at) == 1) {
                covered[font.u16(at + 4 + 2 * i)] = i;
            } else {
                int range = at + 4 + 6 * i;
                int index = font.u16(range + 4);
                for (int g = font.u16(range); g <= font.u16(range + 2); g++) {
                    covered[g] = index++;
                }
            }
        }
        return covered;
    }

    private static int[] classes(Sfnt font, int at, int glyphs) {
        int[] classes = new int[glyphs];
        if (font.u16(at) == 1) {
            int start = font.u16(at + 2);
            for (int i = 0; i < font.u16(at + 4); i++) {
                classes[start + i] = font.u16(at + 6 + 2 * i);
            }
        } else {
            for (int i = 0; i < font.u16(at + 2); i++) {
                int range = at + 4 + 6 * i;
                Arrays.fill(classes, font.u16(range), font.u16(range + 2) + 1, font.u16(range + 4));
            }
        }
        return classes;
    }

    private sealed interface Subtable {
        int UNKNOWN = Integer.MIN_VALUE;

        int[] covered();

        int value(int index, int left, int right);
    }

    /** Format 1: for each first glyph a sorted list of second ones. */
    private record Listed(Sfnt font, int at, int[] covered, int size, int place, boolean advances)
            implements Subtable {
        @Override
        public int value(int index, int left, int right) {
            int set = at + font.u16(at + 10 + 2 * index);
            int low = 0;
            int high = font.u16(set) - 1;
            while (low <= high) {
                int middle = (low + high) >>> 1;
                int entry = set + 2 + middle * (2 + size);
                int second = font.u16(entry);
                if (second == right) {
                    return advances ? font.s16(entry + 2 + place) : 0;
                }
                if (second < right) {
                    low = middle + 1;
                } else {
                    high = middle - 1;
                }
            }
            return UNKNOWN;
        }
    }

    /** Format 2: one value for each pair of classes. */
    private record Classed(Sfnt font, int at, int[] covered, int size, int place, boolean advances, int[] firsts,
                           int[] seconds) implements Subtable {
        @Override
        public int value(int index, int left, int right) {
            int columns = font.u16(at + 14);
            int entry = at + 16 + (firsts[left] * columns + seconds[right]) * size;
            return advances ? font.s16(entry + place) : 0;
        }
    }
}
