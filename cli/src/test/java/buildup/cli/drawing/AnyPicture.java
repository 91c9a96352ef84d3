package buildup.cli.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.drawing.hold.HoldsDrawing;
import buildup.cli.drawing.hold.SeasonDrawing;
import buildup.cli.drawing.hold.StepsDrawing;
import buildup.cli.drawing.job.ShopDrawings;
import buildup.cli.drawing.job.ShopSheet;
import buildup.cli.drawing.job.Since;
import buildup.cli.drawing.judge.ClearanceDrawing;
import buildup.cli.drawing.judge.ProportionDrawing;
import buildup.cli.drawing.look.ElevationDrawing;
import buildup.cli.drawing.look.RaysDrawing;
import buildup.cli.drawing.look.SightDrawing;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.paper.TitleCell;
import buildup.cli.drawing.paper.TitleStrip;
import buildup.cli.drawing.room.CopeDrawing;
import buildup.cli.drawing.room.PlanDrawing;
import buildup.cli.drawing.room.SticksDrawing;
import buildup.cli.drawing.room.WallsDrawing;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.drawing.section.ScreenDrawing;
import buildup.cli.drawing.section.SectionDrawing;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.scene.Group;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.write.ShippedFont;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Cuts;
import buildup.engine.room.sticks.Limit;
import buildup.engine.section.compose.Section;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;

/** Stacks, and every picture that the program draws of one. */
public final class AnyPicture {
    private static final ShippedFont FONT = Drawn.FONT;

    private static final PageFrame LETTER = new PageFrame(
            Pages.named(System.getProperty("buildup.pictures.page", "letter")).orElseThrow(),
            new TitleStrip(List.of(List.of(new TitleCell("stack", "A stack", 2)))),
            FONT,
            false);

    private AnyPicture() {}

    /** Every view of a stack by its name; none of a stack that is refused. */
    static Map<String, Scene> of(Answer answer) {
        Map<String, Scene> views = new LinkedHashMap<>();
        if (answer.known().isEmpty()) {
            return views;
        }
        Answers known = answer.known().get();
        SectionDrawing.of(known.section(), FONT, Pages.named("arch-e"), new Notices())
                .ifPresent(scene -> views.put("section", scene));
        Scene screen = ScreenDrawing.of(known.section(), FONT).scene();
        views.put("screen, inches", without(screen, "dimensions-mm"));
        views.put("screen, millimeters", without(screen, "dimensions-in"));
        known.lights().forEach(light -> {
            String name = light.light().name();
            views.put("elevation, " + name, ElevationDrawing.of(known.section(), light, FONT));
            views.put("rays, " + name, RaysDrawing.of(known.section(), light, FONT));
        });
        known.sights()
                .forEach(sight ->
                        views.put("seen by " + sight.eye().name(), SightDrawing.of(known.section(), sight, FONT)));
        views.put("holds", HoldsDrawing.of(known.section(), known.support(), known.fixed(), known.proposals(), FONT));
        if (!known.order().steps().isEmpty()) {
            views.put("steps", StepsDrawing.of(known.section(), known.order(), FONT));
        }
        if (known.year().asked()) {
            views.put("season", SeasonDrawing.of(known.section(), known.year(), 1, FONT));
        }
        ProportionDrawing.of(known.section(), known.proportion(), FONT)
                .ifPresent(scene -> views.put("proportion", scene));
        ClearanceDrawing.of(known.section(), known.clearance(), FONT).ifPresent(scene -> views.put("clearance", scene));
        known.job().ifPresent(job -> views.put("plan", PlanDrawing.of(job, FONT)));
        CopeDrawing.of(known.section(), known.copes(), FONT).ifPresent(scene -> views.put("copes", scene));
        WallsDrawing.of(known.section().stack(), known.surfaces(), FONT).ifPresent(scene -> views.put("walls", scene));
        Cuts.of(answer, Limit.usual())
                .known()
                .ifPresent(cuts -> cuts.list()
                        .filter(list -> !list.pieces().isEmpty())
                        .ifPresent(list -> views.put("sticks", SticksDrawing.of(cuts.job(), list, FONT))));
        onLetter(answer, known, views).forEach(page -> views.put("page " + views.size() + ", " + page.title(), page));
        sheets(answer, known).forEach(page -> views.put("sheet " + views.size() + ", " + page.title(), page));
        return views;
    }

