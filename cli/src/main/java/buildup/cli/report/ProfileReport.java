package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Display;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.cli.tell.Json;
import buildup.engine.mill.milling.Milled;
import buildup.profiles.Profile;
import buildup.profiles.member.Sprung;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One profile: its stick, its box as it is commonly fixed, its members one after another, and how it is milled. */
public final class ProfileReport {
    private static final Printed PRINTED = new Printed(LengthUnit.INCH);

    private ProfileReport() {}

    /** As text of at most 80 columns. */
    public static String text(Profile profile, Milled milled) {
        return TextTable.write(facts(profile), TextReport.WIDTH)
                + "\n"
                + TextTable.write(members(profile), TextReport.WIDTH)
                + "\n"
                + MillingTables.text(milled)
                + "\n"
                + String.join("\n", Display.wrap(PRINTED.legend(), TextReport.WIDTH))
                + "\n";
    }

    /** As an object; inches, square inches, degrees, points as {@code [x, y]}. */
    public static String json(Profile profile, Milled milled, List<Notice> notices) {
        Box box = profile.outline().box();
        Json json = new Json()
                .put("name", profile.name())
                .put("kind", profile.kind())
                .put("thickness", profile.thickness())
                .put("width", profile.width())
                .put("height", box.height())
                .put("projection", box.face())
                .put("area", profile.outline().area());
        sprung(profile)
                .ifPresent(sprung -> json.put(
                        "spring",
                        new Json()
                                .put("angle", sprung.spring())
                                .put("drop", sprung.drop())
                                .put("projection", sprung.projection())
                                .put("wallEdge", sprung.wallEdge())
                                .put("ceilingEdge", sprung.ceilingEdge())));
        return json.put(
                                "members",
                                profile.outline().strokes().stream()
                                        .map(ProfileReport::member)
                                        .toList())
                        .put("milling", MillingJson.of(milled))
                        .put("notices", JsonReport.notices(notices, Optional.empty(), LengthUnit.INCH))
                        .written()
                + "\n";
    }

    /** What is said where there is no such profile. */
    public static String refusal(String name, List<Notice> notices) {
        return new Json()
                        .put("name", name)
                        .put("notices", JsonReport.notices(notices, Optional.empty(), LengthUnit.INCH))
                        .written()
                + "\n";
    }

    private static Json member(Stroke stroke) {
        Segment segment = stroke.segment();
        Json json = new Json().put("member", stroke.member()).put("shape", shape(segment));
        if (segment instanceof Arc arc) {
            json.put("radius", arc.radius());
        }
        return json.put("length", segment.length()).put("from", segment.from()).put("to", segment.to());
    }

    private static Optional<Sprung> sprung(Profile profile) {
        return profile.stick() instanceof Profile.Spring spring ? Optional.of(spring.sprung()) : Optional.empty();
    }

    private static String shape(Segment segment) {
        return segment instanceof Arc ? "arc" : "line";
    }

    private static Table facts(Profile profile) {
        Box box = profile.outline().box();
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(fact("kind", Cell.of(profile.kind())));
        rows.add(fact("thickness of the stick", PRINTED.cell(profile.thickness())));
        rows.add(fact("width of the stick", PRINTED.cell(profile.width())));
        rows.add(fact("height as fixed", PRINTED.cell(box.height())));
        rows.add(fact("projection as fixed", PRINTED.cell(box.face())));
        rows.add(fact("area, sq in", Printed.figure(profile.outline().area(), 3)));
        sprung(profile).ifPresent(sprung -> {
            rows.add(fact("spring, back to wall, degrees", Printed.figure(sprung.spring(), 1)));
            rows.add(fact("square edge at the wall", PRINTED.cell(sprung.wallEdge())));
            rows.add(fact("square edge at the ceiling", PRINTED.cell(sprung.ceilingEdge())));
        });
        return new Table(profile.name(), Table.columns("", ""), rows);
    }

    private static List<Cell> fact(String what, Cell figure) {
        return List.of(Cell.of(what), figure);
    }

    private static Table members(Profile profile) {
        return new Table(
                "MEMBERS, round the outline with the wood on the left; out from the back, up from the bottom",
                Table.columns("member", "shape", ">radius", ">length", ">out", ">up", ">to out", ">to up"),
                profile.outline().strokes().stream()
                        .map(stroke -> List.of(
                                Cell.of(stroke.member()),
                                Cell.of(shape(stroke.segment())),
                                stroke.segment() instanceof Arc arc ? PRINTED.cell(arc.radius()) : Cell.EMPTY,
                                PRINTED.cell(stroke.segment().length()),
                                PRINTED.cell(stroke.segment().from().x()),
                                PRINTED.cell(stroke.segment().from().y()),
                                PRINTED.cell(stroke.segment().to().x()),
                                PRINTED.cell(stroke.segment().to().y())))
                        .toList());
    }
}
