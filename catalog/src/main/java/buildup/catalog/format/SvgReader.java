package buildup.catalog.format;

import buildup.profiles.curve.Affine;
import buildup.profiles.curve.Strand;
import buildup.shared.figure.Figure;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads the lines of an SVG drawing. Nothing outside the file is opened, and no entity is expanded. */
final class SvgReader {
    private static final Set<String> NAMESPACES = Set.of("", "http://www.w3.org/2000/svg");
    private static final Set<String> GROUPS = Set.of("g", "a", "switch");
    /** What draws nothing by itself. */
    private static final Set<String> UNDRAWN = Set.of(
            "defs",
            "symbol",
            "clipPath",
            "mask",
            "marker",
            "pattern",
            "linearGradient",
            "radialGradient",
            "filter",
            "metadata",
            "title",
            "desc",
            "style",
            "script",
            "view");

    private static final Pattern FETCHED = Pattern.compile("@import|url\\(\\s*+['\"]?+\\s*+(?!#|data:|['\")])");
    private static final Pattern HIDDEN = Pattern.compile("(^|;)\\s*+display\\s*+:\\s*+none\\s*+(;|$|!)");

    /** So many kinds of what is not read are counted. */
    private static final int MOST_KINDS = 30;

    private final Source source;
    private final Plot plot;
    private final Deque<Affine> maps = new ArrayDeque<>();
    private final Map<String, Integer> left = new TreeMap<>();
    private int depth;
    /** The depth of the element whose inside is passed over; 0 for none. */
    private int passed;

    /** The depth of the style sheet that is being read; 0 for none. */
    private int styled;

    private Optional<SvgSheet> sheet = Optional.empty();

    SvgReader(Source source) {
        this.source = source;
        this.plot = new Plot(source);
    }

    Drawn drawn() throws Refused {
        String text = SvgProlog.withoutDoctype(source);
        try {
            walk(reader(text));
        } catch (XMLStreamException fault) {
            throw source.refused(
                    InboxNotices.NOT_XML,
                    Math.max(
                            1,
                            Optional.ofNullable(fault.getLocation())
                                    .map(at -> at.getLineNumber())
                                    .orElse(1)));
        }
        SvgSheet whole = sheet.orElseThrow(() -> notSvg(1));
        if (!left.isEmpty()) {
            source.tell(
                    InboxNotices.LEFT_OUT
                            .with("list", InboxNotices.counted(left))
                            .with("lines", "paths"),
                    1);
        }
        return plot.drawn(whole.map(), whole.unit());
    }

    private static XMLStreamReader reader(String text) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing outside the file is opened");
        });
        return factory.createXMLStreamReader(new StringReader(text));
    }

    private void walk(XMLStreamReader reader) throws XMLStreamException, Refused {
        while (reader.hasNext()) {
            int event = reader.next();
            int line = Math.max(1, reader.getLocation().getLineNumber());
            switch (event) {
                case XMLStreamConstants.START_ELEMENT -> start(reader, line);
                case XMLStreamConstants.END_ELEMENT -> end();
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> own(reader.getText(), line);
                case XMLStreamConstants.PROCESSING_INSTRUCTION -> {
                    if (reader.getPITarget().equals("xml-stylesheet")) {
                        throw SvgProlog.outside(source, InboxNotices.A_STYLE_SHEET, line);
                    }
                }
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                    throw source.refused(InboxNotices.ENTITY_USED, line);
                default -> {}
            }
        }
    }

    private void end() {
        if (styled == depth) {
            styled = 0;
        }
        if (passed == depth) {
            passed = 0;
        } else if (passed == 0) {
            maps.pop();
        }
        depth--;
    }

    /** Refuses a style that would have something fetched. */
    private void own(String text, int line) throws Refused {
        if (styled > 0 && FETCHED.matcher(text).find()) {
            throw SvgProlog.outside(source, InboxNotices.A_STYLE, line);
        }
    }

    private void start(XMLStreamReader reader, int line) throws Refused {
        depth++;
        if (depth > Limits.DEEPEST) {
            throw source.refused(InboxNotices.DEEP_ELEMENT.with("most", Figure.count(Limits.DEEPEST)), line);
        }
        Map<String, String> attributes = attributes(reader, line);
        String name = reader.getLocalName();
        if (name.equals("style")) {
            styled = depth;
        }
        if (passed > 0) {
            return;
        }
        boolean known = NAMESPACES.contains(
                Optional.ofNullable(reader.getNamespaceURI()).orElse(""));
        if (depth == 1) {
            if (!known || !name.equals("svg")) {
                throw notSvg(line);
            }
            sheet = Optional.of(SvgSheet.of(attributes));
            maps.push(Affine.NONE);
        }
        if (!known || UNDRAWN.contains(name)) {
            passed = depth;
        } else if (hidden(attributes)) {
            count("hidden");
            passed = depth;
        } else if (depth == 1 || GROUPS.contains(name) || SvgShape.NAMES.contains(name)) {
            draw(name, attributes, line);
        } else {
            count(name);
            passed = depth;
        }
    }

    private void count(String name) {
        String shown = Numerals.shown(name);
        if (left.size() < MOST_KINDS || left.containsKey(shown)) {
            left.merge(shown, 1, Integer::sum);
        }
    }

    private static boolean hidden(Map<String, String> attributes) {
        return attributes.getOrDefault("display", "").strip().equals("none")
                || HIDDEN.matcher(attributes.getOrDefault("style", "")).find();
    }

    private Map<String, String> attributes(XMLStreamReader reader, int line) throws Refused {
        Map<String, String> attributes = new HashMap<>();
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String name = reader.getAttributeLocalName(i);
            String value = reader.getAttributeValue(i);
            boolean reference = name.equals("href") || name.equals("src");
            boolean within = value.isBlank()
                    || value.strip().startsWith("#")
                    || value.strip().startsWith("data:");
            // a link to click on is never followed
            if (reference && !within && !reader.getLocalName().equals("a")) {
                throw SvgProlog.outside(source, InboxNotices.QUOTED.with("text", Numerals.shown(value)), line);
            }
            if (FETCHED.matcher(value).find()) {
                throw SvgProlog.outside(source, InboxNotices.QUOTED.with("text", Numerals.shown(value)), line);
            }
            if (Optional.ofNullable(reader.getAttributeNamespace(i)).orElse("").isEmpty()) {
                attributes.put(name, value);
            }
        }
        return attributes;
    }

    private void draw(String name, Map<String, String> attributes, int line) throws Refused {
        Optional<Affine> own = SvgTransform.read(attributes.getOrDefault("transform", ""));
        Affine outer = Optional.ofNullable(maps.peek()).orElse(Affine.NONE);
        Optional<Affine> map = own.map(inner -> inner.then(outer)).filter(both -> both.within(1e12));
        if (map.isEmpty()) {
            source.tell(InboxNotices.TRANSFORM.with("element", name), line);
            passed = depth;
            return;
        }
        maps.push(map.get());
        if (depth == 1 || GROUPS.contains(name)) {
            return;
        }
        SvgShape.Read read = SvgShape.read(name, attributes);
        read.fault().ifPresent(fault -> source.tell(InboxNotices.READ_IN_PART.with("fault", fault), line));
        for (Strand strand : read.strands()) {
            plot.add(strand.moved(map.get()));
        }
    }

    private Refused notSvg(int line) {
        return source.refused(source.named(InboxNotices.NOT_SVG), line);
    }
}
