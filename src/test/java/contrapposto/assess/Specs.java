package contrapposto.assess;

import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Measure;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.check.Condition;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Sex;
import contrapposto.quantity.UnitSystem;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/** Checked specs made by hand for tests; an invented client of 34, turned right, everything answered well. */
public record Specs(Turned turned, OptionalInt age, double trainingYears, Map<String, Boolean> answers,
                    OptionalInt systolic, OptionalInt diastolic, Optional<CheckedSpec.Clearance> clearance,
                    List<Measure> measures, List<CheckedSpec.Test> tests, List<Restriction> restrictions,
                    CheckedSpec.Equipment equipment, List<CheckedSpec.Aim> aims, int weeks, int minutes,
                    Stage startStage, List<Condition> conditions) {
    public static final LocalDate START = LocalDate.of(2026, 3, 9);

    /** All questions answered so that nothing is held against the client. */
    public static Map<String, Boolean> wellAnswers() {
        var answers = new LinkedHashMap<String, Boolean>();
        ScreeningTable.ROWS.forEach(row -> answers.put(row.question(), !row.answer()));
        return answers;
    }

    public static Specs turned(Turned turned) {
        return new Specs(turned, OptionalInt.of(34), 0.5, wellAnswers(), OptionalInt.of(118), OptionalInt.of(74),
                Optional.empty(), List.of(), List.of(), List.of(), gym(),
                List.of(CheckedSpec.Aim.SIDE_TO_SIDE_MOVEMENT, CheckedSpec.Aim.STRENGTH), 8, 50, Stage.STANDING, List.of());
    }

    /** Dumbbells 2 to 24 kg by 2, kettlebells, a bar, a cable column by 2.5 kg to 60 kg. */
    public static CheckedSpec.Equipment gym() {
        return new CheckedSpec.Equipment(masses(2, 24, 2), false, masses(8, 16, 4), masses(20, 100, 2.5),
                Optional.of(new CheckedSpec.Cable(masses(2.5, 60, 2.5), 1, Length.ofCentimetres(20),
                        Length.ofCentimetres(210))),
                List.of(Length.ofCentimetres(10), Length.ofCentimetres(15), Length.ofCentimetres(30)),
                Optional.of(Length.ofCentimetres(43)), List.of(Length.ofCentimetres(3)), Set.of());
    }

    public static List<Mass> masses(double from, double to, double step) {
        return IntStream.rangeClosed(0, (int) StrictMath.floor((to - from) / step + 1e-9))
                .mapToObj(i -> Mass.ofKilograms(from + i * step)).toList();
    }

    public Specs answering(String question, boolean answer) {
        var changed = new LinkedHashMap<>(answers);
        changed.put(question, answer);
        return withAnswers(changed);
    }

    public Specs withAnswers(Map<String, Boolean> changed) {
        return new Specs(turned, age, trainingYears, changed, systolic, diastolic, clearance, measures, tests,
                restrictions, equipment, aims, weeks, minutes, startStage, conditions);
    }

    public Specs withPressure(int over, int under) {
        return new Specs(turned, age, trainingYears, answers, OptionalInt.of(over), OptionalInt.of(under), clearance,
                measures, tests, restrictions, equipment, aims, weeks, minutes, startStage, conditions);
    }

    public Specs withoutPressure() {
        return new Specs(turned, age, trainingYears, answers, OptionalInt.empty(), OptionalInt.empty(), clearance,
                measures, tests, restrictions, equipment, aims, weeks, minutes, startStage, conditions);
    }

    public Specs having(Condition... changed) {
        return new Specs(turned, age, trainingYears, answers, systolic, diastolic, clearance, measures, tests,
                restrictions, equipment, aims, weeks, minutes, startStage, List.of(changed));
    }

    public Specs aged(OptionalInt changed) {
        return new Specs(turned, changed, trainingYears, answers, systolic, diastolic, clearance, measures, tests,
                restrictions, equipment, aims, weeks, minutes, startStage, conditions);
    }

    public Specs cleared(LocalDate date, String limits) {
        return new Specs(turned, age, trainingYears, answers, systolic, diastolic,
                Optional.of(new CheckedSpec.Clearance("Dr A. Example", date, limits)), measures, tests, restrictions,
                equipment, aims, weeks, minutes, startStage, conditions);
    }

    public Specs measured(Measure... changed) {
        return new Specs(turned, age, trainingYears, answers, systolic, diastolic, clearance, List.of(changed), tests,
                restrictions, equipment, aims, weeks, minutes, startStage, conditions);
    }

    public Specs tested(List<CheckedSpec.Test> changed) {
        return new Specs(turned, age, trainingYears, answers, systolic, diastolic, clearance, measures, changed,
                restrictions, equipment, aims, weeks, minutes, startStage, conditions);
    }

    public Specs trained(double years) {
        return new Specs(turned, age, years, answers, systolic, diastolic, clearance, measures, tests, restrictions,
                equipment, aims, weeks, minutes, startStage, conditions);
    }

    public Specs restricted(Restriction... changed) {
        return new Specs(turned, age, trainingYears, answers, systolic, diastolic, clearance, measures, tests,
                List.of(changed), equipment, aims, weeks, minutes, startStage, conditions);
    }

    public Specs equipped(CheckedSpec.Equipment changed) {
        return new Specs(turned, age, trainingYears, answers, systolic, diastolic, clearance, measures, tests,
                restrictions, changed, aims, weeks, minutes, startStage, conditions);
    }

    public Specs aiming(CheckedSpec.Aim... changed) {
        return new Specs(turned, age, trainingYears, answers, systolic, diastolic, clearance, measures, tests,
                restrictions, equipment, List.of(changed), weeks, minutes, startStage, conditions);
    }

    public Specs lasting(int changedWeeks, int changedMinutes) {
        return new Specs(turned, age, trainingYears, answers, systolic, diastolic, clearance, measures, tests,
                restrictions, equipment, aims, changedWeeks, changedMinutes, startStage, conditions);
    }

    public CheckedSpec spec() {
        return new CheckedSpec("example", "0".repeat(64), "Example",
                new CheckedSpec.Client("Invented Example", "", age, Sex.FEMALE, Length.ofCentimetres(171),
                        Mass.ofKilograms(64), trainingYears, "en", UnitSystem.METRIC, CheckedSpec.Body.FROM_STATURE),
                new CheckedSpec.Practice("", "", "", "", "", ""),
                new CheckedSpec.Assessment(LocalDate.of(2026, 3, 2), turned, CheckedSpec.Degree.CLEAR,
                        Optional.empty(), Optional.empty(), measures, tests),
                new CheckedSpec.Screening(answers, systolic, diastolic, conditions), clearance, restrictions, equipment,
                new CheckedSpec.Schedule(START, weeks,
                        List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY), minutes, startStage,
                        Optional.empty()),
                aims, new CheckedSpec.Choices(List.of(), List.of(), Map.of(), Map.of()),
                new CheckedSpec.Handout(CheckedSpec.Paper.A4,
                        List.of(CheckedSpec.Edition.CLIENT, CheckedSpec.Edition.COACH), CheckedSpec.Print.PLAIN, true));
    }
}
