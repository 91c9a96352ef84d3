package buildup.engine.hold.season;

import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Pieces that two others squeeze between them as they swell. */
final class Squeezes {
    /**
     * A piece between two others.
     *
     * @param one, two numbers of the others
     * @param byOne, byTwo how much of it has no room on either side, in; 0 where the other moves along with it
     */
    record Squeeze(int season, int body, int one, int two, double byOne, double byTwo) {
        /** How much there is of it that has no room, in. */
        double by() {
            return byOne + byTwo;
        }
    }

    /** A face of the piece against another. */
    private record Side(int other, Point inward, double pressed) {}

    private final Section section;
    private final Year year;

    Squeezes(Section section, Year year) {
        this.section = section;
        this.year = year;
    }

    /** Of each piece that is squeezed the worst, pieces in order. */
    List<Squeeze> all() {
        List<Squeeze> all = new ArrayList<>();
        for (Held held : year.held()) {
            List<Squeeze> own = new ArrayList<>();
            for (int season = 1; season < year.seasons().size(); season++) {
                own.addAll(of(held.body(), season));
            }
            Optional<Squeeze> worst = own.stream().max(Comparator.comparingDouble(Squeeze::by));
            worst.ifPresent(all::add);
        }
        return all;
    }

    private List<Squeeze> of(int body, int season) {
        List<Side> sides = section.contacts().stream()
                .filter(contact -> contact.of(body) && contact.stretch().isPresent())
                .map(contact -> side(body, season, contact))
                .filter(side -> side.pressed >= -Tolerance.COINCIDENT)
                .toList();
        List<Squeeze> found = new ArrayList<>();
        for (Side one : sides) {
            for (Side two : sides) {
                double by = one.pressed + two.pressed;
                boolean before = one.inward.y() + one.inward.x() > 0;
                if (before && Holders.areOpposite(one.inward, two.inward) && by > Tolerance.COINCIDENT) {
                    found.add(new Squeeze(season, body, one.other, two.other, one.pressed, two.pressed));
                }
            }
        }
        return found;
    }

    private Side side(int body, int season, Contact contact) {
        int other = contact.other(body);
        Point inward = contact.b() == body
                ? Holders.normal(contact)
                : Holders.normal(contact).times(-1);
        double apart = year.moved(season, body, contact.at())
                .minus(year.moved(season, other, contact.at()))
                .dot(inward);
        return new Side(other, inward, -apart);
    }
}
