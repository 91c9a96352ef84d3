package buildup.engine.room.sticks;

import buildup.engine.room.run.Course;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Supply;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Phrase;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * What a course is cut from.
 *
 * @param name as on a list of stock
 * @param strip width that is ripped from a board, or that of the stick, {@link LengthSteps}
 * @param supplies that it can be cut from, all of one thickness
 * @param layers glued face to face
 * @param strips glued edge to edge
 * @param planed whether the boards are thicker than the course
 */
record StockSource(Phrase name, int strip, List<Supply> supplies, int layers, int strips, boolean planed) {
    /** Lost at every glued edge when it is jointed: shop practice, no source. */
    private static final double JOINTING = 1.0 / 16;

    /** Nobody planes away as much as is left: shop practice, no source. */
    private static final double PLANED_BY_HALF = 2;

    StockSource {
        supplies = List.copyOf(supplies);
    }

    StockSource named(Phrase other) {
        return new StockSource(other, strip, supplies, layers, strips, planed);
    }

    int plies() {
        return layers * strips;
    }

    /** The longest stick, {@link LengthSteps}. */
    int longest() {
        return supplies.stream().mapToInt(Supply::longest).max().orElse(0);
    }

    /** @param kind the trade's word for the profile of the course */
    static Optional<StockSource> of(Course course, String kind, String wood, Shop shop) {
        List<Supply> ofWood = shop.supplies().stream()
                .filter(supply -> supply.wood().equals(wood))
                .toList();
        boolean ownProfile = !course.plain() && !kind.equals("section");
        return ownProfile ? molding(course, kind, ofWood, shop) : board(course, ofWood, shop);
    }

    private static Optional<StockSource> molding(Course course, String kind, List<Supply> ofWood, Shop shop) {
        List<Supply> alike = ofWood.stream()
                .filter(supply ->
                        supply.kind().equals(kind) && family(supply.name()).equals(family(course.profile())))
                .filter(supply -> near(supply.thickness(), course.thickness()) && near(supply.width(), course.width()))
                .toList();
        return alike.isEmpty()
                ? Optional.empty()
                : Optional.of(new StockSource(course.stock(), shop.grid().offered(course.width()), alike, 1, 1, false));
    }

    /** The name without its sizes. */
    private static String family(String name) {
        return name.replaceFirst(" [\\d.\u00BC-\u00BE\u2150-\u215E].*", "");
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= Tolerance.SAW_CUT;
    }

    /**
     * The board nearest in thickness that is not thinner, else layers of the thickest; then the same for the width. Of what is
     * hidden nobody sees which way its boards lie, nor that they were thicker: it is made of as few as can be.
     */
    private static Optional<StockSource> board(Course course, List<Supply> ofWood, Shop shop) {
        List<Supply> boards = ofWood.stream().filter(Supply::board).toList();
        if (course.trim()) {
            return thicknesses(course.thickness(), boards).stream()
                    .findFirst()
                    .map(board -> board(course, course.thickness(), course.width(), board, boards, shop));
        }
        Stream<StockSource> asDrawn = thicknesses(course.thickness(), boards).stream()
                .map(board -> board(course, course.thickness(), course.width(), board, boards, shop));
        Stream<StockSource> turned = course.plain()
                ? thicknesses(course.width(), boards).stream()
                        .map(board -> board(course, course.width(), course.thickness(), board, boards, shop))
                : Stream.empty();
        return Stream.concat(asDrawn, turned).min(Comparator.comparingInt(StockSource::plies));
    }

    /** Boards for a thickness, in: those not thinner, nearest first, that are not planed by half; else the thickest. */
    private static List<Double> thicknesses(double wanted, List<Supply> boards) {
        List<Double> enough = boards.stream()
                .map(Supply::thickness)
                .filter(thickness -> thickness >= wanted - Tolerance.SAW_CUT)
                .sorted()
                .distinct()
                .toList();
        if (enough.isEmpty()) {
            return most(boards, Supply::thickness).stream().boxed().toList();
        }
        List<Double> near = enough.stream()
                .filter(thickness -> thickness < PLANED_BY_HALF * wanted - Tolerance.SAW_CUT)
                .toList();
        return near.isEmpty() ? enough.subList(0, 1) : near;
    }

    private static StockSource board(
            Course course, double thickness, double width, double board, List<Supply> boards, Shop shop) {
        int layers = count(thickness, board);
        List<Supply> thick = boards.stream()
                .filter(supply -> near(supply.thickness(), board))
                .toList();
        double widest = most(thick, Supply::width).orElseThrow();
        int strips = count(width, widest);
        double strip = (width + (strips - 1) * JOINTING) / strips;
        while (strip > widest + Tolerance.SAW_CUT) {
            strips++;
            strip = (width + (strips - 1) * JOINTING) / strips;
        }
        double wanted = strip;
        return new StockSource(
                course.stock(),
                shop.grid().needed(wanted),
                thick.stream()
                        .filter(supply -> supply.width() >= wanted - Tolerance.SAW_CUT)
                        .sorted(Comparator.comparingDouble(Supply::width))
                        .toList(),
                layers,
                strips,
                board > thickness + Tolerance.SAW_CUT);
    }

    private static int count(double wanted, double each) {
        return (int) Math.max(1, Math.ceil((wanted - Tolerance.SAW_CUT) / each));
    }

    private static OptionalDouble most(List<Supply> supplies, ToDoubleFunction<Supply> size) {
        return supplies.stream().mapToDouble(size).max();
    }
}
