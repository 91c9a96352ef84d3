package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds for every stack, tried on random ones, a thousand in the long run; the seed stands in each message. */
@Tag("sampled")
class RandomStacksTest {
    private static final int STACKS = Integer.getInteger("buildup.composed", 60);

    /** Welding may shift a corner, and so a joint on the walk, this far. */
    private static final double JOINT = 2 * Tolerance.TOUCHING;

    private record Case(long seed, RandomStack stack, Bench bench) {}

    private static final List<Case> CASES = cases();

    /** Stacks that touch nothing where they should are refused, and others take their place. */
    private static List<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (long seed = 1; cases.size() < STACKS; seed++) {
            assertThat(seed).as("too many stacks are refused").isLessThan(3L * STACKS);
            RandomStack stack = new RandomStack(seed);
            long number = seed;
            guarded(seed, stack, () -> {
                Bench bench = Bench.of(stack.text(0, 0));
                if (bench.refusals().isEmpty()) {
                    cases.add(new Case(number, stack, bench));
                }
            });
        }
        return cases;
    }

    private static void onEach(int most, BiConsumer<RandomStack, Bench> check) {
        for (Case one : CASES.subList(0, most)) {
            guarded(one.seed(), one.stack(), () -> check.accept(one.stack(), one.bench()));
        }
    }

    private static void guarded(long seed, RandomStack stack, Runnable check) {
        try {
            check.run();
        } catch (RuntimeException | AssertionError fault) {
            throw new AssertionError("seed " + seed + ": " + fault + "\n" + stack.text(0, 0), fault);
        }
    }

    @Test
    void the_union_is_no_smaller_than_its_largest_piece_nor_larger_than_the_overlaps_allow() {
        onEach(STACKS, (stack, bench) -> {
            Section section = bench.section();
            List<Outline> own = section.bodies().stream()
                    .filter(Body::inStack)
                    .map(Body::outline)
                    .toList();
            double sum = own.stream().mapToDouble(Outline::area).sum();
            double largest = own.stream().mapToDouble(Outline::area).max().orElseThrow();
            double[] laps = section.overlaps().stream()
                    .filter(lap -> section.body(lap.a()).inStack()
                            && section.body(lap.b()).inStack())
                    .mapToDouble(Overlap::area)
                    .toArray();
            double slack = 1e-6;
            for (Outline outline : laps.length == 0 ? List.<Outline>of() : own) {
                slack += Tolerance.TOUCHING * outline.perimeter();
            }
            double lost = sum - section.totals().area();
            assertThat(section.totals().area()).isGreaterThanOrEqualTo(largest - slack);
            assertThat(lost)
                    .isBetween(
                            Arrays.stream(laps).max().orElse(0) - slack,
                            Arrays.stream(laps).sum() + slack);
        });
    }

    @Test
    void each_member_of_the_walk_begins_where_the_one_before_ended_or_where_something_stands_between() {
        onEach(STACKS, (stack, bench) -> {
            List<Member> members = bench.section().members();
            for (int i = 0; i + 1 < members.size(); i++) {
                Member one = members.get(i);
                Member next = members.get(i + 1);
                if (one.part() == next.part()
                        && !one.to().near(next.from(), JOINT)
                        && !slit(bench, one.to(), next.from())) {
                    assertThat(othersAt(bench, one, one.to()))
                            .as("between rows %d and %d", i, i + 1)
                            .isTrue();
                    assertThat(othersAt(bench, next, next.from()))
                            .as("between rows %d and %d", i, i + 1)
                            .isTrue();
                }
            }
        });
    }

    /** Whether two places face each other across a slit of 1/16, behind which nothing is of the room. */
    private static boolean slit(Bench bench, Point p, Point q) {
        Point middle = p.plus(q).times(0.5);
        return p.near(q, 1.0 / 16 + 1e-6)
                && bench.section().bodies().stream()
                        .noneMatch(body -> body.outline().holds(middle));
    }

    /** Whether framing, the room or a piece of another part (which touches by a point) is at {@code p}. */
    private static boolean othersAt(Bench bench, Member member, Point p) {
        List<Body> bodies = bench.section().bodies();
        return IntStream.range(0, bodies.size())
                .filter(body -> bench.section().members().stream()
                        .noneMatch(row -> row.part() == member.part() && row.body() == body))
                .anyMatch(body -> bodies.get(body).outline().distance(p) <= JOINT);
    }

    @Test
    void members_lie_on_the_true_outline_of_their_piece() {
        onEach(STACKS, (stack, bench) -> {
            for (Member member : bench.section().members()) {
                Body body = bench.section().body(member.body());
                assertThat(body.inStack()).isTrue();
                for (Segment segment : member.segments()) {
                    for (double t : new double[] {0, 0.5, 1}) {
                        double off = body.outline().strokes().stream()
                                .filter(stroke -> stroke.member().equals(member.member()))
                                .mapToDouble(stroke -> stroke.segment().distance(segment.at(t)))
                                .min()
                                .orElseThrow();
                        assertThat(off).as(body.name() + " " + member.member()).isLessThan(1e-6);
                    }
                }
            }
        });
    }

    @Test
    void reveals_stand_only_at_the_ends_of_contacts_of_the_two_pieces() {
        onEach(STACKS, (stack, bench) -> {
            for (Reveal reveal : bench.section().reveals()) {
                assertThat(bench.section().contacts())
                        .anyMatch(contact -> contact.between(reveal.piece(), reveal.over())
                                && (contact.from().near(reveal.at(), JOINT)
                                        || contact.to().near(reveal.at(), JOINT)));
                assertThat(reveal.amount()).isNotNegative();
            }
        });
    }

    @Test
    void every_pair_of_a_contact_is_ordered_so_that_its_facing_holds() {
        onEach(STACKS, (stack, bench) -> {
            for (Contact contact : bench.section().contacts()) {
                assertThat(contact.facing().isPresent()).isEqualTo(contact.length() > 0);
                if (contact.facing().isPresent()) {
                    Point into = contact.to().minus(contact.from()).unit().right();
                    double offUp = Math.abs(Math.toDegrees(Math.atan2(into.x(), into.y())));
                    double offOut = Math.abs(Math.toDegrees(into.angle()));
                    boolean carries = contact.facing().get() == Contact.Facing.CARRIES;
                    assertThat(carries ? offUp : offOut).isLessThanOrEqualTo(45.011);
                    assertThat(bench.section().body(contact.a()).outline().distance(contact.at()))
                            .isLessThan(1e-2);
                    assertThat(bench.section().body(contact.b()).outline().distance(contact.at()))
                            .isLessThan(1e-2);
                }
            }
        });
    }

    @Test
    @Tag("long")
    void moving_the_whole_stack_moves_nothing_in_its_figures() {
        onEach(STACKS / 2, (stack, bench) -> {
            double dx = stack.hasWall() ? 0 : 1.37;
            Bench moved = Bench.sound(stack.text(dx, 2.71));
            assertThat(figures(moved, dx, 2.71)).containsExactly(figures(bench, 0, 0), within(1e-6));
            assertThat(rows(moved)).containsExactlyElementsOf(rows(bench));
        });
    }

    @Test
    @Tag("long")
    void exchanging_two_unrelated_pieces_changes_no_figure() {
        int[] exchanges = {0};
        onEach(STACKS / 2, (stack, bench) -> {
            for (String text : stack.exchanged(bench)) {
                Bench other = Bench.sound(text);
                assertThat(figures(other, 0, 0)).containsExactly(figures(bench, 0, 0), within(1e-6));
                assertThat(rows(other)).containsExactlyInAnyOrderElementsOf(rows(bench));
                exchanges[0]++;
            }
        });
        assertThat(exchanges[0]).isGreaterThan(STACKS / 2);
    }

    @Test
    void the_same_text_gives_the_same_section() {
        onEach(STACKS / 5, (stack, bench) -> {
            Section one = bench.section();
            Section two = Bench.sound(stack.text(0, 0)).section();
            assertThat(two.members()).isEqualTo(one.members());
            assertThat(two.contacts()).isEqualTo(one.contacts());
            assertThat(two.reveals()).isEqualTo(one.reveals());
            assertThat(two.overlaps()).isEqualTo(one.overlaps());
            assertThat(two.voids()).isEqualTo(one.voids());
            assertThat(two.skin()).isEqualTo(one.skin());
            assertThat(two.totals()).isEqualTo(one.totals());
            assertThat(Bench.sound(stack.text(0, 0)).notices()).isEqualTo(bench.notices());
        });
    }

    private static double[] figures(Bench bench, double dx, double dy) {
        Section section = bench.section();
        Totals totals = section.totals();
        List<Double> figures = new ArrayList<>(List.of(
                totals.height(),
                totals.projection() - dx,
                totals.bottom() - dy,
                totals.top() - dy,
                totals.trimHeight(),
                totals.area(),
                totals.weightPerFoot(),
                (double) section.parts()));
        section.voids().stream().map(ClosedVoid::area).sorted().forEach(figures::add);
        section.overlaps().stream().map(Overlap::area).sorted().forEach(figures::add);
        section.overlaps().stream().map(Overlap::depth).sorted().forEach(figures::add);
        if (section.overlaps().isEmpty()) {
            section.members().stream().map(Member::length).sorted().forEach(figures::add);
            section.reveals().stream().map(Reveal::amount).sorted().forEach(figures::add);
        }
        section.contacts().stream().map(Contact::length).sorted().forEach(figures::add);
        return figures.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<String> rows(Bench bench) {
        List<String> rows = new ArrayList<>();
        // lengths are compared as figures: printed, a half in the last place may go either way
        bench.contacts().forEach(row -> rows.add(row.substring(0, row.lastIndexOf(' '))));
        // where two pieces that overlap share a line, either may stand for it
        if (bench.section().overlaps().isEmpty()) {
            bench.walk().forEach(row -> rows.add(row.substring(0, row.lastIndexOf(' '))));
            bench.section()
                    .reveals()
                    .forEach(reveal -> rows.add(bench.name(reveal.piece()) + " over " + bench.name(reveal.over()) + " "
                            + reveal.along().word()));
        }
        bench.section().voids().forEach(hollow -> rows.add("void " + hollow.closedBy()));
        bench.section()
                .standing()
                .forEach(standing -> rows.add(bench.name(standing.body()) + " " + standing.grounded() + " "
                        + standing.fixed() + " " + standing.bearing().size()));
        return rows;
    }
}
