package contrapposto.body;

import contrapposto.quantity.Sex;
import java.util.Map;

/**
 * The body to solve for.
 *
 * @param stature  m
 * @param mass     kg
 * @param segments lengths, by default from stature ({@link Segments#of})
 * @param table    masses and mass centres
 */
public record Person(double stature, double mass, Sex sex, Segments segments, SegmentTable table) {
    /** With Winter's masses and mass centres. */
    public Person(double stature, double mass, Sex sex, Segments segments) {
        this(stature, mass, sex, segments, SegmentTable.WINTER);
    }

    /** With the default lengths and masses for that stature. */
    public static Person of(double stature, double mass, Sex sex) {
        return new Person(stature, mass, sex, Segments.of(stature, sex));
    }

    /**
     * With measured lengths in place of the table's.
     *
     * @param measured m
     */
    public static Person of(double stature, double mass, Sex sex, SegmentTable table, Map<Segment, Double> measured) {
        Segments lengths = Segments.of(stature, sex);
        for (var each : measured.entrySet()) {
            lengths = lengths.with(each.getKey(), each.getValue());
        }
        return new Person(stature, mass, sex, lengths, table);
    }
}
