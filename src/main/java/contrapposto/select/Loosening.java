package contrapposto.select;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessor;
import contrapposto.assess.Restrained;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.check.CheckedSpec.Cable;
import contrapposto.check.CheckedSpec.Choices;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.check.CheckedSpec.Schedule;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.setup.SetUpChooser;
import contrapposto.setup.SetUps;
import contrapposto.wording.Said;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;

/**
 * One hard constraint of a spec that can be taken away, all others kept.
 *
 * @param said     the constraint, as it stands
 * @param change   the same person and spec without it
 * @param arranges whether set-ups depend on it
 */
record Loosening(Said said, UnaryOperator<Assessed> change, boolean arranges) {
    private static final int LONG = 240;
    private static final double TRAINED = 5;
    private static final int GROWN = 34;

    /** The set-ups without these constraints; given in the order of the lists below, since a person assessed anew is restricted anew. */
    static SetUps without(SetUps setUps, List<Loosening> loosenings, SetUpChooser chooser) {
        var assessed = setUps.assessed();
        for (var loosening : loosenings) {
            assessed = loosening.change().apply(assessed);
        }
        return loosenings.stream().anyMatch(Loosening::arranges) ? chooser.choose(assessed, setUps.catalogue())
                : new SetUps(assessed, setUps.catalogue(), setUps.usable(), setUps.leftOut(), setUps.refused());
    }

    /** What may keep one exercise out: of time and place where it could be set up, of body and room where it could not. */
    static List<Loosening> forExercise(SetUps setUps, String id) {
        return setUps.usable().containsKey(id) ? ofTime(setUps, id) : ofSetUps(setUps);
    }

    /** @param id the exercise asked for, empty where there is none */
    static List<Loosening> ofAll(SetUps setUps, String id) {
        var all = new ArrayList<>(ofTime(setUps, id));
        all.addAll(ofSetUps(setUps));
        return List.copyOf(all);
    }

    private static List<Loosening> ofTime(SetUps setUps, String id) {
        var spec = setUps.assessed().spec();
        var was = spec.schedule();
        var choices = spec.choices();
        var all = new ArrayList<Loosening>();
        all.add(chosen(Said.of("binds/minutes").count("minutes", was.minutes()), s -> s.scheduled(scheduled(s.schedule(), s.schedule().days(), LONG, s.schedule().startStage()))));
        if (was.days().size() > 1) {
            all.add(chosen(Said.of("binds/days").words("days", was.days().stream().map(Loosening::word).toList()),
                    s -> s.scheduled(scheduled(s.schedule(), List.of(DayOfWeek.MONDAY), s.schedule().minutes(), s.schedule().startStage()))));
        }
        if (was.startStage() != Stage.INTEGRATED) {
            all.add(chosen(Said.of("binds/stage").word("stage", "stage-" + was.startStage().word()).count("weeks", was.weeks()),
                    s -> s.scheduled(scheduled(s.schedule(), s.schedule().days(), s.schedule().minutes(), Stage.INTEGRATED))));
        }
        if (!choices.exclude().isEmpty()) {
            all.add(chosen(Said.of("binds/excluded"), s -> s.choosing(new Choices(s.choices().include(), List.of(), choices.setup(), choices.ownWords()))));
        }
        if (choices.include().size() + spec.assessment().tests().size() > 1) {
            all.add(chosen(Said.of("binds/asked").count("session", Selector.PER_SESSION).count("plan", Selector.IN_ALL),
                    s -> s.untested().choosing(new Choices(id.isEmpty() ? List.of() : List.of(id), s.choices().exclude(), choices.setup(), choices.ownWords()))));
        }
        if (spec.aims().isEmpty() || spec.aims().getFirst() == Aim.SIDE_TO_SIDE_MOVEMENT) {
            all.add(chosen(Said.of("binds/two-sided"), s -> s.aiming(List.of(Aim.STRENGTH, Aim.SIDE_TO_SIDE_MOVEMENT))));
        }
        return List.copyOf(all);
    }

    private static Schedule scheduled(Schedule was, List<DayOfWeek> days, int minutes, Stage start) {
        return new Schedule(was.start(), was.weeks(), days, minutes, start, was.gate());
    }

    /** What may keep a family from being set up: room, person, finding, and last the restrictions. */
    static List<Loosening> ofSetUps(SetUps setUps) {
        var assessed = setUps.assessed();
        var spec = assessed.spec();
        var all = new ArrayList<Loosening>();
        all.add(new Loosening(Said.of("binds/equipment"), a -> a.under(a.spec().equipped(furnished())), true));
        all.add(assessed(setUps, Said.of("binds/person"), s -> s.person(GROWN, TRAINED)));
        if (spec.assessment().turned() != Turned.SQUARE) {
            all.add(assessed(setUps, Said.of("binds/finding"), s -> s.found(Turned.SQUARE)));
        }
        assessed.restrained().stream().map(Restrained::why).distinct().forEach(why -> all.add(new Loosening(why.said(),
                a -> a.bound(a.restrained().stream().filter(r -> !r.why().equals(why)).toList()), true)));
        return List.copyOf(all);
    }

    private static String word(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    private static Loosening chosen(Said said, UnaryOperator<CheckedSpec> change) {
        return new Loosening(said, assessed -> assessed.under(change.apply(assessed.spec())), false);
    }

    private static Loosening assessed(SetUps setUps, Said said, UnaryOperator<CheckedSpec> change) {
        return new Loosening(said, a -> new Assessor().assess(change.apply(a.spec()), setUps.catalogue().rules()), true);
    }

    /** All that any family can use. */
    private static Equipment furnished() {
        return new Equipment(steps(1, 40, 1, Mass::ofKilograms), false, steps(4, 32, 4, Mass::ofKilograms), steps(20, 120, 2.5, Mass::ofKilograms),
                Optional.of(new Cable(steps(2.5, 80, 2.5, Mass::ofKilograms), 1, Length.ofCentimetres(20), Length.ofCentimetres(210))),
                steps(5, 60, 5, Length::ofCentimetres), Optional.of(Length.ofCentimetres(43)), List.of(Length.ofCentimetres(3)),
                Set.of("band", "chair", "mat", "rail", "wall"));
    }

    private static <T> List<T> steps(double from, double to, double step, DoubleFunction<T> unit) {
        return DoubleStream.iterate(from, n -> n <= to, n -> n + step).mapToObj(unit).toList();
    }
}
