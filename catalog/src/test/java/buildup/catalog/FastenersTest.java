package buildup.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.fastener.Fastener;
import buildup.catalog.fastener.Tool;
import buildup.catalog.wood.Wood;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FastenersTest {
    private static Fastener listed(String name) {
        return Asked.BUILT_IN.fasteners().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name));
    }

    /** What was seen in print; sources at the top of reference/fasteners.csv. */
    @Test
    void nails_and_screws_have_the_sizes_that_were_seen() {
        for (String[] row : Reference.rows("fasteners.csv")) {
            Fastener fastener = listed(row[0]);
            List<Length> lengths = fastener.lengths();
            same(row[1], fastener.diameter());
            same(row[2], lengths.get(0));
            same(row[3], lengths.get(lengths.size() - 1));
            if (!row[4].isEmpty()) {
                same(row[4], fastener.root().orElseThrow());
            }
        }
    }

    private static void same(String expected, Length length) {
        if (!expected.isEmpty()) {
            assertThat(length.toInches()).isEqualTo(Double.parseDouble(expected), within(1e-9));
        }
    }

    @Test
    void every_fastener_has_a_tool_and_a_head_no_smaller_than_its_shank() {
        assertThat(Asked.BUILT_IN.fasteners()).hasSizeGreaterThan(30).allSatisfy(fastener -> {
            assertThat(Asked.BUILT_IN.tool(fastener)).as(fastener.name()).isPresent();
            assertThat(fastener.head()).as(fastener.name()).isGreaterThanOrEqualTo(fastener.diameter());
            assertThat(fastener.lengths()).as(fastener.name()).isSorted().isNotEmpty();
            assertThat(fastener.root().isPresent())
                    .as(fastener.name())
                    .isEqualTo(fastener.kind() == Fastener.Kind.SCREW);
        });
        assertThat(listed("23 ga").headless()).isTrue();
        assertThat(listed("18 ga").headless()).isFalse();
        assertThat(Asked.BUILT_IN.tools()).extracting(Tool::name).contains("brad nailer", "hammer", "driver");
    }

    private static Optional<Fastener.Cut> ask(Catalog catalog, String call, LengthUnit unit, Notices notices) {
        return catalog.fastener(new Scalar(call, Asked.MARK), new LengthReader(unit, Map.of()), notices);
    }

    private static String call(String call, LengthUnit unit) {
        Notices notices = new Notices();
        String read =
                ask(Asked.BUILT_IN, call, unit, notices).map(Fastener.Cut::call).orElse("");
        assertThat(notices.sorted()).isEmpty();
        return read;
    }

    @Test
    void a_call_is_a_name_and_a_length_in_any_spelling_of_the_trade() {
        assertThat(call("15 ga x 2-1/2", LengthUnit.INCH)).isEqualTo("15 ga x 2-1/2");
        assertThat(call("15GA x 2-1/2", LengthUnit.INCH)).isEqualTo("15 ga x 2-1/2");
        assertThat(call("18 ga x 38 mm", LengthUnit.INCH))
                .as("within 1/64 of 1-1/2")
                .isEqualTo("18 ga x 1-1/2-");
        assertThat(call("18 ga x 38.1", LengthUnit.MILLIMETER)).isEqualTo("18 ga x 1-1/2");
        assertThat(call("8d finish", LengthUnit.INCH)).isEqualTo("8d finish");
        assertThat(call("8D  Casing x 2-1/2", LengthUnit.INCH)).isEqualTo("8d casing");
        assertThat(call("screw 8x2", LengthUnit.INCH)).isEqualTo("screw 8 x 2");
    }

    @Test
    void a_bare_fraction_in_a_metric_job_is_asked_about_and_never_read_as_millimeters() {
        assertThat(said("15 ga x 2-1/2", LengthUnit.MILLIMETER))
                .containsExactly("REFUSAL ambiguous stack.yaml:7:3 2-1/2 in or mm? | Write 2-1/2 in, or 2.5 mm.");
        assertThat(call("15 ga x 2-1/2 in", LengthUnit.MILLIMETER)).isEqualTo("15 ga x 2-1/2");
    }

    @Test
    void what_is_sold_is_told_in_millimeters_in_a_metric_job_and_can_be_typed_back() {
        Notices notices = new Notices();
        ask(Asked.BUILT_IN, "23 ga x 50", LengthUnit.MILLIMETER, notices);
        NoticeWords words = NoticeWords.in(LengthUnit.MILLIMETER);
        assertThat(words.message(notices.sorted().get(0))).isEqualTo("'23 ga' is not sold 50.0 mm long.");
        assertThat(words.cure(notices.sorted().get(0)))
                .startsWith("Sold: 12.7 mm, 15.9 mm, 19.1 mm, 25.4 mm, 28.6 mm; list others");
        assertThat(call("23 ga x 28.6 mm", LengthUnit.MILLIMETER)).startsWith("23 ga x 1-1/8");
    }

    private static List<String> said(String call) {
        return said(call, LengthUnit.INCH);
    }

    private static List<String> said(String call, LengthUnit unit) {
        Notices notices = new Notices();
        ask(Asked.BUILT_IN, call, unit, notices);
        return notices.sorted().stream()
                .map(notice -> notice.level() + " " + notice.code() + " "
                        + notice.mark().map(Mark::toString).orElse("-") + " " + NoticeWords.INCHES.message(notice)
                        + " | "
                        + NoticeWords.INCHES.cure(notice))
                .toList();
    }

    @Test
    void an_unknown_gauge_or_length_comes_with_those_that_are_sold() {
        assertThat(said("17 ga x 2"))
                .containsExactly(
                        "REFUSAL unknown-name stack.yaml:7:3 No nail or screw is called '17 ga'. | Did you mean 15"
                                + " ga? Or list your own, with its diameter, under 'fasteners:' in a catalog file.");
        assertThat(said("8d")).first().asString().contains("Did you mean one of 8d casing, 8d finish?");
        assertThat(said("23 ga x 2"))
                .containsExactly(
                        "PROBLEM unknown-length stack.yaml:7:3 '23 ga' is not sold 2 long. | Sold: 1/2, 5/8, 3/4,"
                                + " 1, 1-1/8; list others under 'fasteners:' in a catalog file.");
        assertThat(said("15 ga x 60"))
                .containsExactly(
                        "REFUSAL not-a-size stack.yaml:7:3 A nail or screw cannot be 60 long. | Sold: 1, 1-1/4, 1-1/2,"
                                + " 1-3/4, 2, 2-1/4, 2-1/2; list others under 'fasteners:' in a catalog file.");
        assertThat(said("15 ga x -2")).first().asString().contains("not-a-size");
        assertThat(said("15 ga x long")).first().asString().contains("No length is called 'long'");
        assertThat(said("15 ga x 1 x 2")).first().asString().contains("missing-size");
    }

    @Test
    void own_fasteners_and_tools_are_read_and_what_is_wrong_with_them_is_said() {
        Asked own = Asked.with("""
                fasteners:
                  - { name: 14 ga, kind: nail, diameter: 0.08, lengths: [3, 2], tool: long nose }
                  - { name: deck screw, kind: screw, diameter: 0.2, lengths: 3, tool: driver }
                tools:
                  - { name: long nose, nose-length: 4, nose-width: 1/2, body-width: 3, body-length: 8, lean: 20, ahead: no }
                """);
        assertThat(own.said()).isEmpty();
        Fastener nail = ask(own.catalog(), "14 ga x 2", LengthUnit.INCH, new Notices())
                .orElseThrow()
                .fastener();
        assertThat(nail.lengths()).isSorted();
        assertThat(nail.head()).isEqualTo(nail.diameter());
        assertThat(own.catalog().tool(nail).orElseThrow().lean().toDegrees()).isEqualTo(20);
        Fastener screw = ask(own.catalog(), "deck screw", LengthUnit.INCH, new Notices())
                .orElseThrow()
                .fastener();
        assertThat(screw.root()).contains(Length.inches(0.2).times(0.75));

        Asked wrong = Asked.with("""
                fasteners:
                  - { name: a nail, kind: staple, diameter: 0.08, lengths: 2, tool: hammer }
                  - { name: b nail, diameter: 0, lengths: [0], tool: hammer }
                  - { name: c nail, kind: nail, head: 0.2 }
                  - { name: d nail, kind: nail, diameter: 0.1, lengths: 2, tool: hamer }
                tools:
                  - { name: e tool, nose-length: 4 }
                """);
        assertThat(wrong.said())
                .containsExactly(
                        "REFUSAL unknown-name own.yaml:2:27 No kind of fastener is called 'staple'. | Write nail or screw.",
                        "REFUSAL missing-key own.yaml:3:5 'b nail' has no kind. | Add 'kind:', nail or screw.",
                        "REFUSAL not-a-size own.yaml:3:31 'b nail' has a diameter of 0. | Write it with its unit, as 0.072 in.",
                        "REFUSAL not-a-size own.yaml:3:43 'b nail' has a length of 0. | Write it with its unit, as 0.072 in.",
                        "REFUSAL missing-key own.yaml:4:5 'c nail' has no diameter. | Add 'diameter:', a length.",
                        "REFUSAL missing-key own.yaml:4:5 'c nail' has no lengths. | Add 'lengths:', the lengths in which it"
                                + " is sold.",
                        "REFUSAL missing-key own.yaml:4:5 'c nail' has no tool. | Add 'tool:', the name of what drives it.",
                        "REFUSAL missing-key own.yaml:7:5 'e tool' has no nose-width. | Add 'nose-width:', a length.",
                        "REFUSAL missing-key own.yaml:7:5 'e tool' has no body-width. | Add 'body-width:', a length.",
                        "REFUSAL missing-key own.yaml:7:5 'e tool' has no body-length. | Add 'body-length:', a length.",
                        "REFUSAL unknown-name own.yaml:1:1 'd nail' is driven by 'hamer', which is not a known tool. | Did you"
                                + " mean hammer?");
    }

    @Test
    void a_wood_says_to_which_group_it_belongs() {
        Asked asked = Asked.builtIn();
        assertThat(asked.wood("yellow-poplar").orElseThrow().group()).contains(Wood.Group.HARDWOOD);
        assertThat(asked.wood("douglas-fir").orElseThrow().group()).contains(Wood.Group.SOFTWOOD);
        assertThat(asked.wood("mdf").orElseThrow().group()).contains(Wood.Group.PANEL);
        assertThat(Asked.BUILT_IN.woods()).allMatch(wood -> wood.group().isPresent());
        Asked own = Asked.with("woods: [{ name: elm, density: 35, group: hard }]");
        assertThat(own.said())
                .containsExactly(
                        "REFUSAL unknown-name own.yaml:1:42 No group of woods is called 'hard'. | Write softwood,"
                                + " hardwood or panel.");
    }
}
