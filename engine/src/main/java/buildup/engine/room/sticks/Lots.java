package buildup.engine.room.sticks;

import buildup.engine.room.block.LooseBlock;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Saw.Hand;
import buildup.engine.room.splice.Splice;
import buildup.engine.room.splice.SplicePlaces;
import buildup.engine.room.splice.SpliceWall;
import buildup.engine.room.stock.End;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.StickNotices;
import buildup.engine.room.stock.StickPiece;
import buildup.engine.room.stock.Supply;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Sorts the cuts of a job by what they come from; splices what no stick reaches, glues up what no board is wide for. */
final class Lots {
    /** What tells one lot from another. */
    private record Key(List<Supply> supplies, int strip, String wood) {}

    private record Open(StockSource source, List<StickPiece> pieces) {}

    /** Longer pieces are a slip, and are not counted: in. */
    private static final double LONGEST = 120_000;

    /** A piece of more parts is no piece of trim. */
    private static final int MOST_PARTS = 20;

    /** What is glued up from more boards is no piece of trim. */
    private static final int MOST_PLIES = 40;

    /** Two layers of three strips: who wants a block thicker than that buys a board for it; common practice, no source. */
    private static final int MOST_PLIES_OF_A_BLOCK = 6;

    private final Job job;
    private final Shop shop;
    private final Notices notices;
    private final Map<Key, Open> open = new LinkedHashMap<>();
    private final List<StickPiece> without = new ArrayList<>();
    private final List<StickPiece> all = new ArrayList<>();
    private final Set<List<?>> said = new LinkedHashSet<>();
    private final Map<String, Integer> spliced = new HashMap<>();
    private final Map<Reserved, Integer> reserved = new HashMap<>();
    private final List<Splice.Joint> joints = new ArrayList<>();

    /** Sticks on hand that are kept for pieces longer than any to be bought. */
    private record Reserved(Supply supply, int length) {}

    private Lots(Job job, Shop shop, Notices notices) {
        this.job = job;
        this.shop = shop;
        this.notices = notices;
    }

    /**
     * The lots of a job.
     *
     * @param wanted every piece as it goes up, before it is spliced or glued up
     * @param without those for which no stick is listed
     * @param joints where pieces are spliced
     */
    record Sorted(List<Lot> lots, List<StickPiece> wanted, List<StickPiece> without, List<Splice.Joint> joints) {}

    static Sorted of(Job job, List<LooseBlock> blocks, Shop shop, Notices notices) {
        Lots lots = new Lots(job, shop, notices);
        lots.sort();
        lots.sort(blocks);
        List<Lot> sorted = new ArrayList<>();
        lots.open.forEach((key, one) -> sorted.add(new Lot(
                one.source(),
                key.wood(),
                lots.bundles(
                        one.pieces(), one.source(), shop.usable(one.source().longest())))));
        return new Sorted(
                List.copyOf(sorted), List.copyOf(lots.all), List.copyOf(lots.without), List.copyOf(lots.joints));
    }

    private void sort() {
        Map<Integer, Integer> numbers = new TreeMap<>();
        for (Fit fit : job.fits()) {
            Course course = fit.course();
            int number = numbers.merge(course.body(), 1, Integer::sum);
            StickPiece piece = new StickPiece(
                    Section.letter(course.body()) + number,
                    course.name(),
                    job.stretchName(fit),
                    "",
                    course.body(),
                    Math.max(shop.grid().step(), shop.grid().needed(Math.min(fit.longPoint(), LONGEST))),
                    Math.min(fit.longPoint(), LONGEST),
                    End.of(fit, Hand.LEFT),
                    End.of(fit, Hand.RIGHT),
                    course.plain(),
                    fit.selfReturn(),
                    fit.grainGroup().map(this::unbroken));
            all.add(piece);
            sort(piece, fit, fit.grainGroup());
        }
    }

    /** Blocks after all else, each kind numbered by itself. */
    private void sort(List<LooseBlock> blocks) {
        Map<LooseBlock.Kind, Integer> numbers = new EnumMap<>(LooseBlock.Kind.class);
        for (LooseBlock block : blocks) {
            Course board = block.board();
            for (int i = 0; i < block.count(); i++) {
                StickPiece piece = new StickPiece(
                        block.kind().mark() + numbers.merge(block.kind(), 1, Integer::sum),
                        board.name(),
                        block.where(),
                        block.note(),
                        board.body(),
                        Math.max(shop.grid().step(), shop.grid().needed(block.length())),
                        block.length(),
                        End.SQUARE,
                        End.SQUARE,
                        true,
                        false,
                        Optional.empty());
                all.add(piece);
                sort(piece, board, "board", block.wood(), Optional.empty(), Optional.empty());
            }
        }
    }

