package buildup.catalog.format;

import buildup.catalog.format.DxfTags.Tag;
import buildup.profiles.outline.Point;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/** Reads the lines of an ASCII DXF drawing, of R12 or later. What is no line is counted and left out. */
final class DxfReader {
    /** Marks that belong to something else, and end it. */
    private static final Set<String> SILENT = Set.of("SEQEND", "ENDBLK", "ATTRIB", "VERTEX", "VIEWPORT");

    /** What belongs elsewhere, and draws nothing where it stands alone. */
    private static final Set<String> LOOSE = Set.of("VERTEX", "BLOCK", "LAYER");

    /** Bits of a block's flags: it lies in a file of its own. */
    private static final int FOREIGN = 4 | 8;

    /** So many kinds of what is not read are counted. */
    private static final int MOST_KINDS = 30;

    private final Source source;
    private final DxfTags tags;
    private final Map<String, DxfBlock> blocks = new HashMap<>();
    private final Set<String> dark = new HashSet<>();
    private final DxfBlock drawing;
    private final Map<String, Integer> left = new TreeMap<>();
    private OptionalInt unit = OptionalInt.empty();
    private OptionalInt metric = OptionalInt.empty();
    private boolean ended;

    DxfReader(Source source) {
        this.source = source;
        this.tags = new DxfTags(source);
        this.drawing = new DxfBlock(Point.ORIGIN, source);
    }

    /** Names of blocks are the same in small and capital letters. */
    static String key(String name) {
        return name.toUpperCase(Locale.ROOT);
    }

    Drawn drawn() throws FileRefused {
        // what stands behind the end is not looked at
        while (!ended && tags.peek().isPresent()) {
            Tag tag = tags.take().orElseThrow();
            if (tag.is(0, "SECTION")) {
                section();
            }
            ended = tag.is(0, "EOF");
        }
        if (!ended) {
            source.tell(FormatNotices.BROKEN_OFF, tags.line());
        }
        if (!left.isEmpty()) {
            source.tell(
                    FormatNotices.LEFT_OUT
                            .with("list", FormatNotices.counted(left))
                            .with("lines", "lines"),
                    1);
        }
        DxfUnits.Scale scale = DxfUnits.of(unit, metric);
        scale.said().ifPresent(said -> source.tell(said, 1));
        Plot whole = new Plot(source);
        drawing.unfold(blocks, whole);
        return whole.drawn(scale.map(), scale.unit());
    }

    private void section() throws FileRefused {
        String name = tags.peek().filter(tag -> tag.code() == 2).map(Tag::value).orElse("");
        if (name.equals("HEADER")) {
            header();
        } else if (name.equals("ENTITIES")) {
            entities(drawing);
        } else if (name.equals("TABLES")) {
            layers();
        } else if (name.equals("BLOCKS")) {
            blocks();
        }
        while (tags.peek().isPresent() && !tags.peek().get().is(0, "EOF")) {
            if (tags.take().orElseThrow().is(0, "ENDSEC")) {
                return;
            }
        }
    }

    private boolean atEndOf(String... ends) throws FileRefused {
        Optional<Tag> tag = tags.peek();
        return tag.isEmpty()
                || (tag.get().code() == 0
                        && (List.of(ends).contains(tag.get().value())
                                || tag.get().value().equals("EOF")));
    }

    private void header() throws FileRefused {
        String variable = "";
        while (!atEndOf("ENDSEC")) {
            Tag tag = tags.take().orElseThrow();
            if (tag.code() == 9) {
                variable = tag.value();
            } else if (tag.code() == 70 && variable.equals("$INSUNITS")) {
                unit = Numerals.whole(tag.value());
            } else if (tag.code() == 70 && variable.equals("$MEASUREMENT")) {
                metric = Numerals.whole(tag.value());
            }
        }
    }

