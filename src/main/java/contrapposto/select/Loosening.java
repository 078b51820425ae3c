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
import java.util.function.Supplier;
import java.util.stream.DoubleStream;

/**
 * One hard constraint of a spec taken away, all others kept.
 *
 * @param said   the constraint, as it stands
 * @param setUps of the spec without it; worked out when asked for
 */
record Loosening(Said said, Supplier<SetUps> setUps) {
    private static final int LONG = 240;
    private static final double TRAINED = 5;
    private static final int GROWN = 34;

    /** What may keep one exercise out: of time and place where it could be set up, of body and room where it could not. */
    static List<Loosening> forExercise(SetUps setUps, String id) {
        if (setUps.usable().containsKey(id)) {
            return ofTime(setUps, id);
        }
        var all = new ArrayList<>(ofSetUps(setUps));
        var spec = setUps.assessed().spec();
        if (spec.assessment().turned() != Turned.SQUARE) {
            all.add(arranged(setUps, Said.of("binds/finding"), spec.found(Turned.SQUARE)));
        }
        return List.copyOf(all);
    }

    /** All that may leave a week without work. */
    static List<Loosening> ofAll(SetUps setUps) {
        var all = new ArrayList<>(ofTime(setUps, ""));
        all.addAll(ofSetUps(setUps));
        return List.copyOf(all);
    }

    private static List<Loosening> ofTime(SetUps setUps, String id) {
        var spec = setUps.assessed().spec();
        var was = spec.schedule();
        var choices = spec.choices();
        var all = new ArrayList<Loosening>();
        all.add(chosen(setUps, Said.of("binds/minutes").count("minutes", was.minutes()),
                spec.scheduled(new Schedule(was.start(), was.weeks(), was.days(), LONG, was.startStage(), was.gate()))));
        if (was.days().size() > 1) {
            all.add(chosen(setUps, Said.of("binds/days").words("days", was.days().stream().map(Loosening::word).toList()),
                    spec.scheduled(new Schedule(was.start(), was.weeks(), List.of(DayOfWeek.MONDAY), was.minutes(), was.startStage(), was.gate()))));
        }
        if (was.startStage() != Stage.INTEGRATED) {
            all.add(chosen(setUps, Said.of("binds/stage").word("stage", "stage-" + was.startStage().word()).count("weeks", was.weeks()),
                    spec.scheduled(new Schedule(was.start(), was.weeks(), was.days(), was.minutes(), Stage.INTEGRATED, was.gate()))));
        }
        if (!choices.exclude().isEmpty()) {
            all.add(chosen(setUps, Said.of("binds/excluded"), spec.choosing(new Choices(choices.include(), List.of(), choices.setup(), choices.ownWords()))));
        }
        if (choices.include().size() + spec.assessment().tests().size() > 1) {
            all.add(chosen(setUps, Said.of("binds/asked").count("session", Selector.PER_SESSION).count("plan", Selector.IN_ALL),
                    spec.untested().choosing(new Choices(id.isEmpty() ? List.of() : List.of(id), choices.exclude(), choices.setup(), choices.ownWords()))));
        }
        if (spec.aims().isEmpty() || spec.aims().getFirst() == Aim.SIDE_TO_SIDE_MOVEMENT) {
            all.add(chosen(setUps, Said.of("binds/two-sided"), spec.aiming(List.of(Aim.STRENGTH, Aim.SIDE_TO_SIDE_MOVEMENT))));
        }
        return List.copyOf(all);
    }

    private static List<Loosening> ofSetUps(SetUps setUps) {
        var assessed = setUps.assessed();
        var spec = assessed.spec();
        var all = new ArrayList<Loosening>();
        all.add(arranged(setUps, Said.of("binds/equipment"), spec.equipped(furnished())));
        assessed.restrained().stream().map(Restrained::why).distinct().forEach(why -> all.add(new Loosening(why.said(),
                () -> arranged(setUps, assessed.bound(assessed.restrained().stream().filter(r -> !r.why().equals(why)).toList())))));
        all.add(arranged(setUps, Said.of("binds/person"), spec.person(GROWN, TRAINED)));
        return List.copyOf(all);
    }

    private static String word(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    /** The same set-ups under a spec that they do not depend on. */
    private static Loosening chosen(SetUps setUps, Said said, CheckedSpec spec) {
        return new Loosening(said, () -> new SetUps(setUps.assessed().under(spec), setUps.catalogue(), setUps.usable(), setUps.leftOut(), setUps.refused()));
    }

    private static Loosening arranged(SetUps setUps, Said said, CheckedSpec spec) {
        return new Loosening(said, () -> arranged(setUps, new Assessor().assess(spec, setUps.catalogue().rules())));
    }

    private static SetUps arranged(SetUps setUps, Assessed assessed) {
        return new SetUpChooser().choose(assessed, setUps.catalogue());
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
