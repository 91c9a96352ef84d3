package buildup.engine.stack;

import buildup.profiles.Profile;
import buildup.profiles.member.Sprung;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Rip;
import buildup.profiles.outline.Stroke;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The changes to a profile before it is placed, in the order of the language: rip; lay, turn or spring; flip. */
record Shaping(
        Map<Rip.Side, Double> rip,
        Optional<Scalar> lay,
        Optional<Angle> turn,
        Optional<Angle> spring,
        Optional<Scalar> flip) {
    /** Springs are marked to the degree: half a degree either way is the same stick. */
    private static final double SAME_SPRING = 0.5;

    record Shaped(Outline outline, Stock stock, boolean flippedOver) {}

    Optional<Shaped> apply(PieceReader.Drawn drawn, String name, Fields fields, Notices notices) {
        Refusals refusals = new Refusals(name, fields, notices);
        if ((lay.isPresent() ? 1 : 0) + (turn.isPresent() ? 1 : 0) + (spring.isPresent() ? 1 : 0) > 1) {
            refusals.add("doubled-rule", "More than one of lay, turn and spring.", "Keep one of them.");
            return Optional.empty();
        }
        return ripped(drawn, refusals)
                .flatMap(shaped -> laid(shaped, refusals))
                .flatMap(shaped -> sprung(shaped, drawn.profile(), refusals))
                .flatMap(shaped -> flipped(shaped, refusals));
    }

    private record Refusals(String name, Fields fields, Notices notices) {
        void add(String code, String message, String cure) {
            notices.add(Notice.refusal(code, "'" + name + "': " + message)
                    .at(fields.mark())
                    .of(name)
                    .cure(cure));
        }
    }

    private Optional<Shaped> ripped(PieceReader.Drawn drawn, Refusals refusals) {
        Outline outline = drawn.outline();
        for (Map.Entry<Rip.Side, Double> cut : rip.entrySet()) {
            if (!(cut.getValue() > 0)) {
                refusals.add("not-a-size", "a rip takes off more than nothing.", "Give how much comes off, as 1/4.");
                return Optional.empty();
            }
            List<Outline> left = Rip.off(outline, cut.getKey(), cut.getValue());
            if (left.size() != 1) {
                refusals.add(
                        "rip-through",
                        "the rip leaves " + (left.isEmpty() ? "nothing" : left.size() + " separate strips") + ".",
                        "Rip less than " + print(cut.getValue()) + ".");
                return Optional.empty();
            }
            outline = left.get(0);
        }
        return Optional.of(new Shaped(outline, drawn.stock(), false));
    }

    private static String print(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }

    private Optional<Shaped> laid(Shaped shaped, Refusals refusals) {
        Stock stock = shaped.stock();
        if (lay.isPresent()) {
            if (!lay.get().text().equals("flat") || !stock.board()) {
                refusals.add(
                        "not-laid",
                        stock.board() ? "a board is laid flat or stands." : "only boards are laid flat.",
                        stock.board() ? "Write 'lay: flat'." : "Turn it instead, as 'turn: 90'.");
                return Optional.empty();
            }
            Box box = shaped.outline().box();
            return Optional.of(
                    new Shaped(Outline.rectangle(new Box(0, 0, box.height(), box.width())), stock.laid(), false));
        }
        return Optional.of(turn.map(angle -> turned(shaped, angle)).orElse(shaped));
    }

    private static Shaped turned(Shaped shaped, Angle angle) {
        Shaped turned = moved(shaped, Motion.turn(angle.toDegrees()));
        boolean lies = shaped.stock().board() && Math.abs(Math.sin(angle.toRadians())) > Math.sqrt(0.5);
        return lies ? new Shaped(turned.outline(), shaped.stock().laid(), false) : turned;
    }

    private Optional<Shaped> sprung(Shaped shaped, Optional<Profile> profile, Refusals refusals) {
        if (spring.isEmpty()) {
            return Optional.of(shaped);
        }
        Optional<Sprung> stick = profile.map(Profile::stick)
                .filter(Profile.Spring.class::isInstance)
                .map(found -> ((Profile.Spring) found).sprung());
        double asked = spring.get().toDegrees();
        if (stick.isEmpty()) {
            refusals.add("not-sprung", "only a sprung profile has a spring.", "Take 'spring:' out, or turn it.");
            return Optional.empty();
        }
        double own = stick.get().spring();
        if (Math.abs(asked - own) <= SAME_SPRING) {
            return Optional.of(shaped);
        }
        if (Math.abs(asked - (90 - own)) > SAME_SPRING) {
            refusals.add(
                    "spring-swapped",
                    "its flats are cut for " + degrees(own) + " from the wall, not for " + degrees(asked) + ".",
                    "Write " + degrees(own) + ", or " + degrees(90 - own) + " for end for end.");
            return Optional.empty();
        }
        Sprung held = stick.get();
        refusals.notices()
                .add(Notice.note(
                                "spring-swapped",
                                degrees(own) + " from the wall gives " + decimals(held.drop()) + " down, "
                                        + decimals(held.projection()) + " out. Read as end for end: "
                                        + decimals(held.projection()) + " down, " + decimals(held.drop()) + " out.")
                        .at(refusals.fields().mark("spring"))
                        .of(refusals.name())
                        .cure("If you mean the common way, write " + degrees(own) + "."));
        return Optional.of(new Shaped(Sprung.endForEnd(shaped.outline()), shaped.stock(), false));
    }

    private static String degrees(double value) {
        return LengthPrinter.decimals(Length.inches(value), 0) + "°";
    }

    private static String decimals(double inches) {
        return LengthPrinter.decimals(Length.inches(inches), 2);
    }

    private Optional<Shaped> flipped(Shaped shaped, Refusals refusals) {
        if (flip.isEmpty()) {
            return Optional.of(shaped);
        }
        switch (flip.get().text()) {
            case "over" -> {
                Shaped over = moved(shaped, Motion.OVER);
                return Optional.of(new Shaped(over.outline(), over.stock(), true));
            }
            case "ends" -> {
                return Optional.of(moved(shaped, Motion.ENDS));
            }
            default -> {
                refusals.add(
                        "unknown-name",
                        "a piece is not flipped '" + flip.get().text() + "'.",
                        "Write over (upside down) or ends (back becomes face).");
                return Optional.empty();
            }
        }
    }

    private static Shaped moved(Shaped shaped, Motion motion) {
        Outline moved = shaped.outline().moved(motion);
        return new Shaped(shaped.stock().board() ? asItSits(moved) : moved, shaped.stock(), shaped.flippedOver());
    }

    /** A board's members are named for the way they face as it sits. */
    private static Outline asItSits(Outline board) {
        return Outline.closed(board.strokes().stream()
                .map(stroke -> stroke.named(facing(stroke)))
                .toList());
    }

    private static String facing(Stroke stroke) {
        Point outward = stroke.segment().direction(0).right();
        if (Math.abs(outward.x()) >= Math.abs(outward.y())) {
            return outward.x() > 0 ? "face" : "back";
        }
        return outward.y() > 0 ? "top" : "bottom";
    }
}
