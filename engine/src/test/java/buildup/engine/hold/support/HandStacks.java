package buildup.engine.hold.support;

import buildup.engine.Bench;
import buildup.engine.hold.statics.Tie;
import buildup.profiles.outline.Point;
import java.util.List;

/** The stacks of reference/statics.md, drawn there with all their sizes. */
final class HandStacks {
    private static final double STRONG = Double.POSITIVE_INFINITY;

    private HandStacks() {}

    static List<Held> all() {
        return List.of(
                shelfOnLedge(),
                bracketedShelf(50).load("shelf", 3, 2),
                bracketedShelf(10).load("shelf", 3, 2),
                bracketedShelf(STRONG).load("shelf", 3, 2),
                bracketedShelf(50).load("shelf", 4.5, 2),
                blockOnTwoBearings(),
                leaningBoard(),
                rodInHollow(5, 0),
                rodInHollow(5, 3),
                rodInHollow(5, 5),
                beamOnThree(6, 5),
                beamOnThree(60, 5),
                boardOnTwoPosts(),
                railOnTwoNails(20, Double.POSITIVE_INFINITY, 5),
                railOnTwoNails(2, Double.POSITIVE_INFINITY, 20),
                railOnTwoNails(20, 2, 20));
    }

    /** @param screw pull of the screw that holds it back, 6 up */
    static Held headOffTheWall(double screw) {
        return Held.of(Bench.loose(
                        "name: wall piece, kind: framing, section: [out 1, up 14], face: 0, top: 10",
                        "name: ledge, kind: framing, section: [out 1-1/2, up 4], back: 0, top: 0",
                        "name: board, section: [out 1-7/16, up 8], back: 1/16, bottom: 0",
                        "name: shelf, fixed: board, section: [out 5, up 1], back: 1/16, bottom: 8"))
                .nail("screw", "board", "wall piece", new Point(0, 6), 180, screw, 0)
                .load("shelf", 5, 4);
    }

    static Held boardOnTwoPosts() {
        return Held.of(Bench.loose(
                        "name: near post, kind: framing, section: [out 1, up 4], back: 0, top: 0",
                        "name: far post, kind: framing, section: [out 1, up 4], back: 6, top: 0",
                        "name: board, section: [out 12, up 1], back: 0, bottom: 0"))
                .nail("hold-down", "board", "near post", new Point(0.5, 0), -90, 3, 0)
                .load("board", 11, 2);
    }

    static Held railOnTwoNails(double withdrawal, double head, double lateral) {
        Held rail = Held.of(Bench.loose(
                        "name: post, kind: framing, section: [out 1, up 8], face: 0, top: 4",
                        "name: rail, section: [out 1, up 3], back: 0, bottom: 0"))
                .load("rail", 1, 3);
        for (double up : List.of(0.5, 2.5)) {
            rail = rail.nail("rail nail", "rail", "post", new Point(0, up), 180, withdrawal, lateral);
        }
        return rail.joints(tie -> new Tie(
                tie.name(), tie.outer(), tie.inner(), tie.at(), tie.axis(), tie.withdrawal(), head, tie.lateral()));
    }

    static Held shelfOnLedge() {
        return Held.of(Bench.loose(
                        "name: ledge, kind: framing, section: [out 4, up 4], face: 0, top: 0",
                        "name: shelf, section: [out 10, up 1], back: -4, bottom: 0"))
                .nail("hold-down", "shelf", "ledge", new Point(-3.5, 0), -90, 10, 10)
                .load("shelf", 6, 4);
    }

    static Held bracketedShelf(double lateral) {
        return Held.of(Bench.loose(
                        "name: post, kind: framing, section: [out 1, up 8], face: 0, top: 4",
                        "name: bracket, kind: nailer, section: [out 4, up 4], back: 0, bottom: 0",
                        "name: shelf, section: [out 5, up 1], back: 0, bottom: 4"))
                .nail("nail", "bracket", "post", new Point(0, 3.5), 180, 20, lateral);
    }

    static Held blockOnTwoBearings() {
        return Held.of(Bench.loose(
                        "name: post, kind: framing, section: [out 1, up 2], back: 0, top: 0",
                        "name: far post, kind: framing, section: [out 1, up 7-1/2], back: 10, top: -1/2",
                        "name: cleat, kind: nailer, section: [out 1, up 2], face: 10, top: 0",
                        "name: block, section: [out 10, up 1], back: 0, bottom: 0"))
                .nail("nail", "cleat", "far post", new Point(10, -1), 0, STRONG, 8)
                .load("block", 4, 2);
    }

    static Held leaningBoard() {
        return Held.of(Bench.loose(
                        "name: post, kind: framing, section: [out 1, up 12], face: 0, top: 10",
                        "name: base, kind: framing, section: [out 6, up 1], back: 0, top: 0",
                        "name: board, section: [out 1, chamfer 8 x 3], back: 0, bottom: 0"))
                .nail("hold-back", "board", "post", new Point(0, 7.75), 180, 6, 0)
                .load("board", 4, 1.5);
    }

    static Held rodInHollow(double withdrawal, double lateral) {
        String hollow = "section: [out 2, up 1/2, scotia 2 x 0, up 1/2], turn: 90";
        return Held.of(Bench.loose(
                        "name: trough, kind: framing, " + hollow + ", back: -1-1/2, bottom: 0",
                        "name: rod, section: [out 1, bead up 2], turn: -90, back: -1, bottom: touch"))
                .nail("rod nail", "rod", "trough", new Point(-0.6, 1.2), -90, withdrawal, lateral)
                .load("rod", 0.75, 2);
    }

    static Held beamOnThree(double middle, double far) {
        return Held.of(Bench.loose(
                        "name: post A, kind: framing, section: [out 1, up 2], back: 0, top: 0",
                        "name: post B, kind: framing, section: [out 1, up 6], back: 4, top: -1/2",
                        "name: post C, kind: framing, section: [out 1, up 6], back: 9, top: -1/2",
                        "name: cleat B, kind: nailer, section: [out 1, up 2], back: 5, top: 0",
                        "name: cleat C, kind: nailer, section: [out 1, up 2], back: 10, top: 0",
                        "name: beam, section: [out 14, up 1], back: 0, bottom: 0"))
                .nail("nail B", "cleat B", "post B", new Point(5, -1), 180, STRONG, middle)
                .nail("nail C", "cleat C", "post C", new Point(10, -1), 180, STRONG, far)
                .load("beam", 8, 2);
    }

    static Held fixedBracket() {
        return Held.of(Bench.loose(
                "name: post, kind: framing, section: [out 1, up 8], face: 0, top: 4",
                "name: arm, fixed: post, section: [out 9, up 1], back: 0, bottom: 0"));
    }

    static Held armFixedToLooseBlock() {
        return Held.of(Bench.loose(
                "name: ledge, kind: framing, section: [out 12, up 4], face: 0, top: 0",
                "name: block, kind: nailer, section: [out 12, up 4], face: 0, bottom: 0",
                "name: arm, fixed: block, section: [out 9, up 1], back: 0, bottom: 2"));
    }

    static Held fixedToNothing() {
        return Held.of(Bench.loose("name: rail, fixed: wall, section: [out 1, up 3], back: 0, bottom: 40"));
    }

    static Held onAPoint() {
        return Held.of(Bench.loose(
                "name: case, kind: framing, section: [out 4, up 4], face: 0, top: 0",
                "name: block, section: [out 1, up 1], back: 0, bottom: 0"));
    }
}
