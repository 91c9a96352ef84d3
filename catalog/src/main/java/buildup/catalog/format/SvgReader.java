package buildup.catalog.format;

import buildup.shared.figure.Figure;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads the elements of an SVG file. Nothing outside the file is opened, and no entity is expanded. */
final class SvgReader {
    private static final Set<String> NAMESPACES = Set.of("", "http://www.w3.org/2000/svg");
    private static final Pattern FETCHED = Pattern.compile("@import|url\\(\\s*+['\"]?+\\s*+(?!#|data:|['\")])");

    private final Source source;
    private final Deque<Element> open = new ArrayDeque<>();
    private int depth;
    /** The depth of the element whose inside is passed over; 0 for none. */
    private int passed;

    /** The depth of the style sheet that is being read; 0 for none. */
    private int styled;

    private Optional<Element> root = Optional.empty();

    SvgReader(Source source) {
        this.source = source;
    }

    /**
     * An element of the drawing.
     *
     * @param attributes those without a namespace, and the labels that drawing programs give to layers
     * @param children grows while the file is read
     */
    record Element(String name, Map<String, String> attributes, int line, List<Element> children) {
        String attribute(String key) {
            return attributes.getOrDefault(key, "").strip();
        }
    }

    Drawn drawn() throws FileRefused {
        String text = SvgProlog.withoutDoctype(source);
        try {
            walk(reader(text));
        } catch (XMLStreamException fault) {
            throw source.refused(
                    FormatNotices.NOT_XML,
                    Math.max(
                            1,
                            Optional.ofNullable(fault.getLocation())
                                    .map(at -> at.getLineNumber())
                                    .orElse(1)));
        }
        return new SvgDrawing(source, root.orElseThrow(() -> notSvg(1))).drawn();
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

    private void walk(XMLStreamReader reader) throws XMLStreamException, FileRefused {
        while (reader.hasNext()) {
            int event = reader.next();
            int line = Math.max(1, reader.getLocation().getLineNumber());
            switch (event) {
                case XMLStreamConstants.START_ELEMENT -> start(reader, line);
                case XMLStreamConstants.END_ELEMENT -> end();
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> own(reader.getText(), line);
                case XMLStreamConstants.PROCESSING_INSTRUCTION -> {
                    if (reader.getPITarget().equals("xml-stylesheet")) {
                        throw SvgProlog.outside(source, FormatNotices.A_STYLE_SHEET, line);
                    }
                }
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                    throw source.refused(FormatNotices.ENTITY_USED, line);
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
            open.pop();
        }
        depth--;
    }

    /** Refuses a style that would have something fetched. */
    private void own(String text, int line) throws FileRefused {
        if (styled > 0 && FETCHED.matcher(text).find()) {
            throw SvgProlog.outside(source, FormatNotices.A_STYLE, line);
        }
    }

    private void start(XMLStreamReader reader, int line) throws FileRefused {
        depth++;
        if (depth > Limits.DEEPEST) {
            throw source.refused(FormatNotices.DEEP_ELEMENT.with("most", Figure.count(Limits.DEEPEST)), line);
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
        if (depth == 1 && (!known || !name.equals("svg"))) {
            throw notSvg(line);
        }
        if (!known) {
            passed = depth;
            return;
        }
        Element element = new Element(name, attributes, line, new ArrayList<>());
        Optional.ofNullable(open.peek())
                .ifPresentOrElse(parent -> parent.children().add(element), () -> root = Optional.of(element));
        open.push(element);
    }

    private Map<String, String> attributes(XMLStreamReader reader, int line) throws FileRefused {
        Map<String, String> attributes = new HashMap<>();
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String name = reader.getAttributeLocalName(i);
            String value = reader.getAttributeValue(i);
            boolean reference = name.equals("href") || name.equals("src");
            boolean within = value.isBlank()
                    || value.strip().startsWith("#")
                    || value.strip().startsWith("data:");
            // a link to click on is never followed, nor is a picture ever opened
            boolean unread = Set.of("a", "image").contains(reader.getLocalName());
            if ((reference && !within && !unread) || FETCHED.matcher(value).find()) {
                throw SvgProlog.outside(source, FormatNotices.QUOTED.with("text", Numerals.shown(value)), line);
            }
            boolean plain = Optional.ofNullable(reader.getAttributeNamespace(i))
                    .orElse("")
                    .isEmpty();
            if (plain || name.equals("href") || name.equals("label")) {
                attributes.putIfAbsent(name, value);
            }
        }
        return attributes;
    }

    private FileRefused notSvg(int line) {
        return source.refused(source.named(FormatNotices.NOT_SVG), line);
    }
}
