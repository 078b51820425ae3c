package contrapposto.font;

/** A TrueType font: its characters, their widths and its pairs, in thousandths of the type size. Immutable. */
public final class FontFile {
    private final byte[] bytes;
    private final CharacterMap characters;
    private final PairTable pairs;
    private final int[] advances;
    private final int unitsPerEm;

    /** @throws IllegalArgumentException when a table that every such font has is missing */
    public FontFile(byte[] bytes) {
        this.bytes = bytes.clone();
        var font = new Sfnt(this.bytes);
        unitsPerEm = font.u16(font.required("head") + 18);
        int glyphs = font.u16(font.required("maxp") + 4);
        advances = advances(font, glyphs);
        characters = new CharacterMap(font);
        pairs = new PairTable(font, glyphs);
    }

    private int[] advances(Sfnt font, int glyphs) {
        int metrics = font.required("hmtx");
        int full = font.u16(font.required("hhea") + 34);
        int[] read = new int[glyphs];
        for (int g = 0; g < glyphs; g++) {
            read[g] = font.u16(metrics + 4 * Math.min(g, full - 1)) * 1000 / unitsPerEm;
        }
        return read;
    }

    /** The file as read. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** Whether the font can show this character. */
    public boolean has(int codePoint) {
        return characters.glyph(codePoint) != 0;
    }

    /** Width of a character; of the missing-character box if the font has none. */
    public int width(int codePoint) {
        return advances[characters.glyph(codePoint)];
    }

    /** What the space after {@code left} gains (or, mostly, loses) before {@code right}. */
    public int kern(int left, int right) {
        int value = pairs.between(characters.glyph(left), characters.glyph(right));
        return Math.round(value * 1000f / unitsPerEm);
    }
}
