package contrapposto.mail;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which edition went to whom, line by line: {@code edition client state}. A line is on the disk before a message leaves,
 * so that no crash makes one go twice; an edition that began to leave and whose end nobody saw is not sent again.
 */
final class SendLog implements AutoCloseable {
    private final FileChannel file;
    private final Map<String, State> states;

    private SendLog(FileChannel file, Map<String, State> states) {
        this.file = file;
        this.states = states;
    }

    /** What is known of an edition. */
    enum State {
        /** It began to leave; if that is the last line, nobody knows whether it arrived. */
        SENDING,
        /** The server has taken it. */
        SENT,
        /** The server has not taken it. */
        REFUSED
    }

    /** Refused when it cannot be written, or another run sends. */
    static Outcome<SendLog> open(Path place) {
        try {
            var file = FileChannel.open(place, Set.of(StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS));
            return held(file) ? Outcome.done(read(file)) : refused(place, "is in use by another run", "wait until that run is done");
        } catch (IOException e) {
            return refused(place, "cannot be written: " + e.getMessage(), "without it a message might go twice; make room or name another with `--log`");
        }
    }

    private static boolean held(FileChannel file) throws IOException {
        try {
            return file.tryLock() != null;      // no lock object: another process has it
        } catch (OverlappingFileLockException sameProgram) {
            return false;
        }
    }

    private static SendLog read(FileChannel file) throws IOException {
        var bytes = ByteBuffer.allocate(Math.toIntExact(file.size()));
        while (bytes.hasRemaining() && file.read(bytes) >= 0) {
            continue;
        }
        var states = new LinkedHashMap<String, State>();
        String text = new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
        for (String line : text.lines().toList()) {
            var words = line.split(" ");
            Arrays.stream(State.values()).filter(s -> words.length == 3 && s.name().toLowerCase(Locale.ROOT).equals(words[2]))
                    .forEach(state -> states.put(words[0], state));
        }
        var log = new SendLog(file, states);
        file.position(file.size());
        if (!text.isEmpty() && !text.endsWith("\n")) {
            log.write("\n");      // closes a line that a crash has torn
        }
        return log;
    }

    Optional<State> of(Message message) {
        return Optional.ofNullable(states.get(message.edition()));
    }

    /** Notes a state; on the disk when it returns. */
    void note(Message message, State state) throws IOException {
        write(message.edition() + " " + message.client() + " " + state.name().toLowerCase(Locale.ROOT) + "\n");
        states.put(message.edition(), state);
    }

    private void write(String text) throws IOException {
        var bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            file.write(bytes);
        }
        file.force(false);
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException e) {
            return;      // its lines are on the disk already
        }
    }

    private static Outcome<SendLog> refused(Path place, String what, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error("send-log", Span.whole(place.toString()), "the send log `" + place.getFileName() + "` " + what, hint)));
    }
}
