package buildup.shared.document;

import buildup.shared.notice.Notice;
import java.util.Optional;

/** A decimal comma inside {@code { }} or {@code [ ]}, where YAML takes it for the end of the entry. */
final class TornNumber {

    private TornNumber() {}

    /** The number put together again, when both halves stand in one line, digit against digit. */
    static Optional<Scalar> joined(Scalar before, Scalar after) {
        String left = before.text();
        String right = after.text();
        return before.mark().line() == after.mark().line()
                        && !left.isEmpty()
                        && !right.isEmpty()
                        && isDigit(left.charAt(left.length() - 1))
                        && isDigit(right.charAt(0))
                ? Optional.of(new Scalar(left + "," + right, before.mark()))
                : Optional.empty();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Whether only the comma stands between the two; quotes or blanks would make the distance greater. */
    static boolean isCloseBehind(Scalar before, Scalar after) {
        int length = before.text().codePointCount(0, before.text().length());
        return before.mark().line() == after.mark().line()
                && before.mark().column() + length + 1 == after.mark().column();
    }

    static Notice notice(Scalar whole) {
        return DocumentNotices.TORN_NUMBER.with("text", whole.text()).at(whole.mark());
    }
}
