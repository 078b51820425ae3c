package contrapposto.typeset;

import contrapposto.document.Block;
import contrapposto.document.Document;
import contrapposto.typeset.IntendedOrder.Passage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Compares the order in which a finished file is read with the intended one, word by word. What goes on on another page may say its heads once
 * more there, and two columns may go on together; nothing else may be added, left out or moved.
 */
public final class ReadingOrder {
    private static final int CONTEXT = 4;
    /** How often two columns may take turns: they go on over at most three pages. */
    private static final int MOST_TURNS = 6;

    private final List<String> spoken;
    private final Set<String> repeatable;
    private int at;
    private String wanted = "";

    private ReadingOrder(List<String> spoken, Set<String> repeatable) {
        this.spoken = spoken;
        this.repeatable = repeatable;
    }

    /** The first place where the file departs from the order of its document; empty where it does not. */
    public static Optional<String> departure(Document document, byte[] pdf) throws IOException {
        var parts = SpokenOrder.of(pdf);
        if (parts.size() != document.parts().size()) {
            return Optional.of(parts.size() + " parts in place of " + document.parts().size());
        }
        for (int i = 0; i < parts.size(); i++) {
            var part = document.parts().get(i);
            var spoken = new ArrayList<>(parts.get(i));
            String all = " " + String.join(" ", spoken) + " ";
            var intended = IntendedOrder.of(document, part, note -> all.contains(" " + String.join(" ", IntendedOrder.split(Letters.clean(note))) + " "));
            var legend = part.legend().map(l -> IntendedOrder.split(String.join(" ", l.items().stream().map(Document.Legend.Item::words).toList())
                    + " " + l.aside())).orElse(List.of());
            if (!takenOut(spoken, legend)) {
                return Optional.of(part.name() + ": the legend is not read");
            }
            var departure = new ReadingOrder(spoken, repeatable(document, part)).departure(intended);
            if (departure.isPresent()) {
                return departure.map(where -> part.name() + ": " + where);
            }
        }
        return Optional.empty();
    }

    /** The legend stands at the foot of the part's first page, wherever that ends. */
    private static boolean takenOut(List<String> spoken, List<String> legend) {
        int from = java.util.Collections.indexOfSubList(spoken, legend);
        if (from >= 0) {
            spoken.subList(from, from + legend.size()).clear();
        }
        return from >= 0;
    }

    /** Rows that head a table, headers of panels, and titles of tables with the word that says they go on. */
    private static Set<String> repeatable(Document document, Document.Part part) {
        var heads = new HashSet<String>();
        repeatable(document, part, part.blocks(), heads);
        return heads;
    }

    private static void repeatable(Document document, Document.Part part, List<Block> blocks, Set<String> heads) {
        boolean large = document.print() == Document.Print.LARGE;
        for (var block : blocks) {
            switch (block) {
                case Block.Table table -> {
                    for (var one : large ? LargeTables.of(table, Divisions.of(document.language())) : List.of(table)) {
                        heads.add(head(one.title() + ", " + document.wording().continued()));
                        var bare = new Block.Table("", one.columns(), one.head(), List.of(), List.of());
                        for (var passage : IntendedOrder.of(document, new Document.Part("", "", part.format(), List.of(bare), Optional.empty(), false), n -> true)) {
                            heads.addAll(((Passage.Words) passage).words());
                        }
                    }
                }
                case Block.Panel panel -> heads.add(head(panel.heading()));
                case Block.Opening opening -> heads.add(head(opening.safety().heading()));
                case Block.Together(var inner) -> repeatable(document, part, inner, heads);
                case Block.Columns(var split, var left, var right) -> {
                    repeatable(document, part, left, heads);
                    repeatable(document, part, right, heads);
                }
                default -> { }
            }
        }
    }

    private static String head(String text) {
        return IntendedOrder.HEAD + " " + String.join(" ", IntendedOrder.split(Letters.clean(text)));
    }

    private Optional<String> departure(List<Passage> intended) {
        for (var passage : intended) {
            boolean follows = switch (passage) {
                case Passage.Words(var words) -> follow(words);
                case Passage.Columns(var left, var between, var right) -> {
                    int start = at;
                    if (follow(left) && follow(between) && follow(right)) {
                        yield true;
                    }
                    int failed = at;
                    at = start;
                    if (turns(left, 0, join(between, right), 0, true, MOST_TURNS)) {
                        yield true;
                    }
                    at = failed;
                    yield false;
                }
            };
            if (!follows) {
                return Optional.of("read `" + around() + "`, intended `" + wanted + "`");
            }
        }
        while (at < spoken.size() && repeatable.contains(spoken.get(at))) {
            at++;
        }
        return at == spoken.size() ? Optional.empty() : Optional.of("read `" + around() + "` after the end");
    }

    private static List<String> join(List<String> first, List<String> second) {
        var joined = new ArrayList<>(first);
        joined.addAll(second);
        return joined;
    }

    private String around() {
        return String.join(" ", spoken.subList(Math.max(0, at - CONTEXT), at)) + " ▸ "
                + String.join(" ", spoken.subList(at, Math.min(spoken.size(), at + CONTEXT)));
    }

    private boolean follow(List<String> words) {
        for (String word : words) {
            if (!take(word)) {
                wanted = word;
                return false;
            }
        }
        return true;
    }

    /** Goes one word on if that is the next one, passing over heads that are said once more. */
    private boolean take(String word) {
        int before = at;
        while (at < spoken.size() && !matches(word, spoken.get(at)) && repeatable.contains(spoken.get(at))) {
            at++;
        }
        if (at < spoken.size() && !matches(word, spoken.get(at))) {
            at = before;
            return false;
        }
        if (at == spoken.size()) {
            at = before;
            return false;
        }
        at++;
        return true;
    }

    private static boolean matches(String wanted, String found) {
        return wanted.equals(found) || wanted.contains(IntendedOrder.OR) && List.of(wanted.split(IntendedOrder.OR)).contains(found);
    }

    /** Whether two columns follow that take turns, the left one first on each page. */
    private boolean turns(List<String> left, int i, List<String> right, int k, boolean onLeft, int turns) {
        int start = at;
        var column = onLeft ? left : right;
        var places = new ArrayList<Integer>(List.of(at));
        int from = onLeft ? i : k;
        int n = from;
        while (n < column.size() && take(column.get(n))) {
            n++;
            places.add(at);
        }
        boolean other = onLeft ? k == right.size() : i == left.size();
        if (n == column.size() && other) {
            return true;
        }
        for (int end = n; turns > 0 && end >= from; end--) {
            at = places.get(end - from);
            if (turns(left, onLeft ? end : i, right, onLeft ? k : end, !onLeft, turns - 1)) {
                return true;
            }
        }
        at = start;
        return false;
    }
}
