package contrapposto.font;

import java.util.Optional;

/** The bytes of a TrueType file and where its tables lie (OpenType specification, "Organization of an OpenType font"). */
final class Sfnt {
    private final byte[] data;

    Sfnt(byte[] data) {
        this.data = data;
    }

    /** Unsigned 16-bit number at {@code at}. */
    int u16(int at) {
        return (data[at] & 0xff) << 8 | data[at + 1] & 0xff;
    }

    /** Signed 16-bit number at {@code at}. */
    int s16(int at) {
        return (short) u16(at);
    }

    /** Unsigned 32-bit number at {@code at}; offsets in files under 2 GB fit an int. */
    int u32(int at) {
        return u16(at) << 16 | u16(at + 2);
    }

    /** Where the table with this four-letter tag starts. */
    Optional<Integer> table(String tag) {
        int tables = u16(4);
        for (int i = 0; i < tables; i++) {
            int entry = 12 + 16 * i;
            if (tag(entry).equals(tag)) {
                return Optional.of(u32(entry + 8));
            }
        }
        return Optional.empty();
    }

    /** Where a table stands that no usable font lacks. */
    int required(String tag) {
        return table(tag).orElseThrow(() -> new IllegalArgumentException("The font has no table `" + tag + "`."));
    }

    /** The four letters at {@code at}. */
    String tag(int at) {
        var letters = new StringBuilder(4);
        for (int i = 0; i < 4; i++) {
            letters.append((char) (data[at + i] & 0xff));
        }
        return letters.toString();
    }
}
