package contrapposto.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Hulls against closed forms of elementary geometry. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CircleTest {
    @Test
    void one_circle_has_the_area_of_a_disc() {
        assertEquals(StrictMath.PI * 4, area(new Circle(new Point(3, 4), 2).outline()), .04);
    }

    @Test
    void two_equal_circles_make_a_stadium() {
        Outline hull = Circle.hull(List.of(new Circle(new Point(0, 0), 1), new Circle(new Point(5, 0), 1)));
        assertEquals(10 + StrictMath.PI, area(hull), .06);
    }

    @Test
    void corners_alone_make_the_convex_polygon_and_drop_what_lies_inside() {
        List<Circle> corners = new ArrayList<>();
        for (double[] p : new double[][] {{0, 0}, {4, 0}, {4, 3}, {0, 3}, {2, 1}, {2, 0}, {4, 1}}) {
            corners.add(new Circle(new Point(p[0], p[1]), 0));
        }
        Outline hull = Circle.hull(corners);
        assertEquals(12, area(hull), 1e-9);
        assertTrue(hull.flattened().size() <= 6, "points: " + hull.flattened());
    }

    @Test
    void unequal_circles_make_a_tapered_band() {
        // Area of the hull of circles R, r at distance d: with sin a = (R - r) / d,
        // (R + r) * d cos a + (pi/2 + a) R^2 + (pi/2 - a) r^2.
        double big = 2;
        double small = .5;
        double d = 6;
        double a = StrictMath.asin((big - small) / d);
        double expected = (big + small) * d * StrictMath.cos(a) + (StrictMath.PI / 2 + a) * big * big
                + (StrictMath.PI / 2 - a) * small * small;
        Outline hull = Circle.hull(List.of(new Circle(new Point(1, 1), small), new Circle(new Point(7, 1), big)));
        assertEquals(expected, area(hull), .04);
    }

    @Test
    void a_circle_inside_another_does_not_show() {
        Outline alone = new Circle(new Point(0, 0), 3).outline();
        assertEquals(area(alone), area(Circle.hull(List.of(new Circle(new Point(.5, 0), 1), new Circle(new Point(0, 0), 3)))), 1e-9);
    }

    @Test
    void hulls_run_counter_clockwise_like_every_other_outline() {
        assertTrue(area(Circle.hull(List.of(new Circle(new Point(0, 0), 1), new Circle(new Point(0, 5), 2),
                new Circle(new Point(5, 5), .3)))) > 0);
    }

    /** Signed, positive counter-clockwise where y runs up; curves cut into 64. */
    static double area(Outline outline) {
        List<Point> p = new ArrayList<>(List.of(outline.start()));
        for (Outline.Segment segment : outline.segments()) {
            Point from = p.getLast();
            switch (segment) {
                case Outline.Segment.Line(var end) -> p.add(end);
                case Outline.Segment.Curve(var first, var second, var end) -> {
                    for (int i = 1; i <= 64; i++) {
                        double t = i / 64.0;
                        double s = 1 - t;
                        p.add(from.times(s * s * s).along(first, 3 * s * s * t).along(second, 3 * s * t * t)
                                .along(end, t * t * t));
                    }
                }
            }
        }
        double twice = 0;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = p.get((i + 1) % p.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }
}
