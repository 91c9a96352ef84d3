package buildup.shared.document;

import buildup.shared.figure.Phrase;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.Reading;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One mapping, read key by key. Asking for a key claims it. A key that is absent or left empty gives nothing (an empty
 * size, angle or yes/no is refused); a value of the wrong shape gives nothing and adds a refusal at its place.
 */
public final class Fields {

    private final Mapping mapping;
    private final String path;
    private final Claims claims;
    private final Notices notices;
    private final LengthReader reader;
    private final Optional<String> piece;

    private Fields(
            Mapping mapping, String path, Claims claims, Notices notices, LengthReader reader, Optional<String> piece) {
        this.mapping = mapping;
        this.path = path;
        this.claims = claims;
        this.notices = notices;
        this.reader = reader;
        this.piece = piece;
        claims.open(mapping, path);
    }

    /** The root of a document. */
    public static Fields of(Document document, Claims claims, Notices notices, LengthReader reader) {
        return new Fields(document.root(), "", claims, notices, reader, Optional.empty());
    }

    /** The unit of numbers that name none. */
    public LengthUnit bareUnit() {
        return reader.bareUnit();
    }

    /** The same mapping, lengths read by another reader from now on, also in what is opened from here. */
    public Fields withReader(LengthReader other) {
        return new Fields(mapping, path, claims, notices, other, piece);
    }

    /** The same mapping, its notices naming the piece from now on. */
    public Fields about(String pieceName) {
        return new Fields(mapping, path, claims, notices, reader, Optional.of(pieceName));
    }

    /** The mapping itself; claims nothing. */
    public Mapping mapping() {
        return mapping;
    }

    /** Where the mapping begins. */
    public Mark mark() {
        return mapping.mark();
    }

    /** The place of the key's value, of the mapping when the key is absent. Claims nothing. */
    public Mark mark(String key) {
        return mapping.get(key).map(Node::mark).orElse(mapping.mark());
    }

    /** Whether the key is there, empty or not; claims it. */
    public boolean has(String key) {
        return node(key).isPresent();
    }

    /** Whether the key is there, empty or not; claims it. Says what is missing, at the mapping's place, when it is not. */
    public boolean needs(String key, Notice missing) {
        boolean there = has(key);
        if (!there) {
            add(missing, mapping);
        }
        return there;
    }

    /** One value that is not blank. Says what is missing when the key is absent or left empty. */
    public Optional<Scalar> needed(String key, Notice missing) {
        Optional<Node> node = node(key);
        if (node.isEmpty() || isEmpty(node.get())) {
            add(missing, node.orElse(mapping));
            return Optional.empty();
        }
        return scalar(node.get(), key);
    }

    /** Says of a key of old what it is called now, where it is refused; claims nothing. */
    public Fields renamed(String was, String now) {
        claims.rename(mapping, path, was, now);
        return this;
    }

    /** The value as it stands, of any shape. */
    public Optional<Node> node(String key) {
        claims.ask(mapping, path, key);
        return mapping.get(key);
    }

    /** One value; an empty one is the empty text. */
    public Optional<Scalar> scalar(String key) {
        return node(key).flatMap(node -> scalar(node, key));
    }

    private Optional<Scalar> scalar(Node node, String key) {
        return node instanceof Scalar scalar ? Optional.of(scalar) : wrongShape(node, key, DocumentNotices.ONE_VALUE);
    }

    /** A text that is not blank. */
    public Optional<String> text(String key) {
        return scalar(key).map(Scalar::text).filter(text -> !text.isBlank());
    }

    /** A length, by this reader. */
    public Optional<Length> length(String key) {
        return scalar(key).flatMap(this::readLength);
    }

    /** An angle in degrees. */
    public Optional<Angle> angle(String key) {
        return scalar(key).flatMap(scalar -> {
            Optional<Angle> angle = Angle.read(scalar.text());
            if (angle.isEmpty()) {
                add(DocumentNotices.NO_ANGLE.with("text", scalar.text()), scalar);
            }
            return angle;
        });
    }

