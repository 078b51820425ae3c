package contrapposto.setup;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessed.Target;
import contrapposto.assess.Role;
import contrapposto.body.Person;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Family.BaseKind;
import contrapposto.catalogue.Family.Sides;
import contrapposto.catalogue.Family.Works;
import contrapposto.catalogue.HouseRules;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.quantity.Side;

/**
 * "How is this family best set up for this side of this person?": all that enumerating, solving and judging need to know.
 *
 * @param side   the working side; LEFT where one symmetric set-up serves both
 * @param target of that side; of nobody in particular (role BOTH) where the set-up is symmetric
 * @param person to solve for
 * @param equipment to choose from
 * @param wish   what the coach has fixed for this side
 */
record Question(Assessed assessed, HouseRules rules, Family family, Side side, Target target, Person person,
                Restraints restraints, Equipment equipment, SetUpWish wish) {
    CheckedSpec spec() {
        return assessed.spec();
    }

    double stature() {
        return person.stature();
    }

    /** The same, were the coach's hand off the wheel. */
    Question withoutWish() {
        return new Question(assessed, rules, family, side, target, person, restraints, equipment, SetUpWish.NONE);
    }

    /** The same, if the client had this. */
    Question with(Equipment other) {
        return new Question(assessed, rules, family, side, target, person, restraints, other, wish);
    }

    boolean fixedByCoach() {
        return !wish.equals(SetUpWish.NONE);
    }

    boolean symmetric() {
        return family.sides() == Sides.BOTH;
    }

    Role role() {
        return target.role();
    }

    /** Whether a leg stands, so that a part of stance is trained. */
    boolean standsOnALeg() {
        return family.works() == Works.LEG && !symmetric() && switch (family.base()) {
            case SPLIT, STAGGERED, STEP, ONE_LEG -> true;
            case LEVEL, HALF_KNEELING, TALL_KNEELING, KNEELING_AT_SUPPORT, ALL_FOURS, PLANK, SUPINE, SIDE_LYING, SEATED ->
                    false;
        };
    }

    /** Whether the trunk folds over a shin that hardly moves, so that the foot's pressure tells the phase and not the shin. */
    boolean hinges() {
        return family.group() == CapacityGroup.HINGE;
    }

    /** Whether one foot is set ahead of the other while both carry: that turns the pelvis toward the foot behind. */
    boolean staggered() {
        return family.base() == BaseKind.STAGGERED || family.base() == BaseKind.HALF_KNEELING;
    }
}
