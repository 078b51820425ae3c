package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.Family.Link;
import contrapposto.catalogue.Family.MuscleUse;
import contrapposto.catalogue.Family.Sides;
import contrapposto.catalogue.Family.When;
import contrapposto.catalogue.FamilyWords.RoleKey;
import contrapposto.notice.Outcome;
import contrapposto.quantity.Side;
import contrapposto.yaml.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CatalogueTest {
    static final HouseRules RULES = HouseRulesReader.house();
    static final Catalogue CATALOGUE = CatalogueReader.house(RULES);
    private static final Pattern CONTACT = Pattern.compile(
            "(?i)\\b(heels?|foot|feet|toes?|soles?|hands?|palms?|elbows?|knees?|floor|forearms?)\\b");
    /** Published where the reference has it, else marked; D1 is the reference's table of the phases of walking, D3 that on the split squat and its kin. */
    private static final Pattern SOURCE = Pattern.compile("common practice|D1|D3\\.(4|6|9|10|11|12|13|14)");

    /** What the card prints before it. */
    private static final Map<String, String> FEEL = Map.of("en", "You should feel ", "es", "Debes notar ", "de", "Das sollten Sie spüren: ");

    static Stream<Family> families() {
        return CATALOGUE.families().stream();
    }

    static FamilyWords words(Family family) {
        return CATALOGUE.words("en", family.id());
    }

    /** The ids that checks from outside rely on (design, section 2.2). */
    @ParameterizedTest
    @ValueSource(strings = {"split-squat", "staggered-deadlift", "kickstand-hinge", "high-to-low-press",
        "raised-hand-push-up", "supported-curl", "triceps-extension"})
    void has_the_ids_of_the_contract(String id) {
        assertTrue(CATALOGUE.family(id).isPresent());
    }

    @ParameterizedTest
    @MethodSource("families")
    void every_family_has_a_way_down_and_a_way_up(Family family) {
        for (var links : List.of(family.easier(), family.harder())) {
            assertTrue(!links.isEmpty());
            for (Link link : links) {
                var to = CATALOGUE.family(link.family());
                assertTrue(to.isPresent(), () -> family.id() + " links to " + link.family());
            }
        }
        assertTrue(family.harder().stream().allMatch(l ->
                CATALOGUE.family(l.family()).orElseThrow().stage().compareTo(family.stage()) >= 0), "harder goes no stage down");
        assertTrue(family.easier().stream().allMatch(l ->
                CATALOGUE.family(l.family()).orElseThrow().stage().compareTo(family.stage()) <= 0), "easier goes no stage up");
        assertTrue(!family.instead().equals(family.id()), "a stand-in is another family");
    }

    @ParameterizedTest
    @MethodSource("families")
    void every_family_has_a_direct_muscle_and_a_source_for_each(Family family) {
        assertTrue(family.muscles().stream().anyMatch(MuscleUse::direct));
        var all = new ArrayList<>(family.muscles());
        all.addAll(family.otherSideMuscles());
        all.forEach(use -> assertTrue(SOURCE.matcher(use.source()).matches(), use.toString()));
    }

    @ParameterizedTest
    @MethodSource("families")
    void no_muscle_is_named_twice_for_one_phase(Family family) {
        for (var phase : List.of(When.EARLY_TO_MID, When.MID_TO_LATE)) {
            var at = family.muscles().stream().filter(m -> m.when() == phase || m.when() == When.ALWAYS)
                    .map(MuscleUse::muscle).toList();
            assertEquals(at.size(), EnumSet.copyOf(at).size(), at.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void every_family_hands_the_body_an_action_and_two_arms_that_mirror(Family family) {
        for (var side : Side.values()) {
            assertTrue(family.action().on(side, 1.7) != null);
            assertTrue(family.workingArm().on(side, 1.7) != null && family.otherArm().on(side.other(), 1.7) != null);
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void a_weight_has_a_hand_and_a_hand_has_a_weight(Family family) {
        boolean weighed = family.levers().implement().stream().anyMatch(i -> i != Implement.BODY_WEIGHT);
        assertEquals(weighed, !family.levers().loadHands().isEmpty(), family.id());
    }

    @ParameterizedTest
    @MethodSource("families")
    void every_card_has_a_breath_and_a_contact_among_its_cues(Family family) {
        for (var role : words(family).feel().keySet()) {
            var cues = words(family).cues().of(role);
            assertTrue(cues.stream().anyMatch(c -> c.matches("(?i).*\\bbreath(e|s)?\\b.*")), () -> "breath: " + cues);
            assertTrue(cues.stream().anyMatch(c -> CONTACT.matcher(c).find()), () -> "contact: " + cues);
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void nine_cues_in_ten_stay_within_45_characters_and_12_words(Family family) {
        var cues = words(family).feel().keySet().stream().flatMap(r -> words(family).cues().of(r).stream())
                .map(CatalogueTest::printed).distinct().toList();
        long longer = cues.stream().filter(c -> c.length() > 45).count();
        assertTrue(longer * 10 <= Math.max(10, cues.size()), () -> "longer than 45: "
                + cues.stream().filter(c -> c.length() > 45).toList());
        cues.forEach(c -> assertTrue(c.split(" ").length <= 12, c));
    }

    @ParameterizedTest
    @MethodSource("families")
    void words_for_each_role_where_each_side_has_its_own_set_up(Family family) {
        var roles = family.sides() == Sides.BOTH ? EnumSet.of(RoleKey.BOTH) : EnumSet.allOf(RoleKey.class);
        assertEquals(roles, words(family).feel().keySet());
        assertEquals(roles, words(family).arrow().keySet());
        assertEquals(roles, family.arrows().keySet());
    }

    @Test
    void every_muscle_a_role_wants_is_trained_directly_by_some_family() {
        var direct = EnumSet.noneOf(Muscle.class);
        families().flatMap(f -> Stream.concat(f.muscles().stream(), f.otherSideMuscles().stream()))
                .filter(MuscleUse::direct).forEach(m -> direct.add(m.muscle()));
        // wanted by the landing side, then by the drive side: common practice, no source
        var wanted = EnumSet.of(Muscle.HAMSTRINGS, Muscle.UPPER_ADDUCTORS, Muscle.GLUTEUS_MEDIUS_FRONT,
                Muscle.OBLIQUES_TRANSVERSUS, Muscle.SERRATUS_ANTERIOR, Muscle.GLUTEUS_MAXIMUS,
                Muscle.GLUTEUS_MEDIUS_BACK, Muscle.QUADRICEPS, Muscle.LOWER_TRAPEZIUS, Muscle.TRICEPS_LONG_HEAD);
        wanted.removeAll(direct);
        assertEquals(EnumSet.noneOf(Muscle.class), wanted);
    }

    /** Two-sided words may not say which side does what: the roles decide that. */
    @Test
    void mechanics_name_no_side() {
        families().forEach(f -> assertTrue(!f.toString().matches("(?is).*\\b(left|right)\\b.*"), f.id()));
    }

    static Stream<Path> shipped() throws IOException {
        try (var files = Files.walk(Path.of("src/main/resources/contrapposto/catalogue"))) {
            return Stream.concat(files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream(),
                    Stream.of(Path.of("programs/house-rules.yaml")));
        }
    }

    /** What lets the reader skip these checks in each run. */
    @ParameterizedTest
    @MethodSource("shipped")
    void shipped_files_pass_every_check_of_a_user_s_file(Path file) throws IOException {
        var bytes = Files.readAllBytes(file);
        assertEquals(new Outcome.Done<>(YamlReader.shipped("x", bytes), List.of()), YamlReader.read("x", bytes));
    }

    @Test
    void every_shipped_family_file_stands_in_the_index() throws IOException {
        try (var files = Files.list(Path.of("src/main/resources/contrapposto/catalogue"))) {
            var ids = files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".yaml") && !f.equals("index.yaml"))
                    .map(f -> f.replace(".yaml", "")).sorted().toList();
            assertEquals(ids, families().map(Family::id).sorted().toList());
        }
    }

    private static String printed(String text) {
        return text.replaceAll("\\{(Side|Other|Front|Rear|Hand)}", "Right").replaceAll("\\{[a-z]+}", "right");
    }

    static String clientWords(FamilyWords w) {
        return clientWords("en", w);
    }

    /** With each side's word in place: its stem, whose ending follows in the text. */
    static String clientWords(String language, FamilyWords w) {
        var text = new ArrayList<String>();
        w.feel().keySet().forEach(role -> {
            text.addAll(w.cues().of(role));
            text.add(FEEL.get(language) + w.feel().get(role) + ".");
        });
        w.mistakes().forEach(m -> text.add(m.what() + " " + m.fix()));
        text.addAll(w.easier().values());
        text.addAll(w.harder().values());
        text.addAll(w.cautions());
        String stem = language.equals("es") ? "derech" : language.equals("de") ? "recht" : "right";
        return text.stream().flatMap(t -> Clause.ways(t).stream()).distinct().collect(Collectors.joining(" ")).replaceAll("\\{[A-Za-z]+}", stem);
    }
}
