package contrapposto.font;

import java.util.Arrays;

/** A TrueType font: its characters, their widths and its pairs, in thousandths of the type size. Immutable. */
public final class FontFile {
    /** Letters of most languages here lie below it. */
    private static final int FIRST = 0x180;
    private static final short UNASKED = Short.MIN_VALUE;

    private final byte[] bytes;
    private final CharacterMap characters;
    private final PairTable pairs;
    private final int[] advances;
    private final int unitsPerEm;
    /** Of the first characters, by two of them: what {@link #kern} said, or {@link #UNASKED}. Threads may fill it at once. */
    private final short[] asked = new short[FIRST * FIRST];

    /** @throws IllegalArgumentException when a table that every such font has is missing */
    public FontFile(byte[] bytes) {
        this.bytes = bytes.clone();
        var font = new Sfnt(this.bytes);
        font.required("glyf");
        unitsPerEm = font.u16(font.required("head") + 18);
        int glyphs = font.u16(font.required("maxp") + 4);
        advances = advances(font, glyphs);
        characters = new CharacterMap(font);
        pairs = new PairTable(font, glyphs);
        Arrays.fill(asked, UNASKED);
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

    /**
     * Whether its maker allows a part of it in a document: field fsType of table OS/2, where 2 in the lowest four bits restricts embedding, bit 8
     * forbids subsets and bit 9 allows bitmaps only (OpenType specification, "OS/2"). A font without the table says nothing against it.
     */
    public boolean mayBeEmbedded() {
        var font = new Sfnt(bytes);
        return font.table("OS/2").map(at -> font.u16(at + 8)).map(type -> (type & 0xf) != 0x2 && (type & 0x300) == 0).orElse(true);
    }

    /** The number of the glyph that shows this character, 0 for the missing-character box. */
    public int glyph(int codePoint) {
        return characters.glyph(codePoint);
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
        if (left >= FIRST || right >= FIRST) {
            return looked(left, right);
        }
        int at = left * FIRST + right;
        short before = asked[at];
        if (before == UNASKED) {
            before = (short) looked(left, right);
            asked[at] = before;
        }
        return before;
    }

    private int looked(int left, int right) {
        int value = pairs.between(characters.glyph(left), characters.glyph(right));
        return Math.round(value * 1000f / unitsPerEm);
    }
}
