package contrapposto.assess;

import static contrapposto.assess.Assessed.Limit.BALANCE_FIRST;
import static contrapposto.assess.Assessed.Limit.HAND_SUPPORT_FOR_REAR_RAISE;
import static contrapposto.assess.Assessed.Limit.MODERATE_LOAD;
import static contrapposto.assess.Assessed.Limit.NO_BREATH_HOLD;
import static contrapposto.assess.Assessed.Limit.NO_IMPACT;
import static contrapposto.assess.Assessed.Limit.NO_SUPINE;
import static contrapposto.assess.Assessed.Limit.SLOWER_PROGRESSION;
import static contrapposto.assess.ScreeningTable.Weight.CLEARANCE;
import static contrapposto.assess.ScreeningTable.Weight.LIMITS;
import static contrapposto.catalogue.RestrictionTag.DEEP_HIP;
import static contrapposto.catalogue.RestrictionTag.DEEP_KNEE;
import static contrapposto.catalogue.RestrictionTag.GRIP;
import static contrapposto.catalogue.RestrictionTag.HEAD_BELOW_HEART;
import static contrapposto.catalogue.RestrictionTag.KNEELING;
import static contrapposto.catalogue.RestrictionTag.LOADED_SPINE_FLEXION;
import static contrapposto.catalogue.RestrictionTag.LOADED_TWISTING;
import static contrapposto.catalogue.RestrictionTag.OVERHEAD;
import static contrapposto.catalogue.RestrictionTag.PRONE;
import static contrapposto.catalogue.RestrictionTag.SPINE_FLEXION;
import static contrapposto.catalogue.RestrictionTag.TWISTING;
import static contrapposto.catalogue.RestrictionTag.WRIST_LOAD;

import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.ScreeningTable.Weight;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.check.Condition.Kind;
import contrapposto.check.Condition.Where;
import contrapposto.wording.Said;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a condition rules out, as data: by kind, place and time. Of the rows that fit, the first holds. Weeks are those
 * since the operation or birth at the start of the program; of a pregnancy, its week when the program ends. Where
 * published texts give no number the stricter common practice stands, and the row says so. The surgeon's or clinician's
 * own word comes before any of them.
 */
final class ConditionTable {
    private static final String SURGEON = "E2.14-E2.17: general texts (from memory); the surgeon's own protocol comes first";
    private static final String ACOG = "E2.11: ACOG Committee Opinion 804 (2020)";
    private static final String BONES = "E2.9: Giangregorio et al. 2014, Osteoporos Int 25:821";
    private static final String PRACTICE = "";
    /** Never over. */
    private static final int EVER = Integer.MAX_VALUE;

    /**
     * @param where   places it is about; empty for conditions without a place
     * @param before  the row holds before this week
     * @param limits  that hold when the program may go on: at once, or once cleared
     * @param avoid   on the side of the condition
     * @param ranges  joint → most degrees, on the side of the condition
     */
    record Row(Kind kind, Set<Where> where, int before, Weight weight, List<Limit> limits, List<RestrictionTag> avoid,
               Map<String, Double> ranges, String reference) {
        /** What the row says: its sentence is named by kind, first place and week. */
        Said because() {
            return Said.of("because/" + kind.word() + where.stream().findFirst().map(place -> "-" + place.word()).orElse("")
                    + "-" + (before == EVER ? "ever" : Integer.toString(before)));
        }

        boolean fits(Kind what, Set<Where> place, long week) {
            return kind == what && where.containsAll(place) && week < before;
        }
    }

