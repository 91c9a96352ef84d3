package buildup.engine.judge.proportion;

import buildup.catalog.book.BookMember.Shape;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the rhythm of a stack: heights of its members one above the other, flats and curves, reveals. Two side by side
 * should not be equal (W. H. Varnum, Industrial Arts Design, 1916, ch. III, rules 2a to 3b); what counts as equal, as thin
 * and as nearly alike are measures of our own.
 */
final class Rhythm {
    /** Neighbors are equal within this share of the larger. */
    private static final double EQUAL = 0.1;

    /** Thinner reads as a mistake, in. */
    private static final double THIN = 0.125;

    /** Reveals that differ by less, and by more than a saw's cut, read as a mistake, in. */
    private static final double NEARLY = 0.0625;

    private final Section section;

    Rhythm(Section section) {
        this.section = section;
    }

    /** The members of some bodies that have a height, from below. */
    List<RhythmRow> members(Set<Integer> bodies) {
        List<RhythmRow> rows = new ArrayList<>();
        for (int i = 0; i < section.members().size(); i++) {
            Member member = section.members().get(i);
            double height = member.box().height();
            boolean shows = section.body(member.body()).trim() && PartFinder.facesTheRoom(member);
            if (bodies.contains(member.body()) && shows) {
                RhythmRow row = new RhythmRow(i, height, shape(member), List.of());
                rows.add(new RhythmRow(i, height, row.shape(), remarks(row, rows)));
            }
        }
        return List.copyOf(rows);
    }

    /**
     * The flat that comes out farthest beyond what lies below it.
     *
     * @param bodies of the cornice
     * @param from projection of what is below the cornice, in
     */
    Optional<Corona> corona(Set<Integer> bodies, double from) {
        Optional<Corona> found = Optional.empty();
        double most = Tolerance.TOUCHING;
        double below = from;
        for (RhythmRow row : members(bodies)) {
            Member member = section.members().get(row.member());
            double jump = member.from().x() - below;
            if (row.shape() == Shape.FLAT && jump > most) {
                most = jump;
                found = Optional.of(new Corona(
                        row.member(), member.box().bottom(), member.box().top()));
            }
            below = member.to().x();
        }
        return found;
    }

    /** @param below the members before it, from below */
    private List<Phrase> remarks(RhythmRow row, List<RhythmRow> below) {
        List<Phrase> remarks = new ArrayList<>();
        if (row.height() < THIN - Tolerance.SAME_SIZE) {
            remarks.add(ProportionWords.THIN.with("least", Figure.length(THIN)));
        }
        if (!below.isEmpty()) {
            RhythmRow other = below.get(below.size() - 1);
            double larger = Math.max(row.height(), other.height());
            if (Math.abs(row.height() - other.height()) <= EQUAL * larger + Tolerance.COINCIDENT) {
                remarks.add(ProportionWords.EQUAL.with("other", name(other)));
            }
            if (row.shape() == other.shape() && isCurved(row.shape())) {
                remarks.add(
                        ProportionWords.ALIKE.with("shape", row.shape().word()).with("other", name(other)));
            }
        }
        return remarks;
    }

    private static boolean isCurved(Shape shape) {
        return shape != Shape.FLAT && shape != Shape.BEVEL;
    }

    private String name(RhythmRow row) {
        Member member = section.members().get(row.member());
        return section.name(member.body()) + " " + member.member();
    }

    /** How a member is bent: on the walk the wood lies on the left, so that what turns left is round. */
    static Shape shape(Member member) {
        List<Arc> arcs = member.segments().stream()
                .filter(Arc.class::isInstance)
                .map(Arc.class::cast)
                .toList();
        if (arcs.isEmpty()) {
            return member.segments().stream().allMatch(Rhythm::isUpright) ? Shape.FLAT : Shape.BEVEL;
        }
        boolean round = arcs.stream().anyMatch(Arc::counterclockwise);
        boolean hollow = arcs.stream().anyMatch(arc -> !arc.counterclockwise());
        if (round && hollow) {
            Arc first = arcs.get(0);
            Arc last = arcs.get(arcs.size() - 1);
            Arc upper = first.box().middle().y() > last.box().middle().y() ? first : last;
            return upper.counterclockwise() ? Shape.REVERSA : Shape.RECTA;
        }
        return round ? Shape.ROUND : Shape.HOLLOW;
    }

    private static boolean isUpright(Segment segment) {
        return segment instanceof Line line
                && Math.abs(line.to().x() - line.from().x()) < Tolerance.TOUCHING;
    }

    /** The reveals that an eye compares. */
    List<RevealReading> reveals() {
        List<Reveal> shown = section.reveals().stream().filter(Reveal::compares).toList();
        return shown.stream()
                .map(reveal -> new RevealReading(reveal, remarks(reveal, shown)))
                .toList();
    }

    private List<Phrase> remarks(Reveal reveal, List<Reveal> all) {
        List<Phrase> remarks = new ArrayList<>();
        if (reveal.amount() < THIN - Tolerance.SAME_SIZE) {
            remarks.add(ProportionWords.THIN.with("least", Figure.length(THIN)));
        }
        all.stream()
                .filter(other -> {
                    double apart = Math.abs(other.amount() - reveal.amount());
                    return apart > Tolerance.SAW_CUT + Tolerance.SAME_SIZE && apart <= NEARLY + Tolerance.SAME_SIZE;
                })
                .findFirst()
                .ifPresent(other -> remarks.add(ProportionWords.NEARLY
                        .with("by", Figure.length(Math.abs(other.amount() - reveal.amount())))
                        .with("other", section.name(other.piece()))));
        return remarks;
    }
}
