package contrapposto.returns;

import contrapposto.catalogue.Catalogue;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Test;
import contrapposto.check.Checks;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Gauge;
import contrapposto.returns.Review.Decision;
import contrapposto.returns.Review.SideReview;
import contrapposto.spec.Written;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Writes the next block's spec: the old one, edited where the block has shown something new. What was changed stands in
 * comments, in a head above and beside each line; everything else stays as its author wrote it.
 */
public final class NextSpec {
    private static final Pattern BLOCK = Pattern.compile("(?i)\\b(block|phase|part)(\\s+)(\\d{1,4})\\b");
    /** Begins every line of the head, so that the next head can take its place. */
    static final String HEAD = "#> ";

    private final Review review;
    private final Optional<Written.Fields> recheck;
    private final CheckedSpec spec;
    private final Remarks remarks;
    private final YamlNode.Mapping root;
    private final List<TestLine> tests;

    /** One line of the new tests. */
    private record TestLine(Test test, String remark) { }

    private NextSpec(Review review, Log log, Gauge gauge, YamlNode.Mapping root) {
        this.review = review;
        this.recheck = log.recheck();
        this.root = root;
        spec = review.plan().spec();
        remarks = new Remarks(review);
        tests = tests(gauge);
    }

    /**
     * The text of the next spec, which checks without an error.
     *
     * @param file  the old spec's name, and {@code bytes} its text
     * @return refused where what came back makes a spec that cannot be: its notices then speak of the text that was to be written
     */
    public static Outcome<String> write(Review review, Log log, Gauge gauge, String file, byte[] bytes, Catalogue catalogue) {
        return YamlReader.read(file, bytes).then(node -> node instanceof YamlNode.Mapping map ? Outcome.done(map)
                : new Outcome.Refused<YamlNode.Mapping>(List.of())).then(root -> {
                    var text = withoutHead(new String(bytes, StandardCharsets.UTF_8).replace("\uFEFF", ""));
                    var reread = root(file, text);
                    var made = new NextSpec(review, log, gauge, reread).edited(text);
                    var checked = made.map(written -> check(file, written, catalogue));
                    return checked.isPresent() && checked.get() instanceof Outcome.Done<String> ? checked.get() : afresh(review, log, gauge, file, reread, catalogue);
                });
    }

    private static Outcome<String> afresh(Review review, Log log, Gauge gauge, String file, YamlNode.Mapping root, Catalogue catalogue) {
        String text = SpecText.tidied(root);
        var again = root(file, text);
        return check(file, new NextSpec(review, log, gauge, again).edited(text).orElse(text), catalogue);
    }

    private static YamlNode.Mapping root(String file, String text) {
        return switch (YamlReader.read(file, text.getBytes(StandardCharsets.UTF_8))) {
            case Outcome.Done<YamlNode>(YamlNode.Mapping map, var none) -> map;
            case Outcome<YamlNode> other -> throw new IllegalStateException("A spec that was read no longer reads: " + other.notices());
        };
    }

    private static Outcome<String> check(String file, String text, Catalogue catalogue) {
        return switch (Checks.check(file, text.getBytes(StandardCharsets.UTF_8), catalogue)) {
            case Outcome.Done<CheckedSpec> done -> Outcome.done(text);
            case Outcome.Refused<CheckedSpec>(var notices) -> new Outcome.Refused<>(notices);
        };
    }

    private static String withoutHead(String text) {
        return text.lines().filter(line -> !line.startsWith(HEAD.strip())).map(line -> line + "\n").reduce("", String::concat);
    }

    /** Empty where the maps of the spec do not stand a key a line. */
    private Optional<String> edited(String source) {
        var text = new SpecText(source, root);
        if (!text.editable(List.of("assessment", "choose"))) {
            return Optional.empty();
        }
        title().ifPresent(title -> text.section("title", List.of("title: " + NodeText.text(title))));
        assessment(text);
        schedule(text);
        restrictions(text);
        choose(text);
        return Optional.of(text.text(remarks.head()));
    }

    /** The title with its block counted up; left alone where it counts none. */
    private Optional<String> title() {
        var found = BLOCK.matcher(spec.title());
        return found.find() ? Optional.of(new StringBuilder(spec.title()).replace(found.start(), found.end(), found.group(1) + found.group(2)
                + (Integer.parseInt(found.group(3)) + 1)).toString()) : Optional.empty();
    }

    private void assessment(SpecText text) {
        var assessed = spec.assessment().date();
        if (recheck.isPresent()) {
            var found = recheck.get();
            assessed = found.day("date").orElse(assessed);
            text.key("assessment", "date", List.of("date: " + assessed + "   # re-check; before: " + spec.assessment().date()));
            found.at("pelvis", Written.Fields.class).ifPresent(pelvis -> text.key("assessment", "pelvis", List.of("pelvis: {turned: "
                    + pelvis.text("turned").orElseThrow() + pelvis.text("degree").map(d -> ", degree: " + d).orElse("") + "}   # found at the re-check")));
            if (!found.many("measures").isEmpty()) {
                text.key("assessment", "measures", remarks.measures());
            }
        } else if (!text.has("assessment", "date")) {
            text.key("assessment", "date", List.of("date: " + assessed + "   # as it was taken before"));
        }
        if (!tests.isEmpty()) {
            var lines = new ArrayList<>(List.of("tests:", "  # What each side can do, as a set: read from the log. `error` says how far off it may be."));
            tests.forEach(line -> lines.add("  - " + remarks.test(line.test()) + "   # " + line.remark()));
            text.key("assessment", "tests", lines);
        }
    }

