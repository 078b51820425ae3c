package contrapposto.check;

import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Gate;
import contrapposto.check.CheckedSpec.Schedule;
import contrapposto.check.CheckedSpec.Scheme;
import contrapposto.notice.Notice;
import contrapposto.spec.Written;
import java.time.DayOfWeek;
import java.util.OptionalInt;
import java.util.function.Consumer;

/** When the program runs: its rules and its record. */
final class ScheduleSection {
    private ScheduleSection() { }

    static void startsAfterAssessment(Written.Fields spec, Consumer<Notice> found) {
        var schedule = spec.fields("schedule");
        schedule.day("start").ifPresent(start -> spec.fields("assessment").day("date").filter(start::isBefore)
                .ifPresent(day -> found.accept(Notice.error("start-before-assessment", ClientSection.span(schedule, "start"),
                        "the program starts on `" + start + "`, before the assessment on " + day, "check both dates"))));
    }

    static void gateInItsUnit(Written.Fields spec, Consumer<Notice> found) {
        var gate = spec.fields("schedule").fields("gate");
        gate.text("what").map(MeasureKind::of)
                .ifPresent(kind -> AssessmentSection.inItsUnit(kind, gate, "difference-under", found));
    }

    static Schedule schedule(Written.Fields spec) {
        var schedule = spec.fields("schedule");
        return new Schedule(schedule.day("start").orElseThrow(), schedule.number("weeks").orElseThrow().intValue(),
                schedule.texts("days").stream().map(day -> DayOfWeek.of(ProgramKeys.DAYS.indexOf(day.text()) + 1)).sorted().toList(),
                schedule.number("minutes").orElseThrow().intValue(),
                schedule.text("start-stage").map(ClientSection::upper).map(Stage::valueOf).orElse(Stage.FLOOR),
                schedule.at("gate", Written.Fields.class).map(ScheduleSection::gate),
                schedule.text("progression").map(ClientSection::upper).map(Scheme::valueOf).orElse(Scheme.DOUBLE),
                schedule.number("easy-week-every").map(every -> OptionalInt.of(every.intValue())).orElseGet(OptionalInt::empty));
    }

    private static Gate gate(Written.Fields gate) {
        var kind = MeasureKind.of(gate.text("what").orElseThrow());
        return new Gate(kind.word(), AssessmentSection.kept(kind, gate, "difference-under"), kind.unit().word());
    }
}
