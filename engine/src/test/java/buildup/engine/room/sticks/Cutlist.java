package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.Bench;
import buildup.engine.room.plan.Plan;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Runs;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.StickPiece;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** A stack with a plan and a stock, laid out, with everything that was said about the stock. */
record Cutlist(Job job, Optional<Shop> shop, Optional<CutList> list, List<Notice> notices) {
    private static final Catalog CATALOG = Catalog.builtIn();

    static final String WALL = "wood: yellow-poplar\nspace: { wall: { solid: yes } }\n";

    /** One board on straight walls of these lengths, square at all ends. */
    static Cutlist boards(String size, List<String> walls, String stock) {
        StringBuilder plan = new StringBuilder("plan:\n");
        for (int i = 0; i < walls.size(); i++) {
            plan.append("  - { name: wall ")
                    .append(i + 1)
                    .append(", left: square, right: square, stretches: [{ name: w, length: ")
                    .append(walls.get(i))
                    .append(" }] }\n");
        }
        return of(
                WALL + Bench.list("name: rail, profile: board " + size + ", back: wall, bottom: datum"), plan + stock);
    }

    static Cutlist of(String stack, String blocks) {
        Bench bench = Bench.sound(stack);
        Notices notices = new Notices();
        Document document = DocumentReader.read(
                        "stack.yaml", (stack + blocks).getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow(() -> new AssertionError(notices.sorted()));
        Fields root = Fields.of(document, new Claims(), notices, bench.stack().lengths());
        Plan plan = Plan.read(bench.stack(), root, notices);
        Job job = Runs.of(bench.section(), plan, new Notices());
        Optional<Shop> shop = Shop.read(bench.stack(), root, CATALOG, notices);
        Optional<CutList> list = notices.refused()
                ? Optional.empty()
                : shop.map(known -> CutList.of(job, known, Limit.usual(), notices));
        list.ifPresent(Cutlist::recount);
        return new Cutlist(job, shop, list, notices.sorted());
    }

    /** Every piece in one stick only, none over another or over an end, strips within their board. */
    private static void recount(CutList list) {
        Shop shop = list.shop();
        for (Stick stick : list.sticks()) {
            int width = -shop.ripKerf();
            for (Stick.Strip strip : stick.strips()) {
                width += strip.width() + shop.ripKerf();
                SimulatedSaw.cuts(shop, stick, strip);
                int end = strip.pieces().stream()
                        .mapToInt(Stick.LaidPiece::to)
                        .max()
                        .orElse(0);
                assertThat(strip.rest()).isLessThanOrEqualTo(stick.length() - shop.trim() - end);
            }
            assertThat(width)
                    .isLessThanOrEqualTo(shop.grid().offered(stick.supply().width()));
        }
        List<String> ids = list.sticks().stream()
                .flatMap(stick -> stick.strips().stream())
                .flatMap(strip -> strip.pieces().stream())
                .map(lie -> lie.piece().id())
                .toList();
        assertThat(ids).doesNotHaveDuplicates();
        assertThat(list.pieces().stream()
                        .map(StickPiece::id)
                        .filter(id -> ids.stream().noneMatch(own -> own.startsWith(id))))
                .as("pieces without a stick")
                .containsExactlyElementsOf(
                        list.without().stream().map(StickPiece::id).toList());
    }

    CutList cutList() {
        return list.orElseThrow(() -> new AssertionError(notices));
    }

    /** The one thing that was said. */
    Notice said() {
        assertThat(notices).as(notices.toString()).hasSize(1);
        return notices.get(0);
    }

    Cutlist clean() {
        assertThat(notices).as(notices.toString()).isEmpty();
        return this;
    }
}
