package buildup.engine.room.sticks;

import buildup.engine.room.block.LooseBlock;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Job;
import buildup.engine.room.splice.Splice;
import buildup.engine.room.stock.End;
import buildup.engine.room.stock.EndJoint;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.StickPiece;
import buildup.engine.room.stock.Supply;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The wood of a job: every stick with its pieces, and what it all comes to.
 *
 * @param pieces as they go up, in the order of the courses, before any is spliced or glued up
 * @param without those of them for which no stick is listed
 * @param lots one for each that was laid out by itself
 * @param rips one for each thickness of boards that are ripped
 * @param splices where pieces longer than any stick are joined
 * @param joints how many of each there are to make
 */
public record CutList(
        Shop shop,
        List<StickPiece> pieces,
        List<StickPiece> without,
        List<LotPlan> lots,
        List<RipPlan> rips,
        List<Stick> sticks,
        List<Splice.Joint> splices,
        Map<EndJoint, Integer> joints) {
    /** A clear strip that is left beside what is ripped is kept from this width on, in: common practice, no source. */
    private static final double LEAST_EDGE = 1;

    public CutList {
        pieces = List.copyOf(pieces);
        without = List.copyOf(without);
        lots = List.copyOf(lots);
        rips = List.copyOf(rips);
        sticks = List.copyOf(sticks);
        splices = List.copyOf(splices);
        joints = Collections.unmodifiableMap(new TreeMap<>(joints));
    }

    /** Lays out the cuts of a job, with notices for what no stick is listed, long or wide enough for. */
    public static CutList of(Job job, Shop shop, Limit limit, Notices notices) {
        return of(job, List.of(), shop, limit, notices);
    }

    /** The same with the blocks that are cut besides. */
    public static CutList of(Job job, List<LooseBlock> blocks, Shop shop, Limit limit, Notices notices) {
        Lots.Sorted sorted = Lots.of(job, blocks, shop, notices);
        LotSolver desk = new LotSolver(limit);
        List<Ripping.Ripped> laid = BoardGroup.of(sorted.lots(), shop).stream()
                .map(group -> Ripping.of(shop, desk, group, notices))
                .toList();
        List<Stick> sticks = laid.stream()
                .flatMap(one -> one.laid().sticks().stream())
                .sorted(Comparator.comparingInt((Stick stick) -> shop.supplies().indexOf(stick.supply()))
                        .thenComparing(Stick::origin)
                        .thenComparing(Stick::length, Comparator.reverseOrder()))
                .toList();
        return new CutList(
                shop,
                sorted.wanted(),
                sorted.without(),
                laid.stream().flatMap(one -> one.laid().plans().stream()).toList(),
                laid.stream().flatMap(one -> one.plan().stream()).toList(),
                sticks,
                sorted.joints(),
                joints(sorted.wanted(), sticks));
    }

    /** The pieces of a job that names no stock: all of them without a stick. */
    public static CutList withoutStock(Job job, List<LooseBlock> blocks) {
        return of(job, blocks, Shop.NONE, Limit.usual(), new Notices());
    }

    /** Where pieces longer than any stick are joined: known without a cutting plan. */
    public static List<Splice.Joint> splices(Job job, Shop shop) {
        return Lots.of(job, List.of(), shop, new Notices()).joints();
    }

    /**
     * What is glued up before it is put up.
     *
     * @param scarf whether it is a scarf; else a line between strips or layers
     * @param count of them
     * @param area of one face of each, all together, sq in
     */
    public record GlueLine(boolean scarf, int count, double area) {}

    /** The scarfs of a job, 45 degrees through the thickness, and the lines between what its pieces are glued up from. */
    public static List<GlueLine> glueLines(Job job, Shop shop) {
        List<GlueLine> lines = new ArrayList<>();
        for (Lot lot : Lots.of(job, List.of(), shop, new Notices()).lots()) {
            for (Bundle bundle : lot.bundles()) {
                for (StickPiece piece : bundle.pieces()) {
                    if (!piece.laterPly()) {
                        lines.addAll(glueLines(job, lot.source(), piece));
                    }
                }
            }
        }
        return List.copyOf(lines);
    }

    private static List<GlueLine> glueLines(Job job, StockSource source, StickPiece piece) {
        Course course = job.courses().stream()
                .filter(one -> one.body() == piece.body())
                .findFirst()
                .orElseThrow();
        List<GlueLine> lines = new ArrayList<>();
        if (piece.right().joint() == EndJoint.SCARF) {
            double section = job.section().body(piece.body()).outline().area();
            lines.add(new GlueLine(true, 1, section * Math.sqrt(2)));
        }
        int edges = (source.strips() - 1) * source.layers();
        if (edges > 0) {
            double each = course.thickness() / source.layers() * piece.inches();
            lines.add(new GlueLine(false, edges, edges * each));
        }
        int faces = source.layers() - 1;
        if (faces > 0) {
            lines.add(new GlueLine(false, faces, faces * course.width() * piece.inches()));
        }
        return lines;
    }

    private static Map<EndJoint, Integer> joints(List<StickPiece> wanted, List<Stick> sticks) {
        Map<EndJoint, Integer> ends = new EnumMap<>(EndJoint.class);
        // a block is made, and no joint; those of runs have their number in the section
        Stream<End> own = wanted.stream()
                .filter(piece -> piece.body() >= 0)
                .flatMap(piece -> Stream.of(piece.left(), piece.right()));
        Stream<End> scarfs = sticks.stream()
                .flatMap(stick -> stick.strips().stream())
                .flatMap(strip -> strip.pieces().stream())
                .filter(lie -> !lie.piece().laterPly())
                .flatMap(lie -> Stream.of(lie.piece().left(), lie.piece().right()))
                .filter(end -> end.joint() == EndJoint.SCARF);
        Stream.concat(own, scarfs).forEach(end -> ends.merge(end.joint(), 1, Integer::sum));
        ends.replaceAll(EndJoint::joints);
        return ends;
    }

    /** What is taken of each kind of stick, in the order of the sticks. */
    public List<BuyLine> bills() {
        return byKind().entrySet().stream()
                .map(entry -> bill(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** The sticks of each kind, in the order in which the kinds first come. */
    public Map<Supply, List<Stick>> byKind() {
        return sticks.stream().collect(Collectors.groupingBy(Stick::supply, LinkedHashMap::new, Collectors.toList()));
    }

    private BuyLine bill(Supply supply, List<Stick> own) {
        double feet = own.stream()
                .mapToDouble(stick -> LengthSteps.inches(stick.length()) / 12)
                .sum();
        double area = feet * 12 * supply.width();
        double used = own.stream().mapToDouble(Stick::area).sum();
        double kept = own.stream()
                .flatMap(stick -> stick.strips().stream())
                .filter(this::keeps)
                .mapToDouble(strip -> LengthSteps.inches(strip.width()) * LengthSteps.inches(strip.rest()))
                .sum();
        double edges = own.stream().mapToDouble(this::edge).sum();
        return new BuyLine(
                supply.name(),
                supply.wood(),
                own.size(),
                feet,
                own.stream().mapToDouble(Stick::boardFeet).sum(),
                used / area,
                (kept + edges) / area,
                own.stream().mapToLong(Stick::price).sum(),
                own.stream().noneMatch(stick -> stick.origin() != Stick.Origin.ON_HAND)
                        || supply.rate().isPresent());
    }

    /** Square inches of what is left beside the strips of a board, where it is wide and long enough to keep. */
    private double edge(Stick stick) {
        int kerfs = stick.strips().size() * shop.ripKerf();
        double width = stick.supply().width()
                - LengthSteps.inches(
                        stick.strips().stream().mapToInt(Stick.Strip::width).sum() + kerfs);
        boolean keeps = stick.strips().get(0).ripped() && width >= LEAST_EDGE && stick.length() >= shop.offcut();
        return keeps ? width * LengthSteps.inches(stick.length()) : 0;
    }

    /** Whether the rest of a strip is long enough to keep. */
    public boolean keeps(Stick.Strip strip) {
        return strip.rest() >= Math.max(1, shop.offcut());
    }

    /** The lengths as they are cut, spliced and glued-up ones in their parts, in the order in which they go up. */
    public List<StickPiece> asCut() {
        List<StickPiece> cut = Stream.concat(
                        sticks.stream()
                                .flatMap(stick -> stick.strips().stream())
                                .flatMap(strip -> strip.pieces().stream())
                                .map(Stick.LaidPiece::piece),
                        without.stream())
                .sorted(Comparator.comparing(StickPiece::wholeId).thenComparingInt(StickPiece::plyNumber))
                .toList();
        return pieces.stream()
                .flatMap(wanted -> cut.stream().filter(piece -> isOf(piece, wanted)))
                .toList();
    }

    /** Whether it is the wanted piece or one of the parts that it is joined from. */
    private static boolean isOf(StickPiece piece, StickPiece wanted) {
        return piece.id().equals(wanted.id())
                || (piece.id().startsWith(wanted.id())
                        && !Character.isDigit(piece.id().charAt(wanted.id().length())));
    }

    /** How each length is held that is too short to be clamped itself, by its label. */
    public Map<String, Phrase> held() {
        Map<String, Phrase> held = new TreeMap<>();
        for (Stick stick : sticks) {
            stick.strips()
                    .forEach(strip -> strip.pieces()
                            .forEach(lie -> Clamped.of(stick, lie, shop)
                                    .how()
                                    .ifPresent(how -> held.put(lie.piece().id(), how))));
        }
        without.forEach(piece -> Clamped.of(piece, shop).how().ifPresent(how -> held.put(piece.id(), how)));
        return Collections.unmodifiableMap(held);
    }

    /** Price of all that is bought, hundredths. */
    public long price() {
        return sticks.stream().mapToLong(Stick::price).sum();
    }

    /** Whether everything that it takes is there or has a price. */
    public boolean priced() {
        return bills().stream().allMatch(BuyLine::priced)
                && without.isEmpty()
                && sticks.stream().noneMatch(stick -> stick.origin() == Stick.Origin.MISSING);
    }

    /** Price of making the joints that have one, hundredths. */
    public long labor() {
        return joints.entrySet().stream()
                .mapToLong(entry -> entry.getValue() * shop.joints().getOrDefault(entry.getKey(), 0L))
                .sum();
    }

    /** Sum of the lengths of all pieces as they go up, ft. */
    public double feetWanted() {
        return pieces.stream()
                .mapToDouble(piece -> LengthSteps.inches(piece.length()) / 12)
                .sum();
    }
}
