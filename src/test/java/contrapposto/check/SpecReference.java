package contrapposto.check;

import contrapposto.spec.Digits;
import contrapposto.spec.Dimension;
import contrapposto.spec.Key;
import contrapposto.spec.Unit;
import contrapposto.spec.Value;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The table of keys as a page to look things up in: every key, what it takes, what holds without it. */
final class SpecReference {
    private final StringBuilder page = new StringBuilder();

    private SpecReference() { }

    static String of(Value.Fields table) {
        var reference = new SpecReference();
        reference.page.append("""
                # The program spec, key by key

                Made from the table of keys that the reader itself goes by (`check.ProgramKeys`); a test keeps it in step. Editors find the same in
                [program.schema.json](program.schema.json), which holds returns, packs, house rules and families too and knows them by their keys: write
                `# yaml-language-server: $schema=` and its path on the first line of a file. A spec to begin with comes from `contrapposto new`; what is said
                about a mistake, from [notices.md](notices.md).

                A number with a unit is written `171 cm`, `5 ft 7 in`, `64 kg`, `24 deg`, `30 s`; a number without its unit is refused, never guessed.
                Keys in **bold** must be there. Days are written `2026-03-09`.
                """);
        var single = table.keys().stream().filter(key -> !(key.value() instanceof Value.Fields)).toList();
        reference.section("At the top", "", single);
        for (var key : table.keys()) {
            if (key.value() instanceof Value.Fields fields) {
                reference.section(key.name(), key.name() + ".", fields.keys());
            }
        }
        return reference.page.toString();
    }

    private void section(String title, String path, List<Key> keys) {
        page.append("\n## ").append(title).append("\n| key | what | takes | without it |\n|---|---|---|---|\n");
        rows(path, keys);
    }

    private void rows(String path, List<Key> keys) {
        for (var key : keys) {
            row(path + key.name(), key);
            inside(path + key.name(), key.value());
        }
    }

    private void row(String path, Key key) {
        var name = "`" + path + "`";
        page.append("| ").append(key.required() ? "**" + name + "**" : name).append(" | ").append(key.about()).append(" | ").append(takes(key.value()))
                .append(" | ").append(key.required() ? "refused" : key.standard().isEmpty() ? "–" : key.standard()).append(" |\n");
    }

    private void inside(String path, Value value) {
        switch (value) {
            case Value.Plain plain -> { }
            case Value.Fields fields -> rows(path + ".", fields.keys());
            case Value.Many many -> inside(path + "[]", many.item());
            case Value.Pairs pairs -> inside(path + ".KEY", pairs.value());
            case Value.ListOrMap either -> {
                inside(path, either.list());
                inside(path, either.map());
            }
            case Value.OneOf oneOf -> oneOf.forms().forEach(form -> inside(path, form));
        }
    }

    private static String takes(Value value) {
        return switch (value) {
            case Value.Text text -> "text" + (text.lines() ? ", lines allowed" : "") + ", at most " + text.most() + " characters";
            case Value.Code code -> "letters, digits, `.` `-` `_`, at most 40, not beginning with a dot";
            case Value.Colour colour -> "red, green and blue in six hexadecimal digits, `\"#1f4e5f\"`";
            case Value.Word word -> word.words().stream().map(w -> "`" + w + "`").collect(Collectors.joining(", "));
            case Value.Exercise exercise -> exercise.words().isEmpty() ? "an exercise id"
                    : exercise.words().stream().map(w -> "`" + w + "`").collect(Collectors.joining(", ")) + ", or an exercise id";
            case Value.Number number -> (number.whole() ? "whole number" : "number") + " from " + Digits.of(number.range().low()) + " to "
                    + Digits.of(number.range().high());
            case Value.Amount amount -> amount.dimension().name().toLowerCase(Locale.ROOT) + " from " + limit(amount.dimension(), amount.range().low()) + " to "
                    + limit(amount.dimension(), amount.range().high());
            case Value.AnyAmount any -> any.dimensions().stream().map(d -> d.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", ")) + ", as the measure asks";
            case Value.Day day -> "a day";
            case Value.Truth truth -> "`yes`, `no`";
            case Value.Pressure pressure -> "mmHg, such as `118/74`";
            case Value.Many many -> (many.distinct() ? "list without repeats" : "list") + ", at most " + many.most()
                    + (many.item() instanceof Value.Plain ? ": " + takes(many.item()) : "");
            case Value.Fields fields -> "a map";
            case Value.Pairs pairs -> "a map: " + pairs.about() + (pairs.value() instanceof Value.Plain ? "; each " + takes(pairs.value()) : "");
            case Value.ListOrMap either -> takes(either.list()) + "; or a map";
            case Value.OneOf oneOf -> "a map in one of " + oneOf.forms().size() + " forms";
        };
    }

    private static String limit(Dimension dimension, double standard) {
        return Digits.of(standard, Unit.of(dimension).getFirst());
    }
}
