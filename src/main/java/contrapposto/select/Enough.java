package contrapposto.select;

import contrapposto.catalogue.Family;
import java.util.List;

/** What a week of training is expected to hold (house): a day with fewer exercises, or a week of one kind of work alone, is thin. */
final class Enough {
    static final int EXERCISES = 3;
    private static final int KINDS = 2;

    private Enough() { }

    /** @param works what each exercise of one week works: legs, arms or trunk */
    static boolean in(List<Family.Works> works) {
        return works.size() >= EXERCISES && works.stream().distinct().count() >= KINDS;
    }
}
