package buildup.cli.drawing.section;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.ChordRing;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** No text meets another text, a line or wood that it does not name; nothing leaves the sheet. */
class CrowdingTest {
    /** Drawn lines have a width; texts are held clear of their middles. */
    private static final double SHRINK = 0.002;

    static Stream<String> stacks() {
        return Stream.of(Drawn.CORNICE, Drawn.BASE, Drawn.ONE, Drawn.NAMES, courses(20, new Random(7)));
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void texts_keep_clear(String yaml) {
        keepsClear(Drawn.of(yaml).scene(), yaml);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24})
    void texts_keep_clear_in_a_stack_of_any_shape(long seed) {
        String yaml = thrown(new Random(seed));
        Drawn drawn = Drawn.of(yaml, java.util.Optional.of("arch-e"));
        keepsClear(drawn.scene(), "seed " + seed + "\n" + yaml);
    }

    @Test
    void the_check_sees_a_text_on_a_line() {
        Path line = new Path(
                List.of(new buildup.profiles.outline.Line(new Point(0, 1), new Point(4, 1))),
                false,
                LineStyle.DIMENSION);
        Label label = Label.centered(Drawn.FONT, "1-1/2", new Point(2, 1), 0.14, false);
        assertThat(faults(new Scene("", "", 5, 5, List.of(line, label)))).hasSize(1);
        assertThat(faults(new Scene("", "", 5, 5, List.of(label, label.moved(0.1, 0)))))
                .hasSize(1);
        assertThat(faults(new Scene("", "", 5, 5, List.of(label, label.moved(0, 1)))))
                .isEmpty();
    }

    private static void keepsClear(Scene scene, String about) {
        assertThat(faults(scene)).as(about).isEmpty();
    }

    private static List<String> faults(Scene scene) {
        List<Label> labels = all(scene, Label.class);
        List<Segment> lines = all(scene, Path.class).stream()
                .filter(path -> path.style() != LineStyle.CASING)
                .flatMap(path -> path.segments().stream())
                .toList();
        List<Area> pieces = all(scene, Area.class).stream()
                .filter(area -> area.id().isPresent())
                .toList();
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            Box box = label.box().grown(-SHRINK);
            for (Label other : labels.subList(i + 1, labels.size())) {
                if (Boxes.overlap(box, other.box())) {
                    faults.add(label.text() + " on " + other.text());
                }
            }
            for (Segment line : lines) {
                if (line.box().near(box, 0) && crosses(box, line)) {
                    faults.add(label.text() + " at " + label.at() + " on " + line);
                }
            }
            boolean letter = label.text().matches("[A-Z]{1,2}|void");
            for (Area piece : pieces) {
                if (!letter && ChordRing.of(piece.ring(), 0.002).meets(box)) {
                    faults.add(label.text() + " on " + piece.id().orElseThrow());
                }
            }
            if (box.back() < 0 || box.bottom() < 0 || box.face() > scene.width() || box.top() > scene.height()) {
                faults.add(label.text() + " off the sheet");
            }
        }
        return faults;
    }

    private static boolean crosses(Box box, Segment line) {
        List<Point> points = line.flattened(0.001);
        for (int i = 0; i + 1 < points.size(); i++) {
            if (Boxes.crosses(box, points.get(i), points.get(i + 1))) {
                return true;
            }
        }
        return false;
    }

    private static <T> List<T> all(Scene scene, Class<T> kind) {
        return scene.leaves().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** Plain courses, one on the next. */
    private static String courses(int count, Random random) {
        StringBuilder yaml = new StringBuilder("title: Courses\nwood: red-oak\npieces:\n");
        String under = "datum";
        for (int i = 1; i <= count; i++) {
            yaml.append(String.format(
                    Locale.ROOT,
                    "  - { name: course %d, section: [out %d/16, up %d/16], back: wall, bottom: %s }\n",
                    i,
                    4 + random.nextInt(80),
                    2 + random.nextInt(16),
                    under));
            under = "course " + i + ".top";
        }
        return yaml.toString();
    }

    /** Boards, blocks and moldings on, beside and through each other, with or without a room round them. */
    private static String thrown(Random random) {
        StringBuilder yaml = new StringBuilder("title: Thrown together\nwood: red-oak\nspace: {");
        yaml.append(random.nextBoolean() ? " floor: -1/2," : "");
        yaml.append(random.nextBoolean() ? " ceiling: 9," : "");
        yaml.append(" wall: { solid: ").append(random.nextBoolean() ? "yes" : "no");
        yaml.append(", covering: ").append(random.nextBoolean() ? "1/2" : "0").append(" } }\npieces:\n");
        int count = 1 + random.nextInt(14);
        for (int i = 1; i <= count; i++) {
            String shape = switch (random.nextInt(5)) {
                case 0 -> "section: [out 1/4, cove 1, up 3/8]";
                case 1 -> "section: [out 1/2, up 1/8, ovolo 3/8 in, up 1/4]";
                case 2 -> "section: [out 1/4, bead up 3/4, up 1/8]";
                case 3 -> "profile: board 1/4 x " + (1 + random.nextInt(4));
                default -> "section: [out " + (1 + random.nextInt(60)) + "/16, up " + (1 + random.nextInt(40)) + "/16]";
            };
            String kind = List.of("trim", "trim", "trim", "nailer", "framing").get(random.nextInt(5));
            yaml.append(String.format(
                    Locale.ROOT,
                    "  - { name: piece %d, kind: %s, %s, back: %d/16, bottom: %d/16 }\n",
                    i,
                    i == 1 ? "trim" : kind,
                    shape,
                    random.nextInt(50),
                    random.nextInt(90)));
        }
        return yaml.toString();
    }
}
