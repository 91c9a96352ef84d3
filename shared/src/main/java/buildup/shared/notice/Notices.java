package buildup.shared.notice;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Everything one run has to say. Only grows; the same notice twice is kept once. */
public final class Notices {

    private final Set<Notice> notices = new LinkedHashSet<>();

    /** Adds one. */
    public void add(Notice notice) {
        notices.add(notice);
    }

    /** Adds several, in their order. */
    public void addAll(Collection<Notice> more) {
        notices.addAll(more);
    }

    /** Worst first; among equals in the order in which they were added. */
    public List<Notice> sorted() {
        return notices.stream()
                .sorted(Comparator.comparing(Notice::level).reversed())
                .toList();
    }

    /** Whether anything was refused. */
    public boolean refused() {
        return notices.stream().anyMatch(notice -> notice.level() == Level.REFUSAL);
    }
}
