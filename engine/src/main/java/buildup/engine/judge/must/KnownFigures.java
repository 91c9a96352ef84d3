package buildup.engine.judge.must;

import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The figures that the sheets of a stack hold, and the names in them. */
final class KnownFigures {
    /**
     * A column of numbers.
     *
     * @param quantity what it counts
     * @param rounding how people read it
     * @param inner the column of the nested rows that is added up; absent for a plain column
     */
    record Source(Sheet sheet, Column column, Quantity quantity, Rounding rounding, Optional<Integer> inner) {
        /** How many identity columns stay open when these words are given. */
        int open(Set<Role> given) {
            long named = sheet.columns().stream().filter(Column::name).count();
            return (int) named - given.size();
        }

        boolean takes(Set<Role> given) {
            return given.stream().noneMatch(role -> role.columns(sheet).isEmpty());
        }

        /** Whether it tells what could be, and is not. */
        boolean isOffered() {
            return column.offered();
        }

        /** Whether its rows are known by all that the rows of another are known by, as are the other's own. */
        boolean isFinerThan(Source other) {
            return keys().containsAll(other.keys());
        }

        private Set<String> keys() {
            return sheet.columns().stream()
                    .filter(Column::name)
                    .map(Column::key)
                    .collect(Collectors.toUnmodifiableSet());
        }

        /** Whether its heading is that word, and not its key alone. */
        boolean isHeaded(String word) {
            return word(column).equals(word);
        }

        /** Whether a row goes by these names. */
        boolean has(Map<Role, String> names) {
            return sheet.rows().stream().anyMatch(row -> goesBy(row, names));
        }

        /** Whether this row goes by these names. */
        boolean goesBy(Row row, Map<Role, String> names) {
            return goesByEach(row, names, false) || goesByEach(row, names, true);
        }

        /** @param swapped whether each of two columns that hold either name is taken for the other */
        private boolean goesByEach(Row row, Map<Role, String> names, boolean swapped) {
            for (Map.Entry<Role, String> name : names.entrySet()) {
                boolean found = false;
                for (String key : name.getKey().columns(sheet)) {
                    Cell cell = sheet.cell(row, swapped ? other(key) : key);
                    found |= is(cell, name.getValue())
                            || edition(sheet, row, cell)
                                    .filter(name.getValue()::equals)
                                    .isPresent();
                }
                if (!found) {
                    return false;
                }
            }
            return true;
        }

        /** The other of two columns that hold either name; the same of any other. */
        private String other(String key) {
            return sheet.columns().stream()
                    .filter(Column::either)
                    .map(Column::key)
                    .filter(one -> either(key) && !one.equals(key))
                    .findFirst()
                    .orElse(key);
        }

        private boolean either(String key) {
            return sheet.columns().stream()
                    .anyMatch(one -> one.either() && one.key().equals(key));
        }

        /** Whether in a sheet of any stack it is none of it where no row goes by these names. */
        boolean noneWithoutRow(Sheet any, Map<Role, String> names) {
            return any.at(column.key())
                    .map(at -> any.columns().get(at).noRow())
                    .filter(means -> means.isNone(names.entrySet().stream()
                            .filter(name ->
                                    name.getKey().columns(sheet).stream().anyMatch(means.by()::contains))
                            .map(Map.Entry::getValue)
                            .collect(Collectors.toUnmodifiableSet())))
                    .isPresent();
        }

        OptionalDouble of(Row row) {
            Cell cell = sheet.cell(row, column.key());
            if (cell instanceof Cell.Rows rows && inner.isPresent()) {
                return OptionalDouble.of(rows.rows().stream()
                        .map(below -> below.cells().get(inner.get()))
                        .filter(Cell.Decimal.class::isInstance)
                        .mapToDouble(number -> ((Cell.Decimal) number).amount())
                        .sum());
            }
            if (cell instanceof Cell.None none) {
                return none.means();
            }
            return cell instanceof Cell.Decimal number ? OptionalDouble.of(number.amount()) : OptionalDouble.empty();
        }
    }

    /** The sheets of all lights and of all eyes, and their column of names. */
    private static final Map<Role, String> ALL_OF = Map.of(Role.IN, "lights", Role.FROM, "eyes");

    private static final String NAME = "name";

    /** The column of the edition of a rule. */
    private static final String EDITION = "edition";

    /** The sheet of the whole stack at each step, whose keys are those of the whole: its headings alone call its figures. */
    private static final String SO_FAR = "steps";

    private final List<Sheet> sheets;
    private final List<Source> sources;
    private final Set<String> callable;

    KnownFigures(List<Sheet> sheets) {
        this.sheets = List.copyOf(sheets);
        this.sources = sources(this.sheets);
        Set<String> words = new TreeSet<>();
        for (Source source : sources) {
            words.add(word(source.column()));
            words.add(source.column().key().toLowerCase(Locale.ROOT));
        }
        this.callable = Collections.unmodifiableSet(words);
    }

    /** Every word for a figure, in alphabet order. */
    Set<String> words() {
        Set<String> words = new TreeSet<>();
        sources().forEach(source -> words.add(word(source.column())));
        return words;
    }

