package buildup.cli.drawing;

import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Area;
import buildup.cli.scene.Gray;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Paint;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.cli.write.PngWriter;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import javax.imageio.ImageIO;

/**
 * What is to be told apart in a picture once each dot of it is black or white: its looks by what they are on a screen, each
 * with its signature on paper.
 */
record Copied(Map<String, Copied.Signature> looks) {
    private static final int DPI = 300;
    private static final int THRESHOLD = 128;

    /** A swatch that shows several lines of any hatch, in. */
    private static final double SWATCH = 3;

    /** Directions in which lines are looked for. */
    private static final int DIRECTIONS = 24;

    /** Less of a swatch is white paper. */
    private static final double BLANK = 0.004;

    /** Signatures by look: the same few looks are in all pictures. */
    private static final Map<Object, Signature> KNOWN = new ConcurrentHashMap<>();

    /**
     * What is left in black and white.
     *
     * @param share of the dots that are black
     * @param direction in which black lines run, in shares of a half turn; of a single line nothing
     * @param thick dots across, of a single line
     * @param runs of black along it
     */
    record Signature(double share, double direction, double thick, double runs) {
        boolean alike(Signature other) {
            boolean blank = share < BLANK;
            if (blank || other.share < BLANK) {
                return blank && other.share < BLANK;
            }
            double turn = Math.abs(direction - other.direction);
            return ratio(share, other.share) < 1.3
                    && Math.min(turn, 1 - turn) < 0.08
                    && ratio(thick, other.thick) < 1.4
                    && ratio(runs, other.runs) < 1.5;
        }

        private static double ratio(double a, double b) {
            return Math.max(a, b) / Math.max(1e-9, Math.min(a, b));
        }
    }

    /** Fills that differ in tone or in the hatch on them, and hatches; tones of gray are shading, which hatch explains. */
    static Copied regions(Scene scene) {
        List<SceneItem> drawn = scene.leaves();
        Map<List<Segment>, Pattern> hatched = new LinkedHashMap<>();
        Map<String, Signature> looks = new LinkedHashMap<>();
        for (SceneItem item : drawn) {
            if (item instanceof Hatch hatch) {
                hatched.put(hatch.ring(), hatch.pattern());
                looks.putIfAbsent("hatch " + hatch.pattern(), of(hatch.pattern()));
            }
        }
        Set<Paint> plain = new LinkedHashSet<>();
        for (SceneItem item : drawn) {
            if (item instanceof Area area
                    && !(area.tone() instanceof Gray)
                    && area.tone() != Tone.INK
                    && area.tone() != Tone.PAPER
                    && !hatched.containsKey(area.ring())) {
                plain.add(area.tone());
            }
        }
        plain.forEach(tone -> looks.put("tone " + tone, new Signature(0, 0, 1, 1)));
        return new Copied(looks);
    }

    /** Lines whose samples stand in the legend. */
    static Copied lines(Scene scene) {
        Map<String, Signature> looks = new LinkedHashMap<>();
        for (SceneItem item : scene.items()) {
            if (item instanceof Group group && group.id().equals("legend")) {
                for (SceneItem sample : new Scene("", "", 0, 0, group.items()).leaves()) {
                    if (sample instanceof Path path && !path.closed() && path.style() != LineStyle.BITE) {
                        looks.putIfAbsent(path.style().name(), of(path.style()));
                    }
                }
            }
        }
        return new Copied(looks);
    }

    /** Pairs that nobody tells apart. */
    List<String> alike() {
        List<String> names = List.copyOf(looks.keySet());
        List<String> alike = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (String other : names.subList(i + 1, names.size())) {
                if (looks.get(names.get(i)).alike(looks.get(other))) {
                    alike.add(names.get(i) + " " + looks.get(names.get(i)) + " and " + other + " " + looks.get(other));
                }
            }
        }
        return alike;
    }

    private static Signature of(Pattern pattern) {
        return KNOWN.computeIfAbsent(pattern, key -> {
            List<Segment> ring =
                    Outline.rectangle(new Box(0, 0, SWATCH, SWATCH)).segments();
            BufferedImage copy = copied(List.of(
                    new Area(Optional.empty(), Optional.empty(), ring, Tone.NAILER),
                    new Hatch(ring, pattern, Point.ORIGIN)));
            return new Signature(share(copy), direction(copy), 1, 1);
        });
    }

    private static Signature of(LineStyle style) {
        return KNOWN.computeIfAbsent(style, key -> {
            double middle = SWATCH / 2;
            BufferedImage copy = copied(List.of(
                    new Path(List.of(new Line(new Point(0, middle), new Point(SWATCH, middle))), false, style)));
            int thick = 0;
            int black = 0;
            int runs = 0;
            boolean last = false;
            for (int x = 0; x < copy.getWidth(); x++) {
                int across = 0;
                for (int y = 0; y < copy.getHeight(); y++) {
                    across += black(copy, x, y) ? 1 : 0;
                }
                thick = Math.max(thick, across);
                boolean ink = across > 0;
                black += ink ? 1 : 0;
                runs += ink && !last ? 1 : 0;
                last = ink;
            }
            return new Signature((double) black / copy.getWidth(), 0, thick, runs);
        });
    }

    private static double share(BufferedImage copy) {
        long black = 0;
        for (int y = 0; y < copy.getHeight(); y++) {
            for (int x = 0; x < copy.getWidth(); x++) {
                black += black(copy, x, y) ? 1 : 0;
            }
        }
        return (double) black / ((long) copy.getWidth() * copy.getHeight());
    }

    /** The direction along which black gathers in the fewest lines: seen that way, light and dark vary most. */
    private static double direction(BufferedImage copy) {
        int best = 0;
        double most = -1;
        double half = copy.getWidth() / 2.0;
        for (int k = 0; k < DIRECTIONS; k++) {
            double angle = Math.PI * k / DIRECTIONS;
            double[] lines = new double[copy.getWidth() * 2];
            int[] dots = new int[lines.length];
            for (int y = 0; y < copy.getHeight(); y++) {
                for (int x = 0; x < copy.getWidth(); x++) {
                    double right = x - half;
                    double up = half - y;
                    if (Math.hypot(right, up) < half) {
                        int line = (int) Math.round(up * Math.cos(angle) - right * Math.sin(angle) + half);
                        dots[line]++;
                        lines[line] += black(copy, x, y) ? 1 : 0;
                    }
                }
            }
            double varies = 0;
            for (int i = 0; i < lines.length; i++) {
                if (dots[i] > half / 2) {
                    double share = lines[i] / dots[i];
                    varies += share * share;
                }
            }
            if (varies > most) {
                most = varies;
                best = k;
            }
        }
        return (double) best / DIRECTIONS;
    }

    private static boolean black(BufferedImage copy, int x, int y) {
        return (copy.getRGB(x, y) & 255) < THRESHOLD;
    }

    private static BufferedImage copied(List<SceneItem> items) {
        try {
            return ImageIO.read(new ByteArrayInputStream(
                    PngWriter.write(new Scene("", "", SWATCH, SWATCH, items), Drawn.FONT, DPI)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