    /** What is printed at full size or as it is drawn, on letter, in parts where it is larger. */
    private static List<Scene> onLetter(Answer answer, Answers known, Map<String, Scene> views) {
        Section section = known.section();
        Map<String, Scene> full = new LinkedHashMap<>();
        Map<String, Supplier<Scene>> parts = new HashMap<>();
        known.lights().forEach(light -> {
            full.put("front " + light.light().name(), ElevationDrawing.onPaper(section, light, FONT));
            full.put("rays " + light.light().name(), RaysDrawing.forScale(section, light, 1, FONT));
            parts.put("rays " + light.light().name(), () -> RaysDrawing.inParts(section, light, FONT));
        });
        known.sights().forEach(sight -> {
            full.put("seen by " + sight.eye().name(), SightDrawing.forScale(section, sight, 1, FONT));
            parts.put("seen by " + sight.eye().name(), () -> SightDrawing.inParts(section, sight, FONT));
        });
        full.put("holds", HoldsDrawing.forScale(section, known.support(), known.fixed(), known.proposals(), 1, FONT));
        parts.put(
                "holds", () -> HoldsDrawing.inParts(section, known.support(), known.fixed(), known.proposals(), FONT));
        if (known.year().asked()) {
            full.put("season", SeasonDrawing.forScale(section, known.year(), 1, 1, FONT));
        }
        Optional.ofNullable(views.get("copes")).ifPresent(scene -> full.put("copes", scene));
        List<PaperPage> pages = new ArrayList<>();
        full.forEach((name, scene) -> pages.addAll(
                Paper.fullSize(LETTER, name + " on letter", scene, parts.getOrDefault(name, () -> scene))));
        for (String name : List.of("walls", "proportion")) {
            Optional.ofNullable(views.get(name))
                    .ifPresent(scene -> pages.addAll(Paper.asDrawn(LETTER, name + " on letter", scene, new Notices())));
        }
        return PaperPage.scenes(answer.title(), pages);
    }

    private static List<Scene> sheets(Answer answer, Answers known) {
        List<PaperPage> pages = ShopDrawings.of(
                        answer,
                        known,
                        Cuts.of(answer, Limit.usual()),
                        Since.NOTHING,
                        Pages.named(System.getProperty("buildup.pictures.page", "letter"))
                                .orElseThrow(),
                        FONT,
                        EnumSet.allOf(ShopSheet.class),
                        new Notices())
                .stream()
                .flatMap(drawn -> drawn.pages().stream())
                .toList();
        return PaperPage.scenes(answer.title(), pages);
    }

    /** The screen shows the sizes of one unit at a time. */
    private static Scene without(Scene scene, String group) {
        List<SceneItem> rest = scene.items().stream()
                .filter(item -> !(item instanceof Group one && one.id().equals(group)))
                .toList();
        assertThat(rest).hasSizeLessThan(scene.items().size());
        return new Scene(scene.title(), scene.description(), scene.width(), scene.height(), rest);
    }

