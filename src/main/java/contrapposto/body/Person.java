package contrapposto.body;

import contrapposto.quantity.Sex;

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
}
