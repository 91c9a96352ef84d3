package buildup.engine.hold.season;

import buildup.catalog.wood.Sawn;
import buildup.catalog.wood.Wood;
import buildup.engine.hold.fixing.RowEdits;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.season.Effect.Place;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Says what the seasons spoil. One notice a place: the season in which it is worst. */
final class SeasonFaults {
    /** A gap beside trim: builders' warranty standard, as quoted by inspectors. */
    private static final double JOINT = 1.0 / 8;

    /** A gap at the edge of a miter: remodelers' performance standards. */
    private static final double MITER = 1.0 / 16;

    /** What nails between two rows give before wood splits or cups: common practice, no source. */
    private static final double NAILS = 1.0 / 16;

    /** What faces that are pressed together take: common practice, no source. */
    private static final double PRESSED = 1.0 / 16;

    /** What the cure leaves over: half of what a shop rule divides. */
    private static final double SPARE = 1.0 / 32;

    /** So far from a joint a row is driven that is to hold it, in: common practice, no source. */
    private static final double FROM_JOINT = 3.0 / 4;

    /** Between two marks of a tape, in. */
    private static final double TAPE = 1.0 / 16;

    private final Section section;
    private final Year year;
    private final List<Fixed> fixed;
    private final Notices notices;

    SeasonFaults(Section section, Year year, List<Fixed> fixed, Notices notices) {
        this.section = section;
        this.year = year;
        this.fixed = fixed;
        this.notices = notices;
    }

    void say() {
        coefficients();
        Set<Integer> squeezed = squeezed();
        Map<String, Effect> worst = new LinkedHashMap<>();
        for (Effect effect : year.effects()) {
            if (wrong(effect)) {
                worst.merge(key(effect), effect, (one, two) -> bad(two) > bad(one) ? two : one);
            }
        }
        for (Effect effect : worst.values()) {
            if (!(effect.result().equals("presses")
                    && (squeezed.contains(effect.piece()) || squeezed.contains(effect.other())))) {
                add(notice(effect), effect);
            }
        }
    }

    /** Of the rows of one piece the worst pair of nails is told, of a corner the worst season. */
    private String key(Effect effect) {
        return effect.place() == Place.NAILS ? "nails of " + effect.piece() : effect.place() + " " + effect.name();
    }

    private static double bad(Effect effect) {
        return Math.abs(effect.amount());
    }

    private boolean wrong(Effect effect) {
        double amount = effect.amount();
        double left = effect.left().orElse(1);
        return switch (effect.place()) {
            case JOINT -> amount < -PRESSED || (effect.seen() && amount > JOINT);
            case GAP -> effect.seen() && amount > JOINT;
            case MITER -> effect.seen() && amount > MITER;
            case NAILS -> bad(effect) > NAILS;
            // what is flush as built only steps
            case REVEAL -> left <= 0 && left - amount > Tolerance.TOUCHING;
            case BEARING, LAP -> left <= Tolerance.TOUCHING && left - amount > Tolerance.TOUCHING;
            case ROOM -> left < 0 && left - amount >= 0;
        };
    }

    private Notice notice(Effect effect) {
        double before = effect.left().orElse(0) - effect.amount();
        Notice said = switch (effect.place()) {
            case JOINT ->
                effect.amount() > 0
                        ? SeasonNotices.JOINT_OPENS.with("joint", effect.name())
                        : SeasonNotices.NO_ROOM.with("other", section.name(effect.other()));
            case GAP -> SeasonNotices.JOINT_OPENS.with("joint", effect.name());
            case MITER ->
                SeasonNotices.MITER_OPENS
                        .with("joint", effect.name().substring(0, effect.name().lastIndexOf(", ")))
                        .with("point", effect.name().substring(effect.name().lastIndexOf(", ") + 2));
            case NAILS ->
                SeasonNotices.SPLITS
                        .with("moves", effect.amount() > 0 ? "swells" : "shrinks")
                        .with("breaks", effect.amount() > 0 ? "cups" : "splits")
                        .with("nails", effect.name().substring((section.name(effect.piece()) + " between ").length()));
            case REVEAL -> SeasonNotices.REVEAL_CLOSES.with("reveal", effect.name());
            case BEARING -> SeasonNotices.BEARING_SHORT.with("other", section.name(effect.other()));
            case LAP -> SeasonNotices.LAP_FAILS.with("other", section.name(effect.other()));
            case ROOM -> SeasonNotices.UNDER_CEILING.notice();
        };
        double told = effect.place() == Place.ROOM ? -effect.left().orElse(0) : bad(effect);
        Notice whole = said.with("season", year.seasons().get(effect.season()).name())
                .with("most", Figure.length(effect.place() == Place.MITER ? MITER : JOINT))
                .with("more", Figure.atLeast(Math.max(before, -effect.amount()) + SPARE))
                .amount(Figure.fine(told));
        if (effect.place() == Place.MITER) {
            return whole.cure(mitered(effect));
        }
        boolean opens = (effect.place() == Place.JOINT || effect.place() == Place.GAP) && effect.amount() > 0;
        return opens ? whole.cure(closed(effect)) : whole;
    }

