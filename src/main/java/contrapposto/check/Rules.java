package contrapposto.check;

import contrapposto.notice.Notice;
import contrapposto.spec.Written;
import java.util.List;
import java.util.function.Consumer;

/** The rules that hold values of a spec against each other. A value that could not be read is simply not there for them. */
final class Rules {
    private Rules() { }

    /** One rule: adds a notice for each breach. */
    @FunctionalInterface
    interface Rule {
        void hold(Written.Fields spec, Consumer<Notice> found);
    }

    static List<Rule> inOrder() {
        return List.of(ClientSection::hasNameOrCode, ClientSection::saysAgeOnce, ClientSection::wasBornBefore,
                ClientSection::hasLikelyBody, BodySection::segmentsFitTheHeight,
                BodySection::segmentsAddUp, ClientSection::trainedWithinLife, ClientSection::ownColourIsDark,
                AssessmentSection::measuresInTheirUnit, AssessmentSection::measuresOnce, AssessmentSection::testsBeforeStart,
                AssessmentSection::testsNearTheLimit,
                SafetySection::restrictionsStillHold,
                ConditionSection::conditionsAreWhole, ConditionSection::conditionsHaveTheirPlace,
                ConditionSection::conditionsHaveTheirTime, ConditionSection::conditionsAgreeWithTheAnswers,
                EquipmentSection::runsReachTheirEnd, EquipmentSection::platesComeInPairs, EquipmentSection::barbellIsSane,
                EquipmentSection::pulleyGoesUp,
                ScheduleSection::startsAfterAssessment, ScheduleSection::gateInItsUnit,
                ChoiceSection::includesOrExcludes);
    }
}
