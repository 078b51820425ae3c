package contrapposto.spec;

import java.util.List;

/**
 * What may stand at a key: the vocabulary in which the table of keys is written. {@link SpecReader} reads by it, the
 * published JSON Schema is made from it, suggestions come out of it; so a key is declared once.
 */
public sealed interface Value {
    /** What is written as a single word, number or text. */
    sealed interface Plain extends Value { }

    /**
     * Free text.
     *
     * @param most  characters
     * @param lines whether it may run over several lines
     */
    record Text(int most, boolean lines) implements Plain { }

    /** Letters, digits, {@code . - _}, at most 40, not starting with a dot: safe as a part of a file name. */
    record Code() implements Plain { }

    /** One of {@code words}. */
    record Word(List<String> words) implements Plain {
        public Word {
            words = List.copyOf(words);
        }
    }

    /** The id of an exercise family, or one of {@code words} besides. */
    record Exercise(List<String> words) implements Plain {
        public Exercise {
            words = List.copyOf(words);
        }
    }

    /** A bare number within {@code range}. */
    record Number(Range range, boolean whole) implements Plain { }

    /** A number with a unit, within {@code range} in the unit of its dimension. */
    record Amount(Dimension dimension, Range range) implements Plain { }

    /** A number with a unit of whichever of {@code dimensions}; what it belongs to decides later. */
    record AnyAmount(List<Dimension> dimensions) implements Plain {
        public AnyAmount {
            dimensions = List.copyOf(dimensions);
        }
    }

    /** A calendar day, {@code 2026-03-09}. */
    record Day() implements Plain { }

    /** A colour of the sRGB space, {@code #rrggbb}. */
    record Colour() implements Plain { }

    /** {@code yes} or {@code no}. */
    record Truth() implements Plain { }

    /** Systolic over diastolic, {@code 118/74}, mmHg. */
    record Pressure() implements Plain { }

    /** A list of at least one and at most {@code most} values; {@code distinct} ones may not repeat. */
    record Many(Value item, int most, boolean distinct) implements Value { }

    /** A map with fixed keys, and what holds between them. */
    record Fields(List<Key> keys, List<Between> between) implements Value {
        public Fields {
            keys = List.copyOf(keys);
            between = List.copyOf(between);
        }

        public Fields(List<Key> keys) {
            this(keys, List.of());
        }
    }

    /** What the presence of one key asks of another; whoever owns the table words the notice. */
    sealed interface Between {
        /** At least one of {@code keys} is there. */
        record AtLeastOne(List<String> keys) implements Between {
            public AtLeastOne {
                keys = List.copyOf(keys);
            }
        }

        /** {@code one} and {@code other} exclude each other. */
        record NotBoth(String one, String other) implements Between { }
    }

    /** A map whose keys are values themselves. {@code about} says what the keys are. */
    record Pairs(Value key, Value value, String about) implements Value { }

    /** A list or a map, each with a form of its own. */
    record ListOrMap(Many list, Value map) implements Value { }

    /** A map in one of several forms, told apart by their first key and, where that is shared, by its word. */
    record OneOf(List<Fields> forms) implements Value {
        public OneOf {
            forms = List.copyOf(forms);
        }
    }

    /**
     * From {@code low} to {@code high}, both included.
     *
     * @param wayOut what to do about a number outside; the reason for the limit where it has a source
     */
    record Range(double low, double high, String wayOut) {
        public boolean holds(double number) {
            return number >= low && number <= high;
        }
    }
}