    /** Whichever moves more at a joint that opens is held nearer to it; midway where its other edge then moves too far. */
    private Cure closed(Effect effect) {
        int mover = moves(effect, effect.other()) > moves(effect, effect.piece()) ? effect.other() : effect.piece();
        boolean one = rows(mover).size() == 1;
        Stream<Cure> driven = one ? driven(effect, mover, rows(mover).get(0)) : Stream.empty();
        boolean slower = quartered(effect, mover, isHigh(mover)) < 1 - Tolerance.SAME_SHARE;
        Phrase lap = slower ? SeasonNotices.LAP_IT : SeasonNotices.LAP_OR_NARROWER;
        Phrase words = one ? lap : SeasonNotices.NAIL_NEAR;
        Cure byHand = Cure.of(words.with("mover", section.name(mover)));
        return Cure.firstOf(Stream.concat(driven, Stream.of(byHand))).orElseThrow();
    }

    /** A miter opens by what the wood moves across: less where its rings are turned, or where less of it is in one piece. */
    private Cure mitered(Effect effect) {
        int mover = effect.piece();
        // round an opening a miter runs up the piece, and ends at its top or bottom
        Box box = section.body(mover).outline().box();
        boolean up = !Tolerance.same(effect.at().y(), box.middle().y());
        Placed placed = section.body(mover).placed().orElseThrow();
        Stream<Cure> turned = bad(effect) * quartered(effect, mover, up) <= MITER
                ? Stream.of(new Cure(
                        SeasonNotices.QUARTERED.with("mover", section.name(mover)),
                        List.of(new Change(placed.piece().place("cut"), Phrase.of(Sawn.QUARTERED.word())))))
                : Stream.empty();
        Cure byHand = Cure.of(
                (effect.coped() ? SeasonNotices.COPE_IT : SeasonNotices.NARROWER).with("mover", section.name(mover)));
        return Cure.firstOf(Stream.concat(turned, Stream.of(byHand))).orElse(byHand);
    }

    /** As what share of now a piece would move out, or up, were it quartersawn; 1 where that changes nothing, as in a panel. */
    private double quartered(Effect effect, int body, boolean up) {
        Season from = year.seasons().get(0);
        Season to = year.seasons().get(effect.season());
        return section.body(body)
                .placed()
                .flatMap(placed -> Growth.of(placed, from, to)
                        .flatMap(now -> Growth.of(placed, Optional.of(Sawn.QUARTERED), from, to)
                                .map(turned -> up ? turned.up() / now.up() : turned.out() / now.out())))
                .filter(Double::isFinite)
                .orElse(1.0);
    }

    private boolean isHigh(int body) {
        Box box = section.body(body).outline().box();
        return box.height() >= box.width();
    }

    private double moves(Effect effect, int body) {
        return year.moved().get(effect.season()).get(body).at(effect.at()).distance(Point.ORIGIN);
    }

    private List<Fixed> rows(int body) {
        return fixed.stream().filter(row -> row.piece() == body).toList();
    }

    private Stream<Cure> driven(Effect effect, int mover, Fixed row) {
        Box box = section.body(mover).outline().box();
        boolean up = isHigh(mover);
        double joint = up ? effect.at().y() : effect.at().x();
        double low = up ? box.bottom() : box.back();
        double high = up ? box.top() : box.face();
        double near = joint - low > high - joint ? high - FROM_JOINT : low + FROM_JOINT;
        return Stream.of(
                        driven(SeasonNotices.DRIVE_NEAR, row, near, up),
                        driven(SeasonNotices.DRIVE_MIDWAY, row, (low + high) / 2, up))
                .map(cure -> new Cure(cure.words().with("mover", section.name(mover)), cure.changes()));
    }

