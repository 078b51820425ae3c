package contrapposto.returns;

import contrapposto.catalogue.Family;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Severity;
import contrapposto.notice.Span;
import contrapposto.prescribe.Plan;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Reads what came back for a plan: {@code .csv} and {@code .yaml} logs and filled {@code .pdf} handouts, several together.
 * Refused with every problem of all of them, so that no half a log is taken for a whole one.
 */
public final class Returns {
    private static final int MOST_TEXT = 5_000_000;

    private Returns() { }

    /** One file that came back. @param name as the user named it */
    public record Returned(String name, byte[] bytes) { }

    /** What was done, held against the plan that asked for it. */
    public static Outcome<Log> read(Plan plan, List<Returned> files) {
        var notices = new ArrayList<Notice>();
        var log = Log.EMPTY;
        for (var file : files) {
            var read = one(plan, file);
            read.notices().stream().map(FormLog::named).forEach(notices::add);
            if (read instanceof Outcome.Done<Log>(var one, var said)) {
                log = log.and(one);
            }
        }
        boolean whole = notices.stream().noneMatch(n -> n.severity() == Severity.ERROR);
        if (whole) {
            notices.addAll(new PlanMatch(plan).problems(log, files.isEmpty() ? "" : files.getFirst().name()));
        }
        return Outcome.of(log, notices);
    }

    private static Outcome<Log> one(Plan plan, Returned file) {
        var ids = plan.catalogue().families().stream().map(Family::id).toList();
        return nodes(plan, file).then(node -> LogReader.read(node, ids));
    }

    private static Outcome<YamlNode> nodes(Plan plan, Returned file) {
        String name = file.name().toLowerCase(Locale.ROOT);
        if (name.endsWith(".pdf")) {
            return Form.read(file.name(), file.bytes()).then(form -> new FormMatch(plan).held(file.name(), form))
                    .then(form -> FormLog.read(file.name(), form, plan.spec().client().units()));
        }
        if (file.bytes().length > MOST_TEXT) {
            return refused("return-too-big", file, "the file has " + file.bytes().length + " bytes, but the limit is " + MOST_TEXT,
                    "give the log of one client");
        }
        return name.endsWith(".csv") ? CsvLog.read(file.name(), file.bytes())
                : name.endsWith(".yaml") || name.endsWith(".yml") ? YamlReader.read(file.name(), file.bytes())
                : refused("return-kind", file, "`" + file.name() + "` is no kind of return",
                "give a filled handout (.pdf) or a log (.csv, .yaml)");
    }

    private static <T> Outcome<T> refused(String id, Returned file, String message, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error(id, Span.whole(file.name()), message, hint)));
    }
}
