package buildup.engine.look.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.look.sight.Coverage.Edge;
import buildup.profiles.outline.Point;
import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Worked example C of reference/light-and-sight.md: this project's own arithmetic. */
class CorniceSightTest {
    private static final Offset<Double> NEAR = within(0.0005);
    private final Sights cornice = Sights.of(Bench.resource("/reference-cornice.yaml") + Sights.EYES);

    /** A nailer behind a gap that is open below, between the bed's top and the fascia's lip. */
    private final Sights openBelow = Sights.of(Bench.head("space: { floor: -84, wall: { solid: yes } }")
            + Sights.EYES
            + Bench.list(
                    "name: bed, profile: board 2-1/2 x 1-3/8, back: wall, top: 6-1/4",
                    "name: rail, kind: nailer, profile: board 2 x 1-1/2, back: wall, bottom: bed.top",
                    "name: top, profile: board 3/4 x 4-1/4, lay: flat, back: wall, bottom: rail.top",
                    "name: fascia, profile: board 3/4 x 1-3/4, face: top.face, top: top.bottom"));

    @Test
    void the_lip_hides_part_of_the_soffit_s_underside_from_a_standing_eye() {
        Coverage soffit = cornice.coverage("standing", "soffit");
        assertThat(soffit.exposed()).isCloseTo(1.5, within(1e-9));
        assertThat(soffit.seen()).isCloseTo(0.929, NEAR);
        assertThat(soffit.hiddenShare()).isCloseTo(0.381, NEAR);
        assertThat(soffit.visible()).singleElement().satisfies(part -> {
            assertThat(part.from()).as("from the bed outward").isEqualTo(new Point(2, 6.25));
            assertThat(part.to().x()).as("3.5 less 0.25 / 0.43796").isCloseTo(3.5 - 0.571, NEAR);
        });
    }

    @Test
    void a_seated_eye_sees_more_of_it() {
        Coverage soffit = cornice.coverage("seated", "soffit");
        assertThat(soffit.seen()).isCloseTo(1.111, NEAR);
        assertThat(soffit.hiddenShare()).isCloseTo(0.259, NEAR);
    }

    @Test
    void the_lip_would_have_to_come_down_to_5_602_for_a_standing_and_5_302_for_a_seated_eye() {
        Edge standing = cornice.coverage("standing", "soffit").cures().get(0);
        Edge seated = cornice.coverage("seated", "soffit").cures().get(0);
        assertThat(cornice.bench().name(standing.body())).isEqualTo("fascia");
        assertThat(standing.from()).isCloseTo(6, NEAR);
        assertThat(standing.to()).isCloseTo(5.602, NEAR);
        assertThat(standing.move()).isCloseTo(0.398, NEAR);
        assertThat(seated.to()).isCloseTo(5.302, NEAR);
    }

    @Test
    void the_notice_names_the_worst_eye_and_the_cure_that_serves_every_eye() {
        Notice said = cornice.said();
        assertThat(said.level()).isEqualTo(Level.PROBLEM);
        assertThat(said.code()).isEqualTo("nailer-shows");
        assertThat(NoticeWords.INCHES.message(said)).isEqualTo("From 'seated' you see 1-1/8- of raw 'soffit'.");
        assertThat(NoticeWords.INCHES.cure(said))
                .isEqualTo("Finish it, or bring the lower edge of 'fascia' down to 5-1/4 (needs 5.302).");
        assertThat(NoticeWords.INCHES.edits(said))
                .as("lowered so far, it hides the soffit from both")
                .containsExactly(new Edit.Set("pieces.fascia.bottom", new Content.Text("5-1/4")));
        assertThat(said.piece()).hasValue("soffit");
        assertThat(said.mark().orElseThrow()).hasToString("stack.yaml:10:5");
        assertThat(said.amount().orElseThrow().amount()).isCloseTo(1.111, NEAR);
    }

    @Test
    void a_lip_dropped_by_the_cure_hides_all_of_it_from_both() {
        String text = Bench.resource("/reference-cornice.yaml")
                .replace(
                        "board 3/4 x 2, back: soffit.face, bottom: soffit.bottom - 1/4",
                        "board 3/4 x 2-3/4, back: soffit.face, bottom: soffit.bottom - 1");
        Sights dropped = Sights.of(text + Sights.EYES);
        assertThat(dropped.coverage("standing", "soffit").seen()).isZero();
        assertThat(dropped.coverage("seated", "soffit").hiddenShare()).isEqualTo(1);
        assertThat(dropped.coverage("seated", "soffit").cures()).isEmpty();
        assertThat(dropped.said().level()).isEqualTo(Level.NOTE);
        assertThat(NoticeWords.INCHES.message(dropped.said()))
                .isEqualTo("1-1/2 of raw 'soffit' lies on the room side; no eye of the stack sees it.");
        assertThat(NoticeWords.INCHES.cure(dropped.said()))
                .isEqualTo("Finish it, if someone may stand closer or lower.");
    }

    @Test
    void blocks_and_wedge_lie_inside_and_count_as_hidden() {
        for (String nailer : new String[] {"block A", "block B", "wedge"}) {
            Coverage row = cornice.coverage("standing", nailer);
            assertThat(row.exposed()).as(nailer).isZero();
            assertThat(row.hiddenShare()).as(nailer).isEqualTo(1);
        }
    }

    @Test
    void open_below_the_gap_shows_0_189_of_the_nailer_over_the_bed_and_under_the_lip_s_back_arris() {
        Coverage rail = openBelow.coverage("standing", "rail");
        assertThat(rail.exposed()).isCloseTo(1.5, within(1e-9));
        assertThat(rail.seen()).isCloseTo(0.1893, NEAR);
        assertThat(rail.visible()).singleElement().satisfies(part -> {
            assertThat(part.from().y()).as("the bed hides below").isCloseTo(6.4676, NEAR);
            assertThat(part.to().y()).as("the lip's back arris hides above").isCloseTo(6.6569, NEAR);
        });
        assertThat(rail.hiddenShare())
                .as("64.8 % would be the lip's front arris")
                .isCloseTo(0.874, NEAR);
    }

    @Test
    void open_below_either_edge_of_the_gap_can_close_it_and_the_smaller_move_comes_first() {
        // the sight line over one edge passes the other at the height that closes the gap
        double lip = 6.25 - (3.5 - 2.5) * (6.25 + 24) / (72 - 2.5);
        double bed = 6 + (3.5 - 2.5) * (6 + 24) / (72 - 3.5);
        assertThat(openBelow.coverage("standing", "rail").cures())
                .extracting(cure -> openBelow.bench().name(cure.body()))
                .containsExactly("fascia", "bed");
        assertThat(openBelow.coverage("standing", "rail").cures().get(0).to()).isCloseTo(lip, within(1e-6));
        assertThat(openBelow.coverage("standing", "rail").cures().get(1).to()).isCloseTo(bed, within(1e-6));
    }
}
