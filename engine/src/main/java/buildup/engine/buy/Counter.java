package buildup.engine.buy;

import buildup.catalog.fastener.Fastener;
import buildup.engine.buy.SupplyWishes.Boxes;
import buildup.engine.buy.SupplyWishes.Poured;
import buildup.engine.hold.framing.BackingBlock;
import buildup.engine.hold.framing.Framed;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.room.block.LooseBlock;
import buildup.engine.room.block.LooseBlocks;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.stock.Shop;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Text;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Counts what is bought for one job, and says what it cannot count. */
final class Counter {
    /** Cubic inches in a US fluid ounce: a gallon of 231 has 128 of them. */
    static final double OUNCE = 231.0 / 128;

    private static final double FOOT = 12;

    /** Each block has so many nails: common practice, no source. */
    private static final int NAILS_IN_A_BLOCK = 2;

    private static final Phrase NAILED = Phrase.of("{rows} rows, {count} counted{counted}, {spare} over");
    private static final Phrase NAILED_IN_ONE = Phrase.of("1 row, {count} counted{counted}, {spare} over");
    private static final Phrase IN_BLOCKS = Phrase.of("{count} counted in blocks, {spare} over");
    private static final Phrase COUNTED = Phrase.plain("");
    private static final Phrase COUNTED_IN_BLOCKS = Phrase.of(", {blocks} of them in blocks");
    private static final Phrase GLUED = Phrase.of("{area}: {joints}");
    private static final Phrase JOINTS = Phrase.of("{count} {joint}s");
    private static final Phrase JOINT = Phrase.of("1 {joint}");
    private static final Phrase BEAD = Phrase.of("{run} of a bead {bead} thick behind {pieces}");
    private static final Phrase FILLED = Phrase.of("{holes} nail holes, {seams} of seams at returns");
    private static final Phrase HOLES = Phrase.of("{holes} nail holes");
    private static final Phrase NOTHING_GLUED = Phrase.of("no miter, return or scarf of trim to glue");
    private static final Phrase COATED = Phrase.of("{area}, {coats} coats");
    private static final Phrase COATED_ONCE = Phrase.of("{area}, 1 coat");

    private final Section section;
    private final SupplyWishes wishes;
    private final Job job;
    private final Notices notices;

    Counter(Section section, SupplyWishes wishes, Job job, Notices notices) {
        this.section = section;
        this.wishes = wishes;
        this.job = job;
        this.notices = notices;
    }

    Purchases purchases(List<Fixed> fixed, Framed framing, Optional<Shop> shop) {
        List<LooseBlock> blocks = LooseBlocks.of(job);
        int seen = NAILS_IN_A_BLOCK * blocks.size();
        int hidden = framing.blocks().stream().mapToInt(BackingBlock::count).sum();
        List<RowCount> rows = RowCounts.of(
                job,
                fixed,
                framing.landings(),
                shop.map(known -> CutList.splices(job, known)).orElse(List.of()));
        List<FaceArea> faces = ShownFaces.of(section, job);
        List<GluedFaces> glued = GluedFaces.of(section, job, blocks, shop);
        List<Bought> bought = new ArrayList<>(boxes(rows, seen + NAILS_IN_A_BLOCK * hidden));
        for (Poured good : wishes.goods()) {
            poured(good, rows, seen, faces, glued).ifPresent(bought::add);
        }
        notCounted(fixed, blocks.size() + hidden);
        List<Bought> unpriced =
                bought.stream().filter(one -> !one.basket().priced()).toList();
        if (!unpriced.isEmpty()) {
            notices.add(BuyNotices.WITHOUT_PRICE
                    .with(
                            "goods",
                            Listing.and(unpriced.stream().map(Bought::called).toList()))
                    .with("how", how(unpriced.get(0)))
                    .at(wishes.mark()));
        }
        boolean known = bought.stream()
                .noneMatch(one -> one.basket().equals(Basket.EMPTY)
                        && one.needed().amount() > one.onHand().amount());
        return new Purchases(true, section, Optional.of(job), rows, faces, glued, bought, unpriced.isEmpty() && known);
    }

