package contrapposto.press;

import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.check.Checks;
import contrapposto.compose.Composer;
import contrapposto.compose.Templates;
import contrapposto.document.Document;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The four demos in any edition, paper, print and language; each is solved once for all tests. */
final class DemoPages {
    static final List<String> DEMOS = List.of("newcomer-right", "veteran-left", "seventy-bare-room", "square-steady");

    private static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());
    private static final Composer COMPOSER = new Composer(Templates.own());
    private static final Map<String, Plan> PLANS = new ConcurrentHashMap<>();

    /** One file that can be asked for. */
    record Wish(String demo, Edition edition, Paper paper, Print print, String language) {
        @Override
        public String toString() {
            return String.join(", ", demo, edition.name(), paper.name(), print.name(), language);
        }

        /** Without the plan inside. */
        Document document() {
            var plan = plan(demo);
            var size = edition == Edition.POCKET ? Print.PLAIN : print;
            return done(COMPOSER.compose(plan, new Composer.Order(edition, paper, size, true, Optional.of(language))));
        }

        byte[] pdf() {
            var wanted = new Wanted(List.of(edition), Optional.of(paper), Optional.of(print), false, Optional.of(language), true);
            return done(new Press(CATALOGUE, COMPOSER, wanted).print(plan(demo))).getFirst().bytes();
        }
    }

    private DemoPages() { }

    /** Every edition on every paper in every print, of all demos, in those languages. */
    static List<Wish> all(List<String> languages) {
        var all = new ArrayList<Wish>();
        for (String language : languages) {
            for (String demo : DEMOS) {
                for (var edition : Edition.values()) {
                    for (var paper : Paper.values()) {
                        for (var print : Print.values()) {
                            all.add(new Wish(demo, edition, paper, print, language));
                        }
                    }
                }
            }
        }
        return all;
    }

    static Plan plan(String demo) {
        return PLANS.computeIfAbsent(demo, name -> {
            try {
                var spec = Files.readAllBytes(Path.of("programs", name + ".yaml"));
                return new Press(CATALOGUE, COMPOSER, Wanted.AS_THE_SPEC_SAYS).solve(done(Checks.check(name + ".yaml", spec, CATALOGUE)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    static <T> T done(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Done<T>(T value, var notices) && notices.isEmpty()) {
            return value;
        }
        throw new AssertionError(outcome.notices());
    }
}
