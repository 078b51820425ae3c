package contrapposto.spec;

import contrapposto.notice.Span;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A value of the spec as written: of its right type, and with its place, but not yet held against other values. What was
 * wrong in itself is not here; a notice says so.
 */
public sealed interface Written {
    Span span();

    /** Free text, a word of the table, a code or a family id. */
    record Text(Span span, String text) implements Written { }

    record Number(Span span, double number) implements Written { }

    /** A number and its unit as written; feet and inches together are inches. */
    record Amount(Span span, double number, Unit unit) implements Written {
        /** In metres, kilograms, degrees or seconds. */
        public double standard() {
            return unit.toStandard(number);
        }
    }

    record Day(Span span, LocalDate date) implements Written { }

    record Truth(Span span, boolean yes) implements Written { }

    record Pressure(Span span, int systolic, int diastolic) implements Written { }

    record Many(Span span, List<Written> items) implements Written {
        public Many {
            items = List.copyOf(items);
        }
    }

    /** A map with values as keys, in file order. */
    record Pairs(Span span, List<Pair> pairs) implements Written {
        public Pairs {
            pairs = List.copyOf(pairs);
        }
    }

    record Pair(Written key, Written value) { }

    /**
     * A map with fixed keys, in file order.
     *
     * @param span  the key it stands at
     * @param given every key that was written, whether or not its value could be read
     */
    record Fields(Span span, Map<String, Written> values, List<String> given) implements Written {
        public Fields {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
            given = List.copyOf(given);
        }

        /** Whether {@code key} was written, readable or not. */
        public boolean has(String key) {
            return given.contains(key);
        }

        public Optional<Span> spanOf(String key) {
            return Optional.ofNullable(values.get(key)).map(Written::span);
        }

        /** The map at {@code key}, or one without values. */
        public Fields fields(String key) {
            return at(key, Fields.class).orElseGet(() -> new Fields(span, Map.of(), List.of()));
        }

        /** The list at {@code key}, or an empty one. */
        public List<Written> many(String key) {
            return at(key, Many.class).map(Many::items).orElse(List.of());
        }

        /** The maps of the list at {@code key}. */
        public List<Fields> eachFields(String key) {
            return many(key).stream().map(Fields.class::cast).toList();
        }

        /** The words or texts of the list at {@code key}. */
        public List<Text> texts(String key) {
            return many(key).stream().map(Text.class::cast).toList();
        }

        /** The pairs of the open map at {@code key}, or none. */
        public List<Pair> pairs(String key) {
            return at(key, Pairs.class).map(Pairs::pairs).orElse(List.of());
        }

        public Optional<String> text(String key) {
            return at(key, Text.class).map(Text::text);
        }

        public Optional<Double> number(String key) {
            return at(key, Number.class).map(Number::number);
        }

        public Optional<Amount> amount(String key) {
            return at(key, Amount.class);
        }

        public Optional<LocalDate> day(String key) {
            return at(key, Day.class).map(Day::date);
        }

        public Optional<Boolean> truth(String key) {
            return at(key, Truth.class).map(Truth::yes);
        }

        /** The value at {@code key}. @throws ClassCastException if the table of keys gives it another type (a bug) */
        public <T extends Written> Optional<T> at(String key, Class<T> type) {
            return Optional.ofNullable(values.get(key)).map(type::cast);
        }
    }
}
