package contrapposto.illustrate;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Client;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.quantity.UnitSystem;
import contrapposto.setup.SetUpChooser;
import contrapposto.setup.SolvedSetUp;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Every family of the house catalogue that an invented person of a given stature can do, set up and solved. */
public final class SolvedCards {
    private static final HouseRules RULES = HouseRulesReader.house();
    private static final Catalogue CATALOGUE = CatalogueReader.house(RULES);
    private static final Set<String> ALSO = new java.util.TreeSet<>(List.of("band", "chair", "mat", "rail", "wall"));

    private static final Map<String, Map<String, Sided<SolvedSetUp>>> SOLVED = new ConcurrentHashMap<>();

    private SolvedCards() { }

    /** Solved once a run: many tests look at the same people. */
    public static Map<String, Sided<SolvedSetUp>> of(double stature, Turned turned) {
        return SOLVED.computeIfAbsent(turned + " " + stature, key -> solved(stature, turned));
    }

    private static Map<String, Sided<SolvedSetUp>> solved(double stature, Turned turned) {
        return new SetUpChooser().choose(new Assessor().assess(spec(stature, turned), RULES), CATALOGUE).usable();
    }

    static CheckedSpec spec(double stature, Turned turned) {
        CheckedSpec s = Specs.turned(turned).spec();
        Client c = s.client();
        Equipment e = s.equipment();
        return new CheckedSpec(s.fileName(), s.sha256(), s.title(), new Client(c.name(), c.code(), c.age(), c.sex(),
                Length.ofMetres(stature), Mass.ofKilograms(22.5 * stature * stature), 4, c.language(), c.units(), c.body()), s.practice(),
                s.assessment(), s.screening(), s.clearance(), s.restrictions(), new Equipment(e.dumbbells(), e.singleDumbbells(),
                e.kettlebells(), e.bars(), e.cable(), e.boxes(), e.bench(), e.wedges(), ALSO), s.schedule(), s.aims(),
                s.choices(), s.handout());
    }

    /** Families of a stage, in the order of the catalogue. */
    public static List<Family> families(Stage stage) {
        return CATALOGUE.families().stream().filter(family -> family.stage() == stage).toList();
    }

    /** One side of a card: what is drawn, of which set-up, with which words. */
    public record Half(SetUpSketch.Shown shown, SolvedSetUp solved, SetUpSketch.Words words) { }

    /**
     * Every family on every side: of a person turned right, and where a family then serves one side alone, the other
     * side of a person turned left. A set-up that is itself symmetric has one half, told as left.
     */
    public static Map<String, Map<Side, Half>> halves(double stature, UnitSystem units) {
        Map<String, Map<Side, Half>> all = new LinkedHashMap<>();
        for (Turned turned : List.of(Turned.RIGHT, Turned.LEFT)) {
            of(stature, turned).forEach((id, sides) -> {
                Sided<SetUpSketch.Shown> card = SetUpSketch.card(sides, words(units));
                List<Side> drawn = sides instanceof Sided.Whole<?> ? List.of(Side.LEFT) : sides.sides();
                drawn.forEach(side -> all.computeIfAbsent(id, key -> new EnumMap<>(Side.class))
                        .putIfAbsent(side, new Half(card.on(side), sides.on(side), words(units))));
            });
        }
        return all;
    }

    static SetUpSketch.Words words() {
        return words(UnitSystem.METRIC);
    }

    /** Words as the English templates have them. */
    static SetUpSketch.Words words(UnitSystem units) {
        return new SetUpSketch.Words("Start", w -> w.word().substring(0, 1).toUpperCase(Locale.ROOT) + w.word().substring(1),
                l -> length(l, units), a -> Math.round(Math.abs(a)) + "° " + (a < 0 ? "back" : "forward"));
    }

    private static String length(Length length, UnitSystem units) {
        long halves = Math.round(2 * length.metres() / Length.METRES_PER_INCH);
        return switch (units) {
            case METRIC -> Math.round(length.centimetres()) + "\u00a0cm";
            case US -> halves / 2 + (halves % 2 == 0 ? "" : "½") + "\u00a0in";
        };
    }
}
