package contrapposto.bench;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessor;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.check.Checks;
import contrapposto.compose.Composer;
import contrapposto.compose.Templates;
import contrapposto.document.Document;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import contrapposto.prescribe.Prescriber;
import contrapposto.press.Press;
import contrapposto.press.Wanted;
import contrapposto.select.Selection;
import contrapposto.select.Selector;
import contrapposto.setup.SetUpChooser;
import contrapposto.setup.SetUps;
import contrapposto.typeset.Pages;
import contrapposto.typeset.Typesetter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The straight line with what each stage needs at hand, for one demo; every stage can be run by itself. */
final class Line {
    static final String NAME = "newcomer-right.yaml";
    private static final Composer.Order CLIENT = new Composer.Order(Edition.CLIENT, Paper.A4, Print.PLAIN, true);

    final Catalogue catalogue = CatalogueReader.house(HouseRulesReader.house());
    final Composer composer = new Composer(Templates.own());
    final Typesetter typesetter = new Typesetter();
    final Press press = new Press(catalogue, composer, new Wanted(List.of(Edition.CLIENT), Optional.empty(), Optional.empty(), false));
    final String spec;

    Line() throws IOException {
        spec = Files.readString(Path.of("programs", NAME));
    }

    /** The demo's spec for another body, so that nothing remembered of the last one helps. */
    byte[] specOf(int client) {
        return spec.replaceFirst("height: \\d+ cm", "height: " + (155 + client % 35) + " cm")
                .replaceFirst("mass: \\d+ kg", "mass: " + (52 + client * 7 % 40) + " kg").getBytes(StandardCharsets.UTF_8);
    }

    CheckedSpec checked(byte[] bytes) {
        return value(Checks.check(NAME, bytes, catalogue));
    }

    Assessed assessed(CheckedSpec checked) {
        return new Assessor().assess(checked, catalogue.rules());
    }

    SetUps setUps(Assessed assessed) {
        return new SetUpChooser().choose(assessed, catalogue);
    }

    Selection selected(SetUps setUps) {
        return new Selector().select(setUps);
    }

    Plan plan(Selection selection) {
        return new Prescriber().prescribe(selection);
    }

    Composer.Illustrated drawn(Plan plan) {
        return value(composer.illustrate(plan, Optional.empty()));
    }

    Document document(Plan plan, Composer.Illustrated drawn) {
        return value(composer.compose(plan, CLIENT, drawn));
    }

    Pages pages(Document document) {
        return value(typesetter.set(document));
    }

    static <T> T value(Outcome<T> outcome) {
        return switch (outcome) {
            case Outcome.Done<T>(var value, var notices) -> value;
            case Outcome.Refused<T>(var notices) -> throw new IllegalStateException("Refused: " + notices);
        };
    }
}
