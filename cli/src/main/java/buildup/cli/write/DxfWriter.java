package buildup.cli.write;

import buildup.cli.scene.About;
import buildup.cli.scene.PiecePart;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Writes a scene as ASCII DXF of release R12, in inches. Lines are lines, arcs are true arcs, a closed outline is one
 * closed polyline with bulges; hatches become their lines. Areas have no lines and are left out, but for small solid
 * marks. What an item is about is its layer. A picture of pieces has its origin where their wall plane and datum meet, and
 * each piece is a block; one piece alone stands as it is, for a machine that cuts it follows lines and may know no blocks.
 */
public final class DxfWriter {
    /** What draws, and what it belongs to. */
    private record Leaf(SceneItem item, Optional<Subject> subject, Optional<PiecePart> piece) {}

    private final Scene scene;
    private final DxfTables tables = new DxfTables();
    private final List<Leaf> leaves = new ArrayList<>();

    private DxfWriter(Scene scene) {
        this.scene = scene;
        open(scene.items(), Optional.empty(), Optional.empty());
    }

    /** The scene as a DXF file, in inches. */
    public static byte[] write(Scene scene) {
        return new DxfWriter(scene).text().getBytes(DxfPairs.LETTERS);
    }

    private void open(List<SceneItem> items, Optional<Subject> subject, Optional<PiecePart> piece) {
        for (SceneItem item : items) {
            if (item instanceof About about) {
                open(about.items(), Optional.of(about.subject()), piece);
            } else if (item instanceof PiecePart part) {
                open(part.items(), Optional.of(part.subject()), Optional.of(part));
            } else if (item.held().isPresent()) {
                open(item.held().get(), subject, piece);
            } else {
                leaves.add(new Leaf(item, subject, piece));
            }
        }
    }

    private String text() {
        Point zero = leaves.stream()
                .flatMap(leaf -> leaf.piece().stream())
                .findFirst()
                .map(PiecePart::origin)
                .orElse(Point.ORIGIN);
        Set<String> pieces = new HashSet<>();
        leaves.forEach(leaf -> blocked(leaf).ifPresent(part -> pieces.add(part.name())));
        DxfEntities drawing = new DxfEntities(tables, zero);
        DxfBlocks blocks = new DxfBlocks(tables);
        List<SceneItem> items = leaves.stream().map(Leaf::item).toList();
        for (int i = 0; i < leaves.size(); i++) {
            Leaf leaf = leaves.get(i);
            blocked(leaf)
                    .filter(part -> pieces.size() > 1)
                    .map(blocks::entities)
                    .orElse(drawing)
                    .add(leaf.item(), leaf.subject(), items.subList(i + 1, items.size()));
        }
        String told = blocks.write(drawing);
        DxfPairs head = new DxfPairs();
        tables.write(scene, zero, head);
        DxfPairs begin = new DxfPairs().put(0, "SECTION").put(2, "ENTITIES");
        return head + told + begin + drawing + new DxfPairs().put(0, "ENDSEC").put(0, "EOF");
    }

    /** The piece that a leaf belongs to; wall, floor and ceiling are none. */
    private static Optional<PiecePart> blocked(Leaf leaf) {
        return leaf.piece().filter(part -> part.subject() != Subject.WALL);
    }
}