    private static Phrase how(Bought first) {
        return first.needed().quantity() == Quantity.COUNT
                ? BuyNotices.PRICED_BOX
                : BuyNotices.PRICED_PACK.with(
                        "pack", first.basket().taken().get(0).pack().words());
    }

    private List<Bought> boxes(List<RowCount> rows, int inBlocks) {
        List<Fastener.Cut> uses = new ArrayList<>();
        Optional<Fastener.Cut> ofBlocks = wishes.blocks().filter(use -> inBlocks > 0);
        for (RowCount row : rows) {
            Fastener.Cut use = row.fixed().fastening().use();
            if (row.count() > 0 && uses.stream().noneMatch(known -> SupplyWishReader.same(known, use))) {
                uses.add(use);
            }
        }
        ofBlocks.filter(use -> uses.stream().noneMatch(known -> SupplyWishReader.same(known, use)))
                .ifPresent(uses::add);
        for (Boxes own : wishes.boxes()) {
            if (uses.stream().noneMatch(use -> SupplyWishReader.same(use, own.use()))) {
                notices.add(BuyNotices.NO_ROW_USES
                        .with("fastener", own.use().phrase())
                        .at(own.mark()));
            }
        }
        return uses.stream()
                .map(use -> boxes(
                        use,
                        rows,
                        ofBlocks.filter(one -> SupplyWishReader.same(one, use)).isPresent() ? inBlocks : 0))
                .toList();
    }

    private Bought boxes(Fastener.Cut use, List<RowCount> rows, int inBlocks) {
        List<RowCount> own = rows.stream()
                .filter(row -> row.count() > 0
                        && SupplyWishReader.same(row.fixed().fastening().use(), use))
                .toList();
        int count = own.stream().mapToInt(RowCount::count).sum() + inBlocks;
        int needed = (int) Math.ceil(count * (1 + wishes.spare()) - Tolerance.COINCIDENT);
        Optional<Boxes> said = wishes.boxes().stream()
                .filter(boxes -> SupplyWishReader.same(boxes.use(), use))
                .findFirst();
        int onHand = said.map(Boxes::onHand).orElse(0);
        List<Pack> packs = said.map(Boxes::packs)
                .filter(some -> !some.isEmpty())
                .orElseGet(() -> use.fastener().boxes().stream()
                        .map(box -> new Pack(Phrase.plain(String.valueOf(box)), box, OptionalLong.empty()))
                        .toList());
        if (packs.isEmpty()) {
            notices.add(BuyNotices.BOX_UNKNOWN
                    .with("count", Figure.count(needed))
                    .with("fastener", use.phrase())
                    .at(wishes.mark()));
        }
        Phrase why = nailed(own.size(), inBlocks)
                .with("count", Figure.count(count))
                .with("spare", Figure.count(needed - count));
        return new Bought(
                use.fastener().name(),
                use.fastener().lengths().size() == 1
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(use.length().toInches()),
                use.phrase(),
                why,
                Figure.count(needed),
                Figure.count(onHand),
                packs.isEmpty() ? Basket.EMPTY : Basket.holding(needed - onHand, packs));
    }

    private static Phrase nailed(int rows, int inBlocks) {
        Phrase counted = inBlocks == 0 ? COUNTED : COUNTED_IN_BLOCKS.with("blocks", Figure.count(inBlocks));
        return rows == 0
                ? IN_BLOCKS
                : (rows == 1 ? NAILED_IN_ONE : NAILED.with("rows", Figure.count(rows))).with("counted", counted);
    }

