package buildup.engine.hold.season;

import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Quantity;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code seasons:}. What is wrong with an entry is refused, and the entry left out. */
final class SeasonReader {
    private static final Pattern PERCENT = Pattern.compile("(\\d{1,4}(?:\\.\\d{1,9})?) ?%?");
    private static final Pattern DEGREES = Pattern.compile("(-?\\d{1,4}(?:\\.\\d{1,9})?) ?\\u00B0? ?([FCfc]?)");

    /** Above it wood is green and keeps its size, %: fiber saturation, Wood Handbook ch. 13, equation 13-3. */
    private static final double GREEN = 30;

    /** Where the handbook's table begins and ends; from memory. */
    private static final double COLDEST = 30;

    private static final double HOTTEST = 270;
    private static final double DRIEST = 0.05;
    private static final double DAMPEST = 0.95;

    /** More are not a year. */
    private static final int MOST = 24;

    private final boolean metric;
    private final Notices notices;

    private SeasonReader(boolean metric, Notices notices) {
        this.metric = metric;
        this.notices = notices;
    }

    static List<Season> read(Stack stack, Fields root, Notices notices) {
        List<Fields> entries = root.list("seasons");
        if (entries.size() > MOST) {
            notices.add(SeasonNotices.TOO_MANY
                    .with("count", Figure.count(entries.size()))
                    .with("most", Figure.count(MOST))
                    .at(root.mark("seasons")));
            return List.of();
        }
        SeasonReader reader = new SeasonReader(stack.unit().isMetric(), notices);
        List<Season> seasons = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (int i = 0; i < entries.size(); i++) {
            Fields entry = entries.get(i);
            String name = entry.text("name").orElse("season " + (i + 1));
            if (!names.add(name)) {
                notices.add(SeasonNotices.SAME_NAME.with("season", name).at(entry.mark("name")));
            }
            reader.season(entry, name).ifPresent(seasons::add);
        }
        if (entries.size() == 1 && seasons.size() == 1) {
            notices.add(SeasonNotices.ONE_ALONE
                    .with("season", seasons.get(0).name())
                    .at(seasons.get(0).mark()));
        }
        return List.copyOf(seasons);
    }

    private Optional<Season> season(Fields fields, String name) {
        boolean wet = fields.has("moisture");
        boolean warm = fields.has("temperature");
        boolean humid = fields.has("humidity");
        boolean air = warm || humid;
        if (wet == air || (air && !(warm && humid))) {
            notices.add((wet && air ? SeasonNotices.TWO_MOISTURES : SeasonNotices.NO_MOISTURE)
                    .with("season", name)
                    .at(fields.mark()));
            return Optional.empty();
        }
        return wet ? byMoisture(fields, name) : byAir(fields, name);
    }

    private Optional<Season> byMoisture(Fields fields, String name) {
        OptionalDouble moisture = percent(fields, "moisture", GREEN, SeasonNotices.NOT_A_MOISTURE, name);
        return moisture.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        told(new Season(name, moisture.getAsDouble(), Optional.empty(), fields.mark("moisture"))));
    }

    private Optional<Season> byAir(Fields fields, String name) {
        OptionalDouble humidity = percent(fields, "humidity", 100, SeasonNotices.NOT_A_HUMIDITY, name);
        Optional<Matcher> degrees = degrees(fields, name);
        if (humidity.isEmpty() || degrees.isEmpty()) {
            return Optional.empty();
        }
        String scale = degrees.get().group(2);
        Air air = new Air(
                Double.parseDouble(degrees.get().group(1)),
                scale.isEmpty() ? metric : scale.equalsIgnoreCase("C"),
                humidity.getAsDouble() / 100);
        if (air.fahrenheit() < COLDEST
                || air.fahrenheit() > HOTTEST
                || air.humidity() < DRIEST
                || air.humidity() > DAMPEST) {
            notices.add(SeasonNotices.BEYOND_THE_TABLE
                    .with("season", name)
                    .with("air", air.words())
                    .at(fields.mark("humidity")));
        }
        return Optional.of(told(new Season(name, air.moisture(), Optional.of(air), fields.mark("humidity"))));
    }

    private Season told(Season season) {
        if (!season.usual()) {
            notices.add(SeasonNotices.OTHER_EQUATION
                    .with("season", season.name())
                    .with("moisture", Figure.of(Quantity.MOISTURE, season.moisture()))
                    .at(season.mark()));
        }
        return season;
    }

    private Optional<Matcher> degrees(Fields fields, String name) {
        Optional<Scalar> text = fields.scalar("temperature");
        Optional<Matcher> matcher = text.map(
                        scalar -> DEGREES.matcher(scalar.text().strip()))
                .filter(Matcher::matches)
                .filter(found -> sensible(found));
        if (text.isPresent() && matcher.isEmpty()) {
            notices.add(SeasonNotices.NOT_A_TEMPERATURE
                    .with("season", name)
                    .with("text", text.get().text())
                    .at(text.get().mark()));
        }
        return matcher;
    }

    /** The equation is no law of nature: far out it gives nonsense. */
    private boolean sensible(Matcher found) {
        boolean celsius = found.group(2).isEmpty() ? metric : found.group(2).equalsIgnoreCase("C");
        double fahrenheit = new Air(Double.parseDouble(found.group(1)), celsius, 0).fahrenheit();
        return fahrenheit >= COLDEST - 70 && fahrenheit <= HOTTEST;
    }

    /** A number of percent from 0 up. */
    private OptionalDouble percent(Fields fields, String key, double most, Kind fault, String name) {
        Optional<Scalar> text = fields.scalar(key);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        Matcher number = PERCENT.matcher(text.get().text().strip());
        double amount = number.matches() ? Double.parseDouble(number.group(1)) : -1;
        if (amount < 0 || amount > most) {
            notices.add(fault.with("season", name)
                    .with("text", text.get().text())
                    .at(text.get().mark()));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(amount);
    }
}
