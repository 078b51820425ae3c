package contrapposto.notice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What a stage returns: a value that may carry warnings, or a refusal with at least one error. */
public sealed interface Outcome<T> {
    List<Notice> notices();

    /** The stage did its work. */
    record Done<T>(T value, List<Notice> notices) implements Outcome<T> {
        public Done {
            notices = List.copyOf(notices);
        }
    }

    /** The stage could not accept its input. */
    record Refused<T>(List<Notice> notices) implements Outcome<T> {
        public Refused {
            notices = List.copyOf(notices);
            if (notices.stream().noneMatch(n -> n.severity() == Severity.ERROR)) {
                throw new IllegalArgumentException("A refusal needs at least one error.");
            }
        }
    }

    static <T> Outcome<T> done(T value) {
        return new Done<>(value, List.of());
    }

    /** {@code value} with {@code notices}: refused if one of them is an error. */
    static <T> Outcome<T> of(T value, List<Notice> notices) {
        return notices.stream().anyMatch(n -> n.severity() == Severity.ERROR)
                ? new Refused<>(notices) : new Done<>(value, notices);
    }

    /** Goes on with the next stage; notices add up, a refusal passes through. */
    default <U> Outcome<U> then(Function<? super T, Outcome<U>> next) {
        return switch (this) {
            case Refused<T>(var notices) -> new Refused<>(notices);
            case Done<T>(var value, var before) -> {
                var all = new ArrayList<>(before);
                var result = next.apply(value);
                all.addAll(result.notices());
                yield switch (result) {
                    case Done<U>(var made, var since) -> new Done<>(made, all);
                    case Refused<U> refused -> new Refused<>(all);
                };
            }
        };
    }

    default <U> Outcome<U> map(Function<? super T, ? extends U> change) {
        return then(value -> done(change.apply(value)));
    }
}
