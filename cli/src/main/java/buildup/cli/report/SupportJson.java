package buildup.cli.report;

import buildup.cli.tell.Json;
import buildup.engine.Answers;
import buildup.engine.hold.fixing.Fixed;
import buildup.engine.hold.fixing.Grip;
import buildup.engine.section.compose.Section;
import java.util.List;
import java.util.Locale;

/** What carries and what holds, for other programs; pounds, pounds per foot of run, inches, degrees. */
final class SupportJson {
    private final Section section;
    private final Answers known;

    SupportJson(Answers known) {
        this.section = known.section();
        this.known = known;
    }

    List<Json> proposals() {
        return known.proposals().stream()
                .map(proposal -> nail(proposal.fixed()).put("reason", proposal.reason()))
                .toList();
    }

    List<Json> nails() {
        return known.fixed().stream().map(this::nail).toList();
    }

    private Json nail(Fixed fixed) {
        return new Json()
                .put("name", fixed.fastening().name())
                .put("piece", section.name(fixed.piece()))
                .put("use", fixed.fastening().use().call())
                .put("head", fixed.head())
                .put("point", fixed.point())
                .put("spent", fixed.spent())
                .put("bite", fixed.bite())
                .put("design", fixed.design())
                .put("test", fixed.test())
                .put("allowable", fixed.allowable())
                .put("edge", fixed.edge())
                .put("holds", fixed.holds())
                .put("reach", fixed.reach().free())
                .put(
                        "crossings",
                        fixed.drive().crossings().stream()
                                .map(crossing -> new Json()
                                        .put(
                                                "through",
                                                crossing.body().isPresent()
                                                        ? section.name(
                                                                crossing.body().getAsInt())
                                                        : crossing.stuff()
                                                                .name()
                                                                .toLowerCase(Locale.ROOT))
                                        .put("length", crossing.length()))
                                .toList())
                .put("grips", fixed.grips().stream().map(this::grip).toList())
                .put(
                        "joints",
                        fixed.joints().stream()
                                .map(joint -> new Json()
                                        .put("near", section.name(joint.near()))
                                        .put("far", section.name(joint.far()))
                                        .put("withdrawalPerFoot", joint.withdrawalPerFoot())
                                        .put("lateralPerFoot", joint.lateralPerFoot()))
                                .toList());
    }

    private Json grip(Grip grip) {
        return new Json()
                .put("in", section.name(grip.body()))
                .put("bite", grip.bite())
                .put("gravity", grip.gravity())
                .put("design", grip.design())
                .put("test", grip.test())
                .put("factor", grip.factor());
    }
}
