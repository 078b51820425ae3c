package contrapposto.select;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.quantity.Side;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One exercise as selection sees it: what it covers, costs and asks for.
 *
 * @param place    in the catalogue, from 0; the order that breaks ties
 * @param works    legs, arms or trunk
 * @param window   first and last week it may be done in
 * @param left     muscles of the left side, 2 where a set counts fully, 1 where it counts one half
 * @param right    the same of the right side
 * @param phased   the sides whose wanted phase of stance it trains
 * @param ribs     the sides whose short ribs it opens
 * @param turning  whether it turns the trunk toward the landing side
 * @param loaded   whether a weight is held or pulled
 * @param light    leg work without a weight below the standing stage: once standing work leads it counts for little
 * @param twoSided a two-sided lift under load, which is rationed
 * @param hard     muscles that need a day's rest after it
 * @param things   what has to be fetched, in words
 * @param fetchSeconds to set up
 * @param setSeconds of one round, rest included
 * @param least    sets at least
 * @param most     sets at most
 * @param pinned   asked for by the coach, in so many words or by testing it, or wanted for {@link Balance}
 */
record Item(int place, String id, Stage stage, CapacityGroup group, Family.Works works, Window window, Map<Muscle, Integer> left,
            Map<Muscle, Integer> right, Set<Side> phased, Set<Side> ribs, boolean turning, boolean loaded, boolean light, boolean twoSided, Set<Muscle> hard,
            Set<String> things, double fetchSeconds, double setSeconds, int least, int most, boolean pinned) {
    /** Weeks, both included, from 1. */
    record Window(int first, int last) {
        boolean meets(Selection.StageWeeks block) {
            return first <= block.lastWeek() && last >= block.firstWeek();
        }
    }

    /** The same in the weeks of another, and wanted as much as that one. */
    Item inPlaceOf(Item other) {
        return new Item(place, id, stage, group, works, other.window, left, right, phased, ribs, turning, loaded, light, twoSided, hard, things, fetchSeconds,
                setSeconds, least, most, other.pinned);
    }

    Map<Muscle, Integer> on(Side side) {
        return side == Side.LEFT ? left : right;
    }

    double seconds(int sets) {
        return fetchSeconds + sets * setSeconds;
    }

    /** Muscle → half sets, from a set-up's muscle → share. */
    static Map<Muscle, Integer> halves(Map<Muscle, Double> shares) {
        var halves = new EnumMap<Muscle, Integer>(Muscle.class);
        shares.forEach((muscle, share) -> halves.merge(muscle, (int) Math.round(share * 2), Math::max));
        return halves;
    }

    /** Whether a plan with {@code other} and without this one gets better by the exchange, whatever else is in it. */
    boolean standsInFor(Item other) {
        return (pinned || !other.pinned) && (turning || !other.turning) && phased.containsAll(other.phased) && ribs.containsAll(other.ribs)
                && onFeet() == other.onFeet() && twoSided == other.twoSided && floor() == other.floor()
                && group == other.group && works == other.works && (loaded || !other.loaded) && (!light || other.light) && window.equals(other.window)
                && covers(left, other.left) && covers(right, other.right) && seconds(least) <= other.seconds(other.least)
                && fetching() <= other.fetching() && place < other.place;
    }

    private static boolean covers(Map<Muscle, Integer> own, Map<Muscle, Integer> other) {
        return other.entrySet().stream().allMatch(e -> own.getOrDefault(e.getKey(), 0) >= e.getValue());
    }

    /** Half minutes to set up and one for each thing to fetch: what it costs besides its sets. */
    long fetching() {
        return Math.round(fetchSeconds / 30) + things.size();
    }

    /** Half sets of a round that count in this block. */
    int counted(int halves, Selection.StageWeeks block) {
        return light && standing(block) ? Math.min(1, halves) : halves;
    }

    /** The sides whose phase it trains as this block wants it. */
    Set<Side> phasedIn(Selection.StageWeeks block) {
        return light && standing(block) ? Set.of() : phased;
    }

    private static boolean standing(Selection.StageWeeks block) {
        return block.stage().compareTo(Stage.STANDING) >= 0;
    }

    boolean onFeet() {
        return stage.compareTo(Stage.STANDING) >= 0;
    }

    boolean floor() {
        return stage == Stage.FLOOR;
    }
}
