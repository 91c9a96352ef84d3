package buildup.cli.drawing.sheet;

import buildup.cli.scene.Group;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the blocks of a sheet lie, upper left corners counted from the upper left corner of the whole. */
public record Arrangement(List<Spot> spots, double width, double height) {
    private static final double GAP = 0.25;

    /** Printers leave about a quarter of an inch. */
    private static final double MARGIN = 0.25;

    record Spot(Block block, double left, double down) {}

    public Arrangement {
        spots = List.copyOf(spots);
    }

    private static Arrangement one(Block block) {
        return new Arrangement(List.of(new Spot(block, 0, 0)), block.width(), block.height());
    }

    private Arrangement over(Arrangement below) {
        return joined(below, 0, height + GAP);
    }

    private Arrangement beside(Arrangement right) {
        return joined(right, width + GAP, 0);
    }

    /** The second one's lower edge level with this one's. */
    private Arrangement besideLow(Arrangement right) {
        double down = height - right.height;
        return joined(right, width + GAP / 2, Math.max(0, down));
    }

    private Arrangement joined(Arrangement other, double left, double down) {
        List<Spot> all = new ArrayList<>(spots);
        other.spots.forEach(spot -> all.add(new Spot(spot.block(), spot.left() + left, spot.down() + down)));
        return new Arrangement(all, Math.max(width, left + other.width), Math.max(height, down + other.height));
    }

    /** The ways in which the blocks can lie, the ones that are read most easily first. */
    public static List<Arrangement> all(Block picture, Optional<Block> list, Block title, Optional<Block> check) {
        Arrangement drawn = check.map(line -> one(picture).besideLow(one(line))).orElse(one(picture));
        Arrangement named = one(title);
        if (list.isEmpty()) {
            return List.of(drawn.over(named), drawn.beside(named));
        }
        Arrangement listed = one(list.get());
        return List.of(
                drawn.over(listed.beside(named)),
                drawn.over(listed).over(named),
                drawn.beside(named.over(listed)),
                drawn.beside(named).over(listed),
                drawn.over(named).beside(listed));
    }

    /** The page as it is to lie for one of the arrangements to fit. */
    public static Optional<PaperSize> fitting(PaperSize page, List<Arrangement> arrangements) {
        return Stream.of(page, page.turned())
                .filter(way -> arrangements.stream().anyMatch(arrangement -> arrangement.fits(way)))
                .findFirst();
    }

    /**
     * The first that fits the paper.
     *
     * @throws java.util.NoSuchElementException when none fits
     */
    public static Arrangement best(PaperSize page, List<Arrangement> arrangements) {
        return arrangements.stream()
                .filter(arrangement -> arrangement.fits(page))
                .findFirst()
                .orElseThrow();
    }

    /** The arrangement that takes least paper. */
    public static Arrangement least(List<Arrangement> arrangements) {
        return arrangements.stream()
                .min(Comparator.comparingDouble(a -> a.sheetWidth() * a.sheetHeight()))
                .orElseThrow();
    }

    private boolean fits(PaperSize page) {
        return page.holds(sheetWidth(), sheetHeight());
    }

    /** The width of the paper that it takes, margins included, in. */
    public double sheetWidth() {
        return width + 2 * MARGIN;
    }

    /** The height of the paper that it takes, margins included, in. */
    public double sheetHeight() {
        return height + 2 * MARGIN;
    }

    /** In the middle of a page. */
    public List<Group> on(PaperSize page) {
        double left = (page.width() - width) / 2;
        double top = page.height() - (page.height() - height) / 2;
        return spots.stream()
                .map(spot -> spot.block().at(left + spot.left(), top - spot.down()))
                .toList();
    }
}
