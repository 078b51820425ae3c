package contrapposto.returns;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;

/** Forms as they should not come back, each with the id of the notice it must cause. All are made here. */
final class DamagedForms {
    static final String BOX = "w1/mon/split-squat/left/";

    private static final Map<String, Made> MADE = new LinkedHashMap<>();

    private DamagedForms() { }

    record Made(byte[] bytes, String notice) { }

    /** Something that is done to a form before it is saved. */
    @FunctionalInterface
    interface Change {
        void to(PDDocument pdf, PDAcroForm form) throws IOException;
    }

    /** A whole and filled form of the plan by hand, then changed. */
    static byte[] form(Predicate<String> kept, Change change) throws IOException {
        try (var pdf = new PDDocument(); var out = new ByteArrayOutputStream()) {
            pdf.addPage(new PDPage());
            var form = new PDAcroForm(pdf);
            pdf.getDocumentCatalog().setAcroForm(form);
            for (var name : names()) {
                if (kept.test(name)) {
                    var field = new PDTextField(form);
                    field.setPartialName(name);
                    form.getFields().add(field);
                }
            }
            fill(form, BOX + "kg", "8");
            fill(form, BOX + "set1", "8");
            fill(form, BOX + "spare", "3");
            change.to(pdf, form);
            pdf.save(out);
            return out.toByteArray();
        }
    }

    private static TreeSet<String> names() {
        var names = new TreeSet<String>();
        for (var asked : Asked.all(Returned.PLAN)) {
            for (var day : Returned.PLAN.days()) {
                if (day.numbers().contains(asked.exercise().number())) {
                    for (var dose : asked.plan().doses()) {
                        String at = new Log.Slot(dose.week(), day.day()).word() + "/" + asked.word() + "/";
                        names.add(at + "kg");
                        names.add(at + "spare");
                        names.add(at + "pain");
                        for (int set = 1; set <= dose.sets(); set++) {
                            names.add(at + "set" + set);
                        }
                    }
                }
            }
        }
        return names;
    }

    /** Sets the value and nothing else: what a box looks like is not read. */
    static void fill(PDAcroForm form, String name, String text) {
        for (var field : form.getFields()) {
            if (field.getPartialName().equals(name)) {
                field.getCOSObject().setString(COSName.V, text);
            }
        }
    }

    private static Change filling(String box, String text) {
        return (pdf, form) -> fill(form, BOX + box, text);
    }

    /** All of them, made once. */
    static synchronized Map<String, Made> all() throws IOException {
        if (MADE.isEmpty()) {
            MADE.putAll(fresh());
        }
        return MADE;
    }

    private static Map<String, Made> fresh() throws IOException {
        var made = new LinkedHashMap<String, Made>();
        byte[] whole = form(name -> true, (pdf, form) -> { });
        made.put("empty", new Made(new byte[0], "pdf-damaged"));
        made.put("words", text("This is a letter, not a form."));
        made.put("head-only", text("%PDF-1.7\n"));
        made.put("zeros", new Made(new byte[5000], "pdf-damaged"));
        made.put("noise", new Made(noise(), "pdf-damaged"));
        made.put("page-of-the-web", text("<!doctype html><title>log</title><form></form>"));
        made.put("archive", text("PK\u0003\u0004 not a form either"));
        made.put("first-tenth", new Made(Arrays.copyOf(whole, whole.length / 10), "pdf-damaged"));
        made.put("without-its-head-half", new Made(Arrays.copyOfRange(whole, whole.length / 2, whole.length), "pdf-damaged"));
        made.put("locked", new Made(locked(), "pdf-locked"));
        made.put("no-form", new Made(form(name -> true, (pdf, form) -> pdf.getDocumentCatalog().setAcroForm(null)), "pdf-no-form"));
        made.put("form-that-is-a-number", new Made(form(name -> true, (pdf, form) -> pdf.getDocumentCatalog().getCOSObject()
                .setInt(COSName.ACRO_FORM, 7)), "pdf-no-form"));
        made.put("no-boxes", new Made(form(name -> false, (pdf, form) -> { }), "form-foreign"));
        made.put("someone-elses-boxes", new Made(form(name -> false, (pdf, form) -> add(form, "invoice/total")), "form-foreign"));
        made.put("another-plan", new Made(form(name -> name.contains("curl"), (pdf, form) -> { }), "form-other-plan"));
        made.put("a-box-cut-out", new Made(form(name -> !name.equals(BOX + "pain"), (pdf, form) -> { }), "form-boxes-missing"));
        made.put("nothing-filled", new Made(form(name -> true, (pdf, form) -> form.getFields().forEach(f -> f.getCOSObject()
                .removeItem(COSName.V))), "log-empty"));
        made.put("weight-in-words", new Made(form(name -> true, filling("kg", "the red one")), "not-a-number"));
        made.put("weight-with-unit", new Made(form(name -> true, filling("kg", "8 kg")), "not-a-number"));
        made.put("decimal-comma", new Made(form(name -> true, filling("kg", "7,5")), "not-a-number"));
        made.put("pain-of-11", new Made(form(name -> true, filling("pain", "11")), "out-of-range"));
        made.put("half-a-repeat", new Made(form(name -> true, filling("set1", "7.5")), "not-a-number"));
        made.put("hidden-character", new Made(form(name -> true, filling("set1", "8\u202e")), "hidden-character"));
        made.put("a-novel-in-a-box", new Made(form(name -> true, filling("spare", "x".repeat(100_000))), "not-a-number"));
        made.put("value-that-is-a-stream", new Made(form(name -> true, (pdf, form) -> value(form, BOX + "spare", stream(pdf, new byte[10]))),
                "not-a-number"));
        made.put("value-that-is-a-list", new Made(form(name -> true, (pdf, form) -> value(form, BOX + "spare", new COSArray())), "not-a-number"));
        made.put("week-99", new Made(form(name -> true, (pdf, form) -> value(add(form, "w99/mon/split-squat/left/spare"), "1")), "out-of-range"));
        made.put("unknown-exercise", new Made(form(name -> true, (pdf, form) -> value(add(form, "w1/mon/moon-walk/left/spare"), "1")),
                "unknown-exercise"));
        made.put("exercise-of-another-plan", new Made(form(name -> true, (pdf, form) -> value(add(form, "w1/mon/step-up/left/spare"), "1")),
                "log-not-in-plan"));
        made.put("boxes-in-a-circle", new Made(form(name -> false, (pdf, form) -> circle(form)), "form-foreign"));
        made.put("many-pages", new Made(form(name -> true, (pdf, form) -> {
            for (int page = 0; page < 600; page++) {
                pdf.addPage(new PDPage());
            }
        }), "pdf-pages"));
        made.put("swelling", new Made(form(name -> true, (pdf, form) -> pdf.getPage(0).getCOSObject().setItem(COSName.CONTENTS, bomb(pdf))),
                "pdf-swells"));
        made.put("too-big", new Made(new byte[Form.MOST_BYTES + 1], "return-too-big"));
        made.put("plan-of-another-spec", new Made(form(name -> true, (pdf, form) -> attach(pdf, "format: 1\nspec-sha256: " + "ab".repeat(32)
                + "\n")), "form-other-spec"));
        return made;
    }