    private Optional<Bought> poured(
            Poured good, List<RowCount> rows, int inBlocks, List<FaceArea> faces, List<GluedFaces> glued) {
        return switch (good.good().kind()) {
            case GLUE -> Optional.of(glue(good, glued));
            case ADHESIVE -> adhesive(good);
            case FILLER -> {
                FilledHoles filled = FilledHoles.of(section, job, rows, wishes.blocks(), inBlocks);
                yield Optional.of(bought(
                        good,
                        (filled.seams() > 0 ? FILLED : HOLES)
                                .with("holes", Figure.count(filled.holes()))
                                .with("seams", run(filled.seams())),
                        filled.used()));
            }
            case PRIMER, PAINT -> Optional.of(coated(good, faces));
        };
    }

    private Bought glue(Poured good, List<GluedFaces> glued) {
        double area = glued.stream().mapToDouble(GluedFaces::area).sum();
        List<Phrase> joints = glued.stream()
                .map(one -> (Math.round(one.count()) == 1 ? JOINT : JOINTS)
                        .with("count", Figure.count(Math.round(one.count())))
                        .with("joint", one.joint()))
                .toList();
        return bought(
                good,
                glued.isEmpty()
                        ? NOTHING_GLUED
                        : GLUED.with("area", surface(area)).with("joints", Listing.commas(joints)),
                area * film(good));
    }

    private Optional<Bought> adhesive(Poured good) {
        if (good.pieces().isEmpty()) {
            notices.add(BuyNotices.ADHESIVE_FOR_WHAT
                    .with("piece", job.courses().get(0).name())
                    .at(wishes.mark()));
            return Optional.empty();
        }
        double run = job.fits().stream()
                .filter(fit -> !fit.selfReturn() && good.isFor(fit.course().name()))
                .mapToDouble(Fit::backLength)
                .sum();
        double bead = good.good().bead().orElseThrow().toInches();
        return Optional.of(bought(
                good,
                BEAD.with("run", run(run))
                        .with("bead", Figure.length(bead))
                        .with(
                                "pieces",
                                Listing.and(
                                        good.pieces().stream().map(Text::new).toList())),
                run * Math.PI / 4 * bead * bead));
    }

    private Bought coated(Poured good, List<FaceArea> faces) {
        double area = faces.stream()
                .filter(face -> good.isFor(face.name(section)))
                .mapToDouble(FaceArea::area)
                .sum();
        int coats = good.good().coats();
        Phrase why = coats == 1 ? COATED_ONCE : COATED.with("coats", Figure.count(coats));
        return bought(good, why.with("area", surface(area)), area * coats * film(good));
    }

    private static double film(Poured good) {
        return good.good().coverage().orElseThrow().thickness().toInches();
    }

    private static Figure surface(double squareInches) {
        return Figure.of(Quantity.SURFACE, squareInches / (FOOT * FOOT));
    }

    private static Figure run(double inches) {
        return Figure.of(Quantity.RUN, inches / FOOT);
    }

    private static Bought bought(Poured good, Phrase use, double cubicInches) {
        return new Bought(
                good.good().name(),
                OptionalDouble.empty(),
                Phrase.plain(good.good().name()),
                use,
                volume(cubicInches),
                volume(good.onHand()),
                Basket.holding(cubicInches - good.onHand(), good.packs()));
    }

    private static Figure volume(double cubicInches) {
        return Figure.of(Quantity.VOLUME, cubicInches / OUNCE).rounded(Rounding.UP);
    }

    private void notCounted(List<Fixed> fixed, int blocks) {
        List<Text> loose = job.courses().stream()
                .map(Course::name)
                .filter(name -> fixed.stream()
                        .noneMatch(row -> section.name(row.piece()).equals(name)))
                .map(Text::new)
                .toList();
        if (!loose.isEmpty()) {
            notices.add(BuyNotices.NO_ROWS.with("pieces", Listing.and(loose)).at(wishes.mark()));
        }
        if (blocks > 0 && wishes.blocks().isEmpty()) {
            notices.add(BuyNotices.BLOCKS_NOT_NAILED
                    .with("count", Figure.count(blocks))
                    .at(wishes.mark()));
        }
    }
}