    /** Notes the layers that are frozen (bit 1) or switched off (a negative color). */
    private void layers() throws FileRefused {
        while (!atEndOf("ENDSEC")) {
            Tag tag = tags.take().orElseThrow();
            if (tag.is(0, "LAYER")) {
                DxfEntity layer = DxfEntity.read(tag, tags, source);
                if ((layer.flag(70, 1) || layer.number(62, 0) < 0) && dark.size() < Limits.MOST_INSERTS) {
                    dark.add(key(layer.name()));
                }
            }
        }
    }

    private void blocks() throws FileRefused {
        while (!atEndOf("ENDSEC")) {
            Tag tag = tags.take().orElseThrow();
            if (tag.is(0, "BLOCK")) {
                DxfEntity head = DxfEntity.read(tag, tags, source);
                DxfBlock block = new DxfBlock(head.point(10), source);
                entities(block);
                if (!head.flag(70, FOREIGN) && blocks.size() < Limits.MOST_INSERTS) {
                    blocks.put(key(head.name()), block);
                }
            }
        }
    }

    private void entities(DxfBlock into) throws FileRefused {
        while (!atEndOf("ENDSEC", "ENDBLK")) {
            Tag tag = tags.take().orElseThrow();
            if (tag.code() == 0) {
                entity(DxfEntity.read(tag, tags, source), into);
            }
        }
    }

    private void entity(DxfEntity entity, DxfBlock into) throws FileRefused {
        List<DxfEntity> vertices = entity.type().equals("POLYLINE") ? vertices() : List.of();
        if (entity.type().equals("IMAGE")) {
            into.plot().picture(entity.line());
            return;
        }
        if (!DxfEntity.DRAWN.contains(entity.type()) || LOOSE.contains(entity.type())) {
            if (!SILENT.contains(entity.type())) {
                count(entity.type());
            }
            return;
        }
        if (entity.unseen() || dark.contains(key(entity.layer()))) {
            count("hidden");
            return;
        }
        Optional<Phrase> fault = entity.fault()
                .or(() -> vertices.stream()
                        .flatMap(vertex -> vertex.fault().stream())
                        .findFirst());
        boolean planar = entity.type().equals("LINE") || !entity.tilted();
        DxfShape shape = fault.isPresent()
                ? DxfShape.faulty(fault.get())
                : !planar
                        ? DxfShape.faulty(FormatNotices.TILTED)
                        : entity.type().equals("INSERT")
                                ? new DxfShape(Optional.empty(), Optional.empty())
                                : DxfShape.of(entity, vertices);
        if (entity.type().equals("INSERT") && shape.fault().isEmpty()) {
            into.insert(entity);
        }
        shape.fault().ifPresent(what -> fault(entity, what, shape.strand().isEmpty()));
        if (shape.strand().isPresent()) {
            // in a block, layer 0 stands for that of whatever the block is put into
            boolean own = into == drawing || !entity.layer().equals("0");
            into.plot().add(shape.strand().get(), own ? List.of(entity.layer()) : List.of());
        }
    }

    private List<DxfEntity> vertices() throws FileRefused {
        List<DxfEntity> vertices = new ArrayList<>();
        while (tags.peek().filter(tag -> tag.is(0, "VERTEX")).isPresent()) {
            vertices.add(DxfEntity.read(tags.take().orElseThrow(), tags, source));
            if (vertices.size() > Limits.MOST_POINTS) {
                throw Plot.tooMany(source);
            }
        }
        return vertices;
    }

    private void fault(DxfEntity entity, Phrase what, boolean leftOut) {
        source.tell(
                (leftOut ? FormatNotices.ENTITY_LEFT_OUT : FormatNotices.ENTITY_CHANGED)
                        .with("type", entity.type())
                        .with("fault", what),
                entity.line());
    }

    private void count(String type) {
        String shown = Numerals.shown(type);
        if (left.size() < MOST_KINDS || left.containsKey(shown)) {
            left.merge(shown, 1, Integer::sum);
        }
    }
}
