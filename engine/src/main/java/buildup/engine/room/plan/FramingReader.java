package buildup.engine.room.plan;

import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code studs: { every: 16, first: 12 }}, a list of places or {@code masonry}, and {@code joists:} alike. */
final class FramingReader {
    /** A 2x4 or 2x6 seen from its edge, dry: PS 20. */
    private static final double USUAL_WIDTH = 1.5;

    /** Fewer studs than this far apart, in, are no framing. */
    private static final double WIDEST_SPACE = 96;

    private final Notices notices;

    FramingReader(Notices notices) {
        this.notices = notices;
    }

    Framing read(Fields fields) {
        return new Framing(studs(fields), joists(fields));
    }

    private Optional<Framing.Studs> studs(Fields fields) {
        Optional<Node> node = fields.node("studs");
        if (node.isEmpty()) {
            return Optional.empty();
        }
        if (node.get() instanceof Scalar word) {
            if (word.text().strip().equals("masonry")) {
                return Optional.of(new Framing.Studs(Optional.empty(), 0, 0));
            }
            refuse(PlanNotices.NO_FRAMING.with("key", "studs").with("example", Figure.length(16)), word.mark());
            return Optional.empty();
        }
        if (node.get() instanceof Mapping mapping) {
            Fields studs = fields.fields(mapping, "studs");
            double top = plate(studs, "top-plate");
            double bottom = plate(studs, "bottom-plate");
            return even(studs).map(row -> new Framing.Studs(Optional.of(row), top, bottom));
        }
        return places(fields, "studs").map(row -> new Framing.Studs(Optional.of(row), 0, 0));
    }

    private Optional<Framing.Joists> joists(Fields fields) {
        Optional<Node> node = fields.node("joists");
        if (node.isEmpty()) {
            return Optional.empty();
        }
        if (node.get() instanceof Scalar word) {
            refuse(PlanNotices.NO_FRAMING.with("key", "joists").with("example", Figure.length(16)), word.mark());
            return Optional.empty();
        }
        if (node.get() instanceof Mapping mapping) {
            Fields joists = fields.fields(mapping, "joists");
            Optional<Scalar> run = joists.scalar("run");
            run.filter(word -> !List.of("out", "along").contains(word.text()))
                    .ifPresent(word -> refuse(PlanNotices.UNKNOWN_WAY.with("word", word.text()), word.mark()));
            boolean along = run.filter(word -> word.text().equals("along")).isPresent();
            return even(joists).map(row -> new Framing.Joists(row, along));
        }
        return places(fields, "joists").map(row -> new Framing.Joists(row, false));
    }

    private double plate(Fields studs, String key) {
        Optional<Double> height = studs.length(key).map(Length::toInches);
        height.filter(inches -> inches < 0)
                .ifPresent(inches -> refuse(
                        PlanNotices.LESS_THAN_NOTHING.with("key", key).with("size", Figure.length(inches)),
                        studs.mark(key)));
        return height.orElse(0.0);
    }

    private Optional<FramingRow> even(Fields row) {
        Optional<Double> every = row.length("every").map(Length::toInches);
        Optional<Double> first = row.length("first").map(Length::toInches);
        Optional<Double> width =
                row.has("width") ? row.length("width").map(Length::toInches) : Optional.of(USUAL_WIDTH);
        boolean evenly = row.needs(
                "every", PlanNotices.FRAMING_WITHOUT.with("key", "every").with("example", Figure.length(16)));
        boolean begun = row.needs(
                "first", PlanNotices.FRAMING_WITHOUT.with("key", "first").with("example", Figure.length(12)));
        if (!evenly || !begun || every.isEmpty() || first.isEmpty() || width.isEmpty()) {
            return Optional.empty();
        }
        boolean sound = every.get() > 0
                && every.get() <= WIDEST_SPACE
                && first.get() >= 0
                && width.get() > 0
                && width.get() <= every.get();
        if (!sound) {
            refuse(
                    PlanNotices.NO_SUCH_FRAMING
                            .with("every", Figure.length(every.get()))
                            .with("first", Figure.length(first.get()))
                            .with("width", Figure.length(width.get())),
                    row.mark());
            return Optional.empty();
        }
        return Optional.of(new FramingRow(List.of(), every.get(), first.get(), width.get()));
    }

    private Optional<FramingRow> places(Fields fields, String key) {
        List<Double> places = new ArrayList<>();
        List<Scalar> said = fields.scalars(key);
        for (Scalar one : said) {
            fields.readLength(one).map(Length::toInches).ifPresent(places::add);
        }
        if (places.size() < said.size() || places.isEmpty()) {
            if (said.isEmpty()) {
                refuse(PlanNotices.NO_FRAMING.with("key", key).with("example", Figure.length(16)), fields.mark(key));
            }
            return Optional.empty();
        }
        for (int i = 0; i < places.size(); i++) {
            if (places.get(i) < 0 || (i > 0 && places.get(i) <= places.get(i - 1))) {
                refuse(
                        PlanNotices.FRAMING_OUT_OF_ORDER.with("key", key).with("place", Figure.length(places.get(i))),
                        said.get(i).mark());
                return Optional.empty();
            }
        }
        return Optional.of(new FramingRow(places, 0, places.get(0), USUAL_WIDTH));
    }

    private void refuse(Notice notice, Mark mark) {
        notices.add(notice.at(mark));
    }
}
