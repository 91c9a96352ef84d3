package buildup.engine.section.compose;

import buildup.profiles.region.Bound;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What the section itself says, as sheets. */
public final class SectionSheets {
    private final Section section;

    private SectionSheets(Section section) {
        this.section = section;
    }

    /** The figures of the whole stack. */
    public static Sheet totals(Section section) {
        Totals whole = section.totals();
        return Sheet.single("totals", "SIZE AND WEIGHT", whole)
                .length("height", "height", Totals::height)
                .length("projection", "projection", Totals::projection)
                .length("bottom", "bottom", Totals::bottom)
                .length("top", "top", Totals::top)
                .length("trimHeight", "height of the trim", Totals::trimHeight)
                .length("trimProjection", "projection of the trim", Totals::trimProjection)
                .measure("area", "area", Quantity.AREA, Totals::area)
                .measure("weightPerFoot", "weight", Quantity.LINE_WEIGHT, Totals::weightPerFoot)
                .names("woods", "wood", totals -> woods(section))
                .text()
                .alone()
                .sheet();
    }

    /** Of the pieces that are put up, in their order. */
    private static List<String> woods(Section section) {
        return section.bodies().stream()
                .filter(Body::inStack)
                .map(body -> body.placed().orElseThrow().piece().wood().name())
                .distinct()
                .toList();
    }

    /** The room that is left around the stack. */
    public static Sheet space(Section section) {
        return Sheet.single("space", "ROOM LEFT", section)
                .measureIf(
                        "ceilingLeft", "left under the ceiling", Quantity.LENGTH, Rounding.DOWN, Section::ceilingLeft)
                .measureIf(
                        "projectionLeft",
                        "left of the projection",
                        Quantity.LENGTH,
                        Rounding.DOWN,
                        Section::projectionLeft)
                .sheet();
    }

    /** The sheets whose figures a line under {@code must:} may bound and that stray with the sizes of the wood. */
    public static List<Sheet> measured(Section section) {
        return List.of(totals(section), space(section), new SectionSheets(section).reveals());
    }

    /** Steps, members, reveals, contacts, overlaps and voids, in the order of a report. */
    public static List<Sheet> rows(Section section) {
        SectionSheets sheets = new SectionSheets(section);
        return List.of(
                sheets.steps(),
                space(section),
                sheets.members(),
                sheets.reveals(),
                sheets.contacts(),
                sheets.overlaps(),
                sheets.voids());
    }

    private Sheet steps() {
        return Sheet.of("steps", "STEP BY STEP: the whole stack once each piece is up", section.steps())
                .words("letter", "", step -> Section.letter(step.body()))
                .text()
                .alone()
                .name("piece", "piece", step -> section.name(step.body()))
                .length("height", "height so far", Step::height)
                .length("projection", "projection so far", Step::projection)
                .length("top", "top so far", Step::top)
                .sheet();
    }

    private Sheet members() {
        return Sheet.of(
                        "members",
                        "MEMBERS along the room side, from below; step: how far a piece stands out beyond the one"
                                + " before",
                        section.members())
                .name("piece", "piece", member -> section.name(member.body()))
                .name("member", "member", Member::member)
                .place(
                        "from",
                        "from",
                        member -> member.from().x(),
                        member -> member.from().y())
                .place(
                        "to",
                        "to",
                        member -> member.to().x(),
                        member -> member.to().y())
                .length("length", "length", Member::length)
                .length("bottom", "bottom", member -> member.box().bottom())
                .length("top", "top", member -> member.box().top())
                .length("projection", "projection", Member::projection)
                .lengthIf("step", "step", Member::step)
                .table(
                        "MEMBERS along the room side, from below; step: how far a piece stands out beyond the one"
                                + " before",
                        "piece",
                        "member",
                        "length",
                        "bottom",
                        "top",
                        "projection",
                        "step")
                .sheet();
    }

    private Sheet reveals() {
        String reveals = "REVEALS: how far the first shows past the second; where they meet";
        return Sheet.of("reveals", reveals, section.reveals())
                .name("piece", "piece", reveal -> section.name(reveal.piece()))
                .name("over", "over", reveal -> section.name(reveal.over()))
                .length("amount", "reveal", Reveal::amount)
                .words("along", "along", reveal -> reveal.along().word())
                .place(
                        "at",
                        "at",
                        reveal -> reveal.at().x(),
                        reveal -> reveal.at().y())
                .length("step", "step", Reveal::step)
                .words("reads", "reads as", reveal -> reveal.kind().word())
                .text()
                .table(reveals, "piece", "over", "amount", "reads", "along", "step", "at")
                .sheet();
    }

    private Sheet contacts() {
        return Sheet.of("contacts", "CONTACTS; slope in degrees from level", section.contacts())
                .name("a", "piece", contact -> section.name(contact.a()))
                .words(
                        "does",
                        "",
                        contact -> contact.facing().map(Contact.Facing::word).orElse("meets"))
                .text()
                .name("b", "piece", contact -> section.name(contact.b()))
                .wordsIf("facing", "facing", contact -> contact.facing().map(Contact.Facing::word))
                .json()
                .measureIf(
                        "slope",
                        "slope",
                        Quantity.ANGLE,
                        Rounding.decimals(1),
                        contact -> contact.stretch().isPresent()
                                ? OptionalDouble.of(contact.slope())
                                : OptionalDouble.empty())
                .length("length", "length", Contact::length)
                .place(
                        "from",
                        "from",
                        contact -> contact.from().x(),
                        contact -> contact.from().y())
                .place(
                        "to",
                        "to",
                        contact -> contact.to().x(),
                        contact -> contact.to().y())
                .table("CONTACTS; slope in degrees from level", "a", "does", "b", "length", "slope")
                .sheet();
    }

    private Sheet overlaps() {
        return Sheet.of("overlaps", "OVERLAPS: wood in the same place twice", section.overlaps())
                .name("a", "piece", overlap -> section.name(overlap.a()))
                .name("b", "piece", overlap -> section.name(overlap.b()))
                .either()
                .measure("area", "", Quantity.AREA, Overlap::area)
                .noneWithoutRow()
                .length("depth", "depth", Overlap::depth)
                .noneWithoutRow()
                .place(
                        "at",
                        "at",
                        overlap -> overlap.at().x(),
                        overlap -> overlap.at().y())
                .table("OVERLAPS: wood in the same place twice", "a", "b", "depth", "area", "at")
                .sheet();
    }

    private Sheet voids() {
        Columns<ClosedVoid> columns = Sheet.of("voids", "CLOSED VOIDS", section.voids())
                .name("between", "between", this::between)
                .text()
                .measure("area", "", Quantity.AREA, ClosedVoid::area)
                .noneWithoutRow()
                .place(
                        "at",
                        "at",
                        hollow -> hollow.at().x(),
                        hollow -> hollow.at().y())
                .names("closedBy", "closed by", ClosedVoid::closedBy)
                .json()
                .words("closed", "closed by", SectionSheets::closed)
                .text();
        return columns.table("CLOSED VOIDS", "area", "at", "closed").sheet();
    }

    /** The bodies round it. */
    private String between(ClosedVoid hollow) {
        return hollow.ring().bounds().stream()
                .map(Bound::outline)
                .distinct()
                .sorted()
                .map(section::name)
                .collect(Collectors.joining(", "));
    }

    private static String closed(ClosedVoid hollow) {
        return hollow.closedBy().isEmpty() ? "wood alone" : "wood and " + String.join(", ", hollow.closedBy());
    }
}
