package buildup.engine.mill.milling;

import buildup.catalog.Catalog;
import buildup.catalog.Head;
import buildup.profiles.Profile;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;

/** Asked of a profile: can it be cut, from where, and with what. */
public final class Milling {
    /** Beyond so many members nobody sets up router bits one by one, and looking for them would take minutes. */
    private static final int MOST_MEMBERS = 400;

    /** What a round-edged cutter leaves in a corner when the shop lists no head, in; common practice, no source. */
    private static final double USUAL_CORNER = 1.0 / 16;

    private final Profile profile;
    private final Catalog catalog;
    private final Notices notices;
    private final Stick stick;

    private Milling(Profile profile, Catalog catalog, Notices notices) {
        this.profile = profile;
        this.catalog = catalog;
        this.notices = notices;
        this.stick = Stick.of(profile);
    }

    /**
     * The answer, everything wrong with the profile said in {@code notices}.
     *
     * @param tilts of heads in front that the shop can set besides its square ones, degrees, up when above 0
     */
    public static Milled of(Profile profile, Catalog catalog, List<Double> tilts, Notices notices) {
        return new Milling(profile, catalog, notices).asked(tilts);
    }

    private Milled asked(List<Double> tilts) {
        List<Reached> reached = Reached.of(stick, Side.with(tilts));
        List<Undercut> undercuts = Undercut.of(stick, reached);
        List<Groove> grooves = Groove.of(stick);
        boolean few = stick.count() <= MOST_MEMBERS;
        Optional<Passes> passes = few ? Optional.of(Passes.of(stick, catalog.cutters())) : Optional.empty();
        if (!few) {
            notices.add(Notice.note(
                            "many-members",
                            "An outline of " + stick.count() + " members: bits are not looked for past " + MOST_MEMBERS
                                    + ".")
                    .of(profile.name())
                    .cure("Fit fewer lines and arcs to it."));
        }
        List<Corner> corners = few
                ? Corner.of(stick, radius()).stream()
                        .filter(corner -> passes.filter(found ->
                                        found.makesCorner(corner.before(), (corner.before() + 1) % stick.count()))
                                .isEmpty())
                        .toList()
                : List.of();
        undercuts.forEach(this::tell);
        grooves.forEach(this::tell);
        tell(corners);
        List<Hollow> hollows = few ? Hollow.of(stick) : List.of();
        Milled plain = new Milled(stick, reached, undercuts, corners, hollows, grooves, passes, Optional.empty());
        return plain.isPlain()
                ? plain
                : new Milled(stick, reached, undercuts, corners, hollows, grooves, passes, knife());
    }

    private double radius() {
        return catalog.heads().stream()
                .mapToDouble(head -> head.corner().toInches())
                .min()
                .orElse(USUAL_CORNER);
    }

    private void tell(Undercut undercut) {
        String what = "The line between " + place(undercut.from()) + " and " + place(undercut.to())
                + " cannot be cut from the front; ";
        String how = undercut.tilt()
                .map(tilt -> "it needs a pass from " + tilt.word() + " degrees.")
                .orElse(
                        undercut.open()
                                ? "it needs a pass from " + Side.words(undercut.passes()) + "."
                                : "no straight pass reaches it.");
        problem(
                "undercut",
                what + how,
                undercut.open()
                        ? "Run it once more that way, or draw it open to the front."
                        : "Make it of two pieces.");
    }

    private void tell(Groove groove) {
        if (groove.behind() <= Tolerance.TOUCHING) {
            problem(
                    "kerf-through",
                    "Kerf is " + shop(groove.depth()) + " deep in a " + shop(groove.depth() + groove.behind())
                            + " board.",
                    "Cut it less deep: leave " + shop(Groove.LEAST_BEHIND) + ".");
        } else if (groove.behind() < Groove.LEAST_BEHIND - Tolerance.SNAP) {
            thin(groove, groove.behind(), "behind", Groove.LEAST_BEHIND);
        }
        if (groove.beside() < Groove.LEAST_BESIDE - Tolerance.SNAP) {
            thin(groove, groove.beside(), "outside", Groove.LEAST_BESIDE);
        }
    }

    private void thin(Groove groove, double left, String where, double wanted) {
        notices.add(Notice.problem(
                        "thin-web",
                        "Only " + shop(left) + " left " + where + " the kerf '" + groove.member() + "'; wants "
                                + shop(wanted) + ".")
                .of(profile.name())
                .amount(Length.inches(wanted - left))
                .cure("Move it " + shop(wanted - left) + " in, or leave it out."));
    }

    private void tell(List<Corner> corners) {
        if (corners.isEmpty()) {
            return;
        }
        Corner first = corners.get(0);
        String radius = shop(first.radius());
        boolean square = corners.stream().allMatch(Corner::square);
        double left = corners.stream().mapToDouble(Corner::left).sum();
        String where = corners.size() == 1
                ? "Inside corner at " + place(first.at())
                : corners.size() + " inside corners, the first at " + place(first.at()) + ",";
        notices.add(Notice.problem(
                        "inside-corner",
                        where + (corners.size() == 1 ? " is " : " are ") + (square ? "square" : "sharp")
                                + "; the cutter leaves a " + radius + " radius"
                                + (corners.size() == 1 ? "" : " in each") + " ("
                                + LengthPrinter.decimals(Length.inches(left), 4) + " sq in).")
                .of(profile.name())
                .amount(Length.inches(first.radius()))
                .cure("Draw it " + radius + " or accept."));
    }

    private Optional<Knife> knife() {
        double width = Knife.width(stick);
        List<Head> wide = catalog.heads().stream()
                .filter(head -> head.widest().toInches() >= width - Tolerance.SNAP)
                .toList();
        Optional<Head> widest =
                catalog.heads().stream().reduce((a, b) -> a.widest().compareTo(b.widest()) >= 0 ? a : b);
        if (wide.isEmpty()) {
            widest.ifPresent(head -> {
                double over = width - head.widest().toInches();
                notices.add(Notice.problem(
                                "knife-too-wide",
                                "Knife is " + shop(width) + " wide; the " + head.name() + " takes "
                                        + shop(head.widest().toInches()) + ".")
                        .of(profile.name())
                        .amount(Length.inches(over))
                        .cure("Run it in two pieces, or list a wider head under 'heads:' in a catalog file."));
            });
            return Optional.empty();
        }
        List<Knife> knives =
                wide.stream().flatMap(head -> Knife.of(stick, head).stream()).toList();
        Optional<Knife> fits = knives.stream()
                .filter(knife -> knife.woodDepth() <= knife.head().deepest().toInches() + Tolerance.SNAP)
                .findFirst();
        if (fits.isEmpty()) {
            double most = wide.stream()
                    .mapToDouble(head -> head.deepest().toInches())
                    .max()
                    .orElse(0);
            double asked = Knife.woodDepth(stick);
            notices.add(Notice.problem(
                            "profile-too-deep",
                            "A knife would cut " + shop(asked) + " deep; the head takes " + shop(most) + ".")
                    .of(profile.name())
                    .amount(Length.inches(asked - most))
                    .cure("Rip the deepest waste off first, or run it in two pieces."));
        }
        return fits;
    }

    private void problem(String code, String message, String cure) {
        notices.add(Notice.problem(code, message).of(profile.name()).cure(cure));
    }

    private static String place(Point p) {
        return "(" + LengthPrinter.decimals(Length.inches(p.x()), 3) + ", "
                + LengthPrinter.decimals(Length.inches(p.y()), 3) + ")";
    }

    private static String shop(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }
}
