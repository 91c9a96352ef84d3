package buildup.engine.judge.verdict;

import buildup.catalog.Catalog;
import buildup.engine.hold.framing.Landing;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.order.PuttingUp;
import buildup.engine.hold.season.Year;
import buildup.engine.hold.support.Support;
import buildup.engine.hold.tolerance.ErrorStudy;
import buildup.engine.judge.clearance.Clearance;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.proportion.Proportion;
import buildup.engine.look.joint.Joints;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.sight.Approach;
import buildup.engine.look.sight.Sighting;
import buildup.engine.room.surface.Surfaced;
import buildup.engine.section.compose.Section;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Set;

/**
 * The answers that a verdict is given on.
 *
 * @param landings of the rows of nails, on each stretch whose studs and joists are given
 * @param notices all that was said of the stack
 * @param keys the blocks that the document holds, by their keys
 */
public record Facts(
        Section section,
        Catalog catalog,
        List<Lighting> lights,
        List<Sighting> sights,
        List<Approach> approaches,
        Joints joints,
        List<Fixed> fixed,
        List<Landing> landings,
        Support support,
        PuttingUp order,
        Year year,
        Surfaced surfaces,
        ErrorStudy errors,
        Clearance clearance,
        Proportion proportion,
        List<MustResult> must,
        List<Notice> notices,
        Set<String> keys) {
    /** Copies the lists. */
    public Facts {
        lights = List.copyOf(lights);
        sights = List.copyOf(sights);
        approaches = List.copyOf(approaches);
        fixed = List.copyOf(fixed);
        landings = List.copyOf(landings);
        must = List.copyOf(must);
        notices = List.copyOf(notices);
        keys = Set.copyOf(keys);
    }
}