    static final List<Row> ROWS = List.of(
            row(Kind.PREGNANCY, 14, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE,
                    SLOWER_PROGRESSION), List.of(), ACOG),
            row(Kind.PREGNANCY, 28, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_SUPINE, NO_IMPACT,
                    HAND_SUPPORT_FOR_REAR_RAISE, SLOWER_PROGRESSION), List.of(HEAD_BELOW_HEART),
                    ACOG),
            row(Kind.PREGNANCY, EVER, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_SUPINE, NO_IMPACT,
                    HAND_SUPPORT_FOR_REAR_RAISE, SLOWER_PROGRESSION), List.of(HEAD_BELOW_HEART, PRONE, LOADED_TWISTING),
                    ACOG),
            row(Kind.BIRTH, 6, CLEARANCE, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_IMPACT, SLOWER_PROGRESSION), List.of(),
                    PRACTICE),
            row(Kind.BIRTH, 12, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_IMPACT, SLOWER_PROGRESSION), List.of(),
                    PRACTICE),
            row(Kind.CAESAREAN_BIRTH, 6, CLEARANCE, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_IMPACT, SLOWER_PROGRESSION),
                    List.of(PRONE), SURGEON),
            row(Kind.CAESAREAN_BIRTH, 16, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_IMPACT, SLOWER_PROGRESSION),
                    List.of(PRONE), PRACTICE),
            surgery(EnumSet.of(Where.ABDOMEN), 6, CLEARANCE, List.of(NO_BREATH_HOLD, MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(PRONE), SURGEON),
            surgery(EnumSet.of(Where.ABDOMEN), 12, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(), PRACTICE),
            surgery(EnumSet.of(Where.BACK, Where.NECK), 12, CLEARANCE, List.of(NO_BREATH_HOLD, MODERATE_LOAD,
                    SLOWER_PROGRESSION), List.of(SPINE_FLEXION, TWISTING), SURGEON),
            surgery(EnumSet.of(Where.BACK, Where.NECK), 26, LIMITS, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(LOADED_SPINE_FLEXION, LOADED_TWISTING),
                    PRACTICE),
            surgery(EnumSet.of(Where.HIP, Where.KNEE, Where.ANKLE), 12, CLEARANCE, List.of(MODERATE_LOAD, NO_IMPACT,
                    HAND_SUPPORT_FOR_REAR_RAISE, SLOWER_PROGRESSION), List.of(DEEP_KNEE, DEEP_HIP),
                    SURGEON),
            surgery(EnumSet.of(Where.HIP, Where.KNEE, Where.ANKLE), 26, LIMITS, List.of(NO_IMPACT, SLOWER_PROGRESSION),
                    List.of(DEEP_KNEE, DEEP_HIP), PRACTICE),
            surgery(EnumSet.of(Where.SHOULDER), 6, CLEARANCE, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(OVERHEAD, WRIST_LOAD), SURGEON),
            surgery(EnumSet.of(Where.SHOULDER), 16, LIMITS, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(OVERHEAD, WRIST_LOAD), PRACTICE),
            surgery(EnumSet.of(Where.ELBOW, Where.WRIST), 6, CLEARANCE, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(WRIST_LOAD, GRIP), SURGEON),
            surgery(EnumSet.of(Where.ELBOW, Where.WRIST), 12, LIMITS, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(WRIST_LOAD), PRACTICE),
            surgery(EnumSet.of(Where.EYE), 12, CLEARANCE, List.of(NO_BREATH_HOLD, MODERATE_LOAD), List.of(HEAD_BELOW_HEART),
                    "E2.5: list for older adults in a Diabetes Care table; the 12 weeks are common practice"),
            surgery(EnumSet.of(Where.OTHER), 6, CLEARANCE, List.of(MODERATE_LOAD, NO_BREATH_HOLD, SLOWER_PROGRESSION), List.of(),
                    SURGEON),
            joint(EnumSet.of(Where.HIP), 12, CLEARANCE, List.of(MODERATE_LOAD, NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE,
                    SLOWER_PROGRESSION), List.of(DEEP_HIP, TWISTING), Map.of("hip-flexion", 90.0),
                    "E2.14: general texts (from memory)"),
            joint(EnumSet.of(Where.HIP), EVER, LIMITS, List.of(NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE), List.of(), Map.of(),
                    PRACTICE),
            joint(EnumSet.of(Where.KNEE), 12, CLEARANCE, List.of(MODERATE_LOAD, NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE,
                    SLOWER_PROGRESSION), List.of(KNEELING, DEEP_KNEE), Map.of("knee-flexion", 90.0),
                    SURGEON),
            joint(EnumSet.of(Where.KNEE), EVER, LIMITS, List.of(NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE), List.of(KNEELING),
                    Map.of("knee-flexion", 110.0), PRACTICE),
            joint(EnumSet.of(Where.ANKLE), 12, CLEARANCE, List.of(MODERATE_LOAD, NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE,
                    SLOWER_PROGRESSION), List.of(), Map.of(), SURGEON),
            joint(EnumSet.of(Where.ANKLE), EVER, LIMITS, List.of(NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE), List.of(), Map.of(),
                    PRACTICE),
            joint(EnumSet.of(Where.SHOULDER, Where.ELBOW), 12, CLEARANCE, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(OVERHEAD, WRIST_LOAD), Map.of(), SURGEON),
            joint(EnumSet.of(Where.SHOULDER, Where.ELBOW), EVER, LIMITS, List.of(MODERATE_LOAD), List.of(OVERHEAD, WRIST_LOAD), Map.of(),
                    PRACTICE),
            row(Kind.OSTEOPOROSIS, EVER, LIMITS, List.of(NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE, BALANCE_FIRST, SLOWER_PROGRESSION),
                    List.of(SPINE_FLEXION, LOADED_SPINE_FLEXION, LOADED_TWISTING), BONES),
            row(Kind.HIGH_BLOOD_PRESSURE, EVER, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD), List.of(HEAD_BELOW_HEART),
                    "E2.7: Sorace et al., Strength Cond J; E2.8 (from memory)"));

    private ConditionTable() { }

    private static Row row(Kind kind, int before, Weight weight, List<Limit> limits, List<RestrictionTag> avoid,
                           String reference) {
        return new Row(kind, Set.of(), before, weight, limits, avoid, Map.of(), reference);
    }

    private static Row surgery(Set<Where> where, int before, Weight weight, List<Limit> limits, List<RestrictionTag> avoid,
                               String reference) {
        return new Row(Kind.SURGERY, where, before, weight, limits, avoid, Map.of(), reference);
    }

    private static Row joint(Set<Where> where, int before, Weight weight, List<Limit> limits, List<RestrictionTag> avoid,
                             Map<String, Double> ranges, String reference) {
        return new Row(Kind.JOINT_REPLACEMENT, where, before, weight, limits, avoid, ranges, reference);
    }
}
