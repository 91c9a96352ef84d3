package buildup.cli.drawing.room;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.Typed;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.engine.Answer;
import buildup.engine.Cuts;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Saw.Hand;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.sticks.Limit;
import buildup.engine.room.stock.End;
import buildup.engine.room.stock.StickPiece;
import buildup.shared.figure.FigurePrinter;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands on the label of a piece about its ends is what the table of cuts says. */
class SawSidesTest {
    private static final int JOBS = Integer.getInteger("buildup.label.jobs", 25);

    /** A line of the table: how the piece lies; how it is sawn; which side is kept; and what comes after. */
    private static final Pattern HOW =
            Pattern.compile("(.+); miter ([^ ,]+)( left| right)?, bevel ([^;]+); keep the (left|right)(.*)");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "reading-room-case.yaml",
                "reading-room-cornice.yaml",
                "reading-room-door-head.yaml",
                "reading-room-mantel.yaml",
                "reading-room-order.yaml",
                "reading-room-wainscot-cap.yaml"
            })
    void labels_of_the_demos_say_what_the_table_says(String demo) {
        Optional<Cuts.Known> cuts = cuts(Typed.of(Ran.read(Ran.demo(demo))));
        if (cuts.isPresent()) {
            assertThat(compared(cuts.get())).isPositive();
        }
    }

    @Tag("sampled")
    @Test
    void labels_of_jobs_of_chance_say_what_the_table_says() {
        int sawn = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            sawn += compared(cuts(Typed.of(job(new Random(seed)))).orElseThrow());
        }
        assertThat(sawn).isGreaterThan(JOBS);
    }

    private static Optional<Cuts.Known> cuts(Answer answer) {
        return Cuts.of(answer, Limit.usual()).known();
    }

    /** How many ends were compared that are not square. */
    private static int compared(Cuts.Known cuts) {
        CutList list = cuts.lengths();
        List<Group> labels = SticksDrawing.of(cuts.job(), list, Drawn.FONT).items().stream()
                .filter(Group.class::isInstance)
                .map(Group.class::cast)
                .filter(group -> group.id().startsWith("label-"))
                .toList();
        int sawn = 0;
        for (int i = 0; i < labels.size(); i++) {
            StickPiece piece = list.asCut().get(i);
            if (piece.body() < 0) {
                // a block is square all round, and in no table of the runs
                continue;
            }
            Fit fit = cuts.job().fits().get(list.pieces().indexOf(whole(list, piece)));
            String words = words(labels.get(i));
            for (Hand hand : Hand.values()) {
                End end = hand == Hand.LEFT ? piece.left() : piece.right();
                if (isOwn(fit, hand, end)) {
                    sawn += same(FigurePrinter.INCHES.print(fit.cut(hand).words()), words, end);
                }
            }
        }
        return sawn;
    }

    /** Where a piece is spliced, the table of cuts tells only of its outer ends. */
    private static boolean isOwn(Fit fit, Hand hand, End end) {
        return end.joint().word().equals(fit.cut(hand).kind().word());
    }

    private static StickPiece whole(CutList list, StickPiece piece) {
        return list.pieces().stream()
                .filter(wanted -> piece.id().matches(Pattern.quote(wanted.id()) + "([a-z.].*)?"))
                .findFirst()
                .orElseThrow();
    }

    private static int same(String table, String label, End end) {
        assertThat(FigurePrinter.INCHES.print(end.how())).isEqualTo(table);
        Matcher how = HOW.matcher(table);
        if (!how.matches()) {
            assertThat(table).startsWith("square");
            return 0;
        }
        String swing = how.group(3);
        assertThat(label).contains(how.group(1), "keep the " + how.group(5));
        if (swing != null) {
            assertThat(label).contains(how.group(2) + swing);
        }
        if (!how.group(4).equals("0°")) {
            assertThat(label).contains("bevel " + how.group(4));
        }
        return 1;
    }

    private static String words(Group label) {
        StringBuilder words = new StringBuilder();
        new Scene("", "", 0, 0, List.of(label))
                .leaves().stream()
                        .filter(Label.class::isInstance)
                        .forEach(leaf -> words.append(((Label) leaf).text()).append(' '));
        return words.toString();
    }

    private static String job(Random random) {
        String corner = List.of("inside 90", "outside 90", "inside 135", "outside 120", "inside 92", "outside 88")
                .get(random.nextInt(6));
        String end =
                List.of("return", "die", "square", "{ end: die, corner: 80 }").get(random.nextInt(4));
        boolean cope = random.nextBoolean();
        return """
                title: Chance
                wood: yellow-poplar
                space: { floor: -90, ceiling: 6 }
                pieces:
                  - { name: frieze, profile: board 3/4 x 2-1/2, back: wall, bottom: datum }
                  - { name: shelf, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: frieze.top }
                  - { name: crown, profile: plain-crown 2-3/4, back: wall, bottom: shelf.top }
                plan:
                  - { name: room, left: %s, right: die,%s stretches: [{ length: %d, corner: %s }, { length: %d }] }
                stock:
                  sticks:
                    - { of: 1x4, buy: 10' }
                    - { of: plain-crown 2-3/4, buy: 12' }
                """.formatted(
                        end, cope ? " inside: cope," : "", 20 + random.nextInt(170), corner, 30 + random.nextInt(90));
    }
}
