package buildup.catalog.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Walks through the numbers and letters of an SVG attribute, which may stand without anything between them. */
final class Cursor {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d++\\.?\\d*+|\\.\\d++)(?:[eE][+-]?\\d++)?+");

    private final String text;
    private final Matcher number;
    private int at;

    Cursor(String text) {
        this.text = text;
        this.number = NUMBER.matcher(text);
    }

    /** Letters from the start, counted from 1. */
    int place() {
        return at + 1;
    }

    boolean atEnd() {
        skip();
        return at >= text.length();
    }

    private void skip() {
        while (at < text.length() && (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == ',')) {
            at++;
        }
    }

    /** The next letter, if a letter is next. */
    Optional<Character> letter() {
        if (atEnd() || !isLetter(text.charAt(at))) {
            return Optional.empty();
        }
        return Optional.of(text.charAt(at++));
    }

    private static boolean isLetter(char c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
    }

    /** The next number, if one is next that a drawing can hold. */
    OptionalDouble number() {
        if (atEnd() || !number.region(at, text.length()).lookingAt()) {
            return OptionalDouble.empty();
        }
        OptionalDouble read = Numerals.number(number.group());
        if (read.isPresent()) {
            at = number.end();
        }
        return read;
    }

    /** The next so many numbers, or fewer when something else comes. */
    List<Double> numbers(int most) {
        List<Double> numbers = new ArrayList<>();
        for (OptionalDouble next = OptionalDouble.empty(); numbers.size() < most; numbers.add(next.getAsDouble())) {
            next = number();
            if (next.isEmpty()) {
                break;
            }
        }
        return numbers;
    }

    /** The next 0 or 1, which need nothing behind it. */
    Optional<Boolean> flag() {
        if (atEnd() || (text.charAt(at) != '0' && text.charAt(at) != '1')) {
            return Optional.empty();
        }
        return Optional.of(text.charAt(at++) == '1');
    }

    /** The text up to a letter, which is passed; empty when it does not come. */
    Optional<String> upTo(char end) {
        skip();
        int found = text.indexOf(end, at);
        if (found < 0) {
            return Optional.empty();
        }
        String before = text.substring(at, found);
        at = found + 1;
        return Optional.of(before);
    }
}
