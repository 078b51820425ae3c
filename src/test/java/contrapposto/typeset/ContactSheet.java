package contrapposto.typeset;

import contrapposto.figure.Drawing;
import contrapposto.figure.Tone;
import contrapposto.illustrate.FootMap;
import contrapposto.illustrate.SetUpSketch.Shown;
import contrapposto.illustrate.SolvedCards.Half;
import contrapposto.illustrate.TurnView;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.openpdf.text.Document;
import org.openpdf.text.Rectangle;

/**
 * Every family of the catalogue as its card draws it, both sides, for a short and a tall person: a sheet for eyes, made
 * by the handout's own painter and read back by PDFBox.
 */
final class ContactSheet {
    private static final double HALF = 85;
    private static final double ROW = 45;
    private static final double TITLE = 6;
    private static final double GUTTER = 4;
    private static final double LABEL = 11;

    /** @param halves of each row: short person left, right, tall person left, right; a missing one stays white */
    record Row(String title, List<Optional<Half>> halves) { }

    private final Fonts fonts = Fonts.roboto();
    private final FigurePainter painter = new FigurePainter(fonts, new Misses(fonts));

    /** Makes one PNG of the rows at {@code dpi}. */
    static void write(Path file, List<Row> rows, int dpi) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(new ContactSheet().pdf(rows))) {
            BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(0, dpi, ImageType.GRAY);
            Files.createDirectories(file.getParent());
            ImageIO.write(sixteenGreys(image), "png", new File(file.toString()));
        }
    }

    private byte[] pdf(List<Row> rows) {
        double width = 4 * HALF + 5 * GUTTER;
        double height = rows.size() * (TITLE + ROW + GUTTER) + GUTTER;
        var bytes = new ByteArrayOutputStream();
        var document = new Document(new Rectangle(Pen.pt(width), Pen.pt(height)));
        var writer = TaggedWriter.of(document, bytes);
        document.open();
        writer.begin();
        var pen = new Pen(writer.ink(), 0, height);
        for (int r = 0; r < rows.size(); r++) {
            double top = GUTTER + r * (TITLE + ROW + GUTTER);
            pen.beginText(Tone.BLACK);
            pen.words(fonts.bold(), 11, GUTTER, top + 4, rows.get(r).title());
            pen.endText();
            for (int i = 0; i < rows.get(r).halves().size(); i++) {
                double left = GUTTER + i * (HALF + GUTTER);
                rows.get(r).halves().get(i).ifPresent(half -> paint(half, pen.at(left, top + TITLE)));
            }
        }
        writer.ink().turn();
        document.close();
        return bytes.toByteArray();
    }

    private void paint(Half half, Pen pen) {
        pen.rectangle(0, 0, HALF, ROW);
        pen.stroke(new Tone.Grey(.8), .15);
        Optional<Drawing> map = FootMap.of(half.solved(), half.words().lengths())
                .or(() -> TurnView.of(half.solved(), new TurnView.Words("From above", "From the head")));
        double room = map.isPresent() ? .698 * HALF : HALF;
        switch (half.shown()) {
            case Shown.Together(var drawing) -> paint(drawing, room, pen);
            case Shown.Apart(var start, var working) -> {
                double first = .49 * room;
                paint(start, first, pen);
                paint(working, room - first, pen.at(first, 0));
            }
        }
        map.ifPresent(drawing -> paint(drawing, HALF - room, pen.at(room, 0)));
    }

    private void paint(Drawing drawing, double width, Pen pen) {
        painter.paint(drawing.drawn(width, ROW, LABEL), pen);
    }

    /** Four bits a dot: enough for the eye, a third of the file. */
    private static BufferedImage sixteenGreys(BufferedImage grey) {
        byte[] levels = new byte[16];
        for (int i = 0; i < 16; i++) {
            levels[i] = (byte) (17 * i);
        }
        var few = new BufferedImage(grey.getWidth(), grey.getHeight(), BufferedImage.TYPE_BYTE_BINARY,
                new java.awt.image.IndexColorModel(4, 16, levels, levels, levels));
        for (int y = 0; y < grey.getHeight(); y++) {
            for (int x = 0; x < grey.getWidth(); x++) {
                few.getRaster().setSample(x, y, 0, Math.round(grey.getRaster().getSample(x, y, 0) / 17f));
            }
        }
        return few;
    }
}
