package contrapposto.typeset;

import contrapposto.document.Document.Print;

/**
 * The sizes of one print, by what the text is for.
 *
 * @param name      the person's name, the title of a letter
 * @param title     page titles, day names, names of exercises
 * @param panel     header of the safety box; {@code notice} the header of a smaller box
 * @param lead      the plan in three sentences
 * @param safety    points of the safety box; {@code alarm} their headings
 * @param letter    the side's letter in the bar of a card; {@code bar} the words in it
 * @param day       the day over a log
 * @param heading   part headings; {@code number} week numbers and kilograms
 * @param intro     the line above the name
 * @param body      everything else
 * @param spacing   what gaps and lines are multiplied with
 */
record TypeScale(Style name, Style title, Style panel, Style notice, Style lead, Style safety, Style alarm,
                 Style letter, Style bar, Style order, Style day, Style heading, Style number, Style intro,
                 Style body, double spacing) {

    private static final TypeScale PLAIN = new TypeScale(new Style(26, 10), new Style(17, 8), new Style(17, 10),
            new Style(14, 8), new Style(14, 6.5), new Style(12, 5.5), new Style(13, 6), new Style(15, 8),
            new Style(12, 8), new Style(12, 8), new Style(14, 8), new Style(12, 5), new Style(12, 5),
            new Style(12, 5.5), new Style(11, 5), 1);

    /** For the pocket sheet: the plain print's sizes on lines as close as their letters allow. */
    static final TypeScale FOLDED = new TypeScale(new Style(17, 8), new Style(14, 7), new Style(14, 7),
            new Style(13, 6.5), new Style(12, 5), new Style(11, 4.5), new Style(12, 5), new Style(15, 8),
            new Style(12, 8), new Style(12, 8), new Style(14, 7), new Style(12, 4.8), new Style(12, 4.8),
            new Style(11, 4.5), new Style(11, 4.5), 0.75);

    private static final TypeScale LARGE = new TypeScale(new Style(36, 15), new Style(28, 14), new Style(26, 15),
            new Style(22, 12), new Style(22, 10), new Style(19, 8.5), new Style(21, 10), new Style(24, 14),
            new Style(20, 14), new Style(18, 14), new Style(22, 12), new Style(20, 9), new Style(19, 8),
            new Style(18, 8), new Style(18, 8), 1.6);

    static TypeScale of(Print print) {
        return switch (print) {
            case PLAIN -> PLAIN;
            case LARGE -> LARGE;
        };
    }
}
