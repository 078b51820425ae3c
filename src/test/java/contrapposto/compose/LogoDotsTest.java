package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.figure.Drawing;
import contrapposto.figure.Mark;
import contrapposto.figure.Point;
import contrapposto.notice.Outcome;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A logo of dots is taken over as it looks on white paper, or refused. Layout of the file: PNG specification, third edition. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LogoDotsTest {
    @TempDir
    Path folder;

    private static byte[] png(BufferedImage image) throws IOException {
        var file = new ByteArrayOutputStream();
        assertTrue(ImageIO.write(image, "png", file));
        return file.toByteArray();
    }

    private static byte[] png(int width, int height, int type, int argb) throws IOException {
        var image = new BufferedImage(width, height, type);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, argb);
            }
        }
        return png(image);
    }

    private static Mark.Picture picture(byte[] bytes, double width, double height) {
        var read = LogoDots.read("templates/logo.png", bytes);
        var drawing = (Drawing) assertInstanceOf(Outcome.Done.class, read, read.notices()::toString).value();
        return (Mark.Picture) drawing.drawn(width, height, 8).marks().getFirst();
    }

    private static String refusal(byte[] bytes) {
        var refused = assertInstanceOf(Outcome.Refused.class, LogoDots.read("templates/logo.png", bytes));
        assertEquals(1, refused.notices().size());
        return refused.notices().getFirst().toString();
    }

    /** What shows of a colour under a cover is the colour times the cover and white times the rest: the "over" of Porter and Duff 1984. */
    @ParameterizedTest
    @CsvSource({"FF1F4E5F, 1F4E5F", "00123456, FFFFFF", "80000000, 7F7F7F", "FFFFFFFF, FFFFFF", "FF000000, 000000"})
    void what_lets_the_paper_through_is_laid_on_white(String argb, String rgb) throws IOException {
        var seen = picture(png(3, 2, BufferedImage.TYPE_INT_ARGB, (int) Long.parseLong(argb, 16)), 30, 20).raster();
        assertEquals(Integer.parseInt(rgb, 16), seen.dot(2, 1));
    }

    @Test
    void a_grey_file_keeps_its_numbers() throws IOException {
        var image = new BufferedImage(1, 1, BufferedImage.TYPE_BYTE_GRAY);
        image.getRaster().setSample(0, 0, 0, 0x80);
        assertEquals(0x808080, picture(png(image), 1, 1).raster().dot(0, 0));
        var deep = new BufferedImage(1, 1, BufferedImage.TYPE_USHORT_GRAY);
        deep.getRaster().setSample(0, 0, 0, 0x8080);
        assertEquals(0x808080, picture(png(deep), 1, 1).raster().dot(0, 0));
    }

    @Test
    void a_palette_and_one_bit_are_read() throws IOException {
        assertEquals(0xFF0000, picture(png(2, 2, BufferedImage.TYPE_BYTE_INDEXED, 0xFFFF0000), 1, 1).raster().dot(1, 1));
        assertEquals(0xFFFFFF, picture(png(2, 2, BufferedImage.TYPE_BYTE_BINARY, 0xFFFFFFFF), 1, 1).raster().dot(1, 1));
    }

    @Test
    void it_fits_the_box_and_keeps_its_proportions() throws IOException {
        var wide = picture(png(40, 10, BufferedImage.TYPE_INT_RGB, 0), 32, 13);
        assertEquals(new Mark.Picture(new Point(0, 2.5), 32, 8, wide.raster()), wide);
        var high = picture(png(10, 40, BufferedImage.TYPE_INT_RGB, 0), 32, 12);
        assertEquals(new Mark.Picture(new Point(0, 0), 3, 12, high.raster()), high);
    }

    @Test
    void more_dots_than_print_shows_become_their_mean() throws IOException {
        var image = new BufferedImage(1600, 400, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 1600; x += 2) {
            for (int y = 0; y < 400; y++) {
                image.setRGB(x, y, 0xFFFFFF);
            }
        }
        var kept = picture(png(image), 32, 13).raster();
        assertEquals(800, kept.width());
        assertEquals(200, kept.height());
        assertEquals(0x808080, kept.dot(400, 100), "half white, half black, rounded up");
    }

    @Test
    void a_file_cut_short_anywhere_or_with_a_byte_changed_is_refused() throws IOException {
        var whole = png(9, 5, BufferedImage.TYPE_INT_ARGB, 0x80FF8800);
        for (int length = 0; length < whole.length; length++) {
            assertTrue(refusal(Arrays.copyOf(whole, length)).contains("no whole PNG"), "cut to " + length);
        }
        var random = new Random(5);
        for (int at = 0; at < whole.length; at++) {
            var changed = whole.clone();
            changed[at] ^= (byte) (1 << random.nextInt(8));
            assertInstanceOf(Outcome.Refused.class, LogoDots.read("templates/logo.png", changed), "byte " + at);
        }
    }

    /** A head that says a hundred million dots, and a remark that swells a thousandfold when unpacked: neither is unpacked. */
    @Test
    void what_swells_is_not_unpacked() throws IOException {
        var file = new ByteArrayOutputStream();
        file.write(png(1, 1, BufferedImage.TYPE_INT_RGB, 0), 0, 8);
        chunk(file, "IHDR", head(20_000, 5_000));
        chunk(file, "IDAT", zipped(1));
        chunk(file, "IEND", new byte[0]);
        assertTrue(refusal(file.toByteArray()).contains("20000 by 5000 dots"));

        var remarked = new ByteArrayOutputStream();
        var small = png(2, 2, BufferedImage.TYPE_INT_RGB, 0x1F4E5F);
        int afterHead = 8 + 25;
        remarked.write(small, 0, afterHead);
        var remark = new ByteArrayOutputStream();
        remark.writeBytes("Comment\0\0".getBytes(StandardCharsets.ISO_8859_1));
        remark.writeBytes(zipped(400_000_000));
        chunk(remarked, "zTXt", remark.toByteArray());
        remarked.write(small, afterHead, small.length - afterHead);
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> assertEquals(0x1F4E5F, picture(remarked.toByteArray(), 1, 1).raster().dot(1, 1)));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1})
    void a_head_without_dots_is_refused(int width) throws IOException {
        var file = new ByteArrayOutputStream();
        file.write(png(1, 1, BufferedImage.TYPE_INT_RGB, 0), 0, 8);
        chunk(file, "IHDR", head(width, 1));
        chunk(file, "IEND", new byte[0]);
        refusal(file.toByteArray());
    }

    @Test
    void two_logos_or_one_too_large_are_refused_and_none_is_none() throws IOException {
        assertTrue(Logo.in(folder).isEmpty());
        Files.write(folder.resolve("logo.png"), new byte[(int) Logo.MOST_BYTES + 1]);
        assertTrue(notice().contains("2000001 bytes"), notice());
        Files.write(folder.resolve("logo.png"), png(3, 2, BufferedImage.TYPE_INT_RGB, 0));
        assertInstanceOf(Outcome.Done.class, Logo.in(folder).orElseThrow().drawing());
        Files.writeString(folder.resolve("logo.svg"), "<svg viewBox='0 0 1 1'><rect width='1' height='1'/></svg>");
        assertTrue(notice().contains("both"), notice());
    }

    private String notice() throws IOException {
        var refused = assertInstanceOf(Outcome.Refused.class, Logo.in(folder).orElseThrow().drawing());
        return refused.notices().getFirst().toString();
    }

    private static byte[] head(int width, int height) throws IOException {
        var bytes = new ByteArrayOutputStream();
        var out = new DataOutputStream(bytes);
        out.writeInt(width);
        out.writeInt(height);
        out.write(new byte[] {8, 2, 0, 0, 0});
        return bytes.toByteArray();
    }

    private static byte[] zipped(int zeros) throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var out = new DeflaterOutputStream(bytes)) {
            var block = new byte[Math.min(zeros, 1_000_000)];
            for (int written = 0; written < zeros; written += block.length) {
                out.write(block);
            }
        }
        return bytes.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream file, String name, byte[] content) throws IOException {
        var tagged = new ByteArrayOutputStream();
        tagged.writeBytes(name.getBytes(StandardCharsets.US_ASCII));
        tagged.writeBytes(content);
        var sum = new CRC32();
        sum.update(tagged.toByteArray());
        var out = new DataOutputStream(file);
        out.writeInt(content.length);
        out.write(tagged.toByteArray());
        out.writeInt((int) sum.getValue());
    }
}
