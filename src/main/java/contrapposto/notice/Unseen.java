package contrapposto.notice;

/** Characters that no one sees but that change what is read: controls, direction marks and overrides, line separators. */
public final class Unseen {
    private Unseen() { }

    /** Whether {@code code} is such a character; a line feed and a tab are controls too. */
    public static boolean is(int code) {
        boolean direction = code >= 0x202A && code <= 0x202E || code >= 0x2066 && code <= 0x2069
                || code == 0x200E || code == 0x200F || code == 0x061C;
        return direction || switch (Character.getType(code)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE -> true;
            default -> code == 0xFEFF || (code & 0xFFFE) == 0xFFFE;
        };
    }
}
