package contrapposto.check;

import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.notice.Notice;
import contrapposto.notice.NoticeText;
import contrapposto.notice.Outcome;
import contrapposto.returns.Returned;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Every notice id with an example out of the pairs, as the terminal shows it. */
final class NoticeTour {
    private static final Path CATALOGUE_PAIRS = Path.of("src/test/resources/rejected-catalogue");
    private static final int LONGEST = 1200;

    private NoticeTour() { }

    /** The first notice of each id, in the order of the files. */
    static SortedMap<String, Notice> examples() throws IOException {
        var first = new TreeMap<String, Notice>();
        for (var notice : all()) {
            if (NoticeText.of(notice).length() <= LONGEST) {
                first.putIfAbsent(notice.id(), notice);
            }
        }
        return first;
    }

    private static List<Notice> all() throws IOException {
        var notices = new ArrayList<Notice>();
        for (var file : PairsTest.rejected()) {
            notices.addAll(PairsTest.check(file).notices());
        }
        for (var file : PairsTest.warned()) {
            notices.addAll(PairsTest.check(file).notices());
        }
        for (var file : PairsTest.rosters()) {
            notices.addAll(PairsTest.roster(file));
        }
        for (var file : PairsTest.files(CATALOGUE_PAIRS, ".yaml")) {
            notices.addAll(catalogue(file));
        }
        notices.addAll(Returned.notices());
        return notices;
    }

    private static List<Notice> catalogue(Path file) throws IOException {
        var text = Files.readString(file);
        var as = text.lines().findFirst().orElseThrow().replace("# file: ", "");
        var bytes = text.getBytes(StandardCharsets.UTF_8);
        Outcome<?> outcome = as.equals("house-rules.yaml") ? HouseRulesReader.read(as, bytes)
                : CatalogueReader.read("mine", Map.of(as, bytes), HouseRulesReader.house());
        return outcome.notices();
    }

    static String page() throws IOException {
        var page = new StringBuilder("""
                # What the tool says, and the way out

                Made from the pairs in `src/test/resources`: each id once, with the example a test holds it to. Errors refuse the file, all of them at
                once; warnings do not. Ids of files, folders and templates that need a whole run to show stand at the end.
                """);
        for (var example : examples().entrySet()) {
            page.append("\n## ").append(example.getKey()).append("\n```\n").append(NoticeText.of(example.getValue())).append("```\n");
        }
        page.append("\n## Of a run rather than of a line\n| id | when | the way out |\n|---|---|---|\n");
        RUN.forEach((id, said) -> page.append("| `").append(id).append("` | ").append(said.get(0)).append(" | ").append(said.get(1)).append(" |\n"));
        return page.toString();
    }

    /** Ids whose example is a file system, a template or a fault: when they are said, and what to do; each has a test where it arises. */
    static final SortedMap<String, List<String>> RUN = new TreeMap<>();

    static {
        run("cannot-read", "a file or folder named on the command line is not there or cannot be opened", "check the path; it starts from the folder you are in");
        run("cannot-write", "a handout, plan or manifest cannot be put in place", "check the folder's rights and the space on its disk; nothing half-written is left");
        run("catalogue-no-folder", "`--catalogue` names no folder", "name the folder that holds the families");
        run("font-not-embeddable", "the maker of a font given with `--font` does not allow it in a document", "take a font whose licence allows embedding");
        run("font-unreadable", "a file given with `--font` is no TrueType font", "give a single `.ttf` file");
        run("no-glyph", "no font at hand has a character of the handout, or its script is not set here", "add a font with `--font FILE`, or write it in Latin, Greek or Cyrillic letters");
        run("hard-words", "a part of the client edition, mostly by a practice's own template, asks for more than eight years of school; the safety panel for more than six", "shorten its sentences and words; `contrapposto check --wording` names the long ones");
        run("mail-address", "a client or the practice has an address that mail cannot be sent to", "write `name@example.org` or `Name <name@example.org>` in the mail file");
        run("mail-file", "the mail file has a key, value or file right that will not do", "the message names the line; docs/mail.md shows a whole file");
        run("mail-server", "the mail server cannot be reached, trusted or logged in to", "check host, port, password and certificate; nothing was sent twice");
        run("no-card", "`exercises ID --pdf` finds no set-up of this exercise for the person", "the message says what is in the way; name another spec with `--for`");
        run("next-withheld", "`next` is given a spec whose program screening withholds", "give the clearance in the spec first");
        run("nothing-to-do", "restrictions, limits, equipment and minutes together leave not one exercise", "change one of the constraints the message names; `contrapposto explain` says for each exercise what keeps it out");
        run("pdf-boxes", "a returned PDF has more than 40,000 boxes", "send the handout as it came, or write the log as CSV or YAML");
        run("pdf-slow", "reading a returned PDF takes more than 20 seconds", "send the handout as it came, or write the log as CSV or YAML");
        run("plan-falls-short", "an exercise asked for is not in the plan, a day of some weeks has none or too few, or the plan starts at a later stage than asked; the message names each constraint whose change alone would mend it, or those that must change together", "change one of the constraints named, or take the exercise out of `choose.include`");
        run("program-fault", "the tool itself failed; the other clients are still done", "tell us, with the spec; your file is not at fault");
        run("safety-panel-missing", "a practice's template leaves the safety box out", "put `<safety>` back; its words may be your own");
        run("same-files", "two specs of one run would write the same files", "give one of them another code or file name");
        run("send-log", "the log of what was sent cannot be read or written", "make room or mend its rights; nothing goes out that could not be logged");
        run("template-slip", "a template cannot be filled or writes an element the paper does not know", "see templates/README.md for the elements");
        run("too-tall", "a block of a template cannot fit on a page", "shorten its words or split it");
        run("yaml-too-big", "a spec is larger than 250 kB", "a spec is a page or two; take out what is not about this client");
    }

    private static void run(String id, String when, String wayOut) {
        RUN.put(id, List.of(when, wayOut));
    }
}
