package contrapposto.yaml;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * Plain trees to YAML text: {@link Map} with string keys (kept in the order given), {@link List}, {@link String},
 * {@link Number}, {@link Boolean}. The same tree gives the same text everywhere. Maps are written in block style; a
 * map or list of a few plain values fits on its line. A {@link Double} is rounded to four decimals; a
 * {@link BigDecimal} keeps the decimals it has. A string that would be read back as something else is quoted.
 *
 * <p>The text is that of SnakeYAML's own writer, byte for byte (a test holds them together), at a tenth of its time: a
 * plan has ten thousand numbers. How a string must be written is {@link YamlScalars}' to say.
 */
public final class YamlText {
    private static final int DECIMALS = 4;
    private static final double SCALE = 1e4;
    /** Above it, scaling a number might lose digits that count. */
    private static final double QUICK = 1e9;
    /** How near to halfway between two roundings a scaled number must not be to be rounded quickly. */
    private static final double NEAR_HALF = 1e-3;
    private static final int WIDEST_FLOW = 160;
    private static final int INDENT = 2;

    private final StringBuilder out = new StringBuilder(1 << 12);
    private final YamlScalars scalars = new YamlScalars();
    /** Where a branch that hangs in the tree at several places was written first. */
    private final Map<Object, Written> written = new IdentityHashMap<>();

    /** @param indent it was written at: elsewhere its text would be another */
    private record Written(int from, int to, int indent) { }

    private YamlText() { }

    /** @throws IllegalArgumentException if the tree holds anything else, a null, or a number that is not finite */
    public static String of(Map<String, ?> tree) {
        var text = new YamlText();
        if (fitsOnItsLine(tree)) {
            text.flow(tree);
        } else {
            text.map(tree, 0);
        }
        return text.out.append('\n').toString();
    }

    /** A block map: the first key where the text now ends, the others below it. */
    private void map(Map<?, ?> map, int indent) {
        boolean first = true;
        for (var entry : map.entrySet()) {
            if (!first) {
                line(indent);
            }
            first = false;
            out.append(scalars.key(key(entry.getKey()))).append(':');
            switch (entry.getValue()) {
                case Map<?, ?> inner when !fitsOnItsLine(inner) -> {
                    line(indent + INDENT);
                    once(inner, indent + INDENT);
                }
                case List<?> inner when !fitsOnItsLine(inner) -> {
                    line(indent + INDENT);
                    once(inner, indent + INDENT);
                }
                case Object inner -> {
                    out.append(' ');
                    value(inner, false);
                }
                case null -> throw nothing();
            }
        }
    }

    private void list(List<?> list, int indent) {
        boolean first = true;
        for (var item : list) {
            if (!first) {
                line(indent);
            }
            first = false;
            out.append("- ");
            switch (item) {
                case Map<?, ?> inner when !fitsOnItsLine(inner) -> once(inner, indent + INDENT);
                case List<?> inner when !fitsOnItsLine(inner) -> {
                    out.repeat(' ', INDENT);
                    once(inner, indent + 2 * INDENT);
                }
                case Object inner -> value(inner, false);
                case null -> throw nothing();
            }
        }
    }

    /** A branch in block style, copied if its text is there already. */
    private void once(Object branch, int indent) {
        var before = written.get(branch);
        if (before != null && before.indent() == indent) {
            out.append(out, before.from(), before.to());
            return;
        }
        int from = out.length();
        switch (branch) {
            case Map<?, ?> map -> map(map, indent);
            case List<?> list -> list(list, indent);
            default -> throw new IllegalStateException("No branch: " + branch.getClass());
        }
        written.put(branch, new Written(from, out.length(), indent));
    }

    private void line(int indent) {
        out.append('\n').repeat(' ', indent);
    }

    private void flow(Object value) {
        switch (value) {
            case Map<?, ?> map -> {
                out.append('{');
                String between = "";
                for (var entry : map.entrySet()) {
                    out.append(between).append(scalars.flowKey(key(entry.getKey()))).append(": ");
                    value(entry.getValue(), true);
                    between = ", ";
                }
                out.append('}');
            }
            case List<?> list -> {
                out.append('[');
                String between = "";
                for (var item : list) {
                    out.append(between);
                    value(item, true);
                    between = ", ";
                }
                out.append(']');
            }
            default -> throw new IllegalStateException("No branch: " + value.getClass());
        }
    }

    /** What stands on one line. @param within brackets */
    private void value(Object value, boolean within) {
        switch (value) {
            case Map<?, ?> map -> flow(map);
            case List<?> list -> flow(list);
            case String text -> out.append(within ? scalars.within(text) : scalars.alone(text));
            case Boolean truth -> out.append(truth.booleanValue());
            case Number number -> number(number);
            case null -> throw nothing();
            default -> throw new IllegalArgumentException("A YAML tree holds no (" + value.getClass().getName() + ").");
        }
    }

    private static IllegalArgumentException nothing() {
        return new IllegalArgumentException("A YAML tree holds no null: leave the key out.");
    }

    private static String key(Object key) {
        if (!(key instanceof String text)) {
            throw new IllegalArgumentException("The keys of a YAML tree are strings, but was (" + key + ").");
        }
        return text;
    }

    private static boolean fitsOnItsLine(Map<?, ?> map) {
        return leaf(map.values()) && map.toString().length() <= WIDEST_FLOW;
    }

    private static boolean fitsOnItsLine(List<?> list) {
        return leaf(list) && list.toString().length() <= WIDEST_FLOW;
    }

    private static boolean leaf(Collection<?> values) {
        for (Iterator<?> each = values.iterator(); each.hasNext(); ) {
            var value = each.next();
            if (value instanceof Map<?, ?> || value instanceof List<?>) {
                return false;
            }
        }
        return true;
    }

    /** The number in digits, with a point, without exponent, never minus zero. */
    private void number(Number number) {
        switch (number) {
            case Integer whole -> out.append(whole.intValue());
            case Long whole -> out.append(whole.longValue());
            case BigDecimal exact -> out.append(exact.toPlainString());
            case Double real when Double.isFinite(real) -> real(real);
            default -> throw new IllegalArgumentException("A YAML tree holds no number such as (" + number + ").");
        }
    }

    private void real(double real) {
        double scaled = Math.abs(real) * SCALE;
        double halfway = Math.abs(scaled - Math.floor(scaled) - 0.5);
        if (scaled >= QUICK || halfway < NEAR_HALF) {
            var rounded = new BigDecimal(real).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
            out.append(rounded.signum() == 0 ? "0" : rounded.toPlainString());
            return;
        }
        long digits = (long) Math.rint(scaled);
        if (real < 0 && digits > 0) {
            out.append('-');
        }
        out.append(digits / (long) SCALE);
        int rest = (int) (digits % (long) SCALE);
        if (rest > 0) {
            out.append('.');
            for (int unit = (int) SCALE / 10; rest > 0; unit /= 10) {
                out.append((char) ('0' + rest / unit));
                rest %= unit;
            }
        }
    }
}
