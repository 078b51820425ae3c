package contrapposto.typeset;

import java.util.List;

/** Slabs next to each other, tops aligned, read from left to right; each starts {@code step} mm after the last. */
record RowSlab(List<? extends Slab> slabs, double step) implements Slab {
    @Override
    public double height(double stretch) {
        return slabs.stream().mapToDouble(s -> s.height(stretch)).max().orElse(0);
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        for (int i = 0; i < slabs.size(); i++) {
            slabs.get(i).paint(sheet, x + i * step, y, stretch);
        }
    }
}