    /** {@code yes}, {@code no}, {@code true} or {@code false}, in any case. */
    public Optional<Boolean> yesNo(String key) {
        return scalar(key).flatMap(scalar -> switch (scalar.text().toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> Optional.of(true);
            case "no", "false" -> Optional.of(false);
            default -> {
                add(DocumentNotices.NEITHER_YES_NOR_NO.with("text", scalar.text()), scalar);
                yield Optional.empty();
            }
        });
    }

    /** The mapping under a key, as it stands: its own keys are claimed by nobody and reported to nobody. */
    public Optional<Mapping> mapping(String key) {
        return node(key).filter(node -> !isEmpty(node)).flatMap(node -> mapping(node, key));
    }

    private Optional<Mapping> mapping(Node node, String key) {
        return node instanceof Mapping found ? Optional.of(found) : wrongShape(node, key, DocumentNotices.A_MAPPING);
    }

    /** The mapping under a key, opened: its keys are to be asked for, one by one. */
    public Optional<Fields> fields(String key) {
        return mapping(key).map(found -> fields(found, key));
    }

    /** Opens a mapping that lies somewhere under a key of this one. */
    public Fields fields(Mapping found, String key) {
        return new Fields(found, Claims.below(path, key), claims, notices, reader, piece);
    }

    /** The mappings of a list; an item of another shape is refused and left out. */
    public List<Fields> list(String key) {
        Optional<Node> node = node(key).filter(found -> !isEmpty(found));
        if (node.isPresent() && node.get() instanceof Sequence sequence) {
            List<Fields> all = new ArrayList<>();
            for (Node item : sequence.items()) {
                mapping(item, key).ifPresent(found -> all.add(fields(found, key)));
            }
            return List.copyOf(all);
        }
        node.ifPresent(found -> wrongShape(found, key, DocumentNotices.A_LIST));
        return List.of();
    }

    /** One value, or a list of them. */
    public List<Scalar> scalars(String key) {
        Optional<Node> node = node(key).filter(found -> !isEmpty(found));
        if (node.isPresent() && node.get() instanceof Sequence sequence) {
            List<Scalar> all = new ArrayList<>();
            for (Node item : sequence.items()) {
                scalar(item, key).ifPresent(all::add);
            }
            return List.copyOf(all);
        }
        return node.flatMap(found -> scalar(found, key)).map(List::of).orElse(List.of());
    }

    /**
     * Reads a length, with a refusal at its place when it is none, and notes on how it was read. For a length inside a
     * longer text, pass that part with the mark of the whole.
     */
    public Optional<Length> readLength(Scalar scalar) {
        Reading reading = reader.read(scalar.text());
        if (reading instanceof Reading.Good good) {
            good.echo().ifPresent(echo -> add(SizeNotices.of(echo), scalar));
            return Optional.of(good.length());
        }
        if (reading instanceof Reading.Bad bad) {
            add(SizeNotices.of(bad), scalar);
        }
        return Optional.empty();
    }

    private static boolean isEmpty(Node node) {
        return node instanceof Scalar scalar && scalar.text().isBlank();
    }

    private <T> Optional<T> wrongShape(Node node, String key, Phrase expected) {
        Phrase found = node instanceof Scalar
                ? DocumentNotices.ONE_VALUE
                : node instanceof Sequence ? DocumentNotices.A_LIST : DocumentNotices.A_MAPPING;
        add(
                DocumentNotices.WRONG_SHAPE
                        .with("key", Claims.below(path, key))
                        .with("found", found)
                        .with("expected", expected),
                node);
        return Optional.empty();
    }

    private void add(Notice notice, Node node) {
        Notice placed = notice.at(node.mark());
        notices.add(piece.map(placed::of).orElse(placed));
    }
}
