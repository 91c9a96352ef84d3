package buildup.cli.drawing.job;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The shop drawings by name, in their order. */
public enum ShopSheet {
    COVER("Cover"),
    SECTION("Section"),
    PIECES("Pieces"),
    SEQUENCE("Sequence and nails"),
    LENGTHS("Lengths and saw settings"),
    STICKS("Sticks and labels"),
    LIGHT("Light and eyes"),
    SEASON("Through the year"),
    ROOM("Room as measured"),
    PROPORTION("Proportion"),
    CLEARANCE("Fire and what is kept clear"),
    TOLERANCE("What errors come to"),
    MUST("What it has to meet"),
    MATERIAL("Material and cost"),
    PROFILES("Profiles to be milled"),
    WARNINGS("Warnings"),
    STRIP("Strip to tape up", false),
    STORY_POLE("Story pole", false),
    TEMPLATES("Templates", false);

    private final String title;
    private final boolean usual;

    ShopSheet(String title) {
        this(title, true);
    }

    ShopSheet(String title, boolean usual) {
        this.title = title;
        this.usual = usual;
    }

    /** What stands in its title block and as its bookmark. */
    public String title() {
        return title;
    }

    /** The name by which it is asked for. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Those that are drawn when none is asked for: what takes much paper is drawn when it is named. */
    public static List<ShopSheet> usual() {
        return Arrays.stream(values()).filter(one -> one.usual).toList();
    }

    /** The one of a name, in whatever case. */
    public static Optional<ShopSheet> named(String name) {
        return Arrays.stream(values())
                .filter(one -> one.key().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    /** All names. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(ShopSheet::key).toList();
    }
}
