package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.InflaterInputStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.openpdf.text.Document;
import org.openpdf.text.pdf.PdfNumber;

/**
 * Reads the table of objects by the rules of ISO 32000-1 (7.5.8 for its rows, PNG filter 2 for its differences): readers mend a bad table without a
 * word, so that opening the file would show nothing.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CrossReferencesTest {
    private static final int OBJECTS = 700;

    private static byte[] file() throws IOException {
        var out = new ByteArrayOutputStream();
        var file = new Document();
        var writer = TaggedWriter.of(file, out);
        writer.setFullCompression();
        file.open();
        writer.begin();
        writer.ink().operator("n");
        for (int i = 0; i < OBJECTS; i++) {
            writer.addToBody(new PdfNumber(i), i % 7 > 0);
        }
        writer.ink().turn();
        file.close();
        return out.toByteArray();
    }

    @Test
    void every_row_leads_to_its_object() throws IOException {
        byte[] before = file();
        byte[] after = CrossReferences.tight(before);
        assertTrue(after.length < before.length - 400, before.length + " -> " + after.length);
        String text = new String(after, StandardCharsets.ISO_8859_1);
        int start = Integer.parseInt(text.substring(text.lastIndexOf("startxref\n") + 10).lines().findFirst().orElseThrow());
        String head = text.substring(start, text.indexOf("stream\n", start));
        int data = start + head.length() + 7;
        int length = Integer.parseInt(head.replaceAll("(?s).*/Length (\\d+).*", "$1"));
        assertEquals("\nendstream\nendobj\nstartxref\n", text.substring(data + length, data + length + 28));
        assertTrue(head.contains("/W[1 3 2]") || head.contains("/W[1 2 2]"), head);
        int middle = head.contains("/W[1 3 2]") ? 3 : 2;
        byte[] told = new InflaterInputStream(new java.io.ByteArrayInputStream(after, data, length)).readAllBytes();
        int wide = 1 + middle + 2;
        int[] row = new int[wide];
        int direct = 0;
        for (int number = 0; number < told.length / (wide + 1); number++) {
            assertEquals(2, told[number * (wide + 1)]);
            int place = 0;
            for (int i = 0; i < wide; i++) {
                row[i] = row[i] + told[number * (wide + 1) + 1 + i] & 0xff;
                place = i >= 1 && i <= middle ? place << 8 | row[i] : place;
            }
            if (row[0] == 1) {
                assertTrue(text.startsWith(number + " 0 obj", place), number + " at " + place);
                direct++;
            }
        }
        assertTrue(direct > OBJECTS / 7, "objects by themselves: " + direct);
    }
}
