package contrapposto.compose;

import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import contrapposto.prescribe.Plan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the safety panel of a handout must speak of. A template says with {@code about} which point speaks of what; it may
 * re-word every point, join some and add others, but none of the topics may be missing.
 */
final class SafetyPanel {
    /** What the panel must speak of, in the order in which it is missed. */
    enum Topic {
        /** Signs at which to stop and get help at once. */
        HELP_SIGNS,
        /** Whom to call for help, and whom when a pain comes back. */
        CALL,
        /** Signs at which to end the set. */
        SET_SIGNS,
        /** How much pain is all right: the scale, the ceiling, the next morning. */
        PAIN,
        BREATHING, WARM_UP,
        /** What to check before weight goes on it. */
        EQUIPMENT,
        /** Made for one person. */
        ONE_PERSON,
        /** The advice of a licensed person and local rules come first. */
        LOCAL_RULES,
        /** Only where questions of the screening were left open. */
        UNANSWERED,
        /** Only for the young, the older and those of unknown age. */
        STAND_BY,
        /** Only in pregnancy. */
        PREGNANCY
    }

    private final Slips slips;

    SafetyPanel(Slips slips) {
        this.slips = slips;
    }

    /** One notice that names every topic which the first part of {@code root} leaves out; none when all are there. */
    List<Notice> missing(Piece.Element root, Plan plan, String template) {
        var said = EnumSet.noneOf(Topic.class);
        root.elements("part").stream().limit(1).flatMap(SafetyPanel::panels).flatMap(SafetyPanel::points)
                .filter(SafetyPanel::speaks).forEach(point -> said.addAll(topics(point)));
        var missing = wanted(plan).stream().filter(topic -> !said.contains(topic)).map(Values::word).toList();
        return missing.isEmpty() ? List.of() : List.of(Notice.error("safety-panel-missing", Span.whole("templates/" + template),
                "the first page has no safety panel that speaks of " + String.join(", ", missing),
                "a practice may re-word the panel in `safety.ftlx`, but not leave these out: mark the point with `about=\"…\"`"));
    }

    private static Set<Topic> wanted(Plan plan) {
        var wanted = EnumSet.range(Topic.HELP_SIGNS, Topic.LOCAL_RULES);
        if (!plan.assessed().unanswered().isEmpty()) {
            wanted.add(Topic.UNANSWERED);
        }
        if (plan.assessed().cautious()) {
            wanted.add(Topic.STAND_BY);
        }
        if (OpeningModel.pregnant(plan.spec())) {
            wanted.add(Topic.PREGNANCY);
        }
        return wanted;
    }

    private static Stream<Piece.Element> panels(Piece.Element element) {
        return element.name().equals("panel") ? Stream.of(element) : element.elements().stream().flatMap(SafetyPanel::panels);
    }

    private static Stream<Piece.Element> points(Piece.Element panel) {
        return panel.elements("group").stream().flatMap(group -> Stream.concat(group.elements("item").stream(),
                group.elements("after").stream()));
    }

    /** Whether there are words in it. */
    private static boolean speaks(Piece.Element point) {
        return point.hasText() || point.elements().stream().anyMatch(SafetyPanel::speaks);
    }

    private List<Topic> topics(Piece.Element point) {
        var topics = new ArrayList<Topic>();
        for (var word : point.attribute("about").orElse("").split(" ")) {
            Arrays.stream(Topic.values()).filter(topic -> Values.word(topic).equals(word)).findFirst().ifPresentOrElse(topics::add, () -> {
                if (!word.isEmpty()) {
                    slips.add(point.span(), "`about=\"" + word + "\"` is not known", "write one or more of "
                            + String.join(", ", Arrays.stream(Topic.values()).map(Values::word).toList()));
                }
            });
        }
        return topics;
    }
}
