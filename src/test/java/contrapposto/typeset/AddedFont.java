package contrapposto.typeset;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A TrueType font made for tests: Roboto's outlines under other characters, so that Armenian capitals look like A, B, C …
 * (no font with letters that Roboto lacks lies on every machine).
 */
public final class AddedFont {
    private static final String ROBOTO = "/com/formdev/flatlaf/fonts/roboto/Roboto-Regular.ttf";

    private AddedFont() { }

    /** 26 characters from {@code first} on shown by the 26 capitals of Roboto; {@code fsType} says what the maker allows. */
    public static byte[] of(int first, int fsType) {
        byte[] roboto = roboto();
        var read = ByteBuffer.wrap(roboto);
        var tables = new LinkedHashMap<String, byte[]>();
        for (int i = 0; i < read.getShort(4); i++) {
            int entry = 12 + 16 * i;
            byte[] table = new byte[read.getInt(entry + 12)];
            System.arraycopy(roboto, read.getInt(entry + 8), table, 0, table.length);
            tables.put(new String(roboto, entry, 4, java.nio.charset.StandardCharsets.US_ASCII), table);
        }
        tables.put("cmap", cmap(first, new contrapposto.font.FontFile(roboto), roboto));
        ByteBuffer.wrap(tables.get("OS/2")).putShort(8, (short) fsType);
        tables.remove("GPOS");
        return file(tables);
    }

    private static byte[] roboto() {
        try (InputStream in = AddedFont.class.getResourceAsStream(ROBOTO)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Format 4 with one segment and the last one that every map has; Roboto's capitals have glyphs in a row. */
    private static byte[] cmap(int first, contrapposto.font.FontFile font, byte[] roboto) {
        int glyph = glyphOfA(roboto);
        var made = ByteBuffer.allocate(12 + 32);
        made.putShort((short) 0).putShort((short) 1).putShort((short) 3).putShort((short) 1).putInt(12);
        made.putShort((short) 4).putShort((short) 32).putShort((short) 0).putShort((short) 4).putShort((short) 4).putShort((short) 1).putShort((short) 0);
        made.putShort((short) (first + 25)).putShort((short) 0xffff).putShort((short) 0);
        made.putShort((short) first).putShort((short) 0xffff);
        made.putShort((short) (glyph - first)).putShort((short) 1);
        made.putShort((short) 0).putShort((short) 0);
        return made.array();
    }

    private static int glyphOfA(byte[] roboto) {
        try (var font = new org.apache.fontbox.ttf.TTFParser().parse(new org.apache.pdfbox.io.RandomAccessReadBuffer(roboto))) {
            return font.getUnicodeCmapLookup().getGlyphId('A');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] file(Map<String, byte[]> tables) {
        var out = new ByteArrayOutputStream();
        int at = 12 + 16 * tables.size();
        var head = ByteBuffer.allocate(at);
        head.putInt(0x00010000).putShort((short) tables.size()).putShort((short) 0).putShort((short) 0).putShort((short) 0);
        var body = new ByteArrayOutputStream();
        for (var entry : tables.entrySet()) {
            head.put(entry.getKey().getBytes(java.nio.charset.StandardCharsets.US_ASCII)).putInt(0).putInt(at + body.size()).putInt(entry.getValue().length);
            body.writeBytes(entry.getValue());
            body.writeBytes(new byte[(4 - entry.getValue().length % 4) % 4]);
        }
        out.writeBytes(head.array());
        out.writeBytes(body.toByteArray());
        return out.toByteArray();
    }
}
