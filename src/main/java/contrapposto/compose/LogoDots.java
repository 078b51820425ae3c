package contrapposto.compose;

import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Point;
import contrapposto.figure.Raster;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * A practice's logo as a PNG file → a drawing that fits any box. What lets the paper through becomes white, as it will look; a colour
 * profile is not followed: numbers are taken as sRGB, the document's output intent. Only size and dots are read: no remark, profile or
 * date of the file is unpacked or goes on. Source of the layout: PNG specification, third edition, chapter 5.
 */
final class LogoDots {
    /** Dots a side, and dots in all, that are unpacked. */
    private static final int MOST_SIDE = 5000;
    private static final long MOST_DOTS = 8_000_000;
    /** Dots a side that are kept: 600 to the inch at the width of page 1's. */
    private static final int KEPT = 800;

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final int IHDR = 0x49484452;
    private static final int IEND = 0x49454E44;
    private static final int HEAD_BYTES = 13;
    /** Length, name and check sum of a chunk. */
    private static final int FRAME = 12;
    private static final int WHITE = 255;

    private LogoDots() { }

    /** @param file the name that notices show */
    static Outcome<Drawing> read(String file, byte[] bytes) {
        try {
            var size = checked(bytes);
            if (size.width < 1 || size.height < 1 || size.width > MOST_SIDE || size.height > MOST_SIDE || (long) size.width * size.height > MOST_DOTS) {
                return refused(file, "the logo has " + size.width + " by " + size.height + " dots, but a side has at most " + MOST_SIDE
                        + " and all of it " + MOST_DOTS, "save it smaller: 800 dots across are enough for any print");
            }
            var raster = unpacked(bytes).atMost(KEPT);
            return Outcome.done((width, height, labels) -> fitted(raster, width, height));
        } catch (IOException | RuntimeException damaged) {
            return refused(file, "the logo is no whole PNG file", "save it again as PNG, or as plain SVG");
        }
    }

    private record Size(int width, int height) { }

    /** Goes through the chunks without unpacking any: each is whole by its check sum, size comes first, the end last. */
    private static Size checked(byte[] bytes) throws IOException {
        if (!Arrays.equals(Arrays.copyOf(bytes, SIGNATURE.length), SIGNATURE)) {
            throw new IOException("no PNG");
        }
        var file = ByteBuffer.wrap(bytes);
        int at = SIGNATURE.length;
        int name = 0;
        while (name != IEND) {
            int length = file.getInt(at);
            name = file.getInt(at + 4);
            var sum = new CRC32();
            sum.update(bytes, at + 4, length + 4);
            if ((int) sum.getValue() != file.getInt(at + 8 + length) || at == SIGNATURE.length && (name != IHDR || length != HEAD_BYTES)) {
                throw new IOException("damaged");
            }
            at += FRAME + length;
        }
        return new Size(file.getInt(SIGNATURE.length + 8), file.getInt(SIGNATURE.length + 12));
    }

    private static Raster unpacked(byte[] bytes) throws IOException {
        var reader = ImageIO.getImageReadersByFormatName("png").next();
        try (var stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(stream, true, true);
            var image = reader.read(0);
            var dots = new int[image.getWidth() * image.getHeight()];
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    dots[y * image.getWidth() + x] = dot(image, x, y);
                }
            }
            return new Raster(image.getWidth(), image.getHeight(), dots);
        } finally {
            reader.dispose();
        }
    }

    /** On white; grey numbers as they stand, which the colour model of Java would take as light, not as sRGB. */
    private static int dot(BufferedImage image, int x, int y) {
        if (image.getColorModel() instanceof IndexColorModel palette) {
            int argb = palette.getRGB(image.getRaster().getSample(x, y, 0));
            return onWhite(argb >> 16 & 0xFF, argb >> 8 & 0xFF, argb & 0xFF, argb >>> 24);
        }
        int bands = image.getRaster().getNumBands();
        int alpha = bands % 2 == 0 ? sample(image, x, y, bands - 1) : WHITE;
        return bands < 3 ? onWhite(sample(image, x, y, 0), sample(image, x, y, 0), sample(image, x, y, 0), alpha)
                : onWhite(sample(image, x, y, 0), sample(image, x, y, 1), sample(image, x, y, 2), alpha);
    }

    /** From 0 to 255, however many bits the file has. */
    private static int sample(BufferedImage image, int x, int y, int band) {
        int most = (1 << image.getSampleModel().getSampleSize(band)) - 1;
        return (image.getRaster().getSample(x, y, band) * WHITE + most / 2) / most;
    }

    private static int onWhite(int red, int green, int blue, int alpha) {
        return through(red, alpha) << 16 | through(green, alpha) << 8 | through(blue, alpha);
    }

    private static int through(int part, int alpha) {
        return (part * alpha + WHITE * (WHITE - alpha) + WHITE / 2) / WHITE;
    }

    /** As large as the box allows, at its left, half way down, as the vector is. */
    private static Figure fitted(Raster raster, double width, double height) {
        double factor = Math.min(width / raster.width(), height / raster.height());
        double high = factor * raster.height();
        return new Figure(width, height, List.of(new Mark.Picture(new Point(0, (height - high) / 2), factor * raster.width(), high, raster)));
    }

    private static Outcome<Drawing> refused(String file, String message, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error("template-slip", Span.whole(file), message, hint)));
    }
}
