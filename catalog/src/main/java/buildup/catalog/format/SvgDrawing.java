package buildup.catalog.format;

import buildup.catalog.format.SvgReader.Element;
import buildup.profiles.curve.Affine;
import buildup.profiles.curve.Strand;
import buildup.shared.figure.Figure;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Draws the elements of an SVG file: those that are lines, where their groups, uses and view boxes put them. */
final class SvgDrawing {
    private static final Set<String> GROUPS = Set.of("g", "a", "switch");

    /** What draws nothing by itself; some of it is drawn where it is used. */
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

    private static final Pattern HIDDEN = Pattern.compile("(^|;)\\s*+display\\s*+:\\s*+none\\s*+(;|$|!)");

    /** So many kinds of what is not read are counted. */
    private static final int MOST_KINDS = 30;

    private final Source source;
    private final Element root;
    private final Plot plot;
    private final Map<String, Element> named = new HashMap<>();
    private final Map<String, Integer> left = new TreeMap<>();
    private int used;

    SvgDrawing(Source source, Element root) {
        this.source = source;
        this.root = root;
        this.plot = new Plot(source);
    }

    /** Where an element is drawn. */
    private record Place(Affine map, List<String> layers, int depth) {
        Place within(Affine inner, List<String> names) {
            List<String> all = new ArrayList<>(layers);
            all.addAll(names);
            return new Place(inner.then(map), all, depth + 1);
        }
    }

    Drawn drawn() throws FileRefused {
        name(root);
        SvgSheet sheet = SvgSheet.of(root.attributes());
        Place whole = new Place(Affine.NONE, List.of(), 1);
        for (Element child : root.children()) {
            draw(child, whole.within(transform(root).orElse(Affine.NONE), List.of()));
        }
        if (!left.isEmpty()) {
            source.tell(
                    FormatNotices.LEFT_OUT
                            .with("list", FormatNotices.counted(left))
                            .with("lines", "paths"),
                    1);
        }
        return plot.drawn(sheet.map(), sheet.unit());
    }

    private void name(Element element) {
        if (!element.attribute("id").isEmpty()) {
            named.putIfAbsent(element.attribute("id"), element);
        }
        element.children().forEach(this::name);
    }

    private void draw(Element element, Place place) throws FileRefused {
        if (place.depth() > Limits.DEEPEST) {
            throw source.refused(FormatNotices.DEEP_ELEMENT.with("most", Figure.count(Limits.DEEPEST)), element.line());
        }
        String name = element.name();
        if (UNDRAWN.contains(name)) {
            return;
        }
        if (element.attribute("display").equals("none")
                || HIDDEN.matcher(element.attribute("style")).find()) {
            count("hidden");
        } else if (name.equals("image")) {
            plot.picture(element.line());
        } else if (GROUPS.contains(name) || name.equals("svg") || name.equals("use") || SvgShape.NAMES.contains(name)) {
            Optional<Affine> own = transform(element);
            if (own.isEmpty()) {
                source.tell(FormatNotices.TRANSFORM.with("element", name), element.line());
            } else {
                inside(element, place.within(own.get(), names(element)));
            }
        } else {
            count(name);
        }
    }

    /** Its own transform; empty when it cannot be read or is beyond measure. */
    private static Optional<Affine> transform(Element element) {
        return SvgTransform.read(element.attribute("transform")).filter(map -> map.within(1e12));
    }

    private static List<String> names(Element element) {
        List<String> names = new ArrayList<>();
        for (String key : List.of("id", "label")) {
            if (!element.attribute(key).isEmpty()) {
                names.add(element.attribute(key));
            }
        }
        return names;
    }

    private void inside(Element element, Place place) throws FileRefused {
        if (!place.map().within(1e12)) {
            source.tell(FormatNotices.TRANSFORM.with("element", element.name()), element.line());
        } else if (element.name().equals("use")) {
            use(element, place);
        } else if (element.name().equals("svg")) {
            Place port = place.within(SvgSheet.port(element.attributes(), element.attributes()), List.of());
            drawAll(element.children(), port);
        } else if (GROUPS.contains(element.name())) {
            drawAll(element.children(), place);
        } else {
            SvgShape.Read read = SvgShape.read(element.name(), element.attributes());
            read.fault()
                    .ifPresent(fault -> source.tell(FormatNotices.READ_IN_PART.with("fault", fault), element.line()));
            for (Strand strand : read.strands()) {
                plot.add(strand.moved(place.map()), place.layers());
            }
        }
    }

    private void drawAll(List<Element> elements, Place place) throws FileRefused {
        for (Element element : elements) {
            draw(element, place);
        }
    }

    /** Draws what is used, moved by x and y (SVG 1.1, section 5.6). */
    private void use(Element use, Place place) throws FileRefused {
        String id = use.attribute("href").replaceFirst("^#", "");
        Element target = named.get(id);
        if (target == null) {
            source.tell(FormatNotices.NOTHING_TO_USE.with("name", Numerals.shown(id)), use.line());
            return;
        }
        if (++used > Limits.MOST_INSERTS) {
            throw source.refused(FormatNotices.MANY_BLOCKS.with("most", Figure.count(Limits.MOST_INSERTS)), use.line());
        }
        if (target.name().equals("symbol")) {
            drawAll(
                    target.children(),
                    place.within(SvgSheet.port(target.attributes(), use.attributes()), names(target)));
        } else {
            draw(target, place.within(SvgSheet.shift(use.attributes()), List.of()));
        }
    }

    private void count(String name) {
        String shown = Numerals.shown(name);
        if (left.size() < MOST_KINDS || left.containsKey(shown)) {
            left.merge(shown, 1, Integer::sum);
        }
    }
}
