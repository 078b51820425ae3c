package contrapposto.typeset;

import java.util.Map;
import java.util.TreeMap;

/** What is kept for one document while its pages are painted. */
record Press(Links links, Bookmarks bookmarks, FieldWriter fields, FigurePainter figures, Finds finds) {
    /** Notes that the card with this key stands on the page in hand. */
    void note(String key) {
        finds.cards.putIfAbsent(key, finds.page);
    }

    /** Where things were painted. */
    static final class Finds {
        private final Map<String, Integer> cards = new TreeMap<>();
        private int page;

        void turnTo(int page) {
            this.page = page;
        }

        Map<String, Integer> cards() {
            return cards;
        }
    }
}
