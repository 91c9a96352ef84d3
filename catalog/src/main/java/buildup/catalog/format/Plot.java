package buildup.catalog.format;

import buildup.profiles.curve.Affine;
import buildup.profiles.curve.Strand;
import buildup.profiles.outline.Box;
import buildup.profiles.trace.Trail;
import buildup.shared.figure.Figure;
import buildup.shared.length.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The curves of a drawing, in the order in which it holds them; in the end they become points. */
final class Plot {
    private final Source source;
    private final List<Strand> strands = new ArrayList<>();
    private int curves;

    Plot(Source source) {
        this.source = source;
    }

    void add(Strand strand) throws Refused {
        curves += strand.curves().size();
        if (curves > Limits.MOST_POINTS) {
            throw tooMany();
        }
        strands.add(strand);
    }

    void addAll(Plot other, Affine map) throws Refused {
        for (Strand strand : other.strands) {
            add(strand.moved(map));
        }
    }

    /** The drawing as points, chords within a small share of its diagonal. */
    Drawn drawn(Affine map, Optional<LengthUnit> unit) throws Refused {
        List<Strand> kept = strands.stream().map(strand -> strand.moved(map)).toList();
        if (kept.isEmpty()) {
            throw source.refused(source.named(InboxNotices.NO_LINE), 1);
        }
        Box box = Box.around(kept.stream().map(Strand::reach).toList());
        double diagonal = Math.hypot(box.width(), box.height());
        if (!(diagonal <= 4 * Limits.FARTHEST)) {
            throw source.refused(InboxNotices.TOO_FAR, 1);
        }
        if (!(diagonal > 0)) {
            throw source.refused(source.named(InboxNotices.ALL_IN_ONE), 1);
        }
        double chordError = diagonal * Limits.CHORD_SHARE;
        long points = 0;
        for (Strand strand : kept) {
            points += strand.most(chordError);
            if (points > Limits.MOST_POINTS) {
                throw tooMany();
            }
        }
        return new Drawn(
                kept.stream()
                        .map(strand -> new Trail(strand.points(chordError), strand.closed()))
                        .toList(),
                unit);
    }

    private Refused tooMany() {
        return tooMany(source);
    }

    static Refused tooMany(Source source) {
        return source.refused(source.named(InboxNotices.MANY_POINTS).with("most", Figure.count(Limits.MOST_POINTS)), 1);
    }
}
