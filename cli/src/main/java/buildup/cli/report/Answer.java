package buildup.cli.report;

import buildup.catalog.Catalog;
import buildup.engine.backing.Backing;
import buildup.engine.compose.Section;
import buildup.engine.fixing.Fixed;
import buildup.engine.fixing.Proposal;
import buildup.engine.light.Lighting;
import buildup.engine.run.Coving;
import buildup.engine.run.Job;
import buildup.engine.sight.Approach;
import buildup.engine.sight.Sighting;
import buildup.engine.sticks.Shop;
import buildup.engine.support.Pull;
import buildup.engine.support.Support;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Optional;

/**
 * What is known of one stack.
 *
 * @param file its document, as messages call it
 * @param title of the document, or its file while the title could not be read
 * @param unit in which the document counts
 * @param known the figures; absent when anything was refused
 * @param notices worst first
 */
public record Answer(String file, String title, LengthUnit unit, Optional<Known> known, List<Notice> notices) {
    /**
     * The figures of a stack in which nothing was refused.
     *
     * @param backings one for each piece of trim
     * @param lights one for each light that can shine on it
     * @param sights one for each eye that stands in the room
     * @param approaches one for each way of an eye
     * @param fixed one for each fastening of the document
     * @param proposals places where its pieces could be fastened
     * @param support what holds it
     * @param pulls what fastenings must hold against leaning
     * @param job the section along the plan; absent when the document holds none
     * @param covings coves to be run over the table-saw blade
     * @param shop the wood and the saws to cut with; absent when the document holds no stock
     * @param catalog the lists from which it was read
     */
    public record Known(
            Section section,
            List<Backing> backings,
            List<Lighting> lights,
            List<Sighting> sights,
            List<Approach> approaches,
            List<Fixed> fixed,
            List<Proposal> proposals,
            Support support,
            List<Pull> pulls,
            Optional<Job> job,
            List<Coving> covings,
            Optional<Shop> shop,
            Catalog catalog) {
        public Known {
            backings = List.copyOf(backings);
            lights = List.copyOf(lights);
            sights = List.copyOf(sights);
            approaches = List.copyOf(approaches);
            fixed = List.copyOf(fixed);
            proposals = List.copyOf(proposals);
            pulls = List.copyOf(pulls);
            covings = List.copyOf(covings);
        }
    }

    public Answer {
        notices = List.copyOf(notices);
    }

    /** The same without figures, since they could not be delivered. */
    public Answer refused(List<Notice> why) {
        return new Answer(file, title, unit, Optional.empty(), why);
    }

    /** What a run that has no more to say than this tells its caller. */
    public int exitCode() {
        return notices.stream()
                .mapToInt(notice -> notice.level().exitCode())
                .max()
                .orElse(0);
    }
}
