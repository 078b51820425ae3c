package contrapposto.illustrate;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Client;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Sided;
import contrapposto.setup.SetUpChooser;
import contrapposto.setup.SolvedSetUp;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Every family of the house catalogue that an invented person of a given stature can do, set up and solved. */
public final class SolvedCards {
    private static final HouseRules RULES = HouseRulesReader.house();
    private static final Catalogue CATALOGUE = CatalogueReader.house(RULES);
    private static final Set<String> ALSO = new java.util.TreeSet<>(java.util.List.of("band", "chair", "mat", "rail", "wall"));

    private SolvedCards() { }

    public static Map<String, Sided<SolvedSetUp>> of(double stature, Turned turned) {
        return new SetUpChooser().choose(new Assessor().assess(spec(stature, turned), RULES), CATALOGUE).usable();
    }

    static CheckedSpec spec(double stature, Turned turned) {
        CheckedSpec s = Specs.turned(turned).spec();
        Client c = s.client();
        Equipment e = s.equipment();
        return new CheckedSpec(s.fileName(), s.sha256(), s.title(), new Client(c.name(), c.code(), c.age(), c.sex(),
                Length.ofMetres(stature), Mass.ofKilograms(22.5 * stature * stature), 4, c.language(), c.units()), s.practice(),
                s.assessment(), s.screening(), s.clearance(), s.restrictions(), new Equipment(e.dumbbells(), e.singleDumbbells(),
                e.kettlebells(), e.bars(), e.cable(), e.boxes(), e.bench(), e.wedges(), ALSO), s.schedule(), s.aims(),
                s.choices(), s.handout());
    }

    /** Words as the English templates have them. */
    static SetUpSketch.Words words() {
        return new SetUpSketch.Words("Start", w -> w.word().substring(0, 1).toUpperCase(Locale.ROOT) + w.word().substring(1),
                l -> Math.round(l.centimetres()) + " cm", a -> Math.round(Math.abs(a)) + "° " + (a < 0 ? "back" : "forward"));
    }
}
