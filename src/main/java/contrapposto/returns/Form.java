package contrapposto.returns;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.IOException;
import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;

/**
 * The boxes of a PDF and what stands in them. The file is a stranger's: its size, pages, boxes, time and the growth of its
 * compressed parts are bounded, and whatever is wrong with it is a notice.
 *
 * @param names  of all boxes
 * @param filled name → text, of those that hold any, as typed
 * @param plan   bytes of the solved plan that travels with the handout; empty without
 */
record Form(SortedSet<String> names, Map<String, String> filled, Optional<byte[]> plan) {
    static final int MOST_BYTES = 20_000_000;
    static final long MOST_GROWN = 200_000_000;
    private static final int MOST_PAGES = 500;
    private static final int MOST_BOXES = 40_000;
    private static final int LONGEST = 200;
    private static final Duration LIMIT = Duration.ofSeconds(20);
    private static final String KEEP = "send the file as it came, or write the log as CSV or YAML";

    Form {
        names = Collections.unmodifiableSortedSet(new TreeSet<>(names));
        filled = Collections.unmodifiableMap(new LinkedHashMap<>(filled));
    }

    static Outcome<Form> read(String file, byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return refused("return-too-big", file, "the file has " + bytes.length + " bytes, but the limit is " + MOST_BYTES, KEEP);
        }
        if (Swelling.exceeds(bytes, MOST_GROWN)) {
            return refused("pdf-swells", file, "its compressed parts grow beyond " + MOST_GROWN / 1_000_000
                    + " MB, as no handout does", KEEP);
        }
        var task = new FutureTask<>(() -> load(file, bytes));
        var thread = new Thread(task, "form");
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(LIMIT.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            task.cancel(true);
            return refused("pdf-slow", file, "reading it takes more than " + LIMIT.toSeconds() + " s", KEEP);
        } catch (ExecutionException e) {
            return unreadable(file);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return unreadable(file);
        }
    }

    private static Outcome<Form> load(String file, byte[] bytes) {
        try (PDDocument pdf = Loader.loadPDF(bytes, "", null, null, MemoryUsageSetting.setupMainMemoryOnly(MOST_GROWN).streamCache)) {
            if (pdf.getNumberOfPages() > MOST_PAGES) {
                return refused("pdf-pages", file, "it has " + pdf.getNumberOfPages() + " pages, but the limit is " + MOST_PAGES, KEEP);
            }
            var form = Optional.ofNullable(pdf.getDocumentCatalog().getAcroForm(null));
            return form.map(boxes -> boxes(file, boxes, Attachment.plan(pdf)))
                    .orElseGet(() -> refused("pdf-no-form", file, "it has no boxes that a program can read",
                            "a page filled by pen is typed off: write the log as CSV, `" + CsvLog.HEADER + "`"));
        } catch (InvalidPasswordException e) {
            return refused("pdf-locked", file, "it opens with a password only", "open it, and save it without one");
        } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError broken) {
            return unreadable(file);
        }
    }

    private static Outcome<Form> boxes(String file, PDAcroForm form, Optional<byte[]> plan) {
        var names = new TreeSet<String>();
        var filled = new LinkedHashMap<String, String>();
        for (PDField field : form.getFieldTree()) {
            if (names.size() >= MOST_BOXES) {
                return refused("pdf-boxes", file, "it has more than " + MOST_BOXES + " boxes", KEEP);
            }
            String name = Optional.ofNullable(field.getFullyQualifiedName()).orElse("");
            names.add(name);
            if (field instanceof PDTextField) {
                var text = text(field);
                if (!text.isEmpty()) {
                    filled.put(name, text);
                }
            }
        }
        return Outcome.done(new Form(names, filled, plan));
    }

    /** What was typed, without spaces around it; of what is no plain text only that something stands there. */
    private static String text(PDField field) {
        var value = field.getCOSObject().getDictionaryObject(COSName.V);
        if (value == null) {
            return "";      // PDFBox's word for "no value"
        }
        String text = value instanceof COSString string ? string.getString().strip() : "[no plain text]";
        return text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
    }

    private static Outcome<Form> unreadable(String file) {
        return refused("pdf-damaged", file, "it is no PDF, or a damaged one", KEEP);
    }

    private static Outcome<Form> refused(String id, String file, String message, String hint) {
        return new Outcome.Refused<>(java.util.List.of(Notice.error(id, Span.whole(file), message, hint)));
    }
}
