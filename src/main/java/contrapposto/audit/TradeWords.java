package contrapposto.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** The words of anatomy and training that are listed as rare: {@code LANGUAGE.txt} beside this class; what a list rests on stands at its head. */
final class TradeWords {
    private static final Map<String, Set<String>> READ = new ConcurrentHashMap<>();

    private TradeWords() { }

    /** In small letters; none for a language without a list. */
    static Set<String> of(String language) {
        return READ.computeIfAbsent(language, TradeWords::read);
    }

    private static Set<String> read(String language) {
        try (var file = TradeWords.class.getResourceAsStream(language + ".txt")) {
            return file == null ? Set.of() : new String(file.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.startsWith("#")).collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
