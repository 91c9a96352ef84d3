package buildup.engine.section.stack;

import buildup.profiles.Profile;
import buildup.profiles.member.Sprung;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Rip;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import buildup.shared.length.Angle;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The changes to a profile before it is placed, in the order of the language: rip; lay, turn or spring; flip. */
record PieceShaping(
        Map<Rip.Side, Double> rip,
        Optional<Scalar> lay,
        Optional<Angle> turn,
        Optional<Angle> spring,
        Optional<Scalar> flip) {
    /** Springs are marked to the degree: half a degree either way is the same stick. */
    private static final double SAME_SPRING = 0.5;

    /** A rip of less is told as none, in: what is printed rounds down. */
    private static final double LEAST_RIP = 1.0 / 16;

    record Shaped(Outline outline, Stock stock, boolean flippedOver) {}

    Optional<Shaped> apply(PieceReader.Drawn drawn, String name, Fields fields, Notices notices) {
        Refusals refusals = new Refusals(name, fields, notices);
        if ((lay.isPresent() ? 1 : 0) + (turn.isPresent() ? 1 : 0) + (spring.isPresent() ? 1 : 0) > 1) {
            refusals.add(StackNotices.SEVERAL_TURNS.notice());
            return Optional.empty();
        }
        return ripped(drawn, refusals)
                .flatMap(shaped -> laid(shaped, refusals))
                .flatMap(shaped -> sprung(shaped, drawn.profile(), refusals))
                .flatMap(shaped -> flipped(shaped, refusals));
    }

    private record Refusals(String name, Fields fields, Notices notices) {
        void add(Notice notice) {
            notices.add(notice.at(fields.mark()).of(name));
        }
    }

    private Optional<Shaped> ripped(PieceReader.Drawn drawn, Refusals refusals) {
        Outline outline = drawn.outline();
        for (Map.Entry<Rip.Side, Double> cut : rip.entrySet()) {
            if (!(cut.getValue() > 0)) {
                refusals.add(StackNotices.NO_RIP.with("example", Figure.atLeast(0.25)));
                return Optional.empty();
            }
            List<Outline> left = Rip.off(outline, cut.getKey(), cut.getValue());
            if (left.size() != 1) {
                refusals.add(ripThrough(refusals.name(), outline, cut, left.size()));
                return Optional.empty();
            }
            outline = left.get(0);
        }
        return Optional.of(new Shaped(outline, drawn.stock(), false));
    }

    private static Notice ripThrough(String name, Outline outline, Map.Entry<Rip.Side, Double> cut, int strips) {
        double most = mostThatLeavesOne(outline, cut.getKey(), cut.getValue());
        Notice notice = strips == 0
                ? StackNotices.RIPPED_AWAY.notice()
                : StackNotices.RIPPED_APART.with("strips", Figure.count(strips));
        if (most < LEAST_RIP) {
            return notice.cure(StackNotices.NO_SUCH_RIP);
        }
        Figure figure = Figure.atMost(most);
        String side = cut.getKey().name().toLowerCase(Locale.ROOT);
        Change less = new Change(
                "pieces." + name + ".rip." + side, Phrase.of("{most}").with("most", figure));
        return notice.cure(new Cure(StackNotices.RIP_AT_MOST.with("most", figure), List.of(less)));
    }

    /** How much less than {@code tooMuch} may come off so that one part is left; 0 when nothing may. */
    private static double mostThatLeavesOne(Outline outline, Rip.Side side, double tooMuch) {
        double one = 0;
        double not = tooMuch;
        while (not - one > Tolerance.SNAP) {
            double middle = (one + not) / 2;
            boolean leavesOne = Rip.off(outline, side, middle).size() == 1;
            one = leavesOne ? middle : one;
            not = leavesOne ? not : middle;
        }
        return one;
    }

    private Optional<Shaped> laid(Shaped shaped, Refusals refusals) {
        Stock stock = shaped.stock();
        if (lay.isPresent()) {
            if (!lay.get().text().equals("flat") || !stock.board()) {
                refusals.add((stock.board() ? StackNotices.BOARD_NOT_LAID : StackNotices.NO_BOARD_TO_LAY).notice());
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
            refusals.add(StackNotices.NO_SPRING.notice());
            return Optional.empty();
        }
        double own = stick.get().spring();
        if (Math.abs(asked - own) <= SAME_SPRING) {
            return Optional.of(shaped);
        }
        if (Math.abs(asked - (90 - own)) > SAME_SPRING) {
            refusals.add(StackNotices.OTHER_SPRING
                    .with("own", degrees(own))
                    .with("asked", degrees(asked))
                    .with("swapped", degrees(90 - own)));
            return Optional.empty();
        }
        Sprung held = stick.get();
        refusals.notices()
                .add(StackNotices.END_FOR_END
                        .with("own", degrees(own))
                        .with("drop", hundredths(held.drop()))
                        .with("out", hundredths(held.projection()))
                        .at(refusals.fields().mark("spring"))
                        .of(refusals.name()));
        return Optional.of(new Shaped(Sprung.endForEnd(shaped.outline()), shaped.stock(), false));
    }

    private static Figure degrees(double value) {
        return Figure.angle(value).rounded(Rounding.decimals(0));
    }

    private static Figure hundredths(double inches) {
        return Figure.length(inches).rounded(Rounding.decimals(2));
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
                refusals.add(StackNotices.UNKNOWN_FLIP.with("word", flip.get().text()));
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