    private void sort(StickPiece piece, Fit fit, Optional<String> grain) {
        var placed =
                job.section().body(fit.course().body()).placed().orElseThrow().piece();
        sort(piece, fit.course(), placed.stock().profileKind(), placed.wood().name(), Optional.of(fit), grain);
    }

    /** @param fit absent for a block, which is never spliced */
    private void sort(
            StickPiece piece, Course course, String kind, String wood, Optional<Fit> fit, Optional<String> grain) {
        Optional<StockSource> found = StockSource.of(course, kind, wood, shop);
        if (found.isEmpty()) {
            without.add(piece);
            noStock(course, wood);
            return;
        }
        StockSource source = found.get();
        int longest = shop.usable(longest(piece, source));
        if (fit.isEmpty() ? piece.length() > longest : !reaches(piece, course, longest)) {
            without.add(piece);
            boolean slip = piece.length() / MOST_PARTS > longest;
            notices.add(tooLong(StickNotices.LONGER_THAN_ANY_STICK, piece, longest)
                    .cure(slip ? StickNotices.LOOK_AT_THE_PLAN : StickNotices.LONGER_STICK));
            return;
        }
        if (fit.isEmpty() && source.plies() > MOST_PLIES_OF_A_BLOCK) {
            without.add(piece);
            once(
                    List.of("plies", course.body()),
                    (course.trim() ? StickNotices.NO_BOARD_FOR_BLOCKS : StickNotices.NO_BOARD_FOR_HIDDEN_BLOCKS)
                            .with("thickness", Figure.length(course.thickness()))
                            .with("width", Figure.length(course.width()))
                            .of(course.name()));
            return;
        }
        if (source.plies() > MOST_PLIES) {
            without.add(piece);
            once(
                    List.of("plies", course.body()),
                    StickNotices.MANY_PLIES
                            .with("count", Figure.count(source.plies()))
                            .of(course.name()));
            return;
        }
        gluedUp(course, source);
        List<StickPiece> into = open.computeIfAbsent(
                        new Key(source.supplies(), source.strip(), wood), key -> new Open(source, new ArrayList<>()))
                .pieces();
        List<StickPiece> parts =
                fit.map(own -> parts(piece, own, longest, grain)).orElseGet(() -> List.of(piece));
        for (StickPiece part : parts) {
            for (int ply = 1; ply <= source.plies(); ply++) {
                into.add(source.plies() == 1 ? part : part.ply(ply, source.plies()));
            }
        }
    }

    private void noStock(Course course, String wood) {
        // the same boards are missed once, whatever is cut from them
        once(
                List.of(course.stock(), wood),
                // blocking that is hidden is found among offcuts too
                (course.trim() || course.body() >= 0 ? StickNotices.NO_STICK_LISTED : StickNotices.NO_STICK_FOR_BLOCKS)
                        .with("stock", course.stock())
                        .with("wood", wood)
                        .with("example", course.plain() ? Phrase.of("1x6") : course.stock())
                        .of(course.name()));
    }

    private void gluedUp(Course course, StockSource source) {
        if (source.plies() == 1) {
            return;
        }
        Phrase plies = source.strips() == 1
                ? StickNotices.LAYERS
                : (source.layers() == 1 ? StickNotices.STRIPS : StickNotices.LAYERS_OF_STRIPS)
                        .with("strips", Figure.count(source.strips()))
                        .with("strip", LengthSteps.figure(source.strip()));
        once(
                List.of("glue", course.body()),
                StickNotices.GLUED_UP
                        .with("plies", plies.with("layers", Figure.count(source.layers())))
                        .of(course.name()));
    }

    private void once(List<?> what, Notice notice) {
        if (said.add(what)) {
            notices.add(notice);
        }
    }

    /**
     * The longest stick that there is for a piece. Of those on hand that are longer than any to be bought each serves one
     * such piece: the next one is spliced from what can be bought.
     */
    private int longest(StickPiece piece, StockSource source) {
        int bought = source.supplies().stream()
                .flatMap(supply -> supply.buy().stream())
                .mapToInt(length -> length)
                .max()
                .orElse(0);
        if (bought == 0 || piece.length() <= shop.usable(bought)) {
            return source.longest();
        }
        for (Supply supply : source.supplies()) {
            for (Map.Entry<Integer, Integer> own : supply.lying().entrySet()) {
                Reserved key = new Reserved(supply, own.getKey());
                int used = reserved.getOrDefault(key, 0);
                if (shop.usable(own.getKey()) >= piece.length() && used + source.plies() <= own.getValue()) {
                    reserved.put(key, used + source.plies());
                    return own.getKey();
                }
            }
        }
        return bought;
    }

    /** Whether a stick holds it, or parts of it that are worth splicing. */
    private boolean reaches(StickPiece piece, Course course, int longest) {
        return piece.length() <= longest
                || (longest >= 4 * Math.max(overlap(course), LengthSteps.PER_INCH)
                        && piece.length() / MOST_PARTS <= longest - overlap(course));
    }

