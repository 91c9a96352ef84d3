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

    /** A block that was begun: the piece, and where on the sheet it stands. */
    private record Place(String name, Point home) {}

    private final DxfTables tables;
    private final Map<Place, DxfEntities> begun = new LinkedHashMap<>();
    private final Map<Place, PiecePart> firsts = new LinkedHashMap<>();

    DxfBlocks(DxfTables tables) {
        this.tables = tables;
    }

    /** What is drawn of the piece there. */
    DxfEntities entities(PiecePart part) {
        Place place = new Place(part.name(), part.home());
        firsts.putIfAbsent(place, part);
        return begun.computeIfAbsent(place, unseen -> new DxfEntities(tables, part.home()));
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
        begun.forEach((place, entities) -> {
            PiecePart part = firsts.get(place);
            String drawn = entities.toString();
            String name = names.get(place.name() + drawn);
            if (name == null) {
                name = free(place.name(), List.copyOf(names.values()));
                names.put(place.name() + drawn, name);
                blocks.append(block(name, part, drawn));
            }
            drawing.insert(name, part.subject(), place.home());
        });
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
