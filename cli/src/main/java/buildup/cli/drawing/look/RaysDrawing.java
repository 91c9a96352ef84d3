package buildup.cli.drawing.look;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.sheet.Looked;
import buildup.cli.scene.Group;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.look.light.Band;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Shadow;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The section with its room side drawn by how one light meets it, and the rays that bound the shadows. */
public final class RaysDrawing {
    /** Farther than any picture reaches, in. */
    private static final double FAR = 100;

    private final Section section;
    private final Lighting lighting;
    private final RoomLines room;

    private RaysDrawing(Section section, Lighting lighting, int smaller, Looked looked, TextMeasure measure) {
        this.section = section;
        this.lighting = lighting;
        this.room = new RoomLines(section, smaller, looked, measure);
    }

    /** The section with the rays of one light, full size. */
    public static Scene of(Section section, Lighting lighting, TextMeasure measure) {
        return new RaysDrawing(section, lighting, 1, Looked.SCREEN, measure).scene();
    }

    /** The same with letters that are read when it is made so many times smaller. */
    public static Scene forScale(Section section, Lighting lighting, int smaller, TextMeasure measure) {
        return new RaysDrawing(section, lighting, smaller, Looked.PAGE, measure).scene();
    }

    /** The same at full size on several pages, the words of its lines told before them. */
    public static Scene inParts(Section section, Lighting lighting, TextMeasure measure) {
        return new RaysDrawing(section, lighting, 1, Looked.PARTS, measure).scene();
    }

    private Scene scene() {
        String from = Lamps.words(lighting, Drafting.printer(section.stack()));
        return room.scene(
                "in the light of " + lighting.light().name(),
                "Section with rays of light. " + from,
                new Group("light", walk()),
                lamp().map(lamp -> room.source(lamp.at(), lamp.name())).orElse(List.of()),
                "rays",
                "ray",
                rays(),
                LineStyle.RAY,
                room.legend("Section with light")
                        .text(from)
                        .line("lit", LineStyle.LIT)
                        .line("turned away from the light (shade)", LineStyle.SHADE)
                        .line("in cast shadow", LineStyle.CAST)
                        .line("ray past the casting edge to the end of its shadow", LineStyle.RAY));
    }

    private Optional<Light.Lamp> lamp() {
        return lighting.light() instanceof Light.Lamp lamp ? Optional.of(lamp) : Optional.empty();
    }

    private List<SceneItem> walk() {
        List<SceneItem> walk = new ArrayList<>();
        for (Band band : lighting.bands()) {
            LineStyle style = switch (band.lit()) {
                case LIT -> LineStyle.LIT;
                case SHADE -> LineStyle.SHADE;
                case CAST -> LineStyle.CAST;
            };
            walk.add(new Path(List.of(band.segment()), false, style));
        }
        return walk;
    }

    /** Through each edge that casts a shadow to where that shadow ends, from the lamp or as far off as the picture reaches. */
    private List<RoomLines.Named> rays() {
        List<RoomLines.Named> rays = new ArrayList<>();
        for (Shadow shadow : lighting.shadows()) {
            if (shadow.arris().isPresent() && shadow.edge().isPresent()) {
                Point edge = shadow.edge().get();
                Point arris = shadow.arris().get();
                Point way = arris.minus(edge).unit();
                double far = lamp().map(lamp -> lamp.at().minus(edge).dot(way)).orElse(FAR);
                room.within(edge, edge.plus(way.times(far)))
                        .ifPresent(ray -> rays.add(new RoomLines.Named(name(shadow), ray)));
            }
        }
        return rays;
    }

    private String name(Shadow shadow) {
        Member member = section.members().get(shadow.member());
        return DarkWords.of(lighting, shadow, room.name(member), shadow.caster().map(section::name), room::size);
    }
}
