package buildup.engine.look.light;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;

/** One light on one section, asked by the names of pieces and members. */
final class Shone {
    private final Section section;
    private final Lighting lighting;

    private Shone(Section section, Lighting lighting) {
        this.section = section;
        this.lighting = lighting;
    }

    static Shone distant(Section section, double altitude, double azimuth) {
        return by(section, new Light.Distant("light", altitude, azimuth, Optional.empty()));
    }

    /** Parallel light at an angle in section. */
    static Shone at(Section section, double angle) {
        return distant(section, angle, 0);
    }

    static Shone lamp(Section section, double x, double y, double width) {
        return by(section, new Light.Lamp("lamp", new Point(x, y), width, Optional.empty()));
    }

    private static Shone by(Section section, Light light) {
        Notices notices = new Notices();
        List<Lighting> answers = Lights.of(section, List.of(light), notices);
        assertThat(notices.sorted()).isEmpty();
        return new Shone(section, answers.get(0));
    }

    /** A shelf on a wall, under the lights that a document gives from its third line on. */
    static Bench shelf(String lights) {
        return Bench.sound(Bench.head("space: { floor: -96, wall: { solid: yes } }\n" + lights)
                + Bench.list("name: shelf, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: datum"));
    }

    /** What is said of those lights, in reading and in asking. */
    static List<Notice> said(String lights) {
        Bench bench = shelf(lights);
        Notices notices = new Notices();
        notices.addAll(bench.notices("impossible-light-or-eye"));
        Lights.of(bench.section(), notices);
        return notices.sorted();
    }

    Lighting lighting() {
        return lighting;
    }

    /** The length of a member (or of several of one name) that is lit in one way. */
    double length(String piece, String member, Band.Lit lit) {
        return bands(piece, member).stream()
                .filter(band -> band.lit() == lit)
                .mapToDouble(band -> band.segment().length())
                .sum();
    }

    double dark(String piece, String member) {
        return length(piece, member, Band.Lit.CAST) + length(piece, member, Band.Lit.SHADE);
    }

    List<Band> bands(String piece, String member) {
        return lighting.bands().stream()
                .filter(band -> isOf(band.member(), piece, member))
                .toList();
    }

    List<Shadow> shadows(String piece, String member) {
        return lighting.shadows().stream()
                .filter(shadow -> isOf(shadow.member(), piece, member))
                .toList();
    }

    Shadow shadow(String piece, String member) {
        List<Shadow> found = shadows(piece, member);
        assertThat(found).as(piece + " " + member).hasSize(1);
        return found.get(0);
    }

    String caster(String piece, String member) {
        return shadow(piece, member).caster().map(section::name).orElse("none");
    }

    private boolean isOf(int number, String piece, String member) {
        return section.name(section.members().get(number).body()).equals(piece)
                && section.members().get(number).member().equals(member);
    }
}
