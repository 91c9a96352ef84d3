package buildup.catalog.format;

import buildup.profiles.curve.Affine;
import buildup.profiles.curve.Strand;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.figure.Figure;
import buildup.shared.length.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The curves of a drawing, in the order in which it holds them; in the end they become points. */
final class Plot {
    /** What is smaller than this share of a drawing's diagonal is a mark, and need be no smoother. */
    private static final double MARK = 0.1;

    private final Source source;
    private final List<Laid> strands = new ArrayList<>();
    private int curves;
    private int pictures;
    private int pictureLine = 1;

    Plot(Source source) {
        this.source = source;
    }

    /**
     * A strand and where it lies.
     *
     * @param layers names of the layers or groups that hold it, the outermost first
     */
    private record Laid(Strand strand, List<String> layers) {}

    void add(Strand strand, List<String> layers) throws FileRefused {
        curves += strand.curves().size();
        if (curves > Limits.MOST_POINTS) {
            throw tooMany();
        }
        strands.add(new Laid(strand, layers));
    }

    /** All of another plot, its own layers within those that are given. */
    void addAll(Plot other, Affine map, List<String> layers) throws FileRefused {
        for (Laid laid : other.strands) {
            List<String> all = new ArrayList<>(layers);
            all.addAll(laid.layers);
            add(laid.strand.moved(map), all);
        }
        pictures += other.pictures;
    }

    /** A picture stands in the drawing; it holds no lines, and is not opened. */
    void picture(int line) {
        pictureLine = pictures == 0 ? line : pictureLine;
        pictures++;
    }

    /** The drawing as points, chords within a small share of its diagonal. */
    Drawn drawn(Affine map, Optional<LengthUnit> unit) throws FileRefused {
        List<Strand> kept = strands.stream().map(laid -> laid.strand.moved(map)).toList();
        if (kept.isEmpty()) {
            throw pictures > 0
                    ? source.refused(source.named(FormatNotices.ONLY_PICTURES), pictureLine)
                    : source.refused(source.named(FormatNotices.NO_LINE), 1);
        }
        if (pictures > 0) {
            source.tell(FormatNotices.PICTURES.with("pictures", Figure.count(pictures)), pictureLine);
        }
        Box box = Box.around(kept.stream().map(Strand::reach).toList());
        double diagonal = Math.hypot(box.width(), box.height());
        if (!(diagonal <= 4 * Limits.FARTHEST)) {
            throw source.refused(FormatNotices.TOO_FAR, 1);
        }
        if (!(diagonal > 0)) {
            throw source.refused(source.named(FormatNotices.ALL_IN_ONE), 1);
        }
        double least = most(kept, diagonal * MARK) > Limits.MOST_POINTS ? diagonal : diagonal * MARK;
        if (most(kept, least) > Limits.MOST_POINTS) {
            throw tooMany();
        }
        List<Trail> trails = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            Strand strand = kept.get(i);
            trails.add(new Trail(
                    strand.points(chordError(strand, least)),
                    strand.closed(),
                    strands.get(i).layers()));
        }
        return new Drawn(trails, unit);
    }

    private static long most(List<Strand> strands, double least) {
        return strands.stream()
                .mapToLong(strand -> strand.most(chordError(strand, least)))
                .sum();
    }

    /** A profile is small on its sheet: a line is held to its own size, but what is smaller than {@code least} to that. */
    private static double chordError(Strand strand, double least) {
        Box own = strand.reach();
        return Math.max(Math.hypot(own.width(), own.height()), least) * Tolerance.DRAWING_CHORD;
    }

    private FileRefused tooMany() {
        return tooMany(source);
    }

    static FileRefused tooMany(Source source) {
        return source.refused(
                source.named(FormatNotices.MANY_POINTS).with("most", Figure.count(Limits.MOST_POINTS)), 1);
    }
}
