package buildup.engine.judge.clearance;

import buildup.catalog.Catalog;
import buildup.catalog.fire.FireRule;
import buildup.engine.judge.clearance.Firebox.Beside;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Text;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads {@code firebox:}. */
final class FireboxReader {
    private final Stack stack;
    private final Catalog catalog;
    private final Notices notices;

    FireboxReader(Stack stack, Catalog catalog, Notices notices) {
        this.stack = stack;
        this.catalog = catalog;
        this.notices = notices;
    }

    /** The opening; absent when the document names none, or none that can be read. */
    Optional<Firebox> read(Fields root) {
        if (!root.has("firebox")) {
            return Optional.empty();
        }
        return root.fields("firebox").flatMap(this::firebox);
    }

    private Optional<Firebox> firebox(Fields fields) {
        fields.needs("top", ClearanceNotices.NO_TOP.with("example", Figure.length(-4)));
        OptionalDouble top = stack.level(fields, "top", notices);
        OptionalDouble floor = stack.space().floor();
        if (top.isPresent() && floor.isPresent() && top.getAsDouble() <= floor.getAsDouble()) {
            notices.add(ClearanceNotices.UNDER_THE_FLOOR
                    .with("top", Figure.length(top.getAsDouble()))
                    .with("floor", Figure.length(floor.getAsDouble()))
                    .at(fields.mark("top")));
        }
        OptionalDouble left = inches(fields, "left");
        OptionalDouble right = inches(fields, "right");
        if (fields.has("left") != fields.has("right")) {
            notices.add(ClearanceNotices.ONE_SIDE
                    .with("there", fields.has("left") ? "left" : "right")
                    .with("missing", fields.has("left") ? "right" : "left")
                    .at(fields.mark()));
        } else if (left.isPresent() && right.isPresent() && left.getAsDouble() >= right.getAsDouble()) {
            notices.add(ClearanceNotices.SIDES_CROSSED
                    .with("left", Figure.length(left.getAsDouble()))
                    .with("right", Figure.length(right.getAsDouble()))
                    .at(fields.mark("right")));
        }
        List<FireRule> rules = rules(fields);
        Set<String> noncombustible = noncombustible(fields);
        List<Beside> beside = beside(fields, left, right);
        return top.isPresent()
                ? Optional.of(
                        new Firebox(top.getAsDouble(), left, right, rules, noncombustible, beside, fields.mark("top")))
                : Optional.empty();
    }

    /** A length of a block in inches, where it is given and read. */
    static OptionalDouble inches(Fields fields, String key) {
        return fields.length(key).map(Length::toInches).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private List<FireRule> rules(Fields fields) {
        List<Scalar> asked = fields.scalars("rules");
        if (asked.isEmpty()) {
            return catalog.fireRules().stream().filter(FireRule::usual).toList();
        }
        Set<FireRule> rules = new LinkedHashSet<>();
        asked.forEach(name -> rule(name).ifPresent(rules::add));
        return List.copyOf(rules);
    }

    private Optional<FireRule> rule(Scalar asked) {
        String text = asked.text().strip();
        List<FireRule> listed = catalog.fireRules();
        Optional<FireRule> named =
                listed.stream().filter(rule -> rule.name().equals(text)).findFirst();
        if (named.isPresent()) {
            return named;
        }
        List<FireRule> ofSet = listed.stream()
                .filter(rule -> text.equals(rule.set()) || text.startsWith(rule.set() + " "))
                .toList();
        if (ofSet.isEmpty()) {
            notices.add(ClearanceNotices.NO_SUCH_RULES
                    .with("rules", text)
                    .at(asked.mark())
                    .cure(Suggestion.phrase(
                            text, listed.stream().map(FireRule::name).toList())));
            return Optional.empty();
        }
        FireRule newest = ofSet.get(ofSet.size() - 1);
        if (text.equals(newest.set())) {
            notices.add(ClearanceNotices.NEWEST_EDITION
                    .with("set", text)
                    .with("name", newest.name())
                    .at(asked.mark()));
            return Optional.of(newest);
        }
        notices.add(ClearanceNotices.NO_SUCH_EDITION
                .with("set", newest.set())
                .with("edition", text.substring(newest.set().length()).strip())
                .with(
                        "listed",
                        Listing.commas(ofSet.stream()
                                .filter(rule -> rule.set().equals(newest.set()))
                                .map(rule -> new Text(rule.edition()))
                                .toList()))
                .at(asked.mark()));
        return Optional.empty();
    }

    private Set<String> noncombustible(Fields fields) {
        List<String> known = stack.pieces().stream().map(Piece::name).toList();
        Set<String> names = new LinkedHashSet<>();
        for (Scalar name : fields.scalars("noncombustible")) {
            if (known.contains(name.text())) {
                names.add(name.text());
            } else {
                notices.add(ClearanceNotices.NO_SUCH_PIECE
                        .with("name", name.text())
                        .at(name.mark())
                        .cure(Suggestion.phrase(name.text(), known)));
            }
        }
        return names;
    }

    private List<Beside> beside(Fields fields, OptionalDouble left, OptionalDouble right) {
        List<Beside> all = new ArrayList<>();
        List<Fields> entries = fields.list("beside");
        for (int i = 0; i < entries.size(); i++) {
            Fields entry = entries.get(i);
            String name = entry.text("name").orElse("leg " + (i + 1));
            OptionalDouble from = size(entry, "from", name);
            OptionalDouble to = size(entry, "to", name);
            OptionalDouble out = size(entry, "out", name);
            if (from.isEmpty() || to.isEmpty() || out.isEmpty()) {
                continue;
            }
            if (to.getAsDouble() <= from.getAsDouble() || out.getAsDouble() <= 0) {
                notices.add(ClearanceNotices.NO_LEG.with("name", name).at(entry.mark()));
            } else if (left.isEmpty() || right.isEmpty()) {
                notices.add(ClearanceNotices.BESIDE_WHAT.with("name", name).at(entry.mark()));
            } else {
                leg(entry, name, new double[] {from.getAsDouble(), to.getAsDouble(), out.getAsDouble()}, left, right)
                        .ifPresent(all::add);
            }
        }
        return all;
    }

    private Optional<Beside> leg(Fields entry, String name, double[] sizes, OptionalDouble left, OptionalDouble right) {
        double onLeft = left.orElseThrow() - sizes[1];
        double onRight = sizes[0] - right.orElseThrow();
        if (onLeft < 0 && onRight < 0) {
            notices.add(ClearanceNotices.BEFORE_THE_OPENING
                    .with("name", name)
                    .amount(Figure.length(Math.min(-onLeft, -onRight)))
                    .at(entry.mark()));
            return Optional.empty();
        }
        return Optional.of(
                new Beside(name, sizes[0], sizes[1], sizes[2], onLeft >= 0, Math.max(onLeft, onRight), entry.mark()));
    }

    private OptionalDouble size(Fields entry, String key, String name) {
        entry.needs(key, ClearanceNotices.MISSING_SIZE.with("key", key).with("name", name));
        return inches(entry, key);
    }
}
