package contrapposto.bench;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.openpdf.text.Document;
import org.openpdf.text.PageSize;
import org.openpdf.text.pdf.BaseFont;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfTextArray;
import org.openpdf.text.pdf.PdfWriter;

/**
 * The floor: every glyph and path of a finished handout as calls to the PDF library, recorded once from the file's own
 * content streams and played back into a new file with the same fonts. No layout, no tags, no form fields, no bookmarks:
 * less than any program that prints this page can do with that library.
 */
final class Recording {
    private final List<List<Consumer<PdfContentByte>>> pages = new ArrayList<>();
    private final Map<String, BaseFont> fonts = new LinkedHashMap<>();
    /** Operators that were not recorded, with how often they came. */
    private final Map<String, Integer> left = new TreeMap<>();

    static Recording of(byte[] pdf) throws IOException {
        var recording = new Recording();
        try (var document = Loader.loadPDF(pdf)) {
            for (var page : document.getPages()) {
                recording.pages.add(recording.record(page));
            }
        }
        return recording;
    }

    Map<String, Integer> left() {
        return left;
    }

    int calls() {
        return pages.stream().mapToInt(List::size).sum();
    }

    byte[] played() {
        var out = new ByteArrayOutputStream();
        var document = new Document(PageSize.A4);
        var writer = PdfWriter.getInstance(document, out);
        writer.setFullCompression();
        document.open();
        for (var page : pages) {
            var ink = writer.getDirectContent();
            page.forEach(call -> call.accept(ink));
            document.newPage();
        }
        document.close();
        return out.toByteArray();
    }

    private List<Consumer<PdfContentByte>> record(PDPage page) throws IOException {
        var calls = new ArrayList<Consumer<PdfContentByte>>();
        var operands = new ArrayList<COSBase>();
        Optional<PDFont> font = Optional.empty();
        for (Object token : new PDFStreamParser(page).parse()) {
            if (!(token instanceof Operator operator)) {
                operands.add((COSBase) token);
                continue;
            }
            if (operator.getName().equals("Tf")) {
                font = Optional.of(page.getResources().getFont((COSName) operands.getFirst()));
            }
            call(operator.getName(), operands, font).ifPresentOrElse(calls::add, () -> left.merge(operator.getName(), 1, Integer::sum));
            operands.clear();
        }
        return calls;
    }

    private Optional<Consumer<PdfContentByte>> call(String operator, List<COSBase> operands, Optional<PDFont> font) throws IOException {
        float[] n = numbers(operands);
        return Optional.ofNullable(switch (operator) {
            case "q" -> PdfContentByte::saveState;
            case "Q" -> PdfContentByte::restoreState;
            case "cm" -> ink -> ink.concatCTM(n[0], n[1], n[2], n[3], n[4], n[5]);
            case "m" -> ink -> ink.moveTo(n[0], n[1]);
            case "l" -> ink -> ink.lineTo(n[0], n[1]);
            case "c" -> ink -> ink.curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
            case "v" -> ink -> ink.curveTo(n[0], n[1], n[2], n[3]);
            case "re" -> ink -> ink.rectangle(n[0], n[1], n[2], n[3]);
            case "h" -> PdfContentByte::closePath;
            case "S" -> PdfContentByte::stroke;
            case "s" -> PdfContentByte::closePathStroke;
            case "f" -> PdfContentByte::fill;
            case "B" -> PdfContentByte::fillStroke;
            case "W" -> PdfContentByte::clip;
            case "n" -> PdfContentByte::newPath;
            case "w" -> ink -> ink.setLineWidth(n[0]);
            case "J" -> ink -> ink.setLineCap((int) n[0]);
            case "j" -> ink -> ink.setLineJoin((int) n[0]);
            case "d" -> {
                float[] dash = numbers(((COSArray) operands.getFirst()).toList());
                yield ink -> ink.setLineDash(dash, 0);
            }
            case "g" -> ink -> ink.setGrayFill(n[0]);
            case "G" -> ink -> ink.setGrayStroke(n[0]);
            case "rg" -> ink -> ink.setRGBColorFillF(n[0], n[1], n[2]);
            case "RG" -> ink -> ink.setRGBColorStrokeF(n[0], n[1], n[2]);
            case "BT" -> PdfContentByte::beginText;
            case "ET" -> PdfContentByte::endText;
            case "Tr" -> ink -> ink.setTextRenderingMode((int) n[0]);
            case "Tm" -> ink -> ink.setTextMatrix(n[0], n[1], n[2], n[3], n[4], n[5]);
            case "Td" -> ink -> ink.moveText(n[0], n[1]);
            case "Tf" -> {
                var base = base(font.orElseThrow());
                yield ink -> ink.setFontAndSize(base, n[1]);
            }
            case "Tj" -> {
                var words = words(font.orElseThrow(), (COSString) operands.getFirst());
                yield ink -> ink.showText(words);
            }
            case "TJ" -> {
                var array = array(font.orElseThrow(), (COSArray) operands.getFirst());
                yield ink -> ink.showText(array);
            }
            default -> null;        // counted as left out
        });
    }

    private static float[] numbers(List<? extends COSBase> operands) {
        float[] numbers = new float[operands.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = operands.get(i) instanceof COSNumber number ? number.floatValue() : 0;
        }
        return numbers;
    }

    private static PdfTextArray array(PDFont font, COSArray written) throws IOException {
        var array = new PdfTextArray();
        for (var part : written) {
            switch (part) {
                case COSString string -> array.add(words(font, string));
                case COSNumber kern -> array.add(kern.floatValue());
                default -> throw new IllegalStateException("A TJ array holds " + part);
            }
        }
        return array;
    }

    private static String words(PDFont font, COSString string) throws IOException {
        var words = new StringBuilder();
        try (InputStream codes = new ByteArrayInputStream(string.getBytes())) {
            while (codes.available() > 0) {
                words.append(font.toUnicode(font.readCode(codes)));
            }
        }
        return words.toString();
    }

    private BaseFont base(PDFont font) {
        return fonts.computeIfAbsent(font.getName().contains("Bold") ? "Roboto-Bold.ttf" : "Roboto-Regular.ttf", file -> {
            try (InputStream in = Recording.class.getResourceAsStream("/com/formdev/flatlaf/fonts/roboto/" + file)) {
                return BaseFont.createFont(file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, in.readAllBytes(), null);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
