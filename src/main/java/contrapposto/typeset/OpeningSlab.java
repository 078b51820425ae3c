package contrapposto.typeset;

/** The head of page 1: the plan in the wide column, the stop signs beside it, equally high. */
record OpeningSlab(Stack plan, PanelSlab safety, double second) implements Slab {
    @Override
    public double height(double stretch) {
        return Math.max(plan.height(stretch), safety.height(stretch));
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        plan.paint(sheet, x, y, stretch);
        safety.asHighAs(height(stretch)).paint(sheet, x + second, y, stretch);
    }
}
