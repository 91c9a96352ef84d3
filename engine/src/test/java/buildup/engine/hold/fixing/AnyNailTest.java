package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Drive;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Body;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Rule;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Nails anywhere, good and bad, counted again from points along them. */
@Tag("long")
class AnyNailTest {
    private static final double COUNTED = 0.03;

    private static final Mark MARK = new Mark("stack.yaml", 1, 1);

    private static Fastening fastening(String piece, Point at, double angle, double length) {
        Fastener finish = Driven.CATALOG.fasteners().stream()
                .filter(one -> one.name().equals("15 ga"))
                .findFirst()
                .orElseThrow();
        return new Fastening(
                "nail 1",
                piece,
                new Fastener.Cut(finish, Length.inches(length)),
                Optional.of(new Rule.Level(at.x(), Optional.of(Axis.OUT), MARK)),
                Optional.of(new Rule.Level(at.y(), Optional.of(Axis.UP), MARK)),
                angle,
                16,
                0,
                1,
                Optional.empty(),
                false,
                MARK);
    }

    @Test
    void what_a_nail_crosses_is_what_points_along_it_are_in() {
        for (long seed = 1; seed <= 60; seed++) {
            Driven stack = Driven.of(new BuiltUp(seed).text());
            Recount recount = new Recount(stack.section());
            Random random = new Random(seed);
            for (int i = 0; i < 12; i++) {
                List<Body> pieces = stack.section().pieces();
                Body body = pieces.get(random.nextInt(pieces.size()));
                List<Stroke> strokes = body.outline().strokes();
                Point at = strokes.get(random.nextInt(strokes.size())).segment().at(random.nextDouble());
                Fastening row = fastening(body.name(), at, random.nextInt(120) - 60, 0.5 + random.nextInt(12) / 4.0);
                Fixed nail = Fixing.of(
                                stack.section(), List.of(row), List.of(), List.of(), Driven.CATALOG, new Notices())
                        .get(0);
                double out = nail.drive().breakOut().map(Drive.BreakOut::by).orElse(0.0);
                if (nail.drive().crossings().isEmpty()) {
                    out = nail.drive().length();
                }
                assertThat(nail.drive().air() + out)
                        .as("seed " + seed + " nail " + i + " " + nail.drive())
                        .isCloseTo(recount.air(nail), within(COUNTED));
            }
        }
    }
}