    private static Made text(String words) {
        return new Made(words.getBytes(StandardCharsets.UTF_8), "pdf-damaged");
    }

    private static byte[] noise() {
        var bytes = new byte[20_000];
        new Random(5).nextBytes(bytes);
        return bytes;
    }

    private static byte[] locked() throws IOException {
        return form(name -> true, (pdf, form) -> {
            var policy = new StandardProtectionPolicy("owner", "user", new AccessPermission());
            policy.setEncryptionKeyLength(256);
            pdf.protect(policy);
        });
    }

    private static PDTextField add(PDAcroForm form, String name) {
        var field = new PDTextField(form);
        field.setPartialName(name);
        form.getFields().add(field);
        return field;
    }

    private static void value(PDTextField field, String text) {
        field.getCOSObject().setString(COSName.V, text);
    }

    private static void value(PDAcroForm form, String name, COSBase value) {
        form.getFields().stream().filter(f -> f.getPartialName().equals(name)).forEach(f -> f.getCOSObject().setItem(COSName.V, value));
    }

    private static COSStream stream(PDDocument pdf, byte[] bytes) throws IOException {
        var stream = pdf.getDocument().createCOSStream();
        try (var out = stream.createOutputStream()) {
            out.write(bytes);
        }
        return stream;
    }

    private static void circle(PDAcroForm form) {
        var one = add(form, "one");
        var kids = new COSArray();
        kids.add(one.getCOSObject());
        one.getCOSObject().setItem(COSName.KIDS, kids);
    }

    private static COSStream bomb(PDDocument pdf) throws IOException {
        var small = new ByteArrayOutputStream();
        try (var deflater = new DeflaterOutputStream(small, new Deflater(Deflater.BEST_COMPRESSION))) {
            for (int i = 0; i < 210; i++) {
                deflater.write(new byte[1_000_000]);
            }
        }
        var stream = pdf.getDocument().createCOSStream();
        try (var out = stream.createRawOutputStream()) {
            out.write(small.toByteArray());
        }
        stream.setItem(COSName.FILTER, COSName.FLATE_DECODE);
        return stream;
    }

    private static void attach(PDDocument pdf, String plan) throws IOException {
        var file = new PDComplexFileSpecification();
        file.setFile("block-plan.yaml");
        file.setEmbeddedFile(new PDEmbeddedFile(pdf, new java.io.ByteArrayInputStream(plan.getBytes(StandardCharsets.UTF_8)), COSName.FLATE_DECODE));
        var tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(Map.of("block-plan.yaml", file));
        var names = new PDDocumentNameDictionary(pdf.getDocumentCatalog());
        names.setEmbeddedFiles(tree);
        pdf.getDocumentCatalog().setNames(names);
    }
}
