package contrapposto.cli;

import contrapposto.notice.Notice;
import contrapposto.notice.NoticeText;
import java.io.BufferedReader;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;

/**
 * Where a command reads and writes: answers typed, output, messages, and the folder that relative paths start from.
 *
 * @param person whether a person watches, so that progress may be shown and questions asked
 */
record Streams(BufferedReader in, PrintStream out, PrintStream err, Path here, boolean person) {
    Path path(Path given) {
        return here.resolve(given);
    }

    void notices(List<Notice> notices) {
        notices.forEach(notice -> err.print(NoticeText.of(notice)));
    }
}
