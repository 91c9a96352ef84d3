package buildup.cli.drawing.paper;

/**
 * A cell of the title strip: small words over what it says.
 *
 * @param share of the strip's width that it takes, beside the shares of the others
 */
public record TitleCell(String caption, String text, double share) {}
