package buildup.engine.room.plan;

import buildup.shared.document.Fields;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what was measured along a stretch: {@code ceiling: [[0, 12], [60, 11-3/4]]}, {@code floor:} and {@code wall:}. */
final class SurfaceReader {
    /** A wall that stands farther off its plane than this, in, was measured from another line. */
    private static final double MOST_OFF = 6;

    /** More places than a wall is measured at. */
    private static final int MOST_STATIONS = 500;

    private final Notices notices;

    SurfaceReader(Notices notices) {
        this.notices = notices;
    }

    /** Absent when something of it is refused. */
    Optional<MeasuredRoom> read(String stretch, double length, Fields fields) {
        Optional<Measured> ceiling = measured(stretch, length, fields, "ceiling");
        Optional<Measured> floor = measured(stretch, length, fields, "floor");
        Optional<Measured> wall = measured(stretch, length, fields, "wall");
        if (fields.has("ceiling") != ceiling.isPresent()
                || fields.has("floor") != floor.isPresent()
                || fields.has("wall") != wall.isPresent()) {
            return Optional.empty();
        }
        boolean sound = wall.stream().allMatch(found -> upright(stretch, found, fields.mark("wall")))
                && (ceiling.isEmpty()
                        || floor.isEmpty()
                        || headroom(stretch, ceiling.get(), floor.get(), fields.mark("ceiling")));
        return sound ? Optional.of(new MeasuredRoom(ceiling, floor, wall)) : Optional.empty();
    }

    private Optional<Measured> measured(String stretch, double length, Fields fields, String key) {
        Optional<Node> node = fields.node(key);
        if (node.isEmpty()) {
            return Optional.empty();
        }
        if (!(node.get() instanceof Sequence list)
                || list.items().isEmpty()
                || list.items().size() > MOST_STATIONS
                || !list.items().stream().allMatch(SurfaceReader::pair)) {
            refuse(
                    PlanNotices.NO_PAIRS
                            .with("key", key)
                            .with("stretch", stretch)
                            .with("left", Figure.length(0))
                            .with("right", Figure.atMost(length)),
                    fields.mark(key));
            return Optional.empty();
        }
        List<Station> stations = new ArrayList<>();
        for (Node item : list.items()) {
            station(fields, (Sequence) item).ifPresent(stations::add);
        }
        return stations.size() == list.items().size() && inOrder(stretch, length, key, stations, list)
                ? Optional.of(new Measured(stations))
                : Optional.empty();
    }

    private static boolean pair(Node item) {
        return item instanceof Sequence pair
                && pair.items().size() == 2
                && pair.items().stream().allMatch(Scalar.class::isInstance);
    }

    private static Optional<Station> station(Fields fields, Sequence pair) {
        // both are read, so that each that is no length gets its notice
        Optional<Double> along = fields.readLength((Scalar) pair.items().get(0)).map(Length::toInches);
        Optional<Double> amount =
                fields.readLength((Scalar) pair.items().get(1)).map(Length::toInches);
        return along.flatMap(place -> amount.map(found -> new Station(place, found)));
    }

    private boolean inOrder(String stretch, double length, String key, List<Station> stations, Sequence list) {
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < stations.size(); i++) {
            double along = stations.get(i).along();
            if (along < 0 || along > length || along <= before) {
                refuse(
                        (along < 0 || along > length ? PlanNotices.MEASURED_BEYOND : PlanNotices.MEASURED_TWICE)
                                .with("key", key)
                                .with("stretch", stretch)
                                .with("along", Figure.length(along))
                                .with("length", Figure.length(length)),
                        list.items().get(i).mark());
                return false;
            }
            before = along;
        }
        return true;
    }

    private boolean upright(String stretch, Measured wall, Mark mark) {
        Station farthest = -wall.least().amount() > wall.most().amount() ? wall.least() : wall.most();
        if (Math.abs(farthest.amount()) <= MOST_OFF) {
            return true;
        }
        refuse(
                PlanNotices.WALL_FAR_OFF
                        .with("stretch", stretch)
                        .with("out", Figure.length(farthest.amount()))
                        .with("along", Figure.length(farthest.along())),
                mark);
        return false;
    }

    private boolean headroom(String stretch, Measured ceiling, Measured floor, Mark mark) {
        List<Station> all = new ArrayList<>(ceiling.stations());
        all.addAll(floor.stations());
        for (Station one : all) {
            double room = ceiling.at(one.along()) - floor.at(one.along());
            if (!(room > 0)) {
                refuse(
                        PlanNotices.NO_HEADROOM
                                .with("stretch", stretch)
                                .with("along", Figure.length(one.along()))
                                .with("ceiling", Figure.length(ceiling.at(one.along())))
                                .with("floor", Figure.length(floor.at(one.along()))),
                        mark);
                return false;
            }
        }
        return true;
    }

    private void refuse(Notice notice, Mark mark) {
        notices.add(notice.at(mark));
    }
}
