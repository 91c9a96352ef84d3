package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Table;
import buildup.engine.Answers;
import buildup.engine.look.sight.Coverage;
import buildup.engine.look.sight.Seen;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What eyes see of one stack: where they are, how high members look, which raw wood shows. */
final class SightTables {
    private final Section section;
    private final Answers known;
    private final Printed printed;

    SightTables(Answers known, Printed printed) {
        this.section = known.section();
        this.known = known;
        this.printed = printed;
    }

    List<Table> all() {
        List<Table> tables = new ArrayList<>();
        tables.add(eyes());
        known.sights().forEach(sighting -> tables.add(heights(sighting)));
        tables.add(coverage());
        tables.add(approaches());
        return tables;
    }

    private Table eyes() {
        OptionalDouble floor = section.stack().space().floor();
        return new Table(
                "EYES: out from the wall plane, up from the datum",
                Table.columns("eye", ">out", ">up", ">over the floor"),
                known.sights().stream()
                        .map(Sighting::eye)
                        .map(eye -> List.of(
                                Cell.of(eye.name()),
                                printed.cell(eye.distance()),
                                printed.cell(eye.height()),
                                floor.isPresent() ? printed.cell(eye.height() - floor.getAsDouble()) : Cell.EMPTY))
                        .toList());
    }

    private Table heights(Sighting sighting) {
        return new Table(
                "SEEN BY " + sighting.eye().name() + "; seen height: as it stands in perspective on the wall plane",
                Table.columns("piece", "member", ">length", ">seen of it", ">true height", ">seen height"),
                sighting.members().stream()
                        .filter(seen -> seen.length() > Tolerance.TOUCHING)
                        .map(this::height)
                        .toList());
    }

    private List<Cell> height(Seen seen) {
        Member member = section.members().get(seen.member());
        return List.of(
                Cell.of(section.name(member.body())),
                Cell.of(member.member()),
                printed.cell(member.length()),
                printed.cell(seen.length()),
                printed.cell(seen.trueHeight()),
                printed.cell(seen.seenHeight()));
    }

    private Table coverage() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Sighting sighting : known.sights()) {
            for (Coverage coverage : sighting.coverage()) {
                if (coverage.exposed() > Tolerance.TOUCHING) {
                    rows.add(List.of(
                            Cell.of(section.name(coverage.body())),
                            Cell.of(sighting.eye().name()),
                            printed.cell(coverage.exposed()),
                            printed.cell(coverage.seen()),
                            Cell.of(Printed.decimals(100 * coverage.hiddenShare(), 1) + " %", coverage.hiddenShare()),
                            Cell.of(cure(coverage))));
                }
            }
        }
        return new Table(
                "RAW WOOD on the room side, from each eye",
                Table.columns("nailer", "eye", ">exposed", ">seen", ">hidden", "hidden by"),
                rows);
    }

    private String cure(Coverage coverage) {
        return coverage.cures().stream()
                .findFirst()
                .map(cure -> section.name(cure.body()) + " at " + printed.size(cure.to()))
                .orElse("");
    }

    private Table approaches() {
        List<List<Cell>> rows = new ArrayList<>();
        known.approaches()
                .forEach(approach -> approach.showing()
                        .forEach(showing -> rows.add(List.of(
                                Cell.of(approach.name()),
                                Cell.of(section.name(showing.body())),
                                showing.first().isPresent()
                                        ? printed.cell(showing.first().getAsDouble())
                                        : Cell.of("never"),
                                printed.cell(showing.most())))));
        return new Table(
                "COMING NEARER: how far from the wall plane raw wood first shows, and the most of it seen",
                Table.columns("approach", "nailer", ">first shows at", ">most seen"),
                rows);
    }
}
