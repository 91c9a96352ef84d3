package buildup.engine.hold.support;

import buildup.engine.hold.support.Support.Verdict;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.engine.section.compose.Standing.Bearing;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Asks what holds a section. */
public final class Supports {
    private Supports() {}

    /**
     * @param joints the fasteners where they hold, empty while none are given
     * @param notices told what tips: a note while no fastenings are given, else a problem
     */
    public static Support of(Section section, List<Loads.Wanted> wanted, List<Tie> joints, Notices notices) {
        List<Load> loads = Loads.on(section, wanted, notices);
        LoadPath path = LoadPath.of(section, joints);
        Balances asked = new Balances(
                section, path, loads, joints.stream().map(Tie::outer).collect(Collectors.toSet()));
        List<Balance> balances = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            asked.ofPiece(i).ifPresent(balances::add);
            balances.addAll(asked.onCarrier(i));
        }
        Optional<Verdict> whole =
                joints.isEmpty() ? Optional.empty() : Optional.of(verdict(section, loads, joints, notices));
        if (joints.isEmpty()) {
            balances.stream()
                    .filter(balance -> !balance.stands() && speaks(section, balance))
                    .forEach(balance -> notices.add(needsHolding(section, balance)));
        }
        return new Support(balances, path, loads, whole);
    }

    /** A piece on one body is told of with all that stands there; one that bridges several is told of by itself. */
    private static boolean speaks(Section section, Balance balance) {
        if (balance.carrier()) {
            return true;
        }
        Standing standing = section.standing().stream()
                .filter(one -> one.body() == balance.body())
                .findFirst()
                .orElseThrow();
        return !standing.fixed()
                && standing.bearing().stream().map(Bearing::on).distinct().count() > 1;
    }

    private static Verdict verdict(Section section, List<Load> loads, List<Tie> joints, Notices notices) {
        Optional<Statics.Limit> limit = Statics.of(section, loads, joints).limit();
        if (limit.isEmpty()) {
            notices.add(Notice.problem(
                            "tips", "The stack does not stand by its contacts and fastenings, friction left out.")
                    .cure("Fasten what hangs, or bring the weight back over its bearing."));
            return new Verdict(false, 0, "");
        }
        double factor = limit.get().factor();
        if (factor < 1) {
            String governs = limit.get().governs();
            notices.add(Notice.problem(
                            "load-too-much",
                            "The stack takes only " + decimals(Math.floor(factor * 100) / 100, 2) + " of the loads"
                                    + (governs.isEmpty() ? "." : "; " + governs + " governs."))
                    .cure("Strengthen that, or take load off."));
        }
        return new Verdict(true, factor, limit.get().governs());
    }

    private static Notice needsHolding(Section section, Balance balance) {
        boolean forward = balance.loaded() > balance.bearingFace();
        String beyond = decimals(-balance.margin(), 3);
        String pull = balance.holdBack().isPresent()
                ? " Held " + (forward ? "back " : "out ")
                        + decimals(balance.holdBack().getAsDouble(), 2) + " lb a foot at "
                        + print(balance.holdAt().y()) + " up, it stands."
                : balance.holdDown().isPresent()
                        ? " Held down " + decimals(balance.holdDown().getAsDouble(), 2) + " lb a foot at "
                                + print(balance.downAt().x()) + " out, it stands."
                        : "";
        String name = section.name(balance.body());
        Notice notice = Notice.note(
                        "needs-holding",
                        (balance.carrier() ? "What stands on '" : "'") + name + "' leans " + (forward ? "out" : "back")
                                + " " + beyond + " past its bearing." + pull)
                .of(name)
                .amount(Length.inches(-balance.margin()))
                .cure("Give the fastenings that hold it, or bring its weight back.");
        return section.body(balance.body())
                .placed()
                .map(placed -> notice.at(placed.piece().mark()))
                .orElse(notice);
    }

    private static String decimals(double value, int places) {
        return LengthPrinter.decimals(Length.inches(value), places);
    }

    private static String print(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }
}