    /** Every test that is still known: what the log has shown, and what it has not, grown old. */
    private List<TestLine> tests(Gauge gauge) {
        var lines = new ArrayList<TestLine>();
        var replaced = new ArrayList<SideReview>();
        for (var side : review.sides()) {
            var asked = Asked.all(review.plan()).stream().filter(a -> a.exercise().id().equals(side.exercise()) && a.side().equals(side.side()))
                    .findFirst().orElseThrow();
            boolean own = spec.assessment().tests().stream().anyMatch(of(side));
            boolean shown = side.now().isPresent() && side.now().get().sets() > side.before().map(Review.Estimate::sets).orElse(0);
            if (side.next().isPresent() && (shown || own || side.why() == Review.Why.EASY_TWICE || side.decision() == Decision.BACK_OFF || side.decision() == Decision.SWAP)) {
                gauge.asTest(side.exercise(), side.side(), asked.plan(), side.next().get().capacity(), side.next().get().error(), lastDay())
                        .ifPresent(test -> {
                            lines.add(new TestLine(test, remarks.of(side)));
                            replaced.add(side);
                        });
            }
        }
        spec.assessment().tests().stream().filter(test -> replaced.stream().noneMatch(side -> of(side).test(test)))
                .forEach(test -> lines.add(new TestLine(test, "not in this block's log: as it was")));
        return List.copyOf(lines);
    }

    /** The day for which the estimates hold: the eve of the next block. */
    private LocalDate lastDay() {
        return review.starts().minusDays(1);
    }

    private static Predicate<Test> of(SideReview side) {
        return test -> test.exercise().equals(side.exercise()) && test.side().equals(side.side());
    }

    private void schedule(SpecText text) {
        var starts = "start: " + review.starts();
        var stage = "start-stage: " + review.stage().word();
        if (text.editable(List.of("schedule"))) {
            text.key("schedule", "start", List.of(starts + "   # " + remarks.starts()));
            text.key("schedule", "start-stage", List.of(stage + "   # " + remarks.stage()));
            return;
        }
        var entries = new ArrayList<>(List.of("schedule:", "  " + starts + "   # " + remarks.starts(), "  " + stage + "   # " + remarks.stage()));
        section("schedule").entries().stream().filter(e -> !List.of("start", "start-stage").contains(e.key().text()))
                .forEach(e -> NodeText.block(new YamlNode.Mapping(e.key().span(), List.of(e)), 1).lines().forEach(entries::add));
        text.section("schedule", entries);
    }

    private YamlNode.Mapping section(String name) {
        return (YamlNode.Mapping) root.entries().stream().filter(e -> e.key().text().equals(name)).findFirst().orElseThrow().value();
    }

    /** Those that end before the next block go, or the spec would not check. */
    private void restrictions(SpecText text) {
        var day = recheck.flatMap(found -> found.day("date")).orElse(spec.assessment().date());
        root.entries().stream().filter(e -> e.key().text().equals("restrictions")).findFirst().ifPresent(entry -> {
            var items = ((YamlNode.Sequence) entry.value()).items();
            var kept = items.stream().filter(item -> until(item).map(until -> !until.isBefore(day)).orElse(true)).toList();
            if (kept.size() < items.size()) {
                var lines = new ArrayList<String>();
                lines.add("# " + (items.size() - kept.size()) + " restriction(s) ended before the re-check and were taken out");
                if (!kept.isEmpty()) {
                    lines.add("restrictions:");
                    kept.forEach(item -> lines.add("  - " + NodeText.flow(item)));
                }
                text.section("restrictions", lines);
            }
        });
    }

    private static Optional<LocalDate> until(YamlNode item) {
        return item instanceof YamlNode.Mapping map ? map.entries().stream().filter(e -> e.key().text().equals("until"))
                .map(e -> LocalDate.parse(((YamlNode.Scalar) e.value()).text())).findFirst() : Optional.empty();
    }

    private void choose(SpecText text) {
        var swapped = review.sides().stream().filter(side -> side.decision() == Decision.SWAP).toList();
        if (swapped.isEmpty()) {
            return;
        }
        var out = new ArrayList<>(spec.choices().exclude());
        swapped.stream().map(SideReview::exercise).filter(id -> !out.contains(id)).distinct().forEach(out::add);
        var in = new ArrayList<>(spec.choices().include());
        in.removeAll(out);
        swapped.stream().flatMap(side -> side.instead().stream()).filter(id -> !out.contains(id) && !in.contains(id)).distinct().forEach(in::add);
        text.key("choose", "exclude", List.of("exclude: " + NodeText.list(out) + "   # " + remarks.swapped(swapped)));
        if (!in.isEmpty()) {
            text.key("choose", "include", List.of("include: " + NodeText.list(in)));
        } else if (text.has("choose", "include")) {
            text.key("choose", "include", List.of("# include: nothing is left of it"));
        }
    }
}
