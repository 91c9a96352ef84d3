package buildup.cli.write;

import buildup.cli.scene.Area;
import buildup.cli.scene.Clip;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.Paint;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.shared.length.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import org.apache.batik.dom.GenericDOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Writes a scene as SVG 1.1, full size, its user unit an inch. */
public final class SvgWriter {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final String FONTS = "Liberation Sans, Arial, Helvetica, sans-serif";

    /** Text is set in hundredths of an inch: viewers may not go below a font size of about 1. */
    private static final double TEXT_UNIT = 0.01;

    private final Scene scene;
    private final Document document;
    private final Optional<ShippedFont> outlines;
    private final String prefix;
    private int clips;

    /** @param prefix before every name, where pictures share a page */
    private SvgWriter(Scene scene, Optional<ShippedFont> outlines, String prefix) {
        this.prefix = prefix;
        this.scene = scene;
        this.outlines = outlines;
        this.document = GenericDOMImplementation.getDOMImplementation().createDocument(NAMESPACE, "svg", null);
    }

    /**
     * The scene as an SVG file, UTF-8.
     *
     * @param unit in which the sheet's size is stated
     */
    public static byte[] write(Scene scene, LengthUnit unit) {
        return new SvgWriter(scene, Optional.empty(), "").text(unit).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The same with letters as outlines of a font, so that it looks alike in a viewer that has no such font. What a text
     * says stays with it as its title, for whoever points at it or has it read aloud.
     */
    public static byte[] outlined(Scene scene, LengthUnit unit, ShippedFont font) {
        return withoutFonts(scene, unit, font).getBytes(StandardCharsets.UTF_8);
    }

    /** The same as text. */
    static String withoutFonts(Scene scene, LengthUnit unit, ShippedFont font) {
        return new SvgWriter(scene, Optional.of(font), "").text(unit);
    }

    /**
     * The scene as an element of a page.
     *
     * @param outlines the font whose outlines stand for letters; absent for letters as text
     * @param prefix before every name in it
     */
    static String element(Scene scene, Optional<ShippedFont> outlines, String prefix) {
        return new SvgWriter(scene, outlines, prefix).root(LengthUnit.INCH);
    }

    private String text(LengthUnit unit) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + root(unit) + "\n";
    }

    private String root(LengthUnit unit) {
        Element root = document.getDocumentElement();
        root.setAttributeNS(XMLConstants.XMLNS_ATTRIBUTE_NS_URI, XMLConstants.XMLNS_ATTRIBUTE, NAMESPACE);
        root.setAttribute("version", "1.1");
        root.setAttribute("width", size(scene.width(), unit));
        root.setAttribute("height", size(scene.height(), unit));
        root.setAttribute("viewBox", "0 0 " + Numbers.pair(scene.width(), scene.height()));
        root.setAttribute("fill", "none");
        root.setAttribute("stroke-linejoin", "round");
        root.setAttribute("font-family", FONTS);
        add(root, worded("title", scene.title()));
        add(root, worded("desc", scene.description()));
        addAll(root, scene.items());
        root.appendChild(document.createTextNode("\n"));
        StringBuilder out = new StringBuilder();
        Markup.write(root, out);
        return out.toString();
    }

    private static String size(double inches, LengthUnit unit) {
        return Numbers.text(inches / unit.of(1).toInches()) + unit.symbol();
    }

    private static void add(Node parent, Element element) {
        parent.appendChild(parent.getOwnerDocument().createTextNode("\n"));
        parent.appendChild(element);
    }

    private void addAll(Element parent, List<SceneItem> items) {
        for (SceneItem item : items) {
            if (item instanceof Group group) {
                Element element = element("g");
                element.setAttribute("id", prefix + group.id());
                addAll(element, group.items());
                element.appendChild(document.createTextNode("\n"));
                add(parent, element);
            } else if (item instanceof Clip clip) {
                add(parent, clipped(clip));
            } else if (item.held().isPresent()) {
                addAll(parent, item.held().get());
            } else {
                add(parent, drawn(item));
            }
        }
    }

