package contrapposto.figure;

/** A picture of dots, row by row from the top, in sRGB and without holes. */
public final class Raster {
    private final int width;
    private final int height;
    private final int[] dots;

    /** @param dots one number a dot, red, green and blue in its lower three bytes; what is above them is dropped */
    public Raster(int width, int height, int[] dots) {
        if (width < 1 || height < 1 || dots.length != width * height) {
            throw new IllegalArgumentException("A raster of " + width + " by " + height + " dots cannot hold " + dots.length + ".");
        }
        this.width = width;
        this.height = height;
        this.dots = dots.clone();
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** Red, green and blue of one dot as {@code 0xRRGGBB}. */
    public int dot(int x, int y) {
        return dots[y * width + x] & 0xFFFFFF;
    }

    /** Whether no dot has a colour. */
    public boolean isGrey() {
        for (int dot : dots) {
            if ((dot & 0xFF) != (dot >> 8 & 0xFF) || (dot & 0xFF) != (dot >> 16 & 0xFF)) {
                return false;
            }
        }
        return true;
    }

    /** The dots as bytes, row by row: one each for a picture in greys, else three, red first. */
    public byte[] bytes() {
        int parts = isGrey() ? 1 : 3;
        var bytes = new byte[parts * dots.length];
        for (int i = 0; i < dots.length; i++) {
            for (int part = 0; part < parts; part++) {
                bytes[parts * i + part] = (byte) (dots[i] >> 8 * (parts - 1 - part));
            }
        }
        return bytes;
    }

    /** The same with at most {@code most} dots a side, each the mean of those it stands for. */
    public Raster atMost(int most) {
        int longer = Math.max(width, height);
        if (longer <= most) {
            return this;
        }
        int columns = Math.max(1, (int) ((long) width * most / longer));
        int rows = Math.max(1, (int) ((long) height * most / longer));
        var means = new int[columns * rows];
        for (int y = 0; y < rows; y++) {
            for (int x = 0; x < columns; x++) {
                means[y * columns + x] = mean((int) ((long) x * width / columns), end(x, width, columns), (int) ((long) y * height / rows), end(y, height, rows));
            }
        }
        return new Raster(columns, rows, means);
    }

    /** Past the last of {@code size} dots of which the {@code i}th of {@code parts} holds a share. */
    private static int end(int i, int size, int parts) {
        return (int) (((long) (i + 1) * size + parts - 1) / parts);
    }

    private int mean(int left, int right, int top, int bottom) {
        long red = 0;
        long green = 0;
        long blue = 0;
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                int dot = dot(x, y);
                red += dot >> 16;
                green += dot >> 8 & 0xFF;
                blue += dot & 0xFF;
            }
        }
        long count = (long) (right - left) * (bottom - top);
        return (int) ((red + count / 2) / count << 16 | (green + count / 2) / count << 8 | (blue + count / 2) / count);
    }
}
