package contrapposto.setup;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What this client has, asked in the words of a set-up. A chair is a hand support, never a foot raise. */
record Gear(Equipment equipment, double stature, HouseRules.Placing placing) {
    static Gear of(Question q) {
        return new Gear(q.equipment(), q.stature(), q.rules().placing());
    }

    /** Heights that may go under a front foot, ascending. */
    List<Length> frontRaises() {
        return equipment.boxes().stream().filter(h -> h.metres() <= placing.frontRaise() * stature).toList();
    }

    /** Heights that may go under a rear foot, ascending. */
    List<Length> rearRaises() {
        return raises(0, placing.rearRaise() * stature);
    }

    /** Heights of boxes and the bench between two limits in metres, ascending, without repeats. */
    List<Length> raises(double from, double to) {
        return Stream.concat(equipment.boxes().stream(), equipment.bench().stream()).distinct().sorted()
                .filter(h -> h.metres() >= from - 1e-9 && h.metres() <= to + 1e-9).toList();
    }

    /** The steadiest thing to hold on to that is there. */
    SetUp.Support support() {
        return equipment.also().contains("rail") ? SetUp.Support.RAIL
                : equipment.also().contains("chair") ? SetUp.Support.CHAIR
                : equipment.also().contains("wall") ? SetUp.Support.WALL : SetUp.Support.NONE;
    }

    /** What the family cannot be done without and the client has not. */
    Optional<Reason> missing(Family family) {
        return family.levers().needs().stream().sorted().filter(word -> !has(word)).findFirst()
                .map(word -> Reason.of("equipment", Said.of("equipment/needs").word("thing", word), Source.PRACTICE))
                .or(() -> needsRaise(family) && raises(family).isEmpty()
                        ? Optional.of(Reason.of("equipment", Said.of("equipment/raise").length("from", family.levers().raise().from())
                                .length("to", family.levers().raise().to()), Source.PRACTICE))
                        : Optional.empty());
    }

    private boolean has(String word) {
        return switch (word) {
            case "bench" -> equipment.bench().isPresent();
            case "box" -> !equipment.boxes().isEmpty();
            case "cable" -> equipment.cable().isPresent();
            case "floor" -> true;
            default -> equipment.also().contains(word);
        };
    }

    static boolean needsRaise(Family family) {
        return family.levers().raise().to() > 0 && family.levers().raise().from() > 0;
    }

    /** Heights for what the family rests on: a seat, a support, a step. */
    List<Length> raises(Family family) {
        return raises(family.levers().raise().from(), family.levers().raise().to());
    }

    /**
     * Whether {@code implement} can be held in one hand, both hands or one in each; a weight heavier than
     * {@code limit} kg for one hand does not count.
     */
    boolean loads(Implement implement, Family.LoadHand hand, double limit) {
        boolean any = implement == Implement.BODY_WEIGHT || implement == Implement.BAND && equipment.also().contains("band")
                || lightest(implement).filter(m -> perHand(m, hand) <= limit).isPresent();
        return any && switch (implement) {
            case BODY_WEIGHT -> false;
            case DUMBBELL -> hand != Family.LoadHand.EACH || !equipment.singleDumbbells();
            case KETTLEBELL -> hand != Family.LoadHand.EACH;
            case BARBELL -> hand == Family.LoadHand.BOTH;
            case CABLE, BAND -> hand == Family.LoadHand.SAME || hand == Family.LoadHand.OPPOSITE;
        };
    }

    private Optional<Mass> lightest(Implement implement) {
        return equipment.weights(implement).stream().findFirst();
    }

    private static double perHand(Mass mass, Family.LoadHand hand) {
        return hand == Family.LoadHand.BOTH ? mass.kilograms() / 2 : mass.kilograms();
    }

    /** Something that could be fetched, and the equipment with it added. */
    record Thing(Said words, Equipment equipment) { }

    /** Small things that are wholly missing, in the order in which they are suggested. */
    List<Thing> helpful() {
        var e = equipment;
        var things = new ArrayList<Thing>();
        if (frontRaises().isEmpty()) {
            things.add(new Thing(Said.of("thing/step").length("from", 0.10).length("to", 0.15), with(e, List.of(Length.ofCentimetres(10),
                    Length.ofCentimetres(15)), e.bench(), e.wedges(), e.dumbbells())));
        }
        if (raises(placing.lacesFrom(), placing.rearRaise() * stature).isEmpty()) {
            var seat = Length.ofCentimetres(5 * StrictMath.floor(placing.rearRaise() * stature * 100 / 5));
            things.add(new Thing(Said.of("thing/bench").length("height", seat.metres()),
                    with(e, e.boxes(), Optional.of(seat), e.wedges(), e.dumbbells())));
        }
        if (e.wedges().isEmpty()) {
            things.add(new Thing(Said.of("thing/wedge").length("from", 0.02).length("to", 0.03), with(e, e.boxes(), e.bench(),
                    List.of(Length.ofCentimetres(2.5)), e.dumbbells())));
        }
        if (e.dumbbells().isEmpty() && e.kettlebells().isEmpty()) {
            things.add(new Thing(Said.of("thing/dumbbell"), with(e, e.boxes(), e.bench(), e.wedges(), List.of(new Mass(8)))));
        }
        return List.copyOf(things);
    }

    private static Equipment with(Equipment e, List<Length> boxes, Optional<Length> bench, List<Length> wedges,
                                  List<Mass> dumbbells) {
        return new Equipment(dumbbells, e.singleDumbbells(), e.kettlebells(), e.bars(), e.cable(),
                Stream.concat(e.boxes().stream(), boxes.stream()).distinct().sorted().toList(), bench, wedges, e.also(), e.bands());
    }
}
