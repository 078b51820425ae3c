package contrapposto.spec;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as messages and schemas show them. */
public final class Digits {
    private Digits() { }

    /** At most two decimals, no trailing zeros, a point, no exponent. */
    public static String of(double number) {
        var rounded = new BigDecimal(number).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** {@code standard} in {@code unit}, with its word. */
    public static String of(double standard, Unit unit) {
        return of(unit.fromStandard(standard)) + " " + unit.word();
    }
}
