package contrapposto.font;

/** Characters to glyphs: subtable format 4 of table {@code cmap} (the Basic Multilingual Plane), unfolded once. */
final class CharacterMap {
    private static final int PLANE = 0x10000;

    private final char[] glyphs = new char[PLANE];

    CharacterMap(Sfnt font) {
        int table = font.required("cmap");
        int subtables = font.u16(table + 2);
        for (int i = 0; i < subtables; i++) {
            int entry = table + 4 + 8 * i;
            boolean unicode = font.u16(entry) == 0 || font.u16(entry) == 3 && font.u16(entry + 2) == 1;
            int subtable = table + font.u32(entry + 4);
            if (unicode && font.u16(subtable) == 4) {
                unfold(font, subtable);
                return;
            }
        }
        throw new IllegalArgumentException("The font has no character map of format 4.");
    }

    private void unfold(Sfnt font, int subtable) {
        int segments = font.u16(subtable + 6) / 2;
        int ends = subtable + 14;
        int starts = ends + 2 * segments + 2;
        int deltas = starts + 2 * segments;
        int ranges = deltas + 2 * segments;
        for (int i = 0; i < segments; i++) {
            int first = font.u16(starts + 2 * i);
            int last = font.u16(ends + 2 * i);
            int range = font.u16(ranges + 2 * i);
            for (int c = first; c <= last && c < PLANE - 1; c++) {
                int glyph = range == 0 ? c : font.u16(ranges + 2 * i + range + 2 * (c - first));
                boolean shifted = range == 0 || glyph != 0;
                glyphs[c] = (char) (shifted ? glyph + font.u16(deltas + 2 * i) : 0);
            }
        }
    }

    int glyph(int codePoint) {
        return codePoint >= 0 && codePoint < PLANE ? glyphs[codePoint] : 0;
    }
}
