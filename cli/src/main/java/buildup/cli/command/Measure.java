package buildup.cli.command;

import buildup.profiles.trace.Caliper;
import buildup.shared.document.SizeNotices;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.Reading;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads a size between features as calipers take it: {@code bottom to cove width = 1-1/4}. */
final class Measure {
    private static final Pattern FORM = Pattern.compile(
            "\\s*+(?:(.+?)\\s++)??(width|height|thickness|radius)\\s*+=\\s*+(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern TO = Pattern.compile("\\s++to\\s++");

    private Measure() {}

    /** The size, or nothing when a refusal says what is wrong with it. */
    static Optional<Caliper> read(String text, Notices notices) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            notices.add(CommandNotices.NO_MEASURE.with("text", text));
            return Optional.empty();
        }
        Reading reading = new LengthReader(LengthUnit.INCH, Map.of()).read(form.group(3));
        if (reading instanceof Reading.Bad bad) {
            notices.add(SizeNotices.of(bad).of("--measure"));
            return Optional.empty();
        }
        double size = ((Reading.Good) reading).length().toInches();
        Caliper.Across across = Stream.of(Caliper.Across.values())
                .filter(one -> one.word().equalsIgnoreCase(form.group(2)))
                .findFirst()
                .orElseThrow();
        List<String> members = Optional.ofNullable(form.group(1))
                .map(names -> List.of(TO.split(names.strip())))
                .orElse(List.of());
        if (!(size > 0) || (members.isEmpty() && across == Caliper.Across.RADIUS)) {
            notices.add(CommandNotices.NO_MEASURE.with("text", text));
            return Optional.empty();
        }
        return Optional.of(new Caliper(members, across, size));
    }
}