    /** The columns of that word: those of that heading, then those of that key. */
    List<Source> named(String word) {
        List<Source> found = new ArrayList<>(sources().stream()
                .filter(source -> word(source.column()).equals(word))
                .toList());
        sources().stream()
                .filter(source -> source.column().key().toLowerCase(Locale.ROOT).equals(word))
                .filter(source -> !word(source.column()).equals(word))
                .filter(source -> !SO_FAR.equals(source.sheet().key()))
                .forEach(found::add);
        return found;
    }

    /** Every word by which a figure may be called: headings and keys. */
    Set<String> callable() {
        return callable;
    }

    /** The word for a column: its heading, else its key. */
    static String word(Column column) {
        return (column.heading().isEmpty() ? column.key() : column.heading()).toLowerCase(Locale.ROOT);
    }

    /** Every column of numbers, in the order of the report. */
    List<Source> sources() {
        return sources;
    }

    private static List<Source> sources(List<Sheet> sheets) {
        List<Source> found = new ArrayList<>();
        for (Sheet sheet : sheets) {
            for (Column column : sheet.columns()) {
                if (column.type() instanceof Type.Measure measure) {
                    found.add(new Source(sheet, column, measure.quantity(), measure.rounding(), Optional.empty()));
                } else if (column.type() instanceof Type.Nested nested && column.adds()) {
                    added(sheet, column, nested).ifPresent(found::add);
                }
            }
        }
        return List.copyOf(found);
    }

    private static Optional<Source> added(Sheet sheet, Column column, Type.Nested nested) {
        for (int i = 0; i < nested.columns().size(); i++) {
            if (nested.columns().get(i).type() instanceof Type.Measure measure) {
                return Optional.of(new Source(sheet, column, measure.quantity(), measure.rounding(), Optional.of(i)));
            }
        }
        return Optional.empty();
    }

    /** Every member of a piece: those of its outline, and those that its rows in any sheet go by. */
    Set<String> members(String piece) {
        Set<String> members = new TreeSet<>();
        for (Sheet sheet : sheets) {
            List<String> of = Role.OF.columns(sheet);
            for (Row row : sheet.rows()) {
                if (of.stream().anyMatch(key -> is(sheet.cell(row, key), piece))) {
                    Role.MEMBER.columns(sheet).forEach(key -> add(sheet.cell(row, key), members));
                    nested(sheet, row, members);
                }
            }
        }
        return members;
    }

    /** The members that rows below a row name, as the segments of an outline do. */
    private static void nested(Sheet sheet, Row row, Set<String> members) {
        for (Column column : sheet.columns()) {
            if (column.type() instanceof Type.Nested nested
                    && sheet.cell(row, column.key()) instanceof Cell.Rows rows) {
                for (int i = 0; i < nested.columns().size(); i++) {
                    if (Role.MEMBER.is(nested.columns().get(i))) {
                        int at = i;
                        rows.rows().forEach(below -> add(below.cells().get(at), members));
                    }
                }
            }
        }
    }

    /** A rule and its edition as they are printed: {@code IRC 2018}. */
    private static Optional<String> edition(Sheet sheet, Row row, Cell rule) {
        return rule instanceof Cell.Words words && sheet.cell(row, EDITION) instanceof Cell.Words of
                ? Optional.of(words.words() + " " + of.words())
                : Optional.empty();
    }

    private static boolean is(Cell cell, String name) {
        return cell instanceof Cell.Words words && words.words().equals(name);
    }

    private static void add(Cell cell, Set<String> names) {
        if (cell instanceof Cell.Words words) {
            names.add(words.words());
        }
    }

    /** Every name that stands in a column of that role, in any sheet. */
    Set<String> names(Role role) {
        Set<String> names = new TreeSet<>();
        for (Sheet sheet : sheets) {
            // a light that cannot shine, or an eye that cannot see, has a row in that sheet alone
            boolean all = sheet.key().equals(ALL_OF.get(role));
            List<String> keys = all ? List.of(NAME) : withEither(sheet, role.columns(sheet));
            keys.forEach(column -> sheet.rows().forEach(row -> {
                add(sheet.cell(row, column), names);
                edition(sheet, row, sheet.cell(row, column)).ifPresent(names::add);
            }));
        }
        return names;
    }

    /** Some columns of a sheet, and where a name in one of them may as well stand in another, that other too. */
    private static List<String> withEither(Sheet sheet, List<String> keys) {
        boolean either = sheet.columns().stream().anyMatch(column -> column.either() && keys.contains(column.key()));
        return Stream.concat(
                        keys.stream(),
                        sheet.columns().stream()
                                .filter(column -> either && column.either())
                                .map(Column::key))
                .distinct()
                .toList();
    }

    /** The names of that role in the sheets that hold a figure of that word; those of any sheet where none has one. */
    Set<String> names(Role role, String word) {
        Set<String> names = new TreeSet<>();
        for (Source source : named(word)) {
            role.columns(source.sheet())
                    .forEach(column -> source.sheet()
                            .rows()
                            .forEach(row -> add(source.sheet().cell(row, column), names)));
        }
        return names.isEmpty() ? names(role) : names;
    }
}
