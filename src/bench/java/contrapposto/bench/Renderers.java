package contrapposto.bench;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import contrapposto.html.HtmlPage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.Loader;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.xhtmlrenderer.pdf.ITextRenderer;

/**
 * One handout, printed by this program, by the floor under it, and by general renderers from the registries that get this
 * program's own HTML edition of the same document; in one run, one after the other, each warmed first. Prints the table of
 * {@code docs/benchmarks.md}.
 *
 * <p>One thread each. Chromium is a program of its own: it is started for every page, and its processor time is not ours to see.
 */
public final class Renderers {
    private static final double SECOND = 1e9;
    private static final List<String> CHROMIUM = List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");

    private final double warm;
    private final double seconds;

    private Renderers(double warm, double seconds) {
        this.warm = warm;
        this.seconds = seconds;
    }

    /** @param args seconds to warm each, and to measure each; 8 and 8 unless given */
    public static void main(String[] args) throws Exception {
        Logger.getLogger("").setLevel(Level.OFF);
        XRLog.setLoggingEnabled(false);
        new Renderers(args.length > 0 ? Double.parseDouble(args[0]) : 8, args.length > 1 ? Double.parseDouble(args[1]) : 8).run();
    }

    private record Row(String what, double wall, double processor, int pages, int bytes) { }

    private void run() throws Exception {
        var line = new Line();
        var checked = line.checked(line.specOf(16));
        var plan = line.plan(line.selected(line.setUps(line.assessed(checked))));
        var drawn = line.drawn(plan);
        var document = line.document(plan, drawn);
        byte[] ours = line.pages(document).bytes();
        var floor = Recording.of(ours);
        String html = HtmlPage.of(document);
        System.out.println("floor: " + floor.calls() + " calls; left out of it: " + floor.left());
        int[] client = {0};
        var rows = new ArrayList<Row>();
        rows.add(row("floor: OpenPDF, the same glyphs and paths precomputed, untagged", floor::played));
        rows.add(row("this program: compose + typeset, drawings at hand, tagged, with form fields", () -> line.pages(line.document(plan, drawn)).bytes()));
        rows.add(row("this program: illustrate + compose + typeset", () -> line.pages(line.document(plan, line.drawn(plan))).bytes()));
        rows.add(row("this program: the whole, another body each time", () ->
                Line.value(line.press.press(Line.NAME, line.specOf(client[0]++))).files().getFirst().bytes()));
        rows.add(row("openhtmltopdf, from the HTML edition, untagged", () -> openHtml(html)));
        rows.add(row("Flying Saucer, from the HTML edition without its drawings, untagged", () -> flyingSaucer(html)));
        var chromium = CHROMIUM.stream().map(Path::of).filter(Files::isExecutable).findFirst();
        if (chromium.isPresent()) {
            rows.add(chromium(chromium.get(), html));
        } else {
            System.out.println("no Chromium here, so it is not measured");
        }
        table(rows);
    }

    private Row row(String what, Callable<byte[]> made) throws Exception {
        byte[] last = made.call();
        for (long end = System.nanoTime() + (long) (warm * SECOND); System.nanoTime() < end; ) {
            last = made.call();
        }
        var threads = ManagementFactory.getThreadMXBean();
        long start = System.nanoTime();
        long used = threads.getCurrentThreadCpuTime();
        int n = 0;
        while (System.nanoTime() - start < seconds * SECOND) {
            last = made.call();
            n++;
        }
        return new Row(what, (System.nanoTime() - start) / SECOND / n, (threads.getCurrentThreadCpuTime() - used) / SECOND / n, pages(last), last.length);
    }

    private static byte[] openHtml(String html) throws IOException {
        var out = new ByteArrayOutputStream();
        var builder = new PdfRendererBuilder();
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.withW3cDocument(new W3CDom().fromJsoup(Jsoup.parse(html)), "/");
        builder.toStream(out);
        builder.run();
        return out.toByteArray();
    }

    private static byte[] flyingSaucer(String html) {
        var out = new ByteArrayOutputStream();
        var page = Jsoup.parse(html);
        page.select("svg").remove();
        var renderer = new ITextRenderer();
        renderer.setDocument(new W3CDom().fromJsoup(page), "/");
        renderer.layout();
        renderer.createPDF(out);
        return out.toByteArray();
    }

    private static Row chromium(Path program, String html) throws IOException, InterruptedException {
        var folder = Files.createTempDirectory("renderers");
        var page = Files.writeString(folder.resolve("page.html"), html, StandardCharsets.UTF_8);
        var pdf = folder.resolve("page.pdf");
        int runs = 6;
        double seconds = 0;
        for (int i = 0; i < runs; i++) {
            long start = System.nanoTime();
            int code = new ProcessBuilder(program.toString(), "--headless", "--no-sandbox", "--disable-gpu", "--user-data-dir=" + folder.resolve("profile"),
                    "--no-pdf-header-footer", "--print-to-pdf=" + pdf, page.toUri().toString())
                    .redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
            if (code != 0) {
                throw new IllegalStateException("Chromium ended with " + code);
            }
            seconds += i == 0 ? 0 : (System.nanoTime() - start) / SECOND;      // the first run makes its profile
        }
        byte[] made = Files.readAllBytes(pdf);
        return new Row("headless Chromium, started for each, from the HTML edition, tagged", seconds / (runs - 1), Double.NaN, pages(made), made.length);
    }

    private static int pages(byte[] pdf) throws IOException {
        try (var read = Loader.loadPDF(pdf)) {
            return read.getNumberOfPages();
        }
    }

    private static void table(List<Row> rows) {
        double floor = rows.getFirst().wall();
        System.out.println("| what | ms each, wall | ms each, processor of its thread | a second | of the floor's throughput | pages | KB |");
        System.out.println("|---|---|---|---|---|---|---|");
        for (var row : rows) {
            System.out.println(String.format(Locale.ROOT, "| %s | %.1f | %s | %.1f | %.0f %% | %d | %d |", row.what(), row.wall() * 1000,
                    Double.isNaN(row.processor()) ? "–" : String.format(Locale.ROOT, "%.1f", row.processor() * 1000), 1 / row.wall(), 100 * floor / row.wall(),
                    row.pages(), row.bytes() / 1024));
        }
    }
}
