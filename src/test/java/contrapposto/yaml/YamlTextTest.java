package contrapposto.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class YamlTextTest {
    private static Map<String, Object> tree() {
        var week = new LinkedHashMap<String, Object>();
        week.put("week", 1);
        week.put("load-kg", new BigDecimal("9.072"));
        week.put("tempo", "3-1-1");
        var tree = new LinkedHashMap<String, Object>();
        tree.put("format", 1);
        tree.put("share", 0.1 + 0.2);
        tree.put("zero", -0.00001);
        tree.put("shin-deg", new LinkedHashMap<>(Map.of("start", -4.5)));
        tree.put("weeks", List.of(week, week));
        tree.put("joints", new LinkedHashMap<>(Map.of("left-hip", List.of(0.1, 0.08, 0.9))));
        tree.put("shift", true);
        return tree;
    }

    @Test
    void writes_blocks_with_short_leaves_on_their_line() {
        assertEquals("""
                format: 1
                share: 0.3
                zero: 0
                shin-deg: {start: -4.5}
                weeks:
                  - {week: 1, load-kg: 9.072, tempo: 3-1-1}
                  - {week: 1, load-kg: 9.072, tempo: 3-1-1}
                joints:
                  left-hip: [0.1, 0.08, 0.9]
                shift: true
                """, YamlText.of(tree()));
    }

    @Test
    void does_not_depend_on_the_locale() {
        var before = Locale.getDefault();
        var expected = YamlText.of(tree());
        try {
            for (var tag : List.of("de-DE", "ar-EG", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(expected, YamlText.of(tree()));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"no", "yes", "on", "~", "null", "", " ", "1", "1.0", "1e3", "0x1F", "0o17", ".5", "2026-03-02",
        "12:30", "a: b", "a #b", "# a", "- a", "[a", "{a", "*a", "&a", "!a", "%a", "@a", "`a", "'a'", "\"a\"", "a\nb", "a\n",
        "tab\there", "Zoë Łukasik-Ødegård", "5'7\"", "true", "=", "<<", "a, b", "\u00A0", "𝄞", "very long text that goes on "
        + "and on and on and on and on and on and on and on and on and on and on and on and on and on and on and on and on"})
    void strings_come_back_as_the_same_strings(String text) {
        var yaml = YamlText.of(Map.of("k", text, text, List.of(text)));
        Object back = new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml);
        assertEquals(Map.of("k", text, text, List.of(text)), back);
    }

    @Test
    void refuses_what_no_reader_could_give_back() {
        var withNull = new ArrayList<>();
        withNull.add(null);
        assertThrows(IllegalArgumentException.class, () -> YamlText.of(Map.of("k", withNull)));
        assertThrows(IllegalArgumentException.class, () -> YamlText.of(Map.of("k", Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> YamlText.of(Map.of("k", Locale.ROOT)));
    }
}
