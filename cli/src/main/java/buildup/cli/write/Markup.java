package buildup.cli.write;

import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** Writes a tree of elements and text. The drawing library's own writer refuses letters beyond the first 65,536. */
final class Markup {
    private Markup() {}

    static void write(Node node, StringBuilder out) {
        if (!(node instanceof Element)) {
            escape(node.getNodeValue(), out);
            return;
        }
        out.append('<').append(node.getNodeName());
        NamedNodeMap attributes = node.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            out.append(' ').append(attributes.item(i).getNodeName()).append("=\"");
            escape(attributes.item(i).getNodeValue(), out);
            out.append('"');
        }
        if (node.getFirstChild() == null) {
            out.append("/>");
            return;
        }
        out.append('>');
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            write(child, out);
        }
        out.append("</").append(node.getNodeName()).append('>');
    }

    /** A text as it may stand between tags. */
    static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        escape(text, out);
        return out.toString();
    }

    private static void escape(String text, StringBuilder out) {
        text.codePoints().forEach(letter -> {
            switch (letter) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&apos;");
                default -> out.appendCodePoint(letter);
            }
        });
    }
}
