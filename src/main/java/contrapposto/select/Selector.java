package contrapposto.select;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUps;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Chooses the exercises, their days, weeks and sets: the best there is by {@link Goal}, within minutes, equipment,
 * restrictions, stages, skill and recovery. It never fails: what cannot be fitted in is left out with its reason. The
 * same set-ups give the same selection. Threads may share one.
 */
public final class Selector {
    static final int PER_SESSION = 6;
    static final int IN_ALL = 8;
    /** Training years from which a family of skill 3 may be chosen (house default). */
    private static final double SKILLED_YEARS = 1;
    private static final int SKILLED = 3;

    private final Searches searches = new Searches();

    public Selection select(SetUps setUps) {
        var best = best(setUps);
        return new Selection(best.setUps(), best.exercises(), best.days(), best.stages(), best.leftOut(), Shortfalls.of(setUps, best, this::best));
    }

    /** The selection without what it falls short of. */
    Selection best(SetUps setUps) {
        var spec = setUps.assessed().spec();
        var stages = stages(setUps);
        var frame = frame(setUps, stages);
        var scale = Scale.of(spec.aims());
        var items = new Items(setUps, stages).all();
        var barred = new LinkedHashMap<String, List<Reason>>();
        items.forEach(item -> bar(item, items, setUps).forEach(reason ->
                barred.computeIfAbsent(item.id(), id -> new ArrayList<>()).add(reason)));
        var free = items.stream().filter(i -> !barred.containsKey(i.id())).toList();
        return selection(setUps, stages, spread(setUps, frame, scale, free), scale, items, barred);
    }

    /**
     * From the start stage that was asked for, or from the first later one that fills week 1 where that one cannot: a person who
     * may not lie on the floor begins with supported work, not with two empty weeks.
     */
    private static Stages stages(SetUps setUps) {
        var asked = Stages.of(setUps.assessed().spec().schedule());
        return Arrays.stream(Stage.values()).filter(stage -> stage.compareTo(asked.start()) >= 0)
                .map(stage -> Stages.of(setUps.assessed().spec().schedule(), stage))
                .filter(stages -> Enough.in(inWeekOne(setUps, stages))).findFirst().orElse(asked);
    }

    private static List<Family.Works> inWeekOne(SetUps setUps, Stages stages) {
        var items = new Items(setUps, stages).all();
        return items.stream().filter(item -> item.window().first() == 1 && bar(item, items, setUps).isEmpty()).map(Item::works).toList();
    }

