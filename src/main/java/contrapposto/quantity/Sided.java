package contrapposto.quantity;

import java.util.List;
import java.util.function.Function;

/**
 * A value that belongs to the sides of the body: one value for both ({@link Whole}), one for each ({@link Each}),
 * or a value for one side alone ({@link Only}). The single vocabulary for per-side data in the whole project.
 */
public sealed interface Sided<T> {
    /** The same value serves both sides at once: an arrangement that is itself symmetric. */
    record Whole<T>(T value) implements Sided<T> { }

    /** Left and right each have their own. */
    record Each<T>(T left, T right) implements Sided<T> { }

    /** One side has a value, the other has none. */
    record Only<T>(Side side, T value) implements Sided<T> { }

    /** Whether {@code side} has a value. */
    default boolean has(Side side) {
        return switch (this) {
            case Whole<T> whole -> true;
            case Each<T> each -> true;
            case Only<T>(var own, var value) -> own == side;
        };
    }

    /** The value for {@code side}. @throws IllegalArgumentException if that side has none */
    default T on(Side side) {
        return switch (this) {
            case Whole<T>(var value) -> value;
            case Each<T>(var left, var right) -> side == Side.LEFT ? left : right;
            case Only<T>(var own, var value) -> {
                if (own != side) {
                    throw new IllegalArgumentException("Only the " + own.word() + " side has a value.");
                }
                yield value;
            }
        };
    }

    /** The distinct values, left before right; one for {@link Whole}. */
    default List<T> values() {
        return switch (this) {
            case Whole<T>(var value) -> List.of(value);
            case Each<T>(var left, var right) -> List.of(left, right);
            case Only<T>(var side, var value) -> List.of(value);
        };
    }

    /** The sides that have a value of their own, left before right; both for {@link Whole}. */
    default List<Side> sides() {
        return switch (this) {
            case Whole<T> whole -> List.of(Side.LEFT, Side.RIGHT);
            case Each<T> each -> List.of(Side.LEFT, Side.RIGHT);
            case Only<T>(var side, var value) -> List.of(side);
        };
    }

    /** The same arrangement with every value changed by {@code change}. */
    default <U> Sided<U> map(Function<? super T, ? extends U> change) {
        return switch (this) {
            case Whole<T>(var value) -> new Whole<>(change.apply(value));
            case Each<T>(var left, var right) -> new Each<>(change.apply(left), change.apply(right));
            case Only<T>(var side, var value) -> new Only<>(side, change.apply(value));
        };
    }
}
