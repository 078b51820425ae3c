package contrapposto.returns;

import contrapposto.Fuzz;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Damaged logs and filled forms; how they are damaged: {@link Fuzz}. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FuzzTest {
    private static final List<String> SNIPPETS = List.of("week,day,exercise,side,kg,lb,set1,set2,spare,pain\n", "1,mon,split-squat,left,8,,8,8,3,0\n", ",", "\"", "\n", "\r\n", "left", "both",
            "w1", "tue", "-1", "1e999", "8,5", "½", "11", "\u0000", "\u202E", "\uFEFF", "log: ", "- {", "}", "*a", "&a ", "!!binary ");
    private static final List<String> PDF_SNIPPETS = List.of("obj", "endobj", "<<", ">>", "stream\n", "endstream", "/Kids [1 0 R]", "/Parent 1 0 R", "/V (", "/V <feff", "/T (a.b)", "1 0 R", "999999 0 R", "/Length 2000000000",
            "/Filter /FlateDecode", "/Filter [/FlateDecode /FlateDecode]", "xref\n", "trailer", "startxref\n0\n", "%%EOF", "(", ")", "[", "]", "\u0000", "/Encrypt 1 0 R", "/FT /Btn", "/Type /ObjStm");

    @Test
    void logs_as_csv() throws IOException {
        var seeds = new ArrayList<>(Fuzz.seeds(Returned.FOLDER, ".csv"));
        seeds.add("week,day,exercise,side,kg,set1,set2,spare\n1,mon,split-squat,left,8,8,8,3\n1,mon,split-squat,right,10,8,7,2\n".getBytes(StandardCharsets.UTF_8));
        Fuzz.tried("logs, CSV", seeds, SNIPPETS, bytes -> Returned.read("f.csv", bytes).notices());
    }

    @Test
    void logs_as_yaml() throws IOException {
        var seeds = new ArrayList<>(Fuzz.seeds(Returned.FOLDER, ".yaml"));
        seeds.add("""
                format: 1
                log:
                  - {week: 1, day: mon, exercise: split-squat, side: left, kg: 8, set1: 8, set2: 8, spare: 3}
                  - {week: 1, day: mon, exercise: split-squat, side: right, kg: 10, set1: 8, set2: 7, spare: 2, pain: 1}
                assessment:
                  date: 2026-05-18
                  measures:
                    - {what: hip internal rotation, left: 30 deg, right: 41 deg}
                """.getBytes(StandardCharsets.UTF_8));
        Fuzz.tried("logs, YAML", seeds, SNIPPETS, bytes -> Returned.read("f.yaml", bytes).notices());
    }

    /** Compressed as PDFBox writes it, where damage mostly breaks a stream; and plain, where it changes what the form says. */
    @Test
    void filled_forms() throws IOException {
        byte[] whole = DamagedForms.form(name -> true, (pdf, form) -> { });
        Fuzz.tried("filled forms, PDF", List.of(whole, plain(whole), plain(whole)), PDF_SNIPPETS, bytes -> Returned.read("f.pdf", bytes).notices());
    }

    private static byte[] plain(byte[] pdf) throws IOException {
        try (var read = Loader.loadPDF(pdf); var out = new ByteArrayOutputStream()) {
            read.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        }
    }
}
