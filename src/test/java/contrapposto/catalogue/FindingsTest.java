package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** No family leans on a finding about another movement or another muscle, and none is said to that does not. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FindingsTest {
    @Test
    void every_muscle_that_cites_a_finding_is_one_it_speaks_of_in_a_movement_it_is_listed_for() {
        for (var family : CatalogueTest.CATALOGUE.families()) {
            Finding.published(family).forEach(use -> {
                var finding = Finding.ALL.stream().filter(f -> f.id().equals(use.source())).findFirst().orElseThrow();
                var what = family.id() + " " + use.muscle().word() + " " + use.source();
                assertTrue(finding.muscles().contains(use.muscle()), what);
                assertTrue(finding.families().anyMatch(family.id()::equals), what);
                assertTrue(finding.bases().contains(family.base()), what);
            });
        }
    }

    @Test
    void every_family_listed_for_a_finding_cites_it_and_is_the_movement_measured_or_like_it() {
        for (var finding : Finding.ALL) {
            var cite = CatalogueTest.CATALOGUE.families().stream().filter(f -> Finding.published(f).anyMatch(use -> use.source().equals(finding.id())))
                    .map(Family::id).collect(Collectors.toCollection(TreeSet::new));
            assertEquals(cite, finding.families().collect(Collectors.toCollection(TreeSet::new)), finding.id());
            assertTrue(finding.same().stream().noneMatch(finding.like()::containsKey), finding.id());
        }
    }
}
