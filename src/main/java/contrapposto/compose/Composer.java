package contrapposto.compose;

import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.document.Document;
import contrapposto.figure.Drawing;
import contrapposto.figure.Tone;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import contrapposto.returns.Review;
import contrapposto.wording.Phrasebook;
import contrapposto.wording.Units;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Composes a handout: finished words go into templates, what the templates write is read back as blocks. */
public final class Composer {
    private final Templates templates;

    public Composer(Templates templates) {
        this.templates = templates;
    }

    /** Which handout is wanted, in which language if not the client's. A withheld plan gives the referral page, whatever the edition. */
    public record Order(Edition edition, Paper paper, Print print, boolean log, Optional<String> language) {
        /** In the client's language. */
        public Order(Edition edition, Paper paper, Print print, boolean log) {
            this(edition, paper, print, log, Optional.empty());
        }
    }

    /** What is drawn for a plan, the same for all of its editions. */
    public static final class Illustrated {
        private final Labels labels;
        private final Map<String, Drawing> drawings;

        private Illustrated(Labels labels, Map<String, Drawing> drawings) {
            this.labels = labels;
            this.drawings = drawings;
        }
    }

    /** Draws a plan once for several orders in one language. */
    public Outcome<Illustrated> illustrate(Plan plan, Optional<String> language) {
        var words = PlanWords.of(plan, language.orElse(plan.spec().client().language()));
        return Labels.read(templates, words.language() + "/labels.ftlx").then(labels -> withLogo(Drawings.of(words, labels))
                .map(drawings -> new Illustrated(labels, drawings)));
    }

    /** The drawings, and among them the practice's logo if it has one. */
    private Outcome<Map<String, Drawing>> withLogo(Map<String, Drawing> drawings) {
        return templates.logo().map(found -> found.drawing().map(logo -> {
            Map<String, Drawing> more = new LinkedHashMap<>(drawings);
            more.put(Logo.KEY, logo);
            return more;
        })).orElseGet(() -> Outcome.done(drawings));
    }

    /** The handout with drawings of its own. */
    public Outcome<Document> compose(Plan plan, Order order) {
        return illustrate(plan, order.language()).then(drawn -> compose(plan, order, drawn));
    }

    /** The cards of a plan and its safety panel alone: what a coach looks up or hands over for one exercise. */
    public Outcome<Document> cards(Plan plan, Order order) {
        return illustrate(plan, order.language()).then(drawn -> compose(plan, order, drawn, "card"));
    }

    /** The handout; refused with the template's line when a template has a slip, or leaves the safety panel out. */
    public Outcome<Document> compose(Plan plan, Order order, Illustrated drawn) {
        return compose(plan, order, drawn, plan.withheld() ? "referral" : Values.word(order.edition()));
    }

    private Outcome<Document> compose(Plan plan, Order order, Illustrated drawn, String name) {
        var words = PlanWords.of(plan, order.language().orElse(plan.spec().client().language()));
        String template = words.language() + "/" + name + ".ftlx";
        return templates.run(template, model(words, order, drawn.drawings.keySet()))
                .then(xml -> MarkupParser.parse(xml, template)
                        .then(root -> read(root, drawn.drawings, template, plan))
                        .map(written -> document(words.spec(), words.language(), order, drawn.labels, xml + templates.logo().map(Logo::identity).orElse(""), written)));
    }

    /** The coach's page on a block that is over. */
    public Outcome<Document> changes(Review review) {
        var words = PlanWords.of(review.plan());
        var order = new Order(Edition.COACH, words.spec().handout().paper(), Print.PLAIN, false);
        return page("changes", Map.of("changes", Values.of(ChangesModel.of(words, review))), words.spec(), words.language(), order);
    }

    /** The index page of a pack, in the language asked for, else in that of its first sound spec. @throws java.util.NoSuchElementException if no spec is sound */
    public Outcome<Document> index(PackIndex index) {
        var lead = index.lead().orElseThrow();
        String wanted = index.language().orElse(lead.client().language());
        String language = Phrasebook.LANGUAGES.contains(wanted) ? wanted : Phrasebook.LANGUAGES.getFirst();
        var order = new Order(Edition.COACH, index.paper().orElse(lead.handout().paper()), Print.PLAIN, false);
        var model = Map.of("index", Values.of(IndexModel.of(index, lead, new Units(lead.client().units(), Locale.forLanguageTag(language)))));
        return page("index", model, lead, language, order);
    }

    /** A page by itself, without drawings. */
    private Outcome<Document> page(String name, Map<String, Object> model, CheckedSpec spec, String language, Order order) {
        String template = language + "/" + name + ".ftlx";
        return Labels.read(templates, language + "/labels.ftlx").then(labels -> templates.run(template, model)
                .then(xml -> MarkupParser.parse(xml, template).then(root -> {
                    var slips = new Slips();
                    var written = new DocumentReader(Map.of(), slips).read(root);
                    return Outcome.of(written, slips.found());
                }).map(written -> document(spec, language, order, labels, xml, written))));
    }

    /** Everything templates may use. */
    private static Map<String, Object> model(PlanWords words, Order order, Set<String> drawings) {
        var model = new LinkedHashMap<String, Object>();
        model.put("plan", Values.of(OpeningModel.of(words)));
        model.put("withLog", order.log());
        model.put("withLogo", drawings.contains(Logo.KEY));
        if (words.plan().withheld()) {
            model.put("referral", Values.of(ReferralModel.of(words)));
            return model;
        }
        var cards = CardModel.all(words, drawings);
        model.put("cards", Values.of(cards));
        model.put("pocket", Values.of(PocketModel.of(words, drawings, cards)));
        model.put("weeks", Values.of(WeeksModel.of(words)));
        model.put("log", Values.of(LogModel.of(words)));
        model.put("coach", Values.of(CoachModel.of(words)));
        return model;
    }

    private static Outcome<DocumentReader.Written> read(Piece.Element root, Map<String, Drawing> drawings, String template, Plan plan) {
        var slips = new Slips();
        var written = new DocumentReader(drawings, slips).read(root);
        var missing = plan.withheld() ? List.<Notice>of() : new SafetyPanel(slips).missing(root, plan, template);
        var notices = new java.util.ArrayList<Notice>(slips.found());
        notices.addAll(missing);
        return Outcome.of(written, notices);
    }

    private static Document document(CheckedSpec spec, String language, Order order, Labels labels, String xml, DocumentReader.Written written) {
        var practice = spec.practice();
        var wording = new Document.Wording(labels.of("of"), labels.of("continued"), labels.of("left"), labels.of("right"), labels.of("both"),
                labels.of("heavier"), labels.of("not-asked"), labels.of("letter/left"), labels.of("letter/right"));
        return new Document(written.title(), practice.preparedBy().isEmpty() ? practice.name() : practice.preparedBy(), written.subject(),
                language,
                order.paper() == Paper.A4 ? Document.Paper.A4 : Document.Paper.LETTER,
                order.print() == Print.PLAIN ? Document.Print.PLAIN : Document.Print.LARGE, written.footer(), wording,
                spec.assessment().date(), identity(spec.sha256(), order, xml), written.parts(), Optional.empty(),
                practice.colour().map(c -> Tone.of(c.red(), c.green(), c.blue())).orElse(Tone.BLACK));
    }

    /** The same for the same spec, order and templates. */
    private static String identity(String spec, Order order, String xml) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            for (String part : List.of(spec, order.toString(), xml)) {
                digest.update(part.getBytes(StandardCharsets.UTF_8));
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
