package buildup.profiles;

import buildup.profiles.member.Sprung;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One profile as sheets: its stick, its box as it is commonly fixed, its members one after another. */
public final class ProfileSheets {
    private static final Rounding THOUSANDTHS = Rounding.decimals(3);

    private ProfileSheets() {}

    /**
     * The facts and the members of a profile.
     *
     * @param profile absent for the columns alone
     */
    public static List<Sheet> of(Optional<Profile> profile) {
        return List.of(facts(profile), members(profile));
    }

    private static Sheet facts(Optional<Profile> profile) {
        String title = profile.map(Profile::name).orElse("");
        return Sheet.single("", title, profile)
                .words("name", "name", Profile::name)
                .words("kind", "kind", Profile::kind)
                .length("thickness", "thickness of the stick", Profile::thickness)
                .length("width", "width of the stick", Profile::width)
                .length("height", "height as fixed", one -> one.outline().box().height())
                .length(
                        "projection",
                        "projection as fixed",
                        one -> one.outline().box().face())
                .measure(
                        "area",
                        "area",
                        Quantity.AREA,
                        THOUSANDTHS,
                        one -> one.outline().area())
                .one("spring", "spring", ", ", spring(), ProfileSheets::sprung)
                .table(
                        title,
                        "kind",
                        "thickness",
                        "width",
                        "height",
                        "projection",
                        "area",
                        "spring.angle",
                        "spring.wallEdge",
                        "spring.ceilingEdge")
                .sheet();
    }

    private static Columns<Sprung> spring() {
        return Columns.<Sprung>inner()
                .measure("angle", "spring, back to wall, degrees", Quantity.ANGLE, Sprung::spring)
                .length("drop", "drop", Sprung::drop)
                .length("projection", "projection", Sprung::projection)
                .length("wallEdge", "square edge at the wall", Sprung::wallEdge)
                .length("ceilingEdge", "square edge at the ceiling", Sprung::ceilingEdge);
    }

    private static Optional<Sprung> sprung(Profile profile) {
        return profile.stick() instanceof Profile.Spring spring ? Optional.of(spring.sprung()) : Optional.empty();
    }

    private static Sheet members(Optional<Profile> profile) {
        return Sheet.of(
                        "members",
                        "MEMBERS, round the outline with the wood on the left; out from the back, up from the bottom",
                        profile.map(one -> one.outline().strokes()).orElse(List.of()))
                .name("member", "member", Stroke::member)
                .words("shape", "shape", stroke -> shape(stroke.segment()))
                .lengthIf("radius", "radius", stroke -> radius(stroke.segment()))
                .length("length", "length", stroke -> stroke.segment().length())
                .place(
                        "from",
                        "from",
                        stroke -> stroke.segment().from().x(),
                        stroke -> stroke.segment().from().y())
                .place(
                        "to",
                        "to",
                        stroke -> stroke.segment().to().x(),
                        stroke -> stroke.segment().to().y())
                .sheet();
    }

    /** The word for a kind of segment. */
    public static String shape(Segment segment) {
        return segment instanceof Arc ? "arc" : "line";
    }

    /** Of an arc. */
    public static OptionalDouble radius(Segment segment) {
        return segment instanceof Arc arc ? OptionalDouble.of(arc.radius()) : OptionalDouble.empty();
    }
}
