package buildup.engine.hold.fixing;

import buildup.catalog.Catalog;
import buildup.engine.hold.fixing.Check.Rule;
import buildup.engine.hold.fixing.Drive.BreakOut;
import buildup.engine.section.compose.Hollow;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.Length;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says what is wrong with a nail, how much, and one cure. */
final class FixingFaults {
    private static final String END_OR_EDGE = "nail-in-end-grain-or-near-an-edge";

    /** Wood this near ahead of where a nail leaves its piece was meant, in: common practice, no source. */
    private static final double AHEAD = 2;

    private final Nailing nailing;
    private final Timber timber;
    private final Cures cures;
    private final Notices notices;

    FixingFaults(Nailing nailing, Catalog catalog, Notices notices) {
        this.nailing = nailing;
        this.timber = nailing.timber();
        this.cures = new Cures(nailing, catalog);
        this.notices = notices;
    }

    void say(Spot spot, Fixed fixed) {
        bite(spot, fixed);
        if (fixed.drive().breakOut().isEmpty()) {
            fixed.beyond().forEach(grip -> countsAsNothing(fixed, grip));
            edge(fixed);
        }
        reach(spot, fixed);
    }

    private void bite(Spot spot, Fixed fixed) {
        Optional<BreakOut> out = fixed.drive().breakOut();
        if (out.isPresent()) {
            boolean pieceAlone = fixed.drive().held().equals(List.of(fixed.piece()));
            Optional<Hollow> hollow = nailing.shots().hollow(past(fixed, out.get()));
            if (pieceAlone && (hollow.isPresent() || woodAhead(spot, fixed, out.get()))) {
                inAir(spot, fixed, out.get(), hollow);
            } else {
                breaksOut(spot, fixed, out.get());
            }
        } else if (!fixed.biteCheck().met() && fixed.beyond().stream().allMatch(grip -> grip.factor() > 0)) {
            tooShort(spot, fixed, fixed.biteCheck());
        }
    }

    /** Just past where it comes out. */
    private static Point past(Fixed fixed, BreakOut out) {
        return out.at().plus(fixed.way().times(2 * Tolerance.TOUCHING));
    }

    private boolean woodAhead(Spot spot, Fixed fixed, BreakOut out) {
        double leaves = fixed.drive().length() - out.by();
        return nailing.shots()
                        .follow(spot.at(), fixed.way(), leaves + AHEAD, fixed.after())
                        .held()
                        .size()
                > 1;
    }

    private void inAir(Spot spot, Fixed fixed, BreakOut out, Optional<Hollow> hollow) {
        String where = switch (out.side()) {
            case "top" -> "over ";
            case "bottom" -> "under ";
            case "front" -> "before ";
            default -> "behind ";
        };
        String air = hollow.isPresent() ? "the hollow " : "the air ";
        String ends = hollow.isPresent() && !out.hidden() ? " goes through " : " ends in ";
        add(
                Notice.problem(
                                "nail-in-air",
                                Wording.label(fixed.fastening())
                                        + ends
                                        + air
                                        + where
                                        + timber.quoted(fixed.piece())
                                        + (ends.equals(" ends in ") ? "." : " and out of it."))
                        .amount(Length.inches(out.by()))
                        .cure(airCure(spot, fixed, hollow)),
                fixed);
    }

    private String airCure(Spot spot, Fixed fixed, Optional<Hollow> hollow) {
        Optional<String> simple = later(spot, fixed).or(() -> length(spot, fixed));
        if (simple.isPresent()) {
            return sentence(simple.get());
        }
        return "Longer will not help: "
                + hollow.flatMap(found -> cures.wedge(found, fixed.piece()))
                        .map(legs -> "add a wedge about " + Wording.least(legs.get(0)) + " x "
                                + Wording.least(legs.get(1)) + ".")
                        .orElse("add a block behind it.");
    }

    private void breaksOut(Spot spot, Fixed fixed, BreakOut out) {
        String label = Wording.label(fixed.fastening());
        String from = timber.quoted(out.body()) + " by " + Wording.most(out.by()) + ", at its " + out.side();
        boolean harmless = out.hidden() && fixed.biteCheck().met();
        Notice notice = harmless
                ? Notice.note("nail-breaks-out", label + " comes out of " + from + ", into a closed hollow.")
                : Notice.problem("nail-breaks-out", label + " comes out of " + from + ".");
        Optional<String> cure = later(spot, fixed).or(() -> either(tilt(spot, fixed), length(spot, fixed)));
        add(
                notice.amount(Length.inches(out.by())).cure(sentence(cure.orElse("move it, or put a block behind it"))),
                fixed);
    }

