package contrapposto.returns;

import contrapposto.compose.Plans;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Returns with something wrong, and the plan by hand that they are held against. */
public final class Returned {
    static final Path FOLDER = Path.of("src/test/resources/returned");
    static final Plan PLAN = Plans.turnedRight();

    private Returned() { }

    static List<Path> pairs() throws IOException {
        try (var files = Files.list(FOLDER)) {
            return files.filter(file -> !file.toString().endsWith(".notices") && !file.toString().endsWith(".txt")).sorted().toList();
        }
    }

    static Outcome<Log> read(Path file) throws IOException {
        return read(file.getFileName().toString(), Files.readAllBytes(file));
    }

    static Outcome<Log> read(String name, byte[] bytes) {
        return Returns.read(PLAN, List.of(new Returns.Returned(name, bytes)));
    }

    /** Every notice that the pairs and the damaged forms give, in their order. */
    public static List<Notice> notices() throws IOException {
        var notices = new ArrayList<Notice>();
        for (var file : pairs()) {
            notices.addAll(read(file).notices());
        }
        for (var form : DamagedForms.all().entrySet()) {
            notices.addAll(read(form.getKey() + ".pdf", form.getValue().bytes()).notices());
        }
        return notices;
    }
}
