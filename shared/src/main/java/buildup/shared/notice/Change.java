package buildup.shared.notice;

import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * One value of a document and what is to stand in its place, or an entry that a list gets.
 *
 * @param place keys and names from the top down with dots between them, as {@code pieces.frieze.bottom}; of an entry, the
 *     list
 * @param value what is to stand there; its figures become sizes in the unit of the document, as a person would type
 *     them; of an entry, its name
 * @param position of an entry in its list, counted from 1, beyond the end for the last; absent for a value
 */
public record Change(String place, Phrase value, OptionalInt position) {
    /** Behind a size: truly a little more or less. Nobody types it. */
    private static final Pattern MARK = Pattern.compile("(?<=[0-9])[+-](?=\\s|$)");

    /** A value at a place. */
    public Change(String place, Phrase value) {
        this(place, value, OptionalInt.empty());
    }

    /** An entry that has its name alone, last in its list, which is made where it is not there yet. */
    public static Change last(String list, String name) {
        return entry(list, Integer.MAX_VALUE, name);
    }

    /** An entry that has its name alone, at a position of its list, counted from 1. */
    public static Change entry(String list, int position, String name) {
        return new Change(list, Phrase.of("{name}").with("name", name), OptionalInt.of(position));
    }

    /** What a person types who follows it, in a document that counts in that unit. */
    public String typed(LengthUnit unit) {
        return typed(new FigurePrinter(unit));
    }

    /** The same as an edit of the text. */
    Edit edit(FigurePrinter printer) {
        return position.isPresent()
                ? new Edit.Add(place, position.getAsInt(), new Content.Yaml("{ name: " + typed(printer) + " }"))
                : new Edit.Set(place, new Content.Text(typed(printer)));
    }

    private String typed(FigurePrinter printer) {
        return MARK.matcher(printer.print(value)).replaceAll("");
    }
}