    private static Cure driven(Phrase words, Fixed row, double to, boolean up) {
        double onTheTape = Math.rint(to / TAPE) * TAPE;
        return new Cure(
                words.with("row", row.fastening().name())
                        .with("to", Figure.length(onTheTape))
                        .with("way", up ? "up" : "out"),
                new RowEdits(row.fastening()).movedTo(onTheTape, up));
    }

    /** Pieces that have no room to swell between two others: loose ones have to float. */
    private Set<Integer> squeezed() {
        Set<Integer> told = new HashSet<>();
        for (Squeezes.Squeeze squeeze : new Squeezes(section, year).all()) {
            boolean nailed = year.held().stream()
                    .anyMatch(held -> held.body() == squeeze.body()
                            && (held.how() == Held.How.NAILED || held.how() == Held.How.SAID));
            // what moves along with a nailed piece gives: the other side alone presses, and is told as a joint
            boolean gives = nailed && Math.min(squeeze.byOne(), squeeze.byTwo()) <= Tolerance.COINCIDENT;
            if (squeeze.by() > PRESSED && !gives) {
                told.add(squeeze.body());
                List<String> ends = List.of(section.name(squeeze.one()), section.name(squeeze.two()));
                add(
                        (nailed ? SeasonNotices.SQUEEZED : SeasonNotices.MUST_FLOAT)
                                .with("room", Figure.atLeast(squeeze.by()))
                                .with("rooms", rooms(squeeze))
                                .with("ends", Listing.names(ends))
                                .with(
                                        "season",
                                        year.seasons().get(squeeze.season()).name())
                                .amount(Figure.fine(squeeze.by())),
                        squeeze.body());
            }
        }
        return told;
    }

    /** Where a nailed piece needs room: on each side that presses more than faces take, else on both. */
    private Listing rooms(Squeezes.Squeeze squeeze) {
        boolean none = Math.max(squeeze.byOne(), squeeze.byTwo()) <= PRESSED;
        List<Phrase> rooms = new ArrayList<>();
        if (none || squeeze.byOne() > PRESSED) {
            rooms.add(room(squeeze, squeeze.one(), squeeze.byOne()));
        }
        if (none || squeeze.byTwo() > PRESSED) {
            rooms.add(room(squeeze, squeeze.two(), squeeze.byTwo()));
        }
        return Listing.commas(rooms);
    }

    private Phrase room(Squeezes.Squeeze squeeze, int other, double by) {
        return SeasonNotices.ROOM_BESIDE
                .with("piece", section.name(squeeze.body()))
                .with("other", section.name(other))
                .with("room", Figure.atLeast(by));
    }

    /** Woods of which a coefficient is missing, each once. */
    private void coefficients() {
        Map<String, List<Integer>> byWood = new LinkedHashMap<>();
        for (int body : year.unknown()) {
            Wood wood = section.body(body).placed().orElseThrow().piece().wood();
            byWood.computeIfAbsent(wood.name(), name -> new ArrayList<>()).add(body);
        }
        byWood.forEach((wood, bodies) -> add(
                SeasonNotices.NO_COEFFICIENT
                        .with("wood", wood)
                        .with("side", side(bodies.get(0)))
                        .with(
                                "pieces",
                                Listing.names(bodies.stream().map(section::name).toList()))
                        .with("count", bodies.size() == 1 ? "is" : "are"),
                bodies.get(0)));
    }

    private String side(int body) {
        Wood wood = section.body(body).placed().orElseThrow().piece().wood();
        return wood.tangentialChange().isEmpty() ? "along" : "across";
    }

    private void add(Notice notice, Effect effect) {
        add(notice, effect.piece());
    }

    private void add(Notice notice, int body) {
        Optional<Placed> placed = section.body(body).placed();
        Optional<Mark> mark = placed.map(found -> found.piece().mark());
        Notice about = notice.of(section.name(body));
        notices.add(mark.map(about::at).orElse(about));
    }
}
