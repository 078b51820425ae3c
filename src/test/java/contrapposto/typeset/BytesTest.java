package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.openpdf.text.pdf.ByteBuffer;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfString;

/** Holds what is written straight against what OpenPDF writes by itself. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BytesTest {
    private static String written(Bytes bytes) {
        var out = new ByteArrayOutputStream();
        try {
            bytes.writeTo(out);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return out.toString(StandardCharsets.ISO_8859_1);
    }

    private static void same(double value) {
        assertEquals(ByteBuffer.formatDouble(value), written(new Bytes(4).number(value)), Double.toString(value));
    }

    @Test
    void numbers_are_those_of_the_library() {
        for (double value : new double[] {0, -0.0, 1.4e-5, 1.5e-5, 1.6e-5, .1, .99999, .999995, .999999, 1, 1.004, 1.005, 1.1, 9.999, 10, 99.99, 32767, 32767.5, 40000.5, 1e9}) {
            same(value);
            same(-value);
        }
        var random = new Random(20261201);
        for (int i = 0; i < 200_000; i++) {
            same((float) (random.nextDouble() * 2 - 1));
            same((float) ((random.nextDouble() * 2 - 1) * 1000));
            same((float) ((random.nextDouble() * 2 - 1) * 40_000));
        }
    }

    @Test
    void words_are_those_of_the_library() throws IOException {
        for (String words : List.of("", "week 1", "(a) b\\c", "tab\tand\rreturn\nend\b\f", "„größer“ – ½ €", "ελληνικά", "左")) {
            var library = new ByteArrayOutputStream();
            new PdfString(words, PdfObject.TEXT_UNICODE).toPdf(null, library);
            assertArrayEquals(library.toByteArray(), written(new Bytes(0).text(words)).getBytes(StandardCharsets.ISO_8859_1), words);
        }
    }
}
