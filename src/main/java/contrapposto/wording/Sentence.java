package contrapposto.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * How one language says a statement: text with places for its values. The places are written as in the ICU message format,
 * of which this is a part: {@code {side}}, {@code {side, select, left {izquierdo} other {derecho}}},
 * {@code {sets, plural, one {# set} other {# sets}}}. English, Spanish and German all have the plurals one and other.
 */
final class Sentence {
    private final List<Piece> pieces;

    private Sentence(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
    }

    private sealed interface Piece {
        record Plain(String text) implements Piece { }

        record Place(String name) implements Piece { }

        record Choice(String name, boolean plural, Map<String, Sentence> cases) implements Piece { }
    }

    /** @throws IllegalArgumentException if a brace is not closed, or a choice has no {@code other} */
    static Sentence parse(String written) {
        var reader = new Reader(written);
        var sentence = new Sentence(reader.pieces(Optional.empty()));
        if (reader.at < written.length()) {
            throw new IllegalArgumentException("A brace closes nothing in (" + written + ").");
        }
        return sentence;
    }

    /** The names of its places. */
    Set<String> places() {
        var names = new TreeSet<String>();
        for (Piece piece : pieces) {
            switch (piece) {
                case Piece.Plain plain -> { }
                case Piece.Place(var name) -> names.add(name);
                case Piece.Choice(var name, var plural, var cases) -> {
                    names.add(name);
                    cases.values().forEach(c -> names.addAll(c.places()));
                }
            }
        }
        return names;
    }

    /**
     * @param words  what stands at a place
     * @param chosen the word or number a choice goes by
     */
    String fill(Function<String, String> words, Function<String, String> chosen) {
        var text = new StringBuilder();
        for (Piece piece : pieces) {
            text.append(switch (piece) {
                case Piece.Plain(var plain) -> plain;
                case Piece.Place(var name) -> words.apply(name);
                case Piece.Choice(var name, var plural, var cases) -> {
                    String by = plural ? chosen.apply(name).equals("1") ? "one" : "other" : chosen.apply(name);
                    yield Optional.ofNullable(cases.get(by)).orElseGet(() -> cases.get("other")).fill(words, chosen);
                }
            });
        }
        return text.toString();
    }

    private static final class Reader {
        private final String written;
        private int at;

        Reader(String written) {
            this.written = written;
        }

        /** Up to the end or an unopened closing brace. @param counted the name that {@code #} stands for */
        List<Piece> pieces(Optional<String> counted) {
            var pieces = new ArrayList<Piece>();
            var plain = new StringBuilder();
            while (at < written.length() && written.charAt(at) != '}') {
                char letter = written.charAt(at++);
                if (letter == '{' || letter == '#' && counted.isPresent()) {
                    pieces.add(new Piece.Plain(plain.toString()));
                    plain.setLength(0);
                    pieces.add(letter == '{' ? place() : new Piece.Place(counted.get()));
                } else {
                    plain.append(letter);
                }
            }
            pieces.add(new Piece.Plain(plain.toString()));
            return pieces;
        }

        private Piece place() {
            String name = until(",}").strip();
            if (written.charAt(at++) == '}') {
                return new Piece.Place(name);
            }
            boolean plural = until(",").strip().equals("plural");
            at++;
            var cases = new LinkedHashMap<String, Sentence>();
            for (String key = until("{}").strip(); written.charAt(at) == '{'; key = until("{}").strip()) {
                at++;
                cases.put(key, new Sentence(pieces(plural ? Optional.of(name) : Optional.empty())));
                until("}");
                at++;
            }
            at++;
            if (!cases.containsKey("other")) {
                throw new IllegalArgumentException("The choice of (" + name + ") has no other in (" + written + ").");
            }
            return new Piece.Choice(name, plural, cases);
        }

        /** The text up to one of {@code ends}, which is not passed. */
        private String until(String ends) {
            int from = at;
            while (at < written.length() && ends.indexOf(written.charAt(at)) < 0) {
                at++;
            }
            if (at == written.length()) {
                throw new IllegalArgumentException("A brace is not closed in (" + written + ").");
            }
            return written.substring(from, at);
        }
    }
}