    /** Boards, blocks and moldings on, beside and through each other, looked at from three places under two lights. */
    public static String thrown(long seed) {
        Random random = new Random(seed);
        StringBuilder yaml = new StringBuilder("title: Thrown together\nwood: red-oak\nspace: {");
        yaml.append(random.nextBoolean() ? " floor: -1/2," : "");
        yaml.append(random.nextBoolean() ? " ceiling: 9," : "");
        yaml.append(" wall: { solid: ").append(random.nextBoolean() ? "yes" : "no");
        yaml.append(", covering: ").append(random.nextBoolean() ? "1/2" : "0").append(" } }\n");
        yaml.append("eyes:\n");
        for (String eye : List.of("standing", "seated on the window bench", "at the door")) {
            yaml.append("  - { name: ")
                    .append(eye)
                    .append(", distance: ")
                    .append(30 + random.nextInt(90))
                    .append(", height: ")
                    .append(random.nextInt(80) - 40)
                    .append(" }\n");
        }
        yaml.append("lights:\n  - { name: drafting, altitude: 35.264, azimuth: 45 }\n");
        yaml.append("  - { name: lamp, at: { distance: ").append(20 + random.nextInt(40));
        yaml.append(", height: ").append(random.nextInt(60)).append(" } }\n");
        yaml.append(
                random.nextBoolean()
                        ? "seasons: [{ name: built, moisture: 8 % }, { name: winter, moisture: 6 % },"
                                + " { name: summer, moisture: 12 % }]\n"
                        : "");
        StringBuilder nails = new StringBuilder();
        yaml.append("pieces:\n");
        int count = 1 + random.nextInt(14);
        for (int i = 1; i <= count; i++) {
            String shape = switch (random.nextInt(5)) {
                case 0 -> "section: [out 1/4, cove 1, up 3/8]";
                case 1 -> "section: [out 1/2, up 1/8, ovolo 3/8 in, up 1/4]";
                case 2 -> "section: [out 1/4, bead up 3/4, up 1/8]";
                case 3 -> "profile: board 1/4 x " + (1 + random.nextInt(4));
                default -> "section: [out " + (1 + random.nextInt(60)) + "/16, up " + (1 + random.nextInt(40)) + "/16]";
            };
            String kind = List.of("trim", "trim", "trim", "nailer", "framing").get(random.nextInt(5));
            String name = random.nextInt(5) == 0 ? "a piece of many words, number " + i : "piece " + i;
            int bottom = random.nextInt(90);
            yaml.append(String.format(
                    Locale.ROOT,
                    "  - { name: \"%s\", kind: %s, %s, back: %d/16, bottom: %d/16 }\n",
                    name,
                    i == 1 ? "trim" : kind,
                    shape,
                    random.nextInt(50),
                    bottom));
            if (random.nextInt(3) == 0) {
                nails.append("  - { name: nails ").append(i);
                nails.append(", piece: \"")
                        .append(name)
                        .append("\", use: 15 ga x 2-1/2, at: { up: ")
                        .append(bottom + 1)
                        .append("/16 } }\n");
            }
        }
        if (nails.length() > 0 && random.nextBoolean()) {
            yaml.append("fastenings:\n").append(nails);
        }
        if (random.nextBoolean()) {
            yaml.append("stock: { kerf: 1/8, trim: 1/2, offcut: 12 }\n");
            yaml.append("plan:\n  - name: room\n    left: butt\n    right: return\n    stretches:\n");
            int walls = 1 + random.nextInt(4);
            for (int i = 0; i <= walls; i++) {
                yaml.append("      - { name: wall ").append(i + 1);
                yaml.append(", length: ").append(10 + random.nextInt(150));
                yaml.append(
                        i == walls
                                ? " }\n"
                                : ", corner: " + (random.nextBoolean() ? "inside " : "outside ")
                                        + (random.nextInt(3) == 0 ? 135 : 90) + " }\n");
            }
        }
        return yaml + judged(new Random(-seed), yaml.indexOf("floor:") >= 0);
    }

    /** What is asked of proportion, fire and what is kept clear; by chance of its own, so that the rest stays as it was. */
    private static String judged(Random random, boolean floor) {
        String rules = List.of(
                        "", ", rules: [IRC, OBC, kit manual, factory manual, regional practice, NFPA 211 retold]")
                .get(random.nextInt(2));
        String sides = random.nextBoolean()
                ? ", left: " + (3 + random.nextInt(20)) + ", right: " + (40 + random.nextInt(20))
                        + ", beside: [{ name: leg, from: 0, to: 2-1/2, out: 2 }, { from: 70, to: 74, out: 1 }]"
                : "";
        String fire = random.nextInt(3) == 0
                ? ""
                : "firebox: { top: -" + (floor ? 0 : random.nextInt(16)) + ".25" + sides + rules + " }\n";
        String clear = random.nextBoolean() ? "" : """
                keep-clear:
                  - { name: track of the curtain, back: 1, face: 4, bottom: 2, top: 5, clear: 1/4 }
                  - { name: door, kind: door, width: 20, top: 1 }
                  - { name: side wall, kind: side-wall, away: 5 }
                  - { name: roller, kind: shade, roll: 2, top: 6, bottom: 3 }
                  - { name: sprinkler, kind: sprinkler, out: 8, up: 4, clear: 3 }
                """;
        return fire
                + clear
                + (random.nextInt(4) == 0 ? "" : "proportion: { room: 96, opening: { width: 30, height: 80 } }\n");
    }
}
