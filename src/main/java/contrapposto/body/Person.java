package contrapposto.body;

import contrapposto.quantity.Sex;

/**
 * The body to solve for.
 *
 * @param stature  m
 * @param mass     kg
 * @param segments lengths, by default from stature ({@code SegmentTable})
 */
public record Person(double stature, double mass, Sex sex, Segments segments) { }
