package contrapposto.select;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.quantity.Side;
import contrapposto.select.Item.Window;
import contrapposto.select.Selection.StageWeeks;
import java.time.DayOfWeek;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Items put together by hand: standing work of all eight weeks, two minutes a set, half a minute to fetch, that covers nothing until told what. */
final class Made {
    private final int place;
    private Stage stage = Stage.STANDING;
    private CapacityGroup group = CapacityGroup.NONE;
    private Window window = new Window(1, 8);
    private final Map<Muscle, Integer> left = new EnumMap<>(Muscle.class);
    private final Map<Muscle, Integer> right = new EnumMap<>(Muscle.class);
    private final Set<Side> phased = EnumSet.noneOf(Side.class);
    private final Set<Side> ribs = EnumSet.noneOf(Side.class);
    private Family.Works works = Family.Works.LEG;
    private boolean turning;
    private boolean loaded;
    private boolean light;
    private boolean twoSided;
    private final Set<Muscle> hard = EnumSet.noneOf(Muscle.class);
    private final Set<String> things = new TreeSet<>();
    private double fetch = 30;
    private double set = 120;
    private int least = 2;
    private int most = 3;
    private boolean pinned;

    private Made(int place) {
        this.place = place;
    }

    static Made at(int place) {
        return new Made(place);
    }

    Made stage(Stage changed) {
        stage = changed;
        return this;
    }

    Made group(CapacityGroup changed) {
        group = changed;
        return this;
    }

    Made weeks(int first, int last) {
        window = new Window(first, last);
        return this;
    }

    Made works(Family.Works kind) {
        works = kind;
        return this;
    }

    Made left(Muscle muscle, int halves) {
        left.put(muscle, halves);
        return this;
    }

    Made right(Muscle muscle, int halves) {
        right.put(muscle, halves);
        return this;
    }

    Made phased(Side side) {
        phased.add(side);
        return this;
    }

    Made ribs(Side side) {
        ribs.add(side);
        return this;
    }

    Made turning() {
        turning = true;
        return this;
    }

    Made loaded() {
        loaded = true;
        return this;
    }

    Made light() {
        light = true;
        return this;
    }

    Made twoSided() {
        twoSided = true;
        return this;
    }

    Made hard(Muscle... muscles) {
        hard.addAll(List.of(muscles));
        return this;
    }

    Made thing(String thing) {
        things.add(thing);
        return this;
    }

    Made seconds(double fetching, double aSet) {
        fetch = fetching;
        set = aSet;
        return this;
    }

    Made sets(int from, int to) {
        least = from;
        most = to;
        return this;
    }

    Made pinned() {
        pinned = true;
        return this;
    }

    Item item() {
        return new Item(place, "family-" + place, stage, group, works, window, left, right, phased, ribs, turning, loaded, light, twoSided, hard, things, fetch, set, least, most, pinned);
    }

    static final List<DayOfWeek> APART = List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY);
    /** Monday and Wednesday do one session, Tuesday the other. */
    static final List<DayOfWeek> TOUCHING = List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY);

    /** Eight standing weeks of so many seconds a session, four exercises at most, one two-sided lift; glutes wanted most on the left, thighs on the right. */
    static Frame frame(List<DayOfWeek> days, double seconds) {
        return new Frame(List.of(new StageWeeks(Stage.STANDING, 1, 8)), days, seconds, 4, 3, 6, 1, List.of(Aim.SIDE_TO_SIDE_MOVEMENT),
                Map.of(Side.LEFT, Map.of(Muscle.GLUTEUS_MAXIMUS, 2, Muscle.CALF, 1), Side.RIGHT, Map.of(Muscle.QUADRICEPS, 2, Muscle.CALF, 1)));
    }
}
