package buildup.engine.mill.nearest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.profiles.Profile;
import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Rip;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class NearestTest {
    private static final Neighbors.Watch UNWATCHED = (done, all) -> {};

    private static final List<Profile> USUAL = Neighbors.usual(Catalog.builtIn(), LengthUnit.INCH);
    private static final double SAME = 1e-6;

    static List<Profile> usual() {
        return USUAL;
    }

    static Profile milled(String name, Outline outline) {
        return new Profile(name, "trim", outline, new Profile.Milled());
    }

    static Profile called(String name) {
        return USUAL.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    }

    static Neighbor nearest(Profile wanted, Profile... stock) {
        return Neighbors.of(wanted, List.of(stock), Freedom.usual(), 1, UNWATCHED)
                .list()
                .get(0);
    }

    private static Outline box(double width, double height) {
        return Outline.rectangle(new Box(0, 0, width, height));
    }

    /** A quarter round of radius r over a base so high. */
    private static Outline round(double r, double base) {
        Walk walk = new Walk();
        walk.straight(Way.OUT, r, "bottom");
        if (base > 0) {
            walk.straight(Way.UP, base, "face");
        }
        walk.ovolo(Way.UP, r, Way.IN, r, "round");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    @Test
    void every_usual_size_of_the_catalog_is_compared_with() {
        assertThat(USUAL).hasSizeGreaterThan(100).doesNotHaveDuplicates();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("usual")
    void every_profile_of_the_catalog_is_nearest_to_itself(Profile profile) {
        Neighbor first = Neighbors.of(profile, USUAL, Freedom.usual(), 1, UNWATCHED)
                .list()
                .get(0);
        assertThat(first.apart()).isLessThan(SAME);
        assertThat(first.gap()).isLessThan(SAME);
        assertThat(first.profile().outline()).isEqualTo(profile.outline());
        assertThat(first.advice()).isInstanceOf(Advice.AsItIs.class);
    }

    @Test
    void a_larger_square_differs_by_the_difference_of_areas_and_is_planed() {
        Neighbor found = nearest(milled("wanted", box(1, 1)), milled("stock", box(1.02, 1)));
        assertThat(found.apart()).isCloseTo(0.02, within(SAME));
        assertThat(found.gap()).isCloseTo(0.02, within(0.0005));
        Advice.Plane plane = (Advice.Plane) found.advice();
        assertThat(plane.cuts()).hasSize(1);
        assertThat(plane.cuts().get(0).amount()).isCloseTo(0.02, within(SAME));
        assertThat(plane.off()).isLessThan(SAME);
    }

    @Test
    void a_round_and_the_hollow_that_holds_it_differ_by_the_hollow() {
        // Mensuration: a square of side 1 less the quarter disc in it, (1 - pi/4), touches it nowhere but at two points
        Neighbor found = nearest(milled("round", round(1, 0)), milled("square", box(1, 1)));
        assertThat(found.apart()).isCloseTo(1 - Math.PI / 4, within(SAME));
        // the corner of the square is sqrt 2 - 1 from the arc
        assertThat(found.gap()).isCloseTo(Math.sqrt(2) - 1, within(0.0005));
        Advice.Covers covers = (Advice.Covers) found.advice();
        assertThat(covers.area()).isCloseTo(1 - Math.PI / 4, within(SAME));
        assertThat(covers.deepest()).isCloseTo(Math.sqrt(2) - 1, within(0.0005));
    }

    /** Of 9,000 ft, a two-thousandth of an inch is nobody's question. */
    @Test
    @Timeout(30)
    void a_gap_is_measured_as_coarsely_as_the_profile_is_larger_than_any_molding() {
        Gap gap = Gap.between(box(108_000, 108_000), box(108_000, 107_000));
        assertThat(gap.missing()).isCloseTo(1000, within(9.0));
        assertThat(gap.spare()).isLessThan(9.0);
        // a molding of 2 ft is still measured as a small one is
        assertThat(Gap.between(box(24, 1), box(24, 0.98)).missing()).isCloseTo(0.02, within(0.002));
    }

    @Test
    void a_square_that_is_too_small_says_by_how_much() {
        Neighbor found = nearest(milled("wanted", box(1, 1)), milled("stock", box(0.75, 1)));
        assertThat(found.apart()).isCloseTo(0.25, within(SAME));
        Advice.TooSmall small = (Advice.TooSmall) found.advice();
        assertThat(small.by()).isCloseTo(0.25, within(0.0005));
    }

    @ParameterizedTest
    @CsvSource({"BACK, BACK", "BOTTOM, BOTTOM"})
    void what_comes_off_is_told_by_the_side_of_the_profile_as_the_catalog_draws_it(Rip.Side taller, Rip.Side off) {
        boolean below = taller == Rip.Side.BOTTOM;
        Outline stock = below ? round(1, 0.145) : grownBack(0.02);
        for (Motion way : List.of(Motion.NONE, Motion.turn(90), Motion.OVER, Motion.ENDS, Motion.SWAP)) {
            Outline wanted = (below ? round(1, 0.125) : grownBack(0)).moved(way);
            Advice.Plane plane = (Advice.Plane)
                    nearest(milled("wanted", wanted), milled("stock", stock)).advice();
            assertThat(plane.cuts()).hasSize(1);
            assertThat(plane.cuts().get(0).side()).isEqualTo(off);
            assertThat(plane.cuts().get(0).amount()).isCloseTo(0.02, within(SAME));
        }
    }

    /** An ovolo over a high base, which no turn makes like itself, with more wood at its back. */
    private static Outline grownBack(double more) {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 1 + more, "bottom");
        walk.straight(Way.UP, 0.5, "face");
        walk.ovolo(Way.UP, 0.75, Way.IN, 0.5, "round");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    @Test
    void shift_flip_and_quarter_turn_change_nothing() {
        Random random = new Random(7);
        for (String name : List.of("cove-bed 1-1/4 x 1-3/8", "attic-base 1-1/4 x 2")) {
            Profile profile = called(name);
            List<Profile> others =
                    USUAL.stream().filter(one -> !one.name().equals(name)).toList();
            Profile plain = milled("plain", profile.outline());
            Neighbors before = Neighbors.of(plain, others, Freedom.usual(), 3, UNWATCHED);
            for (Motion way : List.of(Motion.turn(90), Motion.OVER)) {
                Motion moved = way.then(Motion.shift(random.nextDouble() * 9, random.nextDouble() * 9));
                Neighbors after = Neighbors.of(
                        milled("moved", profile.outline().moved(moved)), others, Freedom.usual(), 3, UNWATCHED);
                for (int i = 0; i < 3; i++) {
                    assertThat(after.list().get(i).apart())
                            .as(name)
                            .isCloseTo(before.list().get(i).apart(), within(2e-5));
                }
                assertThat(after.list().get(0).profile())
                        .isEqualTo(before.list().get(0).profile());
            }
        }
    }

    @Test
    void any_turn_is_found_where_it_is_asked_for() {
        Outline wanted = grownBack(0).moved(Motion.turn(33)).moved(Motion.shift(3, 1));
        Profile stock = milled("stock", grownBack(0));
        Neighbor any = Neighbors.of(milled("wanted", wanted), List.of(stock), new Freedom(true, false), 1, UNWATCHED)
                .list()
                .get(0);
        assertThat(any.apart()).isLessThan(1e-3);
        assertThat(any.pose().turn()).isCloseTo(33, within(0.01));
        assertThat(nearest(milled("wanted", wanted), stock).apart()).isGreaterThan(0.1);
    }

    @Test
    void a_scaled_one_is_found_where_it_is_asked_for() {
        Profile stock = milled("stock", round(1, 0.25));
        Profile wanted = milled("wanted", round(1.5, 0.375));
        Neighbor scaled = Neighbors.of(wanted, List.of(stock), new Freedom(false, true), 1, UNWATCHED)
                .list()
                .get(0);
        assertThat(scaled.apart()).isLessThan(1e-3);
        assertThat(scaled.pose().scale()).isCloseTo(1.5, within(1e-3));
    }

    @Test
    void no_other_place_near_by_is_better() {
        Profile wanted = called("cove-bed 1-1/4 x 1-3/8");
        Neighbor found = nearest(wanted, called("ogee-bed 1-1/4 x 1-1/2"));
        Random random = new Random(11);
        for (int i = 0; i < 80; i++) {
            double reach = random.nextDouble() * 0.5;
            Outline other = found.outline()
                    .moved(Motion.shift((random.nextDouble() - 0.5) * reach, (random.nextDouble() - 0.5) * reach));
            assertThat(counted(wanted.outline(), other, 80)).isGreaterThan(found.apart() - 0.03);
        }
        assertThat(counted(wanted.outline(), found.outline(), 700)).isCloseTo(found.apart(), within(0.004));
    }

    /** The area between by counting points of a grid, with no area formula at all. */
    private static double counted(Outline a, Outline b, int n) {
        Box box = a.box().with(b.box());
        int single = 0;
        List<Point> ringA = a.flattened(1e-4);
        List<Point> ringB = b.flattened(1e-4);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                Point p = new Point(
                        box.back() + (i + 0.5) / n * box.width(), box.bottom() + (j + 0.5) / n * box.height());
                single += inside(ringA, p) == inside(ringB, p) ? 0 : 1;
            }
        }
        return single * box.width() * box.height() / n / n;
    }

    private static boolean inside(List<Point> ring, Point p) {
        boolean inside = false;
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            Point a = ring.get(i);
            Point b = ring.get(j);
            if (a.y() > p.y() != b.y() > p.y() && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** A profile at 80 % of a listed one: no bench makes the one of the other. */
    @Test
    void another_size_of_a_shape_is_to_be_milled_anew() {
        Profile stock = milled("stock", round(1.25, 0.3125));
        Neighbors nearest =
                Neighbors.of(milled("wanted", round(1, 0.25)), List.of(stock), new Freedom(false, true), 1, UNWATCHED);
        assertThat(FigurePrinter.INCHES.print(NearestWords.answer(nearest)))
                .isEqualTo("stock at 80 % of its size: mill anew.");
        assertThat(nearest.list().get(0).advice()).isInstanceOf(Advice.Anew.class);
    }

    /** A crown traced as it stands on the wall is the catalog's, which lies flat; and the other way round. */
    @Test
    void a_sprung_molding_that_stands_is_matched_to_its_flat_self() {
        Profile crown = called("cyma-crown 9/16 x 3-5/8");
        Profile standing = milled("traced", crown.outline().moved(Motion.shift(2, 1)));
        for (Neighbor found : List.of(nearest(standing, crown), nearest(crown, standing))) {
            assertThat(found.apart()).isLessThan(1e-6);
            assertThat(Math.abs(found.pose().turned())).isCloseTo(38, within(1e-9));
            assertThat(found.advice()).isInstanceOf(Advice.AsItIs.class);
        }
    }

    @Test
    void every_profile_is_reported_to_whoever_watches() {
        List<Profile> stock = List.of(called("cove 3/4 x 3/4"), called("quarter-round 3/4 x 3/4"));
        List<String> told = new ArrayList<>();
        Neighbors.of(
                called("cove-bed 1-1/4 x 1-3/8"),
                stock,
                Freedom.usual(),
                1,
                (done, all) -> told.add(done + " of " + all));
        assertThat(told).containsExactly("1 of 4", "2 of 4", "3 of 4", "4 of 4");
    }

    @Test
    void boards_are_left_out() {
        assertThat(Neighbors.of(
                                milled("wanted", box(1, 1)),
                                List.of(Profile.board("board 1 x 1", 1, 1)),
                                Freedom.usual(),
                                5,
                                UNWATCHED)
                        .list())
                .isEmpty();
    }
}
