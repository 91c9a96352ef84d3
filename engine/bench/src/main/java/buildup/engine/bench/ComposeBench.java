package buildup.engine.bench;

import buildup.catalog.Catalog;
import buildup.engine.hold.fixing.Fixing;
import buildup.engine.hold.fixing.Places;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Proposal;
import buildup.engine.hold.support.Loads;
import buildup.engine.hold.support.Support;
import buildup.engine.hold.support.Supports;
import buildup.engine.hold.support.Ties;
import buildup.engine.hold.tolerance.ErrorSettings;
import buildup.engine.hold.tolerance.ErrorStudy;
import buildup.engine.hold.tolerance.Tolerances;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.StackReader;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.operation.union.UnionStrategy;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A section with all its first figures, against the bare union of its polygons by a cascade of snapped overlays, and beside
 * it what holds that section: whether it stands with its five rows of nails, those rows themselves, where nails could go,
 * and which rows would hold what falls.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
// much code takes long to warm up
@Warmup(iterations = 20, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class ComposeBench {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static final UnionStrategy CASCADE = new UnionStrategy() {
        @Override
        public Geometry union(Geometry a, Geometry b) {
            return OverlayNG.overlay(a, b, OverlayNG.UNION, null, new SnappingNoder(Tolerance.SNAP));
        }

        @Override
        public boolean isFloatingPrecision() {
            return true;
        }
    };

    private Stack stack;
    private List<Placed> placed;
    private List<Polygon> polygons;
    private Catalog catalog;
    private Section fastened;
    private Section held;
    private List<Fixed> rows;
    private List<Fastening> nails;
    private List<Loads.Wanted> loads;
    private ErrorSettings errors;

    @Setup
    public void read() throws IOException {
        Notices notices = new Notices();
        Document document = DocumentReader.read("twelve-pieces.yaml", text(), notices)
                .orElseThrow(() -> new IllegalStateException(notices.sorted().toString()));
        catalog = Catalog.builtIn();
        stack = StackReader.read(document, catalog, new Claims(), notices);
        placed = StackPlacing.place(stack, notices);
        Section section = Composer.compose(stack, placed, notices);
        polygons =
                section.bodies().stream().map(body -> polygon(body.outline())).toList();
        Fields root = Fields.of(document, new Claims(), notices, stack.lengths());
        nails = Fixing.read(stack, root, catalog, notices);
        loads = Loads.read(stack, root, notices);
        ErrorSettings usual = Tolerances.read(stack, root, notices);
        errors = usual.asking();
        fastened = Composer.composeFastened(stack, placed, notices);
        rows = fixings();
        held = fastened.heldBy(Ties.fastened(fastened, nails, rows), new Notices());
        boolean sound =
                placed.size() == 12 && !notices.refused() && section.overlaps().isEmpty();
        double apart = union().getArea()
                - polygons.stream().mapToDouble(Polygon::getArea).sum();
        if (!sound || Math.abs(apart) > 1e-3) {
            throw new IllegalStateException("area apart by " + apart + ", " + notices.sorted());
        }
    }

    private static byte[] text() throws IOException {
        try (InputStream in = ComposeBench.class.getResourceAsStream("/twelve-pieces.yaml")) {
            return in.readAllBytes();
        }
    }

    private static Polygon polygon(Outline outline) {
        List<Coordinate> ring = new ArrayList<>();
        for (Point p : outline.flattened(Tolerance.CHORD)) {
            ring.add(new Coordinate(p.x(), p.y()));
        }
        ring.add(ring.get(0).copy());
        return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    @Benchmark
    public Section compose() {
        return Composer.compose(stack, placed, new Notices());
    }

    /**
     * The statics of a section whose nails are given: what each piece rests on, whether all stands with and without its
     * load, how it falls and until what stops it, what leans without its nails, what gives first, and what is said of it.
     */
    @Benchmark
    public Support statics() {
        return Supports.of(held, loads, rows, List.of(), OptionalDouble.empty(), Optional.empty(), new Notices());
    }

    /** The same, and, since it falls, the least rows of nails that hold it: places for them are sought and each is tried. */
    @Benchmark
    public Support seekRows() {
        Places places = new Places(held, List.of(), List.of(), catalog);
        return Supports.of(held, loads, rows, List.of(), OptionalDouble.empty(), Optional.of(places), new Notices());
    }

    /** The nails that are given: followed through the wood, all that is asked of each, and a cure for what is wrong with one. */
    @Benchmark
    public List<Fixed> fixings() {
        return Fixing.of(fastened, nails, List.of(), List.of(), catalog, new Notices());
    }

    /** Where nails of the whole list could go, for every piece. */
    @Benchmark
    public List<Proposal> propose() {
        return Fixing.propose(fastened, List.of(), List.of(), catalog);
    }

    /** All figures of 10,000 builds, each placed anew. */
    @Benchmark
    public ErrorStudy builds() {
        return Tolerances.of(fastened, errors, List.of(), List.of(), catalog, true, new Notices());
    }

    @Benchmark
    public Geometry union() {
        UnaryUnionOp op = new UnaryUnionOp(polygons, FACTORY);
        op.setUnionFunction(CASCADE);
        return op.union();
    }
}
