package contrapposto.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.body.Joint;
import contrapposto.body.Segment;
import contrapposto.body.SegmentTable;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Body;
import contrapposto.check.CheckedSpec.Client;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a coach measured, or which table was asked for, is the body that is solved and the body that the coach reads of. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class MeasuredBodyTest {
    private static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());

    private static SolvedSetUp squat(CheckedSpec spec) {
        var one = new Catalogue(List.of(CATALOGUE.family("split-squat").orElseThrow()), CATALOGUE.words(), CATALOGUE.rules());
        return new SetUpChooser().choose(new Assessor().assess(spec, CATALOGUE.rules()), one).usable().get("split-squat").on(Side.LEFT);
    }

    private static CheckedSpec with(Body body) {
        CheckedSpec s = Specs.turned(Turned.RIGHT).spec();
        Client c = s.client();
        return new CheckedSpec(s.fileName(), s.sha256(), s.title(), new Client(c.name(), c.code(), c.age(), c.sex(), c.height(), c.mass(),
                c.trainingYears(), c.language(), c.units(), body), s.practice(), s.assessment(), s.screening(), s.clearance(),
                s.restrictions(), s.equipment(), s.schedule(), s.aims(), s.choices(), s.handout());
    }

    private static double distance(SolvedSetUp setUp, Joint from, Joint to) {
        return setUp.pose().working().at(from).distance(setUp.pose().working().at(to));
    }

    @Test
    void a_measured_shank_is_the_shank_that_is_solved_and_the_thigh_stays_the_tables() {
        var measured = squat(with(new Body(SegmentTable.WINTER, new TreeMap<>(Map.of(Segment.SHANK, Length.ofCentimetres(45))))));
        assertEquals(0.45, distance(measured, Joint.LEFT_KNEE, Joint.LEFT_ANKLE), 1e-9);
        assertEquals(0.45, distance(measured, Joint.RIGHT_KNEE, Joint.RIGHT_ANKLE), 1e-9);
        assertEquals(0.245 * 1.71, distance(measured, Joint.LEFT_HIP, Joint.LEFT_KNEE), 1e-9, "C1.6");
    }

    @Test
    void another_table_of_masses_moves_the_mass_centre_and_no_length() {
        var winter = squat(with(Body.FROM_STATURE));
        var other = squat(with(new Body(SegmentTable.DE_LEVA_FEMALE, new TreeMap<>())));
        assertEquals(distance(winter, Joint.LEFT_KNEE, Joint.LEFT_ANKLE), distance(other, Joint.LEFT_KNEE, Joint.LEFT_ANKLE), 1e-9);
        assertNotEquals(winter.pose().mechanics().massCentreStart().getZ(), other.pose().mechanics().massCentreStart().getZ(), 1e-3);
    }

    @Test
    void the_coach_reads_which_table_and_each_measured_length() {
        var body = new Body(SegmentTable.DE_LEVA_MALE, new TreeMap<>(Map.of(Segment.SHANK, Length.ofCentimetres(45), Segment.HAND, Length.ofCentimetres(17))));
        var told = new Assessor().assess(with(body), CATALOGUE.rules()).reasons().stream().filter(r -> r.rule().equals("body"))
                .map(r -> r.because()).toList();
        assertEquals(3, told.size());
        assertTrue(told.get(0).contains("de Leva’s men"), told::toString);
        assertEquals("shank as measured: 45 cm (from the height it would be 42.1 cm)", told.get(1));
        assertTrue(told.get(2).startsWith("hand as measured: 17 cm"), told::toString);
    }
}