    private void tooShort(Spot spot, Fixed fixed, Check bite) {
        String diameters = bite.rule() == Rule.TWELVE_DIAMETERS ? " (12 diameters)." : " (6 diameters).";
        String message = Wording.label(fixed.fastening()) + ": " + left(fixed, bite) + " Needs "
                + Wording.most(bite.needs()) + diameters;
        Optional<String> cure = later(spot, fixed)
                .or(() -> length(spot, fixed))
                .or(() -> cures.other(spot, fixed).map(cut -> "use " + cut.call()))
                .or(() -> tilt(spot, fixed));
        add(
                Notice.problem("nail-too-short", message)
                        .amount(Length.inches(bite.needs() - bite.has()))
                        .cure(sentence(cure.orElse("put a block nearer the piece"))),
                fixed);
    }

    private String left(Fixed fixed, Check bite) {
        Optional<Crossing> last = fixed.drive().last();
        int body = last.flatMap(crossing -> crossing.body().stream().boxed().findFirst())
                .orElse(fixed.piece());
        if (last.isEmpty()) {
            return "it does not go into " + timber.quoted(body) + " at all.";
        }
        if (last.filter(Crossing::holds).isEmpty()) {
            String name = timber.covering(body) > 0 ? "the covering of the wall" : timber.quoted(body);
            return "it ends in " + name + ", where nothing is known to hold.";
        }
        if (body == fixed.piece()) {
            return "it ends in " + timber.quoted(body) + " itself.";
        }
        List<Integer> held = timber.body(body).standing()
                ? List.of(body)
                : fixed.beyond().stream().map(Grip::body).toList();
        return "only " + Wording.least(bite.has()) + " left in "
                + held.stream().map(timber::quoted).collect(Collectors.joining(" and ")) + ".";
    }

    private void countsAsNothing(Fixed fixed, Grip grip) {
        if (grip.factor() > 0) {
            return;
        }
        String body = timber.quoted(grip.body());
        String message = timber.quoted(fixed.piece()) + " is held in " + (grip.endGrain() ? "end grain of " : "") + body
                + " by " + Wording.within(fixed.fastening()) + ": "
                + (grip.endGrain() ? "" : "no value for nails in panels is known here, so it ") + "counts as nothing.";
        String code = grip.endGrain() ? END_OR_EDGE : "no-published-value";
        add(
                (fixed.biteCheck().met() ? Notice.note(code, message) : Notice.problem(code, message))
                        .cure(grip.endGrain() ? "Glue and pin it, or turn the block." : "Nail into wood, or glue it."),
                fixed);
    }

    private void edge(Fixed fixed) {
        Optional<Check> edge = fixed.check(Rule.EDGE).filter(check -> !check.met());
        edge.ifPresent(check -> add(
                Notice.problem(
                                END_OR_EDGE,
                                Wording.label(fixed.fastening()) + " runs " + Wording.least(check.has())
                                        + " from an edge. Needs " + Wording.most(check.needs()) + " (2.5 diameters).")
                        .amount(Length.inches(check.needs() - check.has()))
                        .cure("Move it in, or bore for it."),
                fixed));
    }

    private void reach(Spot spot, Fixed fixed) {
        if (fixed.reach().free()) {
            return;
        }
        int body = fixed.reach().inTheWay().orElseThrow();
        String obstacle = timber.quoted(body);
        boolean over = timber.solid(body).holds(spot.outside(Reaching.OVER));
        String tool = fixed.reach().tool().map(found -> found.name()).orElse("tool");
        String row = Wording.within(fixed.fastening());
        String message = over
                ? Wording.begin(obstacle) + " lies over the spot of " + row + " by then."
                : "The " + tool + " for " + row + " runs into " + obstacle + ".";
        boolean laterPiece = timber.body(body).inStack() && body > fixed.piece();
        String cure = laterPiece
                ? "drive it before " + obstacle + " goes up"
                : cures.tilt(spot, fixed, Fixed::sound)
                        .map(degrees -> "tilt " + Wording.tilt(spot, degrees))
                        .orElse(over ? "move it" : "move it, or take a smaller tool");
        add(Notice.problem("tool-cannot-reach", message).cure(sentence(cure)), fixed);
    }

    private Optional<String> later(Spot spot, Fixed fixed) {
        return cures.later(spot, fixed).map(body -> "drive it after " + timber.quoted(body) + " is up");
    }

    private Optional<String> length(Spot spot, Fixed fixed) {
        return cures.length(spot, fixed)
                .map(cut -> "use " + Wording.near(cut.length().toInches()));
    }

    private Optional<String> tilt(Spot spot, Fixed fixed) {
        return cures.tilt(spot, fixed, Fixed::holds).map(degrees -> "tilt " + Wording.tilt(spot, degrees));
    }

    private static Optional<String> either(Optional<String> one, Optional<String> other) {
        String both = Stream.of(one, other).flatMap(Optional::stream).collect(Collectors.joining(" or "));
        return both.isEmpty() ? Optional.empty() : Optional.of(both);
    }

    private static String sentence(String words) {
        return Wording.begin(words) + ".";
    }

    private void add(Notice notice, Fixed fixed) {
        notices.add(notice.at(fixed.fastening().mark())
                .of(timber.body(fixed.piece()).name()));
    }
}