    /**
     * One exercise by itself, on one day from the first week to the last: nothing is chosen, so nothing is left out.
     *
     * @param id of a family that {@code setUps} can use
     */
    public static Selection alone(SetUps setUps, String id) {
        var stages = Stages.of(setUps.assessed().spec().schedule());
        var items = new Items(setUps, stages).all();
        var item = items.stream().filter(i -> i.id().equals(id)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Nothing is set up for (" + id + ")."));
        var chosen = new Selection.Chosen(1, id, setUps.usable().get(id), 1, stages.weeks(), item.least(),
                standIns(setUps, frame(setUps, stages), found(setUps, stages, item), items).of(item), List.of());
        return new Selection(setUps, List.of(chosen), List.of(new Selection.Day(setUps.assessed().spec().schedule().days().getFirst(),
                List.of(1))), stages.blocks(), Map.of(), List.of());
    }

    private static StandIns standIns(SetUps setUps, Frame frame, Search.Found found, List<Item> free) {
        return new StandIns(setUps, frame, Scale.of(setUps.assessed().spec().aims()), found, free);
    }

    private static Search.Found found(SetUps setUps, Stages stages, Item item) {
        return Search.best(frame(setUps, stages), Scale.of(setUps.assessed().spec().aims()), List.of(item));
    }

    /** The exercises found, and how they are spread over the days of the frame they were found in. */
    private record Week(Frame frame, Search.Found found, List<Item> order, Map<Item, Duty> duties) { }

    /**
     * Where sessions fall on neighbouring days a week holds more exercises than a session: as many as can be spread, from
     * the most the plan may have downward. What one session holds can always be done.
     */
    private Week spread(SetUps setUps, Frame frame, Scale scale, List<Item> items) {
        for (int exercises = frame.sessionsTouch() ? frame.inAll() : frame.perSession(); ; exercises--) {
            var roomy = exercises > frame.perSession() ? frame.roomFor(exercises) : frame;
            var found = searches.best(roomy, scale, items);
            var order = found.chosen().stream().sorted(Comparator.comparing((Item i) -> family(setUps, i),
                    TrainingOrder.families(Balance.first(setUps.assessed()))).thenComparingInt(Item::place)).toList();
            var duties = Days.spread(frame, order);
            if (duties.isPresent()) {
                return new Week(roomy, found, order, duties.get());
            }
        }
    }

    private static Frame frame(SetUps setUps, Stages stages) {
        var spec = setUps.assessed().spec();
        int minutes = spec.schedule().minutes();
        double ramps = setUps.catalogue().rules().rampSets() * (double) SessionTime.RAMP_SET;
        boolean movementFirst = spec.aims().isEmpty() || spec.aims().getFirst() == Aim.SIDE_TO_SIDE_MOVEMENT;
        return new Frame(stages.blocks(), spec.schedule().days(), minutes * 60 - ramps, PER_SESSION,
                Math.clamp(Math.round(minutes / 10.0), 3, PER_SESSION), IN_ALL, movementFirst ? 1 : 2, spec.aims(),
                wanted(setUps));
    }

    private static Map<Side, Map<Muscle, Integer>> wanted(SetUps setUps) {
        var wanted = new EnumMap<Side, Map<Muscle, Integer>>(Side.class);
        for (var side : Side.values()) {
            var muscles = setUps.assessed().target(side).muscles();
            var weights = new EnumMap<Muscle, Integer>(Muscle.class);
            for (int i = 0; i < muscles.size(); i++) {
                weights.put(muscles.get(i), muscles.size() - i);
            }
            wanted.put(side, weights);
        }
        return wanted;
    }

    /** Hard reasons against an exercise as such. */
    private static List<Reason> bar(Item item, List<Item> items, SetUps setUps) {
        var spec = setUps.assessed().spec();
        var reasons = new ArrayList<Reason>();
        int skill = setUps.usable().get(item.id()).values().getFirst().family().skill();
        if (spec.choices().exclude().contains(item.id())) {
            reasons.add(Reason.of("excluded", Said.of("excluded"), Source.COACH));
        }
        if (!item.pinned() && skill >= SKILLED && spec.client().trainingYears() < SKILLED_YEARS) {
            reasons.add(Reason.of("skill", Said.of("skill").number("years", spec.client().trainingYears(), 1), Source.HOUSE));
        }
        harderBefore(item, items, setUps).ifPresent(harder -> reasons.add(Reason.of("easier-form", Said.of("easier-form")
                .exercise("exercise", harder.id()).count("week", harder.window().first()), Source.HOUSE)));
        return reasons;
    }

    /** A step up of this one that the coach asked for or tested, so that it is in the plan before this one could come in. */
    private static Optional<Item> harderBefore(Item item, List<Item> items, SetUps setUps) {
        var harder = family(setUps, item).harder().stream().map(Family.Link::family).toList();
        return items.stream().filter(other -> !item.pinned() && other.pinned() && harder.contains(other.id())
                && other.stage().compareTo(item.stage()) > 0 && other.window().first() < item.window().first()).findFirst();
    }

    private static Selection selection(SetUps setUps, Stages stages, Week week, Scale scale, List<Item> items,
                                       Map<String, List<Reason>> barred) {
        var order = week.order();
        var duties = week.duties();
        var frame = frame(setUps, stages);
        var sets = Sets.fill(frame, order, duties);
        var standIns = standIns(setUps, week.frame(), week.found(), items.stream().filter(i -> !barred.containsKey(i.id())).toList());
        var chosen = new ArrayList<Selection.Chosen>();
        for (var item : order) {
            chosen.add(new Selection.Chosen(chosen.size() + 1, item.id(), setUps.usable().get(item.id()),
                    item.window().first(), item.window().last(), sets.get(item), standIns.of(item),
                    Reason.all(new WhyThis(setUps, stages).of(item), standIns.reasons(item))));
        }
        var turns = frame.turns();
        var days = new ArrayList<Selection.Day>();
        for (int d = 0; d < frame.days().size(); d++) {
            int session = turns.get(d);
            days.add(new Selection.Day(frame.days().get(d), chosen.stream()
                    .filter(c -> duties.get(order.get(c.number() - 1)).in(session)).map(Selection.Chosen::number).toList()));
        }
        return new Selection(setUps, List.copyOf(chosen), List.copyOf(days), stages.blocks(),
                leftOut(setUps, new WhyNot(week.frame(), scale, week.found()), items, barred, order), List.of());
    }

    /** In catalogue order. */
    private static Map<String, List<Reason>> leftOut(SetUps setUps, WhyNot whyNot, List<Item> items,
                                                     Map<String, List<Reason>> barred, List<Item> chosen) {
        var leftOut = new LinkedHashMap<String, List<Reason>>();
        for (var family : setUps.catalogue().families()) {
            var item = items.stream().filter(i -> i.id().equals(family.id())).findFirst();
            if (item.isEmpty()) {
                leftOut.put(family.id(), setUps.leftOut().getOrDefault(family.id(), List.of()));
            } else if (!chosen.contains(item.get())) {
                leftOut.put(family.id(), barred.containsKey(family.id()) ? List.copyOf(barred.get(family.id()))
                        : List.of(whyNot.of(item.get())));
            }
        }
        return Collections.unmodifiableMap(leftOut);
    }

    private static Family family(SetUps setUps, Item item) {
        return setUps.usable().get(item.id()).values().getFirst().family();
    }
}
