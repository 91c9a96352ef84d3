package buildup.cli.scene;

/** How wide a text is in the font that the writers use. */
public interface TextMeasure {
    /** Width of one line of text at a font size, both in inches. */
    double width(String text, double size);
}
