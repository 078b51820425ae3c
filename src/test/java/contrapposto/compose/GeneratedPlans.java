package contrapposto.compose;

import contrapposto.assess.Assessor;
import contrapposto.assess.Rules;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.FamilyWords;
import contrapposto.check.CheckedSpec;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.quantity.UnitSystem;
import contrapposto.select.Instead;
import contrapposto.setup.SolvedSetUp;
import contrapposto.sketch.Posed;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Plans by number for checks of pages: 1 to 12 exercises of any families, two-sided, one-sided or symmetric, 3 to 16
 * weeks, 1 to 6 days; names from one letter to the longest a spec may hold, cues of one word. Nothing is solved: what
 * stands on a page is random, how it stands is what is checked.
 */
public final class GeneratedPlans {
    private static final String LONGEST = "Wilhelmina Konstantinopoulou-Featherstonehaugh of the Upper Riverside Rowing and "
            + "Sculling Association, Second Division";

    private static final List<Posed> STUDY = Posed.study();

    private GeneratedPlans() { }

    public static Plan of(int number) {
        var random = new Random(number);
        var pattern = Plans.turnedRight();
        var turned = CheckedSpec.Turned.values()[random.nextInt(3)];
        var spec = named(Specs.turned(turned).lasting(3 + random.nextInt(14), 50).spec(), random);
        var assessed = new Assessor().assess(spec, Rules.house());
        int count = 3 + random.nextInt(14);
        var weeks = IntStream.rangeClosed(1, count).mapToObj(n -> new Plan.Week(n, Specs.START.plusWeeks(n - 1), n % 4 == 0, n % 4 == 0 ? 4 : 2,
                pattern.weeks().getFirst().stage())).toList();
        var catalogue = worded(pattern.catalogue(), random);
        var families = new ArrayList<>(catalogue.families());
        Collections.shuffle(families, random);
        var exercises = new ArrayList<Plan.Exercise>();
        int many = 1 + number % 12;
        for (int i = 0; i < many; i++) {
            var like = pattern.exercises().get(random.nextInt(pattern.exercises().size()));
            var family = families.get(i);
            int first = random.nextInt(3) > 0 ? 1 : 1 + random.nextInt(count);
            exercises.add(new Plan.Exercise(i + 1, family.id(), like.sides().map(side -> side(side, family, first, count, random)),
                    Instead.of(families.get(many).id()), like.reasons()));
        }
        var all = IntStream.rangeClosed(1, many).boxed().toList();
        int days = 1 + random.nextInt(6);
        boolean same = random.nextBoolean();
        return new Plan(assessed, catalogue, random.nextBoolean() ? Side.LEFT : Side.RIGHT, Specs.START.plusWeeks(count + 4), weeks, exercises,
                IntStream.range(0, days).mapToObj(d -> new Plan.Day(DayOfWeek.of(d + 1), Collections.nCopies(count, 20 + random.nextInt(70)),
                        same || d == 0 ? all : all.stream().filter(n -> n % 2 == d % 2 || n == 1).toList(), List.of())).toList(),
                pattern.volume(), pattern.leftOut(), pattern.reasons(), pattern.warnings());
    }

    private static Plan.SidePlan side(Plan.SidePlan like, Family family, int first, int last, Random random) {
        var solved = like.solved();
        var study = STUDY.get(random.nextInt(STUDY.size()));
        var posed = study.problem().working() == solved.side() ? study : study.mirrored();
        var other = new SolvedSetUp(family, solved.side(), solved.role(), solved.setUp(), posed.problem(), posed.solved(), solved.phase(),
                solved.muscles(), solved.otherSideMuscles(), solved.reasons(), solved.runnerUp(), solved.lacks(), solved.byCoach());
        var doses = new ArrayList<Plan.Dose>();
        int kind = random.nextInt(3);
        int seconds = random.nextInt(5) == 0 ? 20 + 5 * random.nextInt(8) : 0;
        int spare = random.nextInt(4);
        for (int week = first; week <= last; week++) {
            var load = kind == 0 ? OptionalDouble.of(2 + random.nextInt(230) / 2.0) : OptionalDouble.empty();
            doses.add(new Plan.Dose(week, 1 + random.nextInt(5), 3 + random.nextInt(27), seconds, load, kind == 1,
                    spare == 0 ? 1 + random.nextInt(5) : week % 4 == 0 ? 4 : 2, "3-1-1", 30 + 15 * random.nextInt(8),
                    kind == 0 && random.nextInt(4) == 0, OptionalDouble.empty()));
        }
        return new Plan.SidePlan(other, like.loadUsed(), like.capacity(), doses, like.reasons());
    }

    private static CheckedSpec named(CheckedSpec spec, Random random) {
        String name = List.of("Li", "Invented Example", LONGEST).get(random.nextInt(3));
        var client = new CheckedSpec.Client(name, random.nextInt(3) == 0 ? "LONG-CODE_of.forty.letters-and-digits-01" : "", spec.client().age(),
                spec.client().sex(), spec.client().height(), spec.client().mass(), spec.client().trainingYears(), "en",
                random.nextInt(3) == 0 ? UnitSystem.US : UnitSystem.METRIC, spec.client().body());
        var practice = random.nextBoolean() ? spec.practice() : new CheckedSpec.Practice("Invented Practice for Strength by the River",
                "Dr A. Example-Longname", "+00 555 0100 or desk@practice.example", "112",
                "invented degree in the science of movement, licensed for the whole of an invented county, first aid renewed each spring",
                "at home or in a small room beside the practice");
        return new CheckedSpec(spec.fileName(), spec.sha256(), random.nextBoolean() ? "A" : "Back on both feet after a long winter, block 12", client,
                practice, spec.assessment(), spec.screening(), spec.clearance(), spec.restrictions(), spec.equipment(), spec.schedule(),
                spec.aims(), spec.choices(), spec.handout());
    }

    private static Catalogue worded(Catalogue catalogue, Random random) {
        var words = new LinkedHashMap<String, FamilyWords>();
        for (var family : catalogue.families()) {
            var own = catalogue.words("en", family.id());
            words.put(family.id(), switch (random.nextInt(4)) {
                case 0 -> with(own, own.name() + " with both hands on a rail, slowly and in stocking feet", own.cues());
                case 1 -> with(own, "Sit", new FamilyWords.ByRole(List.of("Sit.", "Breathe."), List.of("Sit.", "Breathe."), List.of("Sit.", "Breathe.")));
                default -> own;
            });
        }
        return new Catalogue(catalogue.families(), Map.of("en", words), catalogue.rules());
    }

    private static FamilyWords with(FamilyWords own, String name, FamilyWords.ByRole cues) {
        return new FamilyWords(own.id(), name, own.heading(), cues, own.feel(), own.mistakes(), own.easier(), own.harder(), own.arrow(),
                own.purpose(), own.cautions());
    }
}
