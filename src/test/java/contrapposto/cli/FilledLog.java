package contrapposto.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;

/**
 * A client with a pen: fills the log of a handout as its plan asks, but a repeat more in every last set, and no pain.
 * PDFBox types into the boxes; what is asked comes from the plan file, read by a parser of another project.
 */
final class FilledLog {
    private static final Pattern BOX = Pattern.compile("w(\\d+)/([a-z]{3})/(?:([a-z0-9-]+)/(left|right|both)/)?([a-z-]+)(\\d?)");

    private final Map<String, Object> plan;

    private FilledLog(Map<String, Object> plan) {
        this.plan = plan;
    }

    /** Fills {@code handout} and saves it as {@code to}. @return how many boxes were filled */
    static int of(Path handout, Path plan, Path to) throws IOException {
        var pen = new FilledLog(Demos.plan(plan));
        int filled = 0;
        try (PDDocument pdf = Loader.loadPDF(handout.toFile())) {
            var form = pdf.getDocumentCatalog().getAcroForm();
            for (var field : form.getFieldTree()) {
                var box = BOX.matcher(field.getFullyQualifiedName());
                if (field instanceof PDTextField text && box.matches()) {
                    var typed = pen.typed(Integer.parseInt(box.group(1)), box.group(2), Optional.ofNullable(box.group(3)), box.group(4), box.group(5), box.group(6));
                    if (typed.isPresent()) {
                        text.setValue(typed.get());
                        filled++;
                    }
                }
            }
            pdf.save(to.toFile());
        }
        return filled;
    }

    private Optional<String> typed(int week, String day, Optional<String> exercise, String side, String what, String set) {
        if (exercise.isEmpty()) {
            return what.equals("minutes") ? Optional.of("40") : what.equals("morning-pain") ? Optional.of("0") : Optional.empty();
        }
        return asked(day, exercise.get(), side, week).flatMap(asked -> switch (what) {
            case "kg" -> Optional.ofNullable(asked.get("load-kg")).map(Object::toString);
            case "set" -> Optional.ofNullable(asked.get("reps")).map(reps -> set.equals(asked.get("sets").toString()) ? (Integer) reps + 1 : reps).map(Object::toString);
            case "spare" -> Optional.ofNullable(asked.get("in-reserve")).map(Object::toString);
            case "pain" -> Optional.of("0");
            default -> Optional.empty();
        });
    }

    @SuppressWarnings("unchecked")
    private Optional<Map<String, Object>> asked(String day, String exercise, String side, int week) {
        for (var planned : (List<Map<String, Object>>) plan.get("days")) {
            if (planned.get("day").toString().toLowerCase(Locale.ROOT).equals(day)) {
                for (var one : (List<Map<String, Object>>) planned.get("exercises")) {
                    if (one.get("id").equals(exercise)) {
                        var sides = (Map<String, Map<String, Object>>) one.get("sides");
                        var weeks = (List<Map<String, Object>>) Optional.ofNullable(sides.get(side)).map(s -> s.get("weeks")).orElse(List.of());
                        return weeks.stream().filter(w -> w.get("week").equals(week)).findFirst();
                    }
                }
            }
        }
        return Optional.empty();
    }
}
