package buildup.cli.write;

import buildup.cli.scene.PiecePart;
import buildup.profiles.outline.Point;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The blocks of a DXF drawing: one a piece, its base point the piece's lower back corner. */
final class DxfBlocks {
    /** Names of the format's release hold no more letters. */
    private static final int LONGEST = 31;

    /** Which piece, and where on the sheet it stands. */
    private record Place(String name, Point home) {}

    private record Begun(PiecePart part, DxfEntities entities) {}

    private final DxfTables tables;
    private final Map<Place, Begun> begun = new LinkedHashMap<>();

    DxfBlocks(DxfTables tables) {
        this.tables = tables;
    }

    /** What is drawn of the piece there. */
    DxfEntities entities(PiecePart part) {
        return begun.computeIfAbsent(
                        new Place(part.name(), part.home()),
                        unseen -> new Begun(part, new DxfEntities(tables, part.home())))
                .entities();
    }

    /**
     * The blocks as the format tells them. What is drawn alike at several places is one block that stands there several
     * times.
     *
     * @param drawing gets each where it stands
     */
    String write(DxfEntities drawing) {
        Map<String, String> names = new LinkedHashMap<>();
        DxfPairs out = new DxfPairs().put(0, "SECTION").put(2, "BLOCKS");
        StringBuilder blocks = new StringBuilder(out.toString());
        for (Begun one : begun.values()) {
            PiecePart part = one.part();
            String drawn = one.entities().toString();
            String key = part.name() + drawn;
            if (!names.containsKey(key)) {
                String free = free(part.name(), List.copyOf(names.values()));
                names.put(key, free);
                blocks.append(block(free, part, drawn));
            }
            drawing.insert(names.getOrDefault(key, ""), part.subject(), part.home());
        }
        return blocks.append(new DxfPairs().put(0, "ENDSEC")).toString();
    }

    private static String block(String name, PiecePart part, String drawn) {
        String layer = part.subject().name();
        DxfPairs head =
                new DxfPairs().put(0, "BLOCK").put(8, layer).put(2, name).put(70, 0);
        head.put(10, Point.ORIGIN).put(3, name).put(1, "");
        return head + drawn + new DxfPairs().put(0, "ENDBLK").put(8, layer);
    }

    private static String free(String wanted, List<String> taken) {
        String plain = wanted.toUpperCase(Locale.ROOT);
        String name = plain.substring(0, Math.min(LONGEST, plain.length()));
        for (int number = 2; taken.contains(name); number++) {
            String end = "-" + number;
            name = plain.substring(0, Math.min(LONGEST - end.length(), plain.length())) + end;
        }
        return name;
    }
}
