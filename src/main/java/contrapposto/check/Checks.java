package contrapposto.check;

import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Family;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Severity;
import contrapposto.spec.SpecReader;
import contrapposto.spec.Written;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * Stage 2, check: the bytes of a spec → {@link CheckedSpec}, or every problem of the file at once, in file order. Values
 * are read by the table of {@link ProgramKeys}, then held against each other by {@link Rules}; nothing is repaired.
 */
public final class Checks {
    private Checks() { }

    /**
     * @param file      as the user named it
     * @param catalogue whose family ids the spec may name
     */
    public static Outcome<CheckedSpec> check(String file, byte[] bytes, Catalogue catalogue) {
        return check(file, bytes, ids(catalogue));
    }

    static Outcome<CheckedSpec> check(String file, byte[] bytes, List<String> exercises) {
        var reading = YamlReader.readOn(file, bytes);
        return reading.root().map(root -> check(root, reading.notices(), plainName(file), sha256(bytes), exercises))
                .orElseGet(() -> new Outcome.Refused<>(reading.notices()));
    }

    /** @param before what reading the file found already */
    static Outcome<CheckedSpec> check(YamlNode root, List<Notice> before, String name, String sha256,
                                      List<String> exercises) {
        var reading = SpecReader.read(root, ProgramKeys.TABLE, exercises);
        var notices = new ArrayList<>(before);
        notices.addAll(reading.notices());
        Rules.inOrder().forEach(rule -> rule.hold(reading.fields(), notices::add));
        notices.sort(Notice.IN_FILE_ORDER);
        return notices.stream().anyMatch(n -> n.severity() == Severity.ERROR) ? new Outcome.Refused<>(notices)
                : new Outcome.Done<>(assemble(reading.fields(), name, sha256), notices);
    }

    private static CheckedSpec assemble(Written.Fields spec, String name, String sha256) {
        return new CheckedSpec(name, sha256, spec.text("title").orElse(ProgramKeys.DEFAULT_TITLE), ClientSection.client(spec),
                ClientSection.practice(spec), AssessmentSection.assessment(spec), SafetySection.screening(spec),
                SafetySection.clearance(spec), SafetySection.restrictions(spec), EquipmentSection.equipment(spec),
                ScheduleSection.schedule(spec), ChoiceSection.aims(spec), ChoiceSection.choices(spec),
                ChoiceSection.handout(spec));
    }

    static List<String> ids(Catalogue catalogue) {
        return catalogue.families().stream().map(Family::id).toList();
    }

    /** {@code file} without folder and ending. */
    static String plainName(String file) {
        var last = Path.of(file).getFileName().toString();
        int dot = last.lastIndexOf('.');
        return dot > 0 ? last.substring(0, dot) : last;
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256.", e);
        }
    }
}
