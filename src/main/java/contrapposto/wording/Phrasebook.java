package contrapposto.wording;

import contrapposto.yaml.Shipped;
import contrapposto.yaml.YamlNode;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The sentences and single words of one language, from {@code templates/LANGUAGE/reasons.yaml}: a mapping {@code sentences}
 * (key → sentence) and a mapping {@code words}. A test holds the languages against each other and against the code.
 */
public final class Phrasebook {
    /** Languages that templates, catalogue and phrasebooks speak in full, the one that everything falls back on first. */
    public static final List<String> LANGUAGES = List.of("en", "es", "de");

    private static final Map<String, Phrasebook> READ = new ConcurrentHashMap<>();

    private final String language;
    private final Map<String, Sentence> sentences;
    private final Map<String, String> words;

    private Phrasebook(String language, Map<String, String> sentences, Map<String, String> words) {
        this.language = language;
        this.words = words;
        this.sentences = new LinkedHashMap<>();
        sentences.forEach((key, written) -> this.sentences.put(key, Sentence.parse(written)));
    }

    /** @throws IllegalArgumentException if the program has no such phrasebook */
    public static Phrasebook of(String language) {
        return READ.computeIfAbsent(language, Phrasebook::read);
    }

    public String language() {
        return language;
    }

    public Set<String> keys() {
        return sentences.keySet();
    }

    public Set<String> words() {
        return words.keySet();
    }

    /** The names of the values that a sentence places. */
    public Set<String> places(String key) {
        return sentence(key).places();
    }

    /** @throws IllegalArgumentException if there is no such sentence (a bug: a test compares keys) */
    Sentence sentence(String key) {
        return Optional.ofNullable(sentences.get(key))
                .orElseThrow(() -> new IllegalArgumentException("The phrasebook (" + language + ") has no sentence (" + key + ")."));
    }

    /** The word for a kebab-case word; the word itself, with spaces, where it has no entry. */
    public String word(String word) {
        return words.getOrDefault(word, word.replace('-', ' '));
    }

    private static Phrasebook read(String language) {
        String file = "/contrapposto/templates/" + language + "/reasons.yaml";
        var root = (YamlNode.Mapping) Shipped.tree(file).orElseThrow(() -> new IllegalArgumentException("There is no phrasebook (" + file + ")."));
        return new Phrasebook(language, texts(root, "sentences"), texts(root, "words"));
    }

    private static Map<String, String> texts(YamlNode.Mapping root, String key) {
        var texts = new LinkedHashMap<String, String>();
        root.entries().stream().filter(entry -> entry.key().text().equals(key)).map(YamlNode.Entry::value)
                .flatMap(value -> ((YamlNode.Mapping) value).entries().stream())
                .forEach(entry -> texts.put(entry.key().text(), ((YamlNode.Scalar) entry.value()).text()));
        return texts;
    }
}
