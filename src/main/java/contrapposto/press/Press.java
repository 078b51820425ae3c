package contrapposto.press;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessor;
import contrapposto.audit.Wording;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.Checks;
import contrapposto.compose.Composer;
import contrapposto.compose.PackIndex;
import contrapposto.compose.Templates;
import contrapposto.deliver.PlanFile;
import contrapposto.document.Document;
import contrapposto.html.HtmlPage;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import contrapposto.prescribe.Prescriber;
import contrapposto.select.Selector;
import contrapposto.setup.SetUpChooser;
import contrapposto.returns.Review;
import contrapposto.typeset.Pages;
import contrapposto.typeset.Typesetter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The straight line: a checked spec goes in, finished files come out. Assess, set up, select and prescribe make the
 * plan; illustrate and compose make each edition's document; typeset makes its pages. This is the program as a library:
 * one press serves many threads, holds no state of a client and reads nothing but what it is given.
 */
public final class Press {
    private final Catalogue catalogue;
    private final Composer composer;
    private final Wanted wanted;
    private final boolean parallel;
    private final Assessor assessor = new Assessor();
    private final SetUpChooser setUps;
    private final Selector selector = new Selector();
    private final Prescriber prescriber = new Prescriber();
    private final Typesetter typesetter;

    /** @param wanted what to print where the spec does not say */
    public Press(Catalogue catalogue, Composer composer, Wanted wanted) {
        this(catalogue, composer, wanted, new Typesetter());
    }

    /** With a typesetter of your own. */
    public Press(Catalogue catalogue, Composer composer, Wanted wanted, Typesetter typesetter) {
        this(catalogue, composer, wanted, typesetter, false);
    }

    private Press(Catalogue catalogue, Composer composer, Wanted wanted, Typesetter typesetter, boolean parallel) {
        this.typesetter = typesetter;
        this.catalogue = catalogue;
        this.composer = composer;
        this.wanted = wanted;
        this.parallel = parallel;
        this.setUps = parallel ? new SetUpChooser().inParallel() : new SetUpChooser();
    }

    /**
     * The same press for a client who is alone: it works on several exercises and several editions at once, to the same bytes.
     * Where many clients are at hand they keep the processors busy better, one each.
     */
    public Press inParallel() {
        return new Press(catalogue, composer, wanted, typesetter, true);
    }

    /** A press with the catalogue, rules and templates of the house, which prints what each spec asks for. */
    public static Press house() {
        return new Press(CatalogueReader.house(HouseRulesReader.house()), new Composer(Templates.own()), Wanted.AS_THE_SPEC_SAYS);
    }

    /**
     * Everything for one client from the bytes of a spec; refused with every problem of the spec, each with its place.
     *
     * @param name of the spec, as notices and file names show it
     */
    public Outcome<Pressed> press(String name, byte[] spec) {
        return Checks.check(name, spec, catalogue).then(this::press);
    }

    /** One finished file. @param ending of its name; {@code pages} 0 for what has none */
    public record Finished(String ending, byte[] bytes, int pages) { }

    /** The plan and the files that go to the client's folder, the plan file last. */
    public record Pressed(Plan plan, List<Finished> files) { }

    /** Everything for one client; refused with the notices of the stage that could not go on. */
    public Outcome<Pressed> press(CheckedSpec spec) {
        return Outcome.done(spec).map(this::solve).then(plan -> Shortfall.told(plan, spec)).then(plan -> {
            byte[] planFile = PlanFile.of(plan);
            return printed(plan, planFile).map(files -> new Pressed(plan, with(files, new Finished("plan.yaml", planFile, 0))));
        });
    }

    /** The wanted editions of a solved plan, one after the other. */
    Outcome<List<Finished>> print(Plan plan) {
        return printed(plan, PlanFile.of(plan));
    }

    /** The coach's page on a block that is over, as a PDF. */
    public Outcome<byte[]> changes(Review review) {
        return composer.changes(review).then(typesetter::set).map(Pages::bytes);
    }

    /** The index page of a pack; its name is {@code index}. */
    public Outcome<List<Finished>> index(String title, List<PackIndex.Line> lines) {
        return composer.index(new PackIndex(title, lines, wanted.paper(), wanted.print(), wanted.language())).then(document -> files(document, "index"));
    }

    /** The plan; without set-ups and exercises when screening withholds it. */
    public Plan solve(CheckedSpec spec) {
        Assessed assessed = assessor.assess(spec, catalogue.rules());
        return assessed.verdict().withheld() ? Prescriber.withheld(assessed, catalogue)
                : prescriber.prescribe(selector.select(setUps.choose(assessed, catalogue)));
    }

    /** How hard the client edition reads, or the referral page where the program is withheld; with a warning for each part too hard. */
    public Outcome<Wording> wording(CheckedSpec spec) {
        var plan = solve(spec);
        return composer.illustrate(plan, wanted.language()).then(drawn -> composer.compose(plan, wanted.order(plan, Edition.CLIENT), drawn))
                .then(document -> measured(document, plan, Edition.CLIENT)).map(Wording::of);
    }

    private Outcome<Document> measured(Document document, Plan plan, Edition edition) {
        return Outcome.of(document, edition == Edition.CLIENT ? HardWords.in(document, wanted.name(plan, edition) + ".ftlx") : List.of());
    }

    private Outcome<List<Finished>> printed(Plan plan, byte[] planFile) {
        return composer.illustrate(plan, wanted.language()).then(drawn -> {
            var editions = wanted.editions(plan);
            return (parallel ? editions.parallelStream() : editions.stream())
                    .map(edition -> composer.compose(plan, wanted.order(plan, edition), drawn)
                            .then(document -> measured(document, plan, edition))
                            .map(document -> carrying(document, plan, planFile, edition))
                            .then(document -> files(document, wanted.name(plan, edition))))
                    .toList().stream().reduce(Outcome.done(List.of()), (before, next) -> before.then(files -> next.map(more -> joined(files, more))));
        });
    }

    /** With the plan inside: all of it for the coach, what is the client's for the client; pocket sheet and referral carry nothing. */
    private Document carrying(Document document, Plan plan, byte[] planFile, Edition edition) {
        if (!wanted.attach() || plan.withheld()) {
            return document;
        }
        return switch (edition) {
            case CLIENT -> document.carrying(attachment(PlanFile.forClient(plan)));
            case COACH -> document.carrying(attachment(planFile));
            case POCKET -> document;
        };
    }

    private static Document.Attachment attachment(byte[] plan) {
        return new Document.Attachment("plan.yaml", "application/yaml", plan, "The solved plan");
    }

    private Outcome<List<Finished>> files(Document document, String name) {
        return typesetter.set(document).map(pages -> {
            var files = List.of(new Finished(name + ".pdf", pages.bytes(), pages.count()));
            return wanted.html() ? with(files, new Finished(name + ".html", HtmlPage.of(document).getBytes(StandardCharsets.UTF_8), 0)) : files;
        });
    }

    private static List<Finished> with(List<Finished> files, Finished one) {
        return joined(files, List.of(one));
    }

    private static List<Finished> joined(List<Finished> before, List<Finished> after) {
        var all = new ArrayList<>(before);
        all.addAll(after);
        return List.copyOf(all);
    }
}
