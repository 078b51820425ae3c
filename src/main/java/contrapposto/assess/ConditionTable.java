package contrapposto.assess;

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
               Map<String, Double> ranges, String because, String reference) {
        boolean fits(Kind what, Set<Where> place, long week) {
            return kind == what && where.containsAll(place) && week < before;
        }
    }

    static final List<Row> ROWS = List.of(
            row(Kind.PREGNANCY, 14, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE,
                    SLOWER_PROGRESSION), List.of(), "pregnant, first trimester to the end of the program: no held breath, "
                    + "nothing that risks a fall or a blow", ACOG),
            row(Kind.PREGNANCY, 28, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_SUPINE, NO_IMPACT,
                    HAND_SUPPORT_FOR_REAR_RAISE, SLOWER_PROGRESSION), List.of(HEAD_BELOW_HEART),
                    "pregnant, second trimester at the end of the program: besides, no long spells on the back", ACOG),
            row(Kind.PREGNANCY, EVER, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_SUPINE, NO_IMPACT,
                    HAND_SUPPORT_FOR_REAR_RAISE, SLOWER_PROGRESSION), List.of(HEAD_BELOW_HEART, PRONE, LOADED_TWISTING),
                    "pregnant, third trimester at the end of the program, or the day it is due not known: besides, nothing face "
                    + "down and no turning against a load", ACOG),
            row(Kind.BIRTH, 6, CLEARANCE, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_IMPACT, SLOWER_PROGRESSION), List.of(),
                    "under 6 weeks since a birth: the check after birth comes first", PRACTICE),
            row(Kind.BIRTH, 12, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_IMPACT, SLOWER_PROGRESSION), List.of(),
                    "under 12 weeks since a birth: no impact, no held breath, moderate loads", PRACTICE),
            row(Kind.CAESAREAN_BIRTH, 6, CLEARANCE, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_IMPACT, SLOWER_PROGRESSION),
                    List.of(PRONE), "under 6 weeks since a caesarean birth: no heavy lifting", SURGEON),
            row(Kind.CAESAREAN_BIRTH, 16, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_IMPACT, SLOWER_PROGRESSION),
                    List.of(PRONE), "under 16 weeks since a caesarean birth: no impact, nothing face down, moderate loads",
                    PRACTICE),
            surgery(EnumSet.of(Where.ABDOMEN), 6, CLEARANCE, List.of(NO_BREATH_HOLD, MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(PRONE), "under 6 weeks since an operation on the abdomen: no heavy lifting", SURGEON),
            surgery(EnumSet.of(Where.ABDOMEN), 12, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(), "under 12 weeks since an operation on the abdomen: moderate loads, no held breath", PRACTICE),
            surgery(EnumSet.of(Where.BACK, Where.NECK), 12, CLEARANCE, List.of(NO_BREATH_HOLD, MODERATE_LOAD,
                    SLOWER_PROGRESSION), List.of(SPINE_FLEXION, TWISTING), "under 12 weeks since an operation on the spine", SURGEON),
            surgery(EnumSet.of(Where.BACK, Where.NECK), 26, LIMITS, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(LOADED_SPINE_FLEXION, LOADED_TWISTING),
                    "under 26 weeks since an operation on the spine: no bending or turning of the spine against a load", PRACTICE),
            surgery(EnumSet.of(Where.HIP, Where.KNEE, Where.ANKLE), 12, CLEARANCE, List.of(MODERATE_LOAD, NO_IMPACT,
                    HAND_SUPPORT_FOR_REAR_RAISE, SLOWER_PROGRESSION), List.of(DEEP_KNEE, DEEP_HIP),
                    "under 12 weeks since an operation on a leg", SURGEON),
            surgery(EnumSet.of(Where.HIP, Where.KNEE, Where.ANKLE), 26, LIMITS, List.of(NO_IMPACT, SLOWER_PROGRESSION),
                    List.of(DEEP_KNEE, DEEP_HIP), "under 26 weeks since an operation on a leg: no impact, no deep bend", PRACTICE),
            surgery(EnumSet.of(Where.SHOULDER), 6, CLEARANCE, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(OVERHEAD, WRIST_LOAD), "under 6 weeks since an operation on a shoulder: the arm is not raised by its own "
                    + "strength", SURGEON),
            surgery(EnumSet.of(Where.SHOULDER), 16, LIMITS, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(OVERHEAD, WRIST_LOAD), "under 16 weeks since an operation on a shoulder: nothing overhead, no weight on "
                    + "that hand", PRACTICE),
            surgery(EnumSet.of(Where.ELBOW, Where.WRIST), 6, CLEARANCE, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(WRIST_LOAD, GRIP), "under 6 weeks since an operation on an arm", SURGEON),
            surgery(EnumSet.of(Where.ELBOW, Where.WRIST), 12, LIMITS, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(WRIST_LOAD), "under 12 weeks since an operation on an arm: no weight on that hand", PRACTICE),
            surgery(EnumSet.of(Where.EYE), 12, CLEARANCE, List.of(NO_BREATH_HOLD, MODERATE_LOAD), List.of(HEAD_BELOW_HEART),
                    "recent eye surgery rules out resistance training until the surgeon agrees",
                    "E2.5: list for older adults in a Diabetes Care table; the 12 weeks are common practice"),
            surgery(EnumSet.of(Where.OTHER), 6, CLEARANCE, List.of(MODERATE_LOAD, NO_BREATH_HOLD, SLOWER_PROGRESSION), List.of(),
                    "under 6 weeks since an operation", SURGEON),
            joint(EnumSet.of(Where.HIP), 12, CLEARANCE, List.of(MODERATE_LOAD, NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE,
                    SLOWER_PROGRESSION), List.of(DEEP_HIP, TWISTING), Map.of("hip-flexion", 90.0),
                    "under 12 weeks since a new hip: no bend beyond 90°, no turn on it", "E2.14: general texts (from memory)"),
            joint(EnumSet.of(Where.HIP), EVER, LIMITS, List.of(NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE), List.of(), Map.of(),
                    "a new hip: no impact, a hand support where balance is asked", PRACTICE),
            joint(EnumSet.of(Where.KNEE), 12, CLEARANCE, List.of(MODERATE_LOAD, NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE,
                    SLOWER_PROGRESSION), List.of(KNEELING, DEEP_KNEE), Map.of("knee-flexion", 90.0),
                    "under 12 weeks since a new knee", SURGEON),
            joint(EnumSet.of(Where.KNEE), EVER, LIMITS, List.of(NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE), List.of(KNEELING),
                    Map.of("knee-flexion", 110.0), "a new knee: no impact, no kneeling on it, no bend beyond 110°", PRACTICE),
            joint(EnumSet.of(Where.ANKLE), 12, CLEARANCE, List.of(MODERATE_LOAD, NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE,
                    SLOWER_PROGRESSION), List.of(), Map.of(), "under 12 weeks since a new ankle", SURGEON),
            joint(EnumSet.of(Where.ANKLE), EVER, LIMITS, List.of(NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE), List.of(), Map.of(),
                    "a new ankle: no impact, a hand support where balance is asked", PRACTICE),
            joint(EnumSet.of(Where.SHOULDER, Where.ELBOW), 12, CLEARANCE, List.of(MODERATE_LOAD, SLOWER_PROGRESSION),
                    List.of(OVERHEAD, WRIST_LOAD), Map.of(), "under 12 weeks since a new joint of the arm", SURGEON),
            joint(EnumSet.of(Where.SHOULDER, Where.ELBOW), EVER, LIMITS, List.of(MODERATE_LOAD), List.of(OVERHEAD, WRIST_LOAD), Map.of(),
                    "a new joint of the arm: moderate loads, nothing overhead, no weight on that hand", PRACTICE),
            row(Kind.OSTEOPOROSIS, EVER, LIMITS, List.of(NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE, SLOWER_PROGRESSION),
                    List.of(SPINE_FLEXION, LOADED_SPINE_FLEXION, LOADED_TWISTING), "osteoporosis: strength and balance, but no rounding of the "
                    + "back and no turning of it against a load", BONES),
            row(Kind.HIGH_BLOOD_PRESSURE, EVER, LIMITS, List.of(NO_BREATH_HOLD, MODERATE_LOAD), List.of(HEAD_BELOW_HEART),
                    "known high blood pressure: moderate loads, no held breath", "E2.7: Sorace et al., Strength Cond J; E2.8 (from memory)"));

    private ConditionTable() { }

    private static Row row(Kind kind, int before, Weight weight, List<Limit> limits, List<RestrictionTag> avoid,
                           String because, String reference) {
        return new Row(kind, Set.of(), before, weight, limits, avoid, Map.of(), because, reference);
    }

    private static Row surgery(Set<Where> where, int before, Weight weight, List<Limit> limits, List<RestrictionTag> avoid,
                               String because, String reference) {
        return new Row(Kind.SURGERY, where, before, weight, limits, avoid, Map.of(), because, reference);
    }

    private static Row joint(Set<Where> where, int before, Weight weight, List<Limit> limits, List<RestrictionTag> avoid,
                             Map<String, Double> ranges, String because, String reference) {
        return new Row(Kind.JOINT_REPLACEMENT, where, before, weight, limits, avoid, ranges, because, reference);
    }
}
