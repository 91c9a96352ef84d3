package buildup.engine.hold.fixing;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.profiles.outline.Point;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Ways out for one row of fastenings, each in words and as what a person changes in the document. */
public final class RowEdits {
    private final Fastening row;

    public RowEdits(Fastening row) {
        this.row = row;
    }

    /** Another fastener, or the same in another length. */
    public Cure other(Fastener.Cut cut) {
        return new Cure(Phrase.of("Use {use}.").with("use", cut.phrase()), List.of(use(cut)));
    }

    /** Tilted from where it is now, degrees; {@code told} says which way. */
    Cure tilted(double by, Phrase told) {
        String degrees = degrees(row.angle() + by);
        return new Cure(
                Phrase.of("Tilt it {tilt}, to 'angle: {to}'.")
                        .with("tilt", told)
                        .with("to", degrees),
                List.of(change("angle", Phrase.of(degrees))));
    }

    /** Bored for before it is driven. */
    Cure bored() {
        return new Cure(Phrase.of("Bore for it: 'bored: yes'."), List.of(change("bored", Phrase.of("yes"))));
    }

    /** Driven once another piece is up. */
    Cure later(String piece, String quoted) {
        return new Cure(
                Phrase.of("Drive it after {later} is up.").with("later", quoted),
                List.of(change("after", Phrase.of("{later}").with("later", piece))));
    }

    /** Driven once another piece is up, and tilted from where it is now, degrees; {@code told} says which way. */
    Cure laterTilted(String piece, String quoted, double by, Phrase told) {
        Cure later = later(piece, quoted);
        Cure tilted = tilted(by, told);
        List<Change> changes = new ArrayList<>(later.changes());
        changes.addAll(tilted.changes());
        return new Cure(
                Phrase.of("{later} {tilted}").with("later", later.words()).with("tilted", tilted.words()), changes);
    }

    /** Driven as its own piece goes up, before another. */
    Cure before(String quoted) {
        return new Cure(
                Phrase.of("Drive it before {body} goes up.").with("body", quoted),
                List.of(change("after", Phrase.of("{own}").with("own", row.piece()))));
    }

    /**
     * At another place of its face, and in another length where it needs one.
     *
     * @param level whether the face lies, so that its projection tells the place
     * @param straight whether the other coordinate stays what it is
     */
    Cure moved(Point to, boolean level, boolean straight, boolean otherLength, Fastener.Cut cut) {
        Phrase words = Phrase.of("Move it to {to} " + (level ? "out" : "up") + (otherLength ? ", and use {use}." : "."))
                .with("to", Figure.length(level ? to.x() : to.y()))
                .with("use", cut.phrase());
        List<Change> changes = new ArrayList<>();
        if (level || !straight) {
            changes.add(change("at.out", size(to.x())));
        }
        if (!level || !straight) {
            changes.add(change("at.up", size(to.y())));
        }
        if (otherLength) {
            changes.add(use(cut));
        }
        return new Cure(words, changes);
    }

    /** As {@code , angle -10 degrees}: behind a place, with the sign that a row has. */
    public static Phrase angled(double degrees) {
        return Phrase.of(", angle {angle}").with("angle", NailWords.typed(degrees));
    }

    /** Another fastener at another place of its piece, driven as that goes up. */
    Cure replaced(Fixed nail) {
        Fastener.Cut cut = nail.fastening().use();
        String degrees = degrees(nail.fastening().angle());
        boolean tilts = !degrees.equals(degrees(row.angle()));
        Phrase words = Phrase.of("Use {use} at {out} out, {up} up{tilt}.")
                .with("use", cut.phrase())
                .with("out", Figure.length(nail.head().x()))
                .with("up", Figure.length(nail.head().y()))
                .with("tilt", tilts ? angled(nail.fastening().angle()) : Phrase.of(""));
        List<Change> changes = new ArrayList<>(List.of(
                use(cut),
                change("at.out", size(nail.head().x())),
                change("at.up", size(nail.head().y()))));
        if (tilts) {
            changes.add(change("angle", Phrase.of(degrees)));
        }
        row.after()
                .filter(after -> !after.equals(row.piece()))
                .ifPresent(after ->
                        changes.add(change("after", Phrase.of("{own}").with("own", row.piece()))));
        return new Cure(words, changes);
    }

    /** Its height on the face, or its projection there where the face lies, in. */
    public List<Change> movedTo(double inches, boolean up) {
        return List.of(change(up ? "at.up" : "at.out", size(inches)));
    }

    /** Where its first stands, and how far apart they are, in. */
    public List<Change> setOut(double first, double spacing) {
        return List.of(change("first", size(first)), change("spacing", size(spacing)));
    }

    /** How far apart they are, in; each stretch begins it where it lands. */
    public List<Change> spaced(double spacing) {
        return List.of(change("spacing", size(spacing)));
    }

    /** Begun elsewhere along the run. */
    Cure started(double inches) {
        return new Cure(
                Phrase.of("Give {row} 'first: {first}'.")
                        .with("row", "'" + row.name() + "'")
                        .with("first", Figure.length(inches)),
                List.of(change("first", size(inches))));
    }

    private static String degrees(double angle) {
        return BigDecimal.valueOf(Math.round(10 * angle), 1)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static Phrase size(double inches) {
        return Phrase.of("{size}").with("size", Figure.length(inches));
    }

    private Change use(Fastener.Cut cut) {
        return change("use", cut.phrase());
    }

    private Change change(String key, Phrase value) {
        return new Change("fastenings." + NailWords.place(row) + "." + key, value);
    }
}
