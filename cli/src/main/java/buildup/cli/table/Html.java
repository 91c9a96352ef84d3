package buildup.cli.table;

import java.util.regex.Pattern;

/** Text made safe to stand in a web page. */
public final class Html {
    private static final Pattern MIXED = Pattern.compile("\\d+-\\d+/\\d+[-+]?");

    private Html() {}

    /**
     * The text as a page shows it, between tags or in a quoted attribute: nothing in it is markup, steers the direction
     * of what follows or breaks the line.
     */
    public static String text(String text) {
        StringBuilder safe = new StringBuilder();
        Display.plain(text).codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(letter);
            }
        });
        return safe.toString();
    }

    /** A name or title of the user's: of whatever script, it leaves the direction of its neighbors alone. */
    public static String name(String name) {
        return "<bdi>" + text(name) + "</bdi>";
    }

    /** What is said one way in inches and another in millimeters; the page shows one of the two. */
    public static String both(String inches, String millimeters) {
        return inches.equals(millimeters)
                ? whole(inches)
                : "<span class=\"in\">" + whole(inches) + "</span><span class=\"mm\">" + text(millimeters) + "</span>";
    }

    /** A mixed number is not parted at its hyphen where a line ends. */
    private static String whole(String text) {
        return MIXED.matcher(text(text)).replaceAll("<span class=\"size\">$0</span>");
    }
}
