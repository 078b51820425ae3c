package contrapposto.check;

import contrapposto.body.Person;
import contrapposto.body.Segment;
import contrapposto.body.SegmentTable;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Stage;
import contrapposto.quantity.Angle;
import contrapposto.quantity.Colour;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import contrapposto.quantity.UnitSystem;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A spec whose every value has been checked: what all later stages work from.
 *
 * @param fileName  without its ending; names the output files
 * @param sha256    of the bytes read, hex
 * @param title     "Exercise program" where none is given
 */
public record CheckedSpec(String fileName, String sha256, String title, Client client, Practice practice,
                          Assessment assessment, Screening screening, Optional<Clearance> clearance,
                          List<Restriction> restrictions, Equipment equipment, Schedule schedule, List<Aim> aims,
                          Choices choices, Handout handout) {
    /** The same with another schedule. */
    public CheckedSpec scheduled(Schedule changed) {
        return new CheckedSpec(fileName, sha256, title, client, practice, assessment, screening, clearance, restrictions, equipment,
                changed, aims, choices, handout);
    }

    /** The same with other equipment. */
    public CheckedSpec equipped(Equipment changed) {
        return new CheckedSpec(fileName, sha256, title, client, practice, assessment, screening, clearance, restrictions, changed,
                schedule, aims, choices, handout);
    }

    /** The same with other aims. */
    public CheckedSpec aiming(List<Aim> changed) {
        return new CheckedSpec(fileName, sha256, title, client, practice, assessment, screening, clearance, restrictions, equipment,
                schedule, changed, choices, handout);
    }

    /** The same with other choices of the coach. */
    public CheckedSpec choosing(Choices changed) {
        return new CheckedSpec(fileName, sha256, title, client, practice, assessment, screening, clearance, restrictions, equipment,
                schedule, aims, changed, handout);
    }

    /** The same with another finding. */
    public CheckedSpec found(Turned changed) {
        return assessed(new Assessment(assessment.date, changed, assessment.degree, assessment.weightHabit, assessment.lowShoulder,
                assessment.measures, assessment.tests));
    }

    /** The same without tests. */
    public CheckedSpec untested() {
        return assessed(new Assessment(assessment.date, assessment.turned, assessment.degree, assessment.weightHabit,
                assessment.lowShoulder, assessment.measures, List.of()));
    }

    private CheckedSpec assessed(Assessment changed) {
        return new CheckedSpec(fileName, sha256, title, client, practice, changed, screening, clearance, restrictions, equipment,
                schedule, aims, choices, handout);
    }

    /** The same for a client of another age and time in training. */
    public CheckedSpec person(int age, double trainingYears) {
        return new CheckedSpec(fileName, sha256, title, new Client(client.name, client.code, OptionalInt.of(age), client.sex,
                client.height, client.mass, trainingYears, client.language, client.units, client.body), practice, assessment, screening, clearance,
                restrictions, equipment, schedule, aims, choices, handout);
    }


    /**
     * @param name   empty when only a code is given
     * @param code   empty when only a name is given
     * @param age    on the assessment (or start) date; empty when unknown: adult, with the cautions for 65 and over
     * @param trainingYears of regular resistance training; 0 when not given (beginner)
     * @param body   which published body, and what was measured of this one
     */
    public record Client(String name, String code, OptionalInt age, Sex sex, Length height, Mass mass,
                         double trainingYears, String language, UnitSystem units, Body body) {
        /** The body that every pose of this client is solved for. */
        public Person person() {
            return Person.of(height.metres(), mass.kilograms(), sex, body.table(), body.metres());
        }

        /** What footers and file names call the plan: the code if there is one, else the name. */
        public String label() {
            return code.isEmpty() ? name : code;
        }
    }

    /**
     * @param table    masses and mass centres
     * @param measured lengths that hold in place of the table's share of stature, in the order of {@link Segment}
     */
    public record Body(SegmentTable table, SortedMap<Segment, Length> measured) {
        /** Winter's masses, all lengths from stature. */
        public static final Body FROM_STATURE = new Body(SegmentTable.WINTER, new TreeMap<>());

        public Body {
            measured = Collections.unmodifiableSortedMap(new TreeMap<>(measured));
        }

        private SortedMap<Segment, Double> metres() {
            var metres = new TreeMap<Segment, Double>();
            measured.forEach((segment, length) -> metres.put(segment, length.metres()));
            return metres;
        }
    }

    /**
     * Who made the plan, whom to call and whom in an emergency; empty strings where not given.
     *
     * @param qualification of who made the plan, in their own words
     * @param setting       where the plan is done, in the coach's words
     * @param colour        of heads and rules; black where not given
     */
    public record Practice(String name, String preparedBy, String contact, String emergency, String qualification, String setting,
                           Optional<Colour> colour) {
        /** One that prints in black. */
        public Practice(String name, String preparedBy, String contact, String emergency, String qualification, String setting) {
            this(name, preparedBy, contact, emergency, qualification, setting, Optional.empty());
        }
    }

    public enum Turned { LEFT, RIGHT, SQUARE }

    public enum Degree { MILD, CLEAR, MARKED }

    /**
     * What the coach found; the finding stands even where measures disagree.
     *
     * @param bilateralIndex percent; where given, tests of both legs at once are split by it for work of one leg
     */
    public record Assessment(LocalDate date, Turned turned, Degree degree, Optional<Side> weightHabit,
                             Optional<Side> lowShoulder, List<Measure> measures, List<Test> tests, OptionalDouble bilateralIndex) {
        /** Tests of both legs say nothing about one. */
        public Assessment(LocalDate date, Turned turned, Degree degree, Optional<Side> weightHabit, Optional<Side> lowShoulder,
                          List<Measure> measures, List<Test> tests) {
            this(date, turned, degree, weightHabit, lowShoulder, measures, tests, OptionalDouble.empty());
        }
    }

    /**
     * A left and right pair.
     *
     * @param what the word of a {@link MeasureKind}
     * @param unit "deg", "s" or "cm": the unit of that kind
     */
    public record Measure(String what, double left, double right, String unit) { }

    /**
     * A set done to a known effort.
     *
     * @param side      empty: both sides together
     * @param reps      1 to 10; with {@code inReserve} up to 15, but above 10 the spec was warned that an estimate is rough
     * @param inReserve 0 to 5
     * @param setup     what is known of the arrangement; nothing: flat feet, load in both hands
     * @param date      the day of the assessment where none is given
     * @param error     how far off a 1RM read from it may be, as a share; empty: what is published for a single set
     */
    public record Test(String exercise, Optional<Side> side, Mass load, int reps, int inReserve, SetUpWish setup,
                       LocalDate date, OptionalDouble error) {
        /** A test with the published error. */
        public Test(String exercise, Optional<Side> side, Mass load, int reps, int inReserve, SetUpWish setup, LocalDate date) {
            this(exercise, side, load, reps, inReserve, setup, date, OptionalDouble.empty());
        }
    }

    /**
     * @param answers word of a {@link ScreeningQuestion} → yes or no, in their order; a question not answered is absent
     * @param systolic mmHg, empty when not measured
     * @param conditions that have rules of their own, as given
     */
    public record Screening(Map<String, Boolean> answers, OptionalInt systolic, OptionalInt diastolic,
                            List<Condition> conditions) { }

    public record Clearance(String by, LocalDate date, String limits) { }

    /** Something to keep away from. {@code sides} holds one or both; {@code until} empty = for good. */
    public sealed interface Restriction {
        Optional<LocalDate> until();

        String because();

        /** @param what the word of a {@link contrapposto.catalogue.RestrictionTag} or a family id */
        record Avoid(String what, Set<Side> sides, Optional<LocalDate> until, String because) implements Restriction { }

        record LimitLoad(Mass perHand, Optional<LocalDate> until, String because) implements Restriction { }

        /** @param what knee-flexion, dorsiflexion or hip-flexion */
        record LimitRange(String what, Set<Side> sides, Angle to, Optional<LocalDate> until, String because)
                implements Restriction { }
    }

    /**
     * What the client has. Lists ascending, without repeats.
     *
     * @param dumbbells pairs unless {@code singleDumbbells}
     * @param bars      the bar and plates as the loads that can be made with it, the bare bar first; empty without a barbell
     * @param also      mat, wall, band, chair, rail; in alphabetical order
     * @param bands     by name, from light to strong as given; empty where none is named
     */
    public record Equipment(List<Mass> dumbbells, boolean singleDumbbells, List<Mass> kettlebells, List<Mass> bars,
                            Optional<Cable> cable, List<Length> boxes, Optional<Length> bench, List<Length> wedges,
                            Set<String> also, List<Band> bands) {
        /** Without bands that have names. */
        public Equipment(List<Mass> dumbbells, boolean singleDumbbells, List<Mass> kettlebells, List<Mass> bars, Optional<Cable> cable,
                         List<Length> boxes, Optional<Length> bench, List<Length> wedges, Set<String> also) {
            this(dumbbells, singleDumbbells, kettlebells, bars, cable, boxes, bench, wedges, also, List.of());
        }

        /** The weights that exist for an implement, ascending; empty for body weight and bands. */
        public List<Mass> weights(Implement implement) {
            return switch (implement) {
                case DUMBBELL -> dumbbells;
                case KETTLEBELL -> kettlebells;
                case BARBELL -> bars;
                case CABLE -> cable.map(Cable::stack).orElse(List.of());
                case BODY_WEIGHT, BAND -> List.of();
            };
        }
    }

    /** @param ratio pulley ratio, default 1 */
    public record Cable(List<Mass> stack, double ratio, Length pulleyFrom, Length pulleyTo) { }

    /**
     * An elastic band. Its pull depends on how far it is stretched, so it is never turned into a load (reference G1.20).
     *
     * @param measured what someone read on a scale, printed as it is
     */
    public record Band(String name, Optional<Pull> measured) { }

    /** @param pull as a spring scale shows it; {@code at} how long the band then is */
    public record Pull(Mass pull, Length at) { }

    /**
     * @param gate      empty when stages go by weeks
     * @param easyEvery weeks from one easy week to the next, 0 for none; empty: as the house has it
     */
    public record Schedule(LocalDate start, int weeks, List<DayOfWeek> days, int minutes, Stage startStage,
                           Optional<Gate> gate, Scheme scheme, OptionalInt easyEvery) {
        /** With the scheme and the easy weeks of the house. */
        public Schedule(LocalDate start, int weeks, List<DayOfWeek> days, int minutes, Stage startStage, Optional<Gate> gate) {
            this(start, weeks, days, minutes, startStage, gate, Scheme.DOUBLE, OptionalInt.empty());
        }
    }

    /** How weights and repeats rise: repeats, then the weight; or in waves of three weeks. */
    public enum Scheme { DOUBLE, WAVE }

    /** The stage after next waits until the difference between the sides of {@code what} is under this. */
    public record Gate(String what, double differenceUnder, String unit) { }

    public enum Aim { SIDE_TO_SIDE_MOVEMENT, STRENGTH }

    /**
     * @param setup    family id → the coach's own set-up per side
     * @param ownWords family id → one extra line on the card
     */
    public record Choices(List<String> include, List<String> exclude, Map<String, Map<Side, SetUpWish>> setup,
                          Map<String, String> ownWords) { }

    /** A set-up, or the part of it that someone has fixed; everything empty means "as solved". */
    public record SetUpWish(Optional<Length> frontRaise, Optional<Length> rearRaise, Optional<Length> heelWedge,
                            Optional<Length> stance, Optional<Side> loadHand, boolean bothHands,
                            Optional<Length> pulley, OptionalDouble pulleyDistance) {
        public static final SetUpWish NONE = new SetUpWish(Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), false, Optional.empty(), OptionalDouble.empty());
    }

    public enum Paper { A4, LETTER }

    public enum Edition { CLIENT, COACH, POCKET }

    public enum Print { PLAIN, LARGE }

    public record Handout(Paper paper, List<Edition> editions, Print print, boolean log) { }
}