    private int overlap(Course course) {
        return course.trim() ? shop.grid().needed(course.thickness()) : 0;
    }

    /** The piece itself, or its parts where no stick is as long. */
    private List<StickPiece> parts(StickPiece piece, Fit fit, int longest, Optional<String> grain) {
        if (piece.length() <= longest) {
            return List.of(piece);
        }
        Course course = fit.course();
        int overlap = overlap(course);
        SpliceWall wall = SpliceWall.of(job, fit);
        List<Double> others = joints.stream()
                .filter(joint -> joint.piece().stretch().equals(piece.stretch()))
                .map(Splice.Joint::middle)
                .toList();
        // from one course to the next the parts begin at the other end
        List<Integer> places = SplicePlaces.of(
                new SplicePlaces.Task(
                        piece.length(),
                        longest,
                        overlap,
                        shop.hold(),
                        shop.grid().step()),
                wall,
                course.body() % 2 == 0,
                others);
        Splice splice = Splice.of(piece, places, overlap, course, wall, after(grain));
        joints.addAll(splice.joints());
        List<Figure> marks = splice.joints().stream()
                .map(joint -> Figure.length(joint.fromLeft()))
                .toList();
        Set<Phrase> why = new LinkedHashSet<>(
                splice.joints().stream().map(Splice.Joint::why).toList());
        // a joint that no stud lies behind still wants its block
        boolean held = splice.joints().stream().allMatch(joint -> wall.holds(joint.middle()));
        notices.add(tooLong(held ? StickNotices.SPLICED : StickNotices.LONGER_THAN_ANY_STICK, piece, longest)
                .cure((overlap == 0 ? StickNotices.BUTTED : StickNotices.SCARFED)
                        .with("places", Listing.and(marks))
                        .with("why", Listing.and(List.copyOf(why)))));
        return splice.parts();
    }

    /** The grain of a group as it goes on since its last splice. */
    private String unbroken(String group) {
        int count = spliced.getOrDefault(group, 0);
        return count == 0 ? group : group + " " + count;
    }

    /** What the last part of a spliced piece is in one group with: a scarf ends the grain, and it begins anew. */
    private Optional<String> after(Optional<String> group) {
        group.ifPresent(own -> spliced.merge(own, 1, Integer::sum));
        return group.map(this::unbroken);
    }

    private static Notice tooLong(Kind kind, StickPiece piece, int longest) {
        return kind.with("stretch", piece.stretch())
                .with("length", LengthSteps.figure(piece.length()))
                .with("longest", LengthSteps.figure(longest))
                .of(piece.course())
                .amount(LengthSteps.figure(piece.length() - longest));
    }

    /** Pieces of a group stay together as far as a stick reaches; of glued-up ones each ply runs round on its own. */
    private List<Bundle> bundles(List<StickPiece> pieces, StockSource source, int longest) {
        Map<String, List<StickPiece>> groups = new LinkedHashMap<>();
        for (StickPiece piece : pieces) {
            groups.computeIfAbsent(
                            piece.group()
                                    .map(name -> "g " + name + piece.plyMark())
                                    .orElse("p " + piece.id()),
                            name -> new ArrayList<>())
                    .add(piece);
        }
        List<Bundle> bundles = new ArrayList<>();
        groups.values().forEach(group -> bundles.addAll(joined(group, source.strip(), longest)));
        return bundles;
    }

    private List<Bundle> joined(List<StickPiece> group, int width, int longest) {
        List<Bundle> bundles = new ArrayList<>();
        Bundle last = Bundle.of(group.get(0), width);
        for (StickPiece piece : group.subList(1, group.size())) {
            StickPiece before = last.pieces().get(last.pieces().size() - 1);
            List<StickPiece> pieces = new ArrayList<>(last.pieces());
            List<Integer> gaps = new ArrayList<>(last.gaps());
            pieces.add(piece);
            gaps.add(Bundle.gap(before, piece, shop));
            Bundle longer = new Bundle(pieces, gaps, width);
            if (longer.length() > longest) {
                grainBreaks(before, piece, longer, longest);
                bundles.add(last);
                longer = Bundle.of(piece, width);
            }
            last = longer;
        }
        bundles.add(last);
        return bundles;
    }

    private void grainBreaks(StickPiece before, StickPiece after, Bundle wanted, int longest) {
        notices.add(StickNotices.GRAIN_BROKEN
                .with("before", before.stretch())
                .with("after", after.stretch())
                .with("length", LengthSteps.figure(wanted.length()))
                .with("longest", LengthSteps.figure(longest))
                .of(before.course())
                .amount(LengthSteps.figure(wanted.length() - longest)));
    }
}
