package buildup.catalog.format;

import buildup.profiles.outline.Point;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** A file, read, and what was said of it. */
record Inboxed(Optional<Drawn> drawn, List<Notice> notices) {
    static Inboxed of(byte[] content, String name) {
        Notices notices = new Notices();
        Optional<Drawn> drawn = TracingReader.read(content, name, notices);
        return new Inboxed(drawn, notices.sorted());
    }

    /** One layer of it alone. */
    static Inboxed of(String content, String name, String layer) {
        Notices notices = new Notices();
        Optional<Drawn> drawn =
                TracingReader.read(content.getBytes(StandardCharsets.UTF_8), name, Optional.of(layer), notices);
        return new Inboxed(drawn, notices.sorted());
    }

    static Inboxed of(String content, String name) {
        return of(content.getBytes(StandardCharsets.UTF_8), name);
    }

    List<Trail> trails() {
        return drawn.orElseThrow(() -> new AssertionError(notices.toString())).trails();
    }

    Trail only() {
        if (trails().size() != 1) {
            throw new AssertionError(trails().size() + " trails");
        }
        return trails().get(0);
    }

    List<Point> points() {
        return only().points();
    }

    List<String> codes() {
        return notices.stream().map(Notice::code).toList();
    }

    List<Integer> lines() {
        return notices.stream()
                .map(notice -> notice.mark().map(mark -> mark.line()).orElse(0))
                .toList();
    }

    String said() {
        return String.join(
                "\n", notices.stream().map(NoticeWords.INCHES::message).toList());
    }

    /** The area within a trail by the shoelace, positive counterclockwise. */
    static double area(Trail trail) {
        double twice = 0;
        for (int i = 0; i < trail.points().size(); i++) {
            twice += trail.points()
                    .get(i)
                    .cross(trail.points().get((i + 1) % trail.points().size()));
        }
        return twice / 2;
    }
}
