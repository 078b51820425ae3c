package contrapposto.html;

import contrapposto.figure.Raster;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/** A picture of dots as a PNG file: eight bits a part, no filter, no remarks, so that nothing of a file that was read travels along. */
final class PngWriter {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final int GREY = 0;
    private static final int RGB = 2;

    private PngWriter() { }

    /** Equal pictures give equal bytes. Source of the layout: PNG specification, third edition, chapters 5 and 11. */
    static byte[] bytes(Raster raster) {
        try {
            var file = new ByteArrayOutputStream();
            file.writeBytes(SIGNATURE);
            var head = new ByteArrayOutputStream();
            var fields = new DataOutputStream(head);
            fields.writeInt(raster.width());
            fields.writeInt(raster.height());
            fields.write(new byte[] {Byte.SIZE, (byte) (raster.isGrey() ? GREY : RGB), 0, 0, 0});
            chunk(file, "IHDR", head.toByteArray());
            chunk(file, "IDAT", packed(raster));
            chunk(file, "IEND", new byte[0]);
            return file.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static byte[] packed(Raster raster) throws IOException {
        var bytes = raster.bytes();
        int row = bytes.length / raster.height();
        var packed = new ByteArrayOutputStream();
        try (var deflater = new DeflaterOutputStream(packed)) {
            for (int y = 0; y < raster.height(); y++) {
                deflater.write(0);
                deflater.write(bytes, y * row, row);
            }
        }
        return packed.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream file, String name, byte[] content) throws IOException {
        var out = new DataOutputStream(file);
        var tagged = new ByteArrayOutputStream();
        tagged.writeBytes(name.getBytes(StandardCharsets.US_ASCII));
        tagged.writeBytes(content);
        var sum = new CRC32();
        sum.update(tagged.toByteArray());
        out.writeInt(content.length);
        out.write(tagged.toByteArray());
        out.writeInt((int) sum.getValue());
    }
}
