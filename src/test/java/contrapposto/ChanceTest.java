package contrapposto;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Bans by name what could make two runs differ: clocks, randomness, default locale and charset, floating-point
 * functions whose last digit may change with the platform, and collections whose order may.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ChanceTest {
    private static final Map<String, Pattern> BANNED = new LinkedHashMap<>();

    static {
        ban("a clock (pass the day in)", "\\b(Instant|LocalDate|LocalDateTime|ZonedDateTime|Clock)\\.(now|systemUTC|systemDefaultZone)\\(|\\bcurrentTimeMillis\\(");
        ban("randomness", "\\bnew Random\\(|\\bMath\\.random\\(|\\bThreadLocalRandom\\b|\\bUUID\\.randomUUID\\(");
        ban("the default locale (name Locale.ROOT)", "\\bString\\.format\\(\"|\\.formatted\\(|\\.to(Lower|Upper)Case\\(\\)|\\bLocale\\.getDefault\\(");
        ban("the default charset", "\\.getBytes\\(\\)|\\bnew FileReader\\(|\\bnew FileWriter\\(");
        ban("platform mathematics (StrictMath)", "(?<![\\w.])Math\\.(sin|cos|tan|asin|acos|atan|atan2|exp|log|log10|pow|cbrt|hypot|sinh|cosh|tanh)\\(|\\bFastMath\\b");
        ban("hash order (LinkedHashMap, TreeMap, EnumMap, List)", "\\bnew Hash(Map|Set)\\b|\\bCollectors\\.toSet\\(|[^.]\\btoSet\\(\\)|\\bnew IdentityHashMap\\b");
    }

    /** File name and line, with the reason why it is harmless there. */
    private static final Map<String, String> ALLOWED = new LinkedHashMap<>();

    static {
        String hashes = ": hash order (LinkedHashMap, TreeMap, EnumMap, List)";
        ALLOWED.put("YamlText.java" + hashes, "branches are looked up by identity, never walked");
        ALLOWED.put("ClientPlan.java" + hashes, "branches are looked up by identity, never walked");
    }

    private static void ban(String what, String pattern) {
        BANNED.put(what, Pattern.compile(pattern));
    }

    @Test
    void nothing_printed_can_depend_on_chance() throws IOException {
        var found = new TreeSet<String>();
        for (Path file : SizesTest.sources(Path.of("src/main/java"))) {
            var lines = Files.readAllLines(file);
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i);
                String code = line.strip().startsWith("*") || line.strip().startsWith("//") ? "" : line;
                for (var ban : BANNED.entrySet()) {
                    boolean excused = ALLOWED.containsKey(file.getFileName().toString() + ": " + ban.getKey());
                    if (ban.getValue().matcher(code).find() && !excused) {
                        found.add(file.getFileName() + ":" + (i + 1) + " uses " + ban.getKey() + ": " + code.strip());
                    }
                }
            }
        }
        assertEquals(Set.of(), found);
    }
}
