package contrapposto.spec;

/**
 * One key of the spec.
 *
 * @param about     one phrase for editors and the spec reference
 * @param standard  what holds when the key is absent, in words; empty when nothing does
 */
public record Key(String name, boolean required, Value value, String about, String standard) {
    public static Key required(String name, Value value, String about) {
        return new Key(name, true, value, about, "");
    }

    public static Key optional(String name, Value value, String about) {
        return new Key(name, false, value, about, "");
    }

    public static Key optional(String name, Value value, String about, String standard) {
        return new Key(name, false, value, about, standard);
    }
}
