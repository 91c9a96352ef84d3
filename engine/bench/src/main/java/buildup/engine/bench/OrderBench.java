package buildup.engine.bench;

import buildup.catalog.Catalog;
import buildup.engine.hold.order.Orders;
import buildup.engine.hold.order.PuttingUp;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.StackReader;
import buildup.shared.document.Claims;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Whether twenty pieces can be put up in their order, and what order would do where they cannot, beside composing them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 10, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class OrderBench {
    private Catalog catalog;
    private Stack goes;
    private List<Placed> placed;
    private Section section;
    private Section shut;

    @Setup
    public void read() {
        catalog = Catalog.builtIn();
        goes = stack(false);
        placed = StackPlacing.place(goes, new Notices());
        section = Composer.compose(goes, placed, new Notices());
        Stack wrong = stack(true);
        shut = Composer.compose(wrong, StackPlacing.place(wrong, new Notices()), new Notices());
        if (!orderTwenty().possible()
                || seekTwenty().possible()
                || seekTwenty().instead().isEmpty()) {
            throw new IllegalStateException("the stacks are not what they are to be");
        }
    }

    /** Twenty boards before each other, from sill to soffit: each shuts in those behind it. One of them may come last. */
    private Stack stack(boolean wrong) {
        StringBuilder text =
                new StringBuilder("title: twenty\nspace: { wall: { solid: yes }, floor: 0, ceiling: 2 }\npieces:\n");
        StringBuilder late = new StringBuilder();
        for (int i = 0; i < 20; i++) {
            (wrong && i == 16 ? late : text)
                    .append("  - { name: b")
                    .append(i)
                    .append(", section: [out 3/4, cove 1/4, up 1-3/4], back: ")
                    .append(i)
                    .append(", bottom: 0 }\n");
        }
        Notices notices = new Notices();
        return StackReader.read(
                DocumentReader.read(
                                "twenty.yaml", text.append(late).toString().getBytes(StandardCharsets.UTF_8), notices)
                        .orElseThrow(),
                catalog,
                new Claims(),
                notices);
    }

    @Benchmark
    public Section composeTwenty() {
        return Composer.compose(goes, placed, new Notices());
    }

    @Benchmark
    public PuttingUp orderTwenty() {
        return Orders.of(section, List.of(), List.of(), catalog, new Notices());
    }

    @Benchmark
    public PuttingUp seekTwenty() {
        return Orders.of(shut, List.of(), List.of(), catalog, new Notices());
    }
}
