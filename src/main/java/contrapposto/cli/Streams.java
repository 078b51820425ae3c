package contrapposto.cli;

import contrapposto.notice.Notice;
import contrapposto.notice.NoticeText;
import contrapposto.notice.Outcome;
import java.io.BufferedReader;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Where a command reads and writes: answers typed, output, messages, and the folder that relative paths start from.
 *
 * @param person whether a person watches, so that progress may be shown and questions asked
 */
record Streams(BufferedReader in, PrintStream out, PrintStream err, Path here, boolean person) {
    Path path(Path given) {
        return here.resolve(given);
    }

    /** Shows the notices of {@code outcome} and works on; what was refused ends with {@link Console#NOTHING}. */
    <T> int with(Outcome<T> outcome, ToIntFunction<T> work) {
        notices(outcome.notices());
        return switch (outcome) {
            case Outcome.Refused<T> refused -> Console.NOTHING;
            case Outcome.Done<T>(var value, var notices) -> work.applyAsInt(value);
        };
    }

    void notices(List<Notice> notices) {
        notices.forEach(notice -> err.print(NoticeText.of(notice)));
    }
}
