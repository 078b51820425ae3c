package contrapposto.compose;

import contrapposto.assess.Role;
import contrapposto.catalogue.Clause;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.FamilyWords;
import contrapposto.catalogue.FamilyWords.RoleKey;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.setup.SetUp;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Phrasebook;
import contrapposto.wording.Said;
import contrapposto.wording.Teller;
import contrapposto.wording.Units;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A plan with the words and units in which it is told: what every page is made from. */
record PlanWords(Plan plan, String language, Teller teller) {
    private static final String ENGLISH = "en";

    /** In the client's language. */
    static PlanWords of(Plan plan) {
        return of(plan, plan.spec().client().language());
    }

    /** In that language if the catalogue speaks it, else in English. */
    static PlanWords of(Plan plan, String wanted) {
        String language = plan.catalogue().words().containsKey(wanted) && Phrasebook.LANGUAGES.contains(wanted) ? wanted : ENGLISH;
        return new PlanWords(plan, language, new Teller(Phrasebook.of(language),
                new Units(plan.spec().client().units(), Locale.forLanguageTag(language)), id -> plan.catalogue().words(language, id).name()));
    }

    Units units() {
        return teller.units();
    }

    /** The word for a kebab-case word of specs and catalogue. */
    String word(String word) {
        return teller.book().word(word);
    }

    /** What a restriction is about: a family or a word. */
    String restricted(String what) {
        return plan.catalogue().family(what).isPresent() ? name(what) : word(what);
    }

    /** A statement in words. */
    String told(Said said) {
        return teller.of(said);
    }

    CheckedSpec spec() {
        return plan.spec();
    }

    FamilyWords words(String id) {
        return plan.catalogue().words(language, id);
    }

    String name(String id) {
        return words(id).name();
    }

    Family family(String id) {
        return plan.catalogue().family(id).orElseThrow(() -> new IllegalArgumentException("No family (" + id + ")."));
    }

    /** The exercise of that number. */
    Plan.Exercise exercise(int number) {
        return plan.exercises().stream().filter(e -> e.number() == number).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No exercise has the number (" + number + ")."));
    }

    /** The number of a family in the plan, empty when it is not in it. */
    Optional<String> numberOf(String id) {
        return plan.exercises().stream().filter(e -> e.id().equals(id)).map(e -> Integer.toString(e.number())).findFirst();
    }

    /** {@code left}, {@code right} or {@code both}. */
    static String badge(Sided<?> sides, Side side) {
        return sides instanceof Sided.Whole<?> ? "both" : side.word();
    }

    /** The sides that stand in rows of their own: one for a symmetric set-up. */
    static List<Side> rows(Sided<?> sides) {
        return sides instanceof Sided.Whole<?> ? List.of(Side.LEFT) : sides.sides();
    }

    static RoleKey roleKey(Role role) {
        return switch (role) {
            case LANDING -> RoleKey.LANDING;
            case DRIVE -> RoleKey.DRIVE;
            case BOTH -> RoleKey.BOTH;
        };
    }

    /** The cues of that role; those for both sides where the family has none of its own for it. */
    List<String> cues(SolvedSetUp solved) {
        var cues = words(solved.family().id()).cues();
        var own = cues.of(roleKey(solved.role()));
        return (own.isEmpty() ? cues.both() : own).stream().map(cue -> filled(cue, solved)).toList();
    }

    /** What is said for that role, else for both. */
    Optional<String> byRole(Map<RoleKey, String> texts, SolvedSetUp solved) {
        return Optional.ofNullable(texts.getOrDefault(roleKey(solved.role()), texts.get(RoleKey.BOTH)))
                .map(text -> filled(text, solved));
    }

    /** {@code text} about a whole card, in which what holds of one side holds: only one foot may stand on a box. */
    String forAll(String text, Sided<Plan.SidePlan> sides) {
        var setUps = sides.values().stream().map(s -> s.solved().setUp()).toList();
        return filled(Clause.told(text, Clause.holding(setUps.stream().anyMatch(PlanWords::loaded), setUps.stream().anyMatch(PlanWords::raised))),
                sides.values().getFirst().solved());
    }

    /** {@code text} with its clauses told and its placeholders filled by the sides of the set-up. */
    String filled(String text, SolvedSetUp solved) {
        SetUp setUp = solved.setUp();
        Side hand = setUp.loadHand().orElse(solved.side());
        Side front = setUp.frontFoot().orElse(solved.side());
        var sides = Map.of("side", solved.side(), "other", solved.side().other(), "hand", hand, "front", front, "rear", front.other());
        String made = Clause.told(text, Clause.holding(loaded(setUp), raised(setUp)));
        for (var key : List.of("side", "other", "hand", "front", "rear")) {
            String word = teller.book().word("stem-" + sides.get(key).word());
            made = made.replace("{" + key + "}", word).replace("{" + capital(key) + "}", capital(word));
        }
        return made;
    }

    private static boolean loaded(SetUp setUp) {
        return setUp.implement() != Implement.BODY_WEIGHT;
    }

    private static boolean raised(SetUp setUp) {
        return Stream.of(setUp.frontRaise(), setUp.rearRaise(), setUp.raise()).anyMatch(r -> r.metres() > 0);
    }

    static String capital(String word) {
        return word.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    /** {@code mon}, {@code tue} … as specs and field names have it. */
    static String dayKey(DayOfWeek day) {
        return day.name().substring(0, 3).toLowerCase(Locale.ROOT);
    }

    static String yes(boolean truth) {
        return truth ? "yes" : "no";
    }
}
