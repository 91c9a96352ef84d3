package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.engine.room.plan.Plan;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A section run along a plan, with everything that was said about the plan. */
record Planned(Bench bench, Plan plan, Job job, List<Notice> notices, List<Notice> tooShort) {
    private static final String TOO_SHORT = "piece-too-short-to-hold";

    /** The reference cornice: worked example A. */
    static final String CORNICE = Bench.resource("/reference-cornice.yaml");

    /** A case of three sides, its back to the wall. */
    static final String CASE = """
            plan:
              - name: case
                left: die
                right: die
                stretches:
                  - { name: left side, length: 14, corner: outside 90 }
                  - { name: front, length: 96, corner: outside 90 }
                  - { name: right side, length: 14 }
            """;

    record Coves(List<Coving> covings, List<Notice> notices) {}

    static Planned of(String stack, String plan) {
        Bench bench = Bench.sound(stack);
        Notices notices = new Notices();
        Plan read = Plan.read(bench.stack(), root(bench, stack + plan, notices), notices);
        Job job = Runs.of(bench.section(), read, notices);
        return new Planned(
                bench,
                read,
                job,
                notices.sorted().stream()
                        .filter(notice -> !notice.code().equals(TOO_SHORT))
                        .toList(),
                notices.sorted().stream()
                        .filter(notice -> notice.code().equals(TOO_SHORT))
                        .toList());
    }

    /** As {@link #of}, and nothing is said. */
    static Planned clean(String stack, String plan) {
        Planned planned = of(stack, plan);
        // runs of these tests are cut square, their blocking too, and EndsTest asks what is said of that
        assertThat(planned.notices)
                .filteredOn(notice -> !notice.code().equals("raw-end-shows"))
                .isEmpty();
        return planned;
    }

    /** One board on the wall, thickness x width, and one straight stretch of 48 with these keys of the run. */
    static Planned board(String size, String run) {
        return of(
                Bench.head("space: { wall: { solid: yes } }")
                        + Bench.list("name: board, profile: board " + size + ", back: wall, bottom: datum"),
                "plan:\n  - { name: run, " + run + " }\n");
    }

    static Coves coving(String text) {
        Bench bench = Bench.sound(CORNICE);
        Notices notices = new Notices();
        List<Coving> covings = Coving.read(bench.stack(), root(bench, CORNICE + text, notices), notices);
        return new Coves(covings, notices.sorted());
    }

    private static Fields root(Bench bench, String text, Notices notices) {
        Document document = DocumentReader.read("stack.yaml", text.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        return Fields.of(document, new Claims(), notices, bench.stack().lengths());
    }

    Fit fit(String course, String stretch) {
        return job.fits().stream()
                .filter(fit ->
                        fit.course().name().equals(course) && fit.stretch().equals(stretch))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + course + " on " + stretch + " in " + stretches()));
    }

    Cut cut(String course, String stretch) {
        return fit(course, stretch).toCut();
    }

    List<String> stretches() {
        return job.fits().stream().map(Fit::stretch).distinct().toList();
    }

    double sum(String course) {
        int body = job.courses().stream()
                .filter(one -> one.name().equals(course))
                .findFirst()
                .orElseThrow()
                .body();
        return job.faceLength(0, body);
    }

    /** The one thing that was said. */
    Notice said() {
        assertThat(notices).hasSize(1);
        return notices.get(0);
    }
}
