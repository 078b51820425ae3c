package contrapposto.compose;

import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Length;
import contrapposto.setup.SetUp;
import contrapposto.wording.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What must be fetched before the first session: everything the plan's set-ups stand on, hold or pull. */
final class NeedsModel {
    private NeedsModel() { }

    /**
     * One kind of thing.
     *
     * @param kind   box, bench, wedge, an implement's word, or a word of {@code equipment.also}
     * @param values heights, the lightest and the heaviest weight, or the names of bands; empty where the kind says all
     */
    record Need(String kind, List<String> values) { }

    static List<Need> of(PlanWords words) {
        var needs = new ArrayList<Need>();
        var heights = new TreeSet<Length>();
        var wedges = new TreeSet<Length>();
        var loads = new TreeMap<Implement, TreeSet<Double>>();
        var also = new TreeSet<String>();
        for (Plan.Exercise exercise : words.plan().exercises()) {
            also.addAll(words.family(exercise.id()).levers().needs());
            for (Plan.SidePlan side : exercise.sides().values()) {
                SetUp setUp = side.solved().setUp();
                Stream.of(setUp.frontRaise(), setUp.rearRaise(), setUp.raise()).filter(h -> h.metres() > 0).forEach(heights::add);
                Stream.of(setUp.heelWedge()).filter(h -> h.metres() > 0).forEach(wedges::add);
                if (setUp.handSupport() != SetUp.Support.NONE) {
                    also.add(Values.word(setUp.handSupport()));
                }
                var weights = loads.computeIfAbsent(setUp.implement(), i -> new TreeSet<>());
                side.doses().stream().map(Plan.Dose::load).filter(OptionalDouble::isPresent).forEach(l -> weights.add(l.getAsDouble()));
            }
        }
        var units = words.units();
        var bench = words.spec().equipment().bench().filter(heights::contains);
        bench.ifPresent(heights::remove);
        addHeights(needs, "box", List.copyOf(heights), units);
        addHeights(needs, "bench", bench.stream().toList(), units);
        addHeights(needs, "wedge", List.copyOf(wedges), units);
        loads.forEach((implement, weights) -> addLoads(needs, implement, weights, units));
        needs.replaceAll(need -> need.kind().equals(Implement.BAND.word())
                ? new Need(need.kind(), words.spec().equipment().bands().stream().map(CheckedSpec.Band::name).toList()) : need);
        also.removeAll(needs.stream().map(Need::kind).toList());
        also.forEach(thing -> needs.add(new Need(thing, List.of())));
        return needs;
    }

    private static void addHeights(List<Need> needs, String kind, List<Length> heights, Units units) {
        if (!heights.isEmpty()) {
            needs.add(new Need(kind, heights.stream().map(units::length).toList()));
        }
    }

    private static void addLoads(List<Need> needs, Implement implement, TreeSet<Double> weights, Units units) {
        if (implement == Implement.BODY_WEIGHT) {
            return;
        }
        needs.add(new Need(implement.word(), Stream.of(weights).filter(w -> !w.isEmpty())
                .flatMap(w -> Stream.of(w.first(), w.last()).distinct()).map(units::mass).toList()));
    }
}
