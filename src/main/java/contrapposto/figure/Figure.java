package contrapposto.figure;

import java.util.List;

/** A finished drawing: its box in mm and its marks in painting order. */
public record Figure(double width, double height, List<Mark> marks) {
    public Figure {
        marks = List.copyOf(marks);
    }
}