    private Element clipped(Clip clip) {
        clips++;
        String name = prefix + "window-" + clips;
        Element path = element("clipPath");
        path.setAttribute("id", name);
        Element window = path(PathData.of(Outline.rectangle(clip.window()).segments(), true, scene.height()));
        add(path, window);
        Element element = element("g");
        element.setAttribute("clip-path", "url(#" + name + ")");
        add(element, path);
        addAll(element, clip.items());
        element.appendChild(document.createTextNode("\n"));
        return element;
    }

    private Element drawn(SceneItem item) {
        if (item instanceof Area area) {
            return area(area);
        }
        if (item instanceof Path path) {
            Element element = path(PathData.of(path.segments(), path.closed(), scene.height()));
            stroke(
                    element,
                    path.style().tone(),
                    path.style().width(),
                    path.style().dash());
            return element;
        }
        if (item instanceof Hatch hatch) {
            Element element = path(PathData.of(hatch.lines(), false, scene.height()));
            stroke(element, Tone.INK, hatch.pattern().width(), hatch.pattern().dash());
            return element;
        }
        return label((Label) item);
    }

    private Element area(Area area) {
        Element element = path(PathData.of(area.ring(), true, scene.height()));
        area.id().ifPresent(id -> element.setAttribute("id", prefix + id));
        element.setAttribute("fill", color(area.tone()));
        area.title().ifPresent(title -> element.appendChild(worded("title", title)));
        return element;
    }

    private Element label(Label label) {
        double down = scene.height() - label.at().y();
        String turn = label.upright() ? " rotate(-90)" : "";
        if (outlines.isPresent()) {
            SetText text = outlines.get().set(label.text());
            Point start = text.start(label);
            String size = Numbers.text(label.size());
            Element element = path(PathData.of(outlines.get().outlines(text)));
            element.setAttribute(
                    "transform",
                    "translate(" + Numbers.pair(start.x(), scene.height() - start.y()) + ")" + turn + " scale("
                            + Numbers.text(label.size() * text.squeezed(label)) + " -" + size + ")");
            element.setAttribute("fill", color(Tone.INK));
            element.appendChild(worded("title", label.text()));
            return element;
        }
        Element element = worded("text", TextOrder.guarded(label.text()));
        element.setAttribute(
                "transform",
                "translate(" + Numbers.pair(label.at().x(), down) + ")" + turn + " scale(" + Numbers.text(TEXT_UNIT)
                        + ")");
        element.setAttribute("font-size", Numbers.text(label.size() / TEXT_UNIT));
        element.setAttribute("fill", color(Tone.INK));
        if (label.width() > 0) {
            // where another font steps in, the text still keeps to its place
            element.setAttribute("textLength", Numbers.text(label.width() / TEXT_UNIT));
            element.setAttribute("lengthAdjust", "spacingAndGlyphs");
        }
        if (label.anchor() != Label.Anchor.START) {
            element.setAttribute("text-anchor", label.anchor().name().toLowerCase(Locale.ROOT));
        }
        return element;
    }

    private Element path(String data) {
        Element element = element("path");
        element.setAttribute("d", data.isEmpty() ? "M0 0" : data);
        return element;
    }

    private static void stroke(Element element, Tone tone, double width, List<Double> dash) {
        element.setAttribute("stroke", color(tone));
        element.setAttribute("stroke-width", Numbers.text(width));
        if (!dash.isEmpty()) {
            element.setAttribute(
                    "stroke-dasharray", dash.stream().map(Numbers::text).collect(Collectors.joining(" ")));
        }
    }

    private static String color(Paint tone) {
        return String.format(Locale.ROOT, "#%06x", tone.rgb());
    }

    private Element worded(String name, String text) {
        Element element = element(name);
        element.appendChild(document.createTextNode(printable(text)));
        return element;
    }

    private Element element(String name) {
        return document.createElementNS(NAMESPACE, name);
    }

    /** XML 1.0 has no place for control characters and halves of characters. */
    private static String printable(String text) {
        StringBuilder kept = new StringBuilder();
        text.codePoints()
                .map(c -> c < ' ' || (c >= 0xD800 && c <= 0xDFFF) || c == 0xFFFE || c == 0xFFFF ? 0xFFFD : c)
                .forEach(kept::appendCodePoint);
        return kept.toString();
    }
}
