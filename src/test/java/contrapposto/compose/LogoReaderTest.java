package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.figure.Drawing;
import contrapposto.figure.Mark;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.Tone;
import contrapposto.notice.Outcome;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A logo is read whole or refused with what is in the way. Path commands: SVG 1.1, chapter 8.3. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LogoReaderTest {
    private static String svg(String inside) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 20 10\">" + inside + "</svg>";
    }

    private static List<Mark> marks(String inside, double width, double height) {
        var read = LogoReader.read("logo.svg", svg(inside));
        assertEquals(List.of(), read.notices());
        return assertInstanceOf(Outcome.Done.class, read).value() instanceof Drawing drawing ? drawing.drawn(width, height, 8).marks() : List.of();
    }

    private static Outline only(String path) {
        var outlines = LogoPath.read(path);
        assertEquals(1, outlines.size());
        return outlines.getFirst();
    }

    /** Each draws the unit square from (1, 1); by the same chapter all mean the same. */
    @ParameterizedTest
    @ValueSource(strings = {"M1 1 L2 1 L2 2 L1 2 Z", "M1,1 2,1 2,2 1,2z", "m1 1 1 0 0 1-1 0z", "M1 1h1v1h-1z", "M1 1H2V2H1Z", "M 1e0 1 l 1 0 l .0 1. l -1 0 Z"})
    void all_ways_to_write_a_square_draw_the_same(String path) {
        var square = only(path);
        assertTrue(square.closed());
        assertEquals(List.of(new Point(1, 1), new Point(2, 1), new Point(2, 2), new Point(1, 2)), square.flattened());
    }

    @Test
    void a_quadratic_arc_becomes_the_cubic_that_passes_its_middle() {
        var arc = only("M0 0 Q 5 10 10 0");
        assertEquals(new Point(5, 5), arc.flattened().get(2), "the middle of a quadratic is a quarter of start and end and half of its control");
    }

    @Test
    void a_smooth_cubic_goes_on_in_the_direction_it_came() {
        var wave = only("M0 0 C 0 1 1 1 1 0 S 2 -1 2 0");
        assertEquals(new Outline.Segment.Curve(new Point(1, -1), new Point(2, -1), new Point(2, 0)), wave.segments().get(1));
    }

    @Test
    void a_circle_stays_within_three_parts_in_ten_thousand_of_its_radius() {
        for (var point : LogoPath.circle(3, 4, 2).getFirst().flattened()) {
            assertEquals(2, point.distance(new Point(3, 4)), 2 * 3e-4);
        }
    }

    @Test
    void it_fits_the_box_and_keeps_its_proportions() {
        var fill = (Mark.Fill) marks("<rect x='0' y='0' width='20' height='10'/>", 40, 40).getFirst();
        assertEquals(List.of(new Point(0, 10), new Point(40, 10), new Point(40, 30), new Point(0, 30)), fill.outlines().getFirst().flattened());
    }

    @ParameterizedTest
    @CsvSource({"#ffffff, 255, 255, 255", "#000, 0, 0, 0", "#ff0000, 255, 0, 0", "#1F4E5F, 31, 78, 95", "#0af, 0, 170, 255", "#333333, 51, 51, 51", "white, 255, 255, 255", "black, 0, 0, 0"})
    void a_colour_stays_what_it_is_and_a_grey_a_grey(String fill, int red, int green, int blue) {
        var mark = (Mark.Fill) marks("<g fill='" + fill + "'><circle cx='5' cy='5' r='2'/></g>", 20, 10).getFirst();
        assertEquals(Tone.of(red, green, blue), mark.tone());
        assertEquals(red == green && green == blue, mark.tone() instanceof Tone.Grey);
    }

    @Test
    void what_is_not_filled_is_not_drawn() {
        assertEquals(1, marks("<path d='M0 0h1v1z' fill='none'/><path d='M0 0h1v1z'/><title>A</title>", 20, 10).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"<text>Name</text>", "<path d='M0 0 A 1 1 0 0 0 1 1'/>", "<path d='M0 0 L 1'/>", "<path d='1 1'/>", "<path d='M0 0 L 1 x'/>", "<rect width='a' height='1'/>",
        "<g transform='scale(2)'><rect width='1' height='1'/></g>", "<rect width='1' height='1' style='fill:red'/>", "<rect width='1' height='1' stroke='black'/>",
        "<rect width='1' height='1' fill='url(#a)'/>", "", "<image href='x.png'/>"})
    void anything_else_is_refused_with_a_way_out(String inside) {
        var refused = assertInstanceOf(Outcome.Refused.class, LogoReader.read("logo.svg", svg(inside)));
        assertTrue(refused.notices().stream().allMatch(n -> n.toString().contains("plain SVG")), refused.notices()::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "<svg", "<svg/>", "<svg viewBox='0 0 0 1'/>", "<svg viewBox='0 0 a 1'/>", "<p viewBox='0 0 1 1'/>", "<!DOCTYPE svg [<!ENTITY a 'b'>]><svg viewBox='0 0 1 1'>&a;</svg>"})
    void what_is_no_drawing_is_refused(String text) {
        assertInstanceOf(Outcome.Refused.class, LogoReader.read("logo.svg", text));
    }
}
