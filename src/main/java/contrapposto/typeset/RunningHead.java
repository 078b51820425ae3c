package contrapposto.typeset;

/** The title of a page that goes on: not read a second time. */
record RunningHead(HeadingSlab title) implements Slab {
    @Override
    public double height(double stretch) {
        return title.height(stretch);
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        sheet.tags().artifact("Pagination", () -> {
            for (int i = 0; i < title.lines().size(); i++) {
                sheet.letters(title.lines().get(i), title.style(), x, y + i * title.style().line(), sheet.desk().heads());
            }
        });
    }
}
