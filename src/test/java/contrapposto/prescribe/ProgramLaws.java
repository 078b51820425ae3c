package contrapposto.prescribe;

import contrapposto.assess.Assessor;
import contrapposto.catalogue.HouseRules.Range;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Exercise;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Laws that every plan keeps, each as what breaks it, in words: so that a broken plan can be shown to break them. */
final class ProgramLaws {
    private static final double EXACT = 1e-9;
    private static final double SOLVED = 1e-6;

    private ProgramLaws() { }

    private static Stream<SidePlan> sides(Plan plan) {
        return plan.exercises().stream().flatMap(exercise -> exercise.sides().values().stream());
    }

    private static String at(SidePlan side, Dose dose) {
        return side.solved().family().id() + " " + side.solved().side().word() + ", week " + dose.week() + ": ";
    }

    /** Every weight is one that the client has. */
    static List<String> loadsExist(Plan plan) {
        var faults = new ArrayList<String>();
        sides(plan).forEach(side -> {
            var exist = plan.spec().equipment().weights(side.solved().family().levers().implement().getFirst()).stream().map(Mass::kilograms).toList();
            side.doses().stream().filter(dose -> dose.load().isPresent() && !exist.contains(dose.load().getAsDouble()))
                    .forEach(dose -> faults.add(at(side, dose) + dose.load().getAsDouble() + " kg is not in " + exist));
        });
        return faults;
    }

    /** The share asked never passes the band, and begins at its low end at most. */
    static List<String> sharesStayInTheBand(Plan plan) {
        var faults = new ArrayList<String>();
        sides(plan).filter(side -> side.capacity().isPresent()).forEach(side -> {
            var band = band(plan, side);
            for (var dose : side.doses()) {
                double most = dose.equals(side.doses().getFirst()) ? band.low() : band.high();
                if (dose.load().isPresent() && dose.share().orElseThrow() > most + SOLVED) {
                    faults.add(at(side, dose) + dose.share().getAsDouble() + " of capacity, at most " + most);
                }
            }
        });
        return faults;
    }

    private static Range band(Plan plan, SidePlan side) {
        var assessed = new Assessor().assess(plan.spec(), Programs.CATALOGUE.rules());
        return ShareBand.of(assessed, Programs.CATALOGUE.rules(), side.solved().family().group().countsBodyMass()).range();
    }

    /** The first weight is at most the exact one. */
    static List<String> roundingGoesDown(Plan plan) {
        return sides(plan).filter(side -> side.capacity().isPresent() && side.doses().getFirst().load().orElse(0) > side.capacity().get().exactLoad() + EXACT)
                .map(side -> at(side, side.doses().getFirst()) + "over the exact " + side.capacity().get().exactLoad()).toList();
    }

    /**
     * ACSM 2009 (B1.1): a load rises by 2 to 10 %, for legs counted with the body; measured against the heaviest week so far, so that coming
     * back from an easy week is no rise. A step may be shorter if it is 2 % heavier by itself and the next weight would leave rule, band or
     * repeats. Nothing is heavier without being called so.
     */
    static List<String> risesKeepTheRule(Plan plan) {
        var faults = new ArrayList<String>();
        sides(plan).filter(side -> side.capacity().isPresent()).forEach(side -> {
            double before = Double.NaN;
            double lifted = Double.NaN;
            for (var dose : side.doses()) {
                double share = dose.share().orElse(0);
                double rise = share / before - 1;
                boolean alone = dose.load().orElse(0) / lifted - 1 >= 0.02 - SOLVED;
                if (dose.heavier() && !(Math.max(rise, alone ? 0.02 : 0) >= 0.02 - SOLVED && rise <= 0.10 + SOLVED)) {
                    faults.add(at(side, dose) + "rises by " + rise);
                }
                if (!dose.heavier() && share > before + EXACT) {
                    faults.add(at(side, dose) + "heavier without saying so");
                }
                before = Double.isNaN(before) ? share : Math.max(before, share);
                lifted = Double.isNaN(lifted) ? dose.load().orElse(0) : Math.max(lifted, dose.load().orElse(0));
            }
        });
        return faults;
    }

    /**
     * No week of {@code after}, a plan for someone no weaker, is lighter than the same week of {@code before}. Exercises that the minutes of
     * one of them dropped are left out: more repeats take longer.
     */
    static List<String> nothingGotLighter(Plan before, Plan after) {
        var faults = new ArrayList<String>();
        for (var one : before.exercises()) {
            for (var side : after.exercises().stream().anyMatch(e -> e.id().equals(one.id())) ? one.sides().sides() : List.<Side>of()) {
                var was = one.sides().on(side);
                var is = after.exercises().stream().filter(e -> e.id().equals(one.id())).findFirst().orElseThrow().sides().on(side);
                for (int week = 0; week < was.doses().size(); week++) {
                    if (is.doses().get(week).load().orElse(0) < was.doses().get(week).load().orElse(0) - EXACT) {
                        faults.add(at(is, is.doses().get(week)) + was.doses().get(week).load().getAsDouble() + " kg became " + is.doses().get(week).load());
                    }
                }
            }
        }
        return faults;
    }

    /** What one plan gives the left, the other gives the right: doses and capacities, minutes and weekly sets. */
    static List<String> mirrored(Plan one, Plan other) {
        var faults = new ArrayList<String>();
        for (int i = 0; i < one.exercises().size(); i++) {
            Exercise here = one.exercises().get(i);
            Exercise there = other.exercises().get(i);
            for (var side : here.sides().sides()) {
                var across = there.sides().on(here.sides() instanceof Sided.Whole ? side : side.other());
                if (!here.sides().on(side).doses().equals(across.doses()) || !here.sides().on(side).capacity().equals(across.capacity())) {
                    faults.add(here.id() + " " + side.word());
                }
            }
        }
        if (!one.days().stream().map(Plan.Day::minutes).toList().equals(other.days().stream().map(Plan.Day::minutes).toList())) {
            faults.add("minutes");
        }
        one.volume().forEach((muscle, sets) -> {
            var across = other.volume().getOrDefault(muscle, new Plan.LeftRight(0, 0));
            if (sets.on(Side.LEFT) != across.on(Side.RIGHT) || sets.on(Side.RIGHT) != across.on(Side.LEFT)) {
                faults.add("weekly sets of " + muscle.word());
            }
        });
        return faults;
    }
}
