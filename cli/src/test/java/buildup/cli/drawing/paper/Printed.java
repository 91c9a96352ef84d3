package buildup.cli.drawing.paper;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.OutsideTool;
import buildup.profiles.outline.Point;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * A page as someone else's program prints it, in black and white; places in dots from its upper left corner.
 *
 * @param dpi dots in an inch
 */
public record Printed(BufferedImage page, int dpi) {
    /** Darker is ink; a thin line between two rows of dots leaves both of them grayer. */
    private static final int INK = 128;

    private static final int TRACE = 235;

    /** The pages of a PDF file by poppler. */
    public static List<Printed> of(Path folder, byte[] pdf, int dpi) throws IOException, InterruptedException {
        Path file = Files.write(folder.resolve("printed.pdf"), pdf);
        OutsideTool.Run run = OutsideTool.run(folder, "pdftoppm", "-r", dpi, "-gray", "-png", file.toString(), "sheet");
        assertThat(run.code()).as(run.output()).isZero();
        List<Path> names;
        try (Stream<Path> files = Files.list(folder)) {
            names = files.filter(one -> one.getFileName().toString().startsWith("sheet-"))
                    .sorted()
                    .toList();
        }
        List<Printed> pages = new ArrayList<>();
        for (Path name : names) {
            pages.add(new Printed(ImageIO.read(name.toFile()), dpi));
            Files.delete(name);
        }
        return pages;
    }

    public boolean ink(int x, int y) {
        return gray(x, y) < INK;
    }

    private int gray(int x, int y) {
        return x < 0 || y < 0 || x >= page.getWidth() || y >= page.getHeight()
                ? 255
                : page.getRaster().getSample(x, y, 0);
    }

    /** Whether there is any trace of ink at a place or right beside it. */
    public boolean near(int x, int y) {
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                if (gray(x + dx, y + dy) < TRACE) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The middles of the register crosses, found by their arms and rings; from the top down, then from the left. */
    public List<Point> crosses() {
        List<List<Point>> found = new ArrayList<>();
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if (ink(x, y) && isCross(x, y)) {
                    Point at = new Point(x, y);
                    Optional<List<Point>> same = found.stream()
                            .filter(one -> one.get(0).near(at, 0.1 * dpi))
                            .findFirst();
                    same.ifPresent(one -> one.add(at));
                    if (same.isEmpty()) {
                        found.add(new ArrayList<>(List.of(at)));
                    }
                }
            }
        }
        return found.stream().map(Printed::middle).toList();
    }

    /** Arms are a few dots wide: the middle is known to less than a dot. */
    private static Point middle(List<Point> dots) {
        return new Point(
                dots.stream().mapToDouble(Point::x).average().orElseThrow(),
                dots.stream().mapToDouble(Point::y).average().orElseThrow());
    }

    private boolean isCross(int x, int y) {
        int arm = (int) Math.round(0.15 * dpi);
        double ring = 0.07 * dpi;
        return ink(x - arm, y)
                && ink(x, y + arm)
                && ink(x + arm, y)
                && IntStream.rangeClosed(-arm, arm).allMatch(i -> ink(x + i, y) && ink(x, y + i))
                && IntStream.range(0, 32)
                        .allMatch(i -> near(
                                x + (int) Math.round(ring * Math.cos(i * Math.PI / 16)),
                                y + (int) Math.round(ring * Math.sin(i * Math.PI / 16))))
                && Stream.of(0.03, 0.11)
                        .allMatch(r -> IntStream.range(0, 4)
                                .noneMatch(i -> ink(
                                        x + (int) Math.round(r * dpi * Math.cos((2 * i + 1) * Math.PI / 4)),
                                        y + (int) Math.round(r * dpi * Math.sin((2 * i + 1) * Math.PI / 4)))));
    }
}
