package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.notice.NoticeText;
import contrapposto.notice.Outcome;
import java.util.stream.Collectors;

/** For accepted inputs: a single notice, be it a warning, fails the test. */
final class Quietly {
    private Quietly() { }

    static <T> T value(Outcome<T> outcome) {
        assertEquals("", outcome.notices().stream().map(NoticeText::of).collect(Collectors.joining()));
        return ((Outcome.Done<T>) outcome).value();
    }
}
