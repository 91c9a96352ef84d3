package buildup.engine.section.stack;

import buildup.shared.document.Entry;
import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.Reading;
import buildup.shared.notice.Notices;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The lengths under {@code sizes:}. One may be given by others, whatever their order. */
final class NamedSizes {
    private final Map<String, Scalar> written;
    private final Map<String, Length> known = new LinkedHashMap<>();
    private LengthReader lengths;

    private NamedSizes(LengthUnit unit, Map<String, Scalar> written) {
        this.written = written;
        this.lengths = new LengthReader(unit, known);
        boolean more = true;
        while (more) {
            int before = known.size();
            written.forEach((name, text) -> {
                if (!known.containsKey(name) && lengths.read(text.text()) instanceof Reading.Good good) {
                    known.put(name, good.length());
                }
            });
            more = known.size() > before;
            lengths = new LengthReader(unit, known);
        }
    }

    /** Reads lengths in the unit of the document, the named ones too; claims the key. */
    static LengthReader read(Fields root, LengthUnit unit, Notices notices) {
        Optional<Fields> sizes = root.fields("sizes");
        Map<String, Scalar> written = new LinkedHashMap<>();
        Mapping entries = sizes.map(Fields::mapping).orElse(new Mapping(List.of(), root.mark()));
        for (Entry entry : entries.entries()) {
            if (entry.value() instanceof Scalar text) {
                written.put(entry.key().text(), text);
            }
        }
        NamedSizes named = new NamedSizes(unit, written);
        for (Entry entry : entries.entries()) {
            named.say(sizes.orElseThrow(), entry.key().text(), notices);
        }
        return new LengthReader(unit, named.known, new NamedSizes(LengthUnit.FOOT, written).known);
    }

    /** What is wrong with one; that it is given by one that is wrong follows from that. */
    private void say(Fields sizes, String name, Notices notices) {
        Set<String> passed = new HashSet<>();
        Optional<String> at = Optional.of(name);
        while (at.isPresent() && passed.add(at.get())) {
            at = unread(at.get());
        }
        if (at.isEmpty() && passed.size() < 2) {
            sizes.withReader(lengths).length(name);
            return;
        }
        sizes.scalar(name);
        if (at.isPresent() && at.get().equals(name)) {
            notices.add(StackNotices.GIVEN_BY_ITSELF.with("name", name).at(sizes.mark(name)));
        }
    }

    /** The named length for want of which another cannot be read. */
    private Optional<String> unread(String name) {
        Scalar text = written.get(name);
        return text != null
                        && !known.containsKey(name)
                        && lengths.read(text.text()) instanceof Reading.Bad bad
                        && bad.fault() == Reading.Fault.UNKNOWN_NAME
                        && written.containsKey(bad.written())
                ? Optional.of(bad.written())
                : Optional.empty();
    }
}
