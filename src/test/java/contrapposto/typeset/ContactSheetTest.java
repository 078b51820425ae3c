package contrapposto.typeset;

import contrapposto.catalogue.Family;
import contrapposto.catalogue.Stage;
import contrapposto.illustrate.SolvedCards;
import contrapposto.illustrate.SolvedCards.Half;
import contrapposto.quantity.Side;
import contrapposto.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** Makes the sheets of docs/figures when asked to; docs/sketches.md has the command. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ContactSheetTest {
    private static final int ROWS = 12;

    @Test
    @EnabledIfSystemProperty(named = "contact-sheets", matches = ".+", disabledReason = "sheets are made when a folder is named")
    void every_family_stands_on_a_sheet() throws IOException {
        Path folder = Path.of(System.getProperty("contact-sheets"));
        int dpi = Integer.getInteger("dpi", 100);
        Map<String, Map<Side, Half>> small = SolvedCards.halves(1.52, UnitSystem.METRIC);
        Map<String, Map<Side, Half>> tall = SolvedCards.halves(1.95, UnitSystem.METRIC);
        for (Stage stage : Stage.values()) {
            List<ContactSheet.Row> rows = new ArrayList<>();
            for (Family family : SolvedCards.families(stage)) {
                List<Optional<Half>> halves = new ArrayList<>();
                for (var cards : List.of(small, tall)) {
                    for (Side side : Side.values()) {
                        halves.add(Optional.ofNullable(cards.getOrDefault(family.id(), Map.of()).get(side)));
                    }
                }
                rows.add(new ContactSheet.Row(family.id(), halves));
            }
            for (int from = 0, sheet = 1; from < rows.size(); from += ROWS, sheet++) {
                ContactSheet.write(folder.resolve(String.format(Locale.ROOT, "%s-%d.png", stage.word(), sheet)),
                        rows.subList(from, Math.min(rows.size(), from + ROWS)), dpi);
            }
        }
    }
}
