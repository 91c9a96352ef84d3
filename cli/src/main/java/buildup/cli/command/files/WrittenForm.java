package buildup.cli.command.files;

import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * In what form a command writes its answer: as it was asked to, else as the ending of its file says, else as it usually
 * does. One way for all commands.
 *
 * @param forms that the command writes
 * @param usual what it writes where nothing says otherwise; absent where something has to
 * @param command as it is called
 * @param option that asks for a form
 */
public record WrittenForm<F extends Enum<F>>(List<F> forms, Optional<F> usual, String command, String option) {
    /** Endings that say in which of the program's forms a file is. */
    private static final Set<String> TELLING = Set.of("txt", "json", "csv", "html", "svg", "png", "pdf", "dxf");

    /** Endings of the same form. */
    private static final Map<String, String> ALIKE = Map.of("text", "txt", "htm", "html", "yml", "yaml");

    public WrittenForm {
        forms = List.copyOf(forms);
    }

    /**
     * The form to write in; what is to be said of the name of the file is said at once.
     *
     * @param asked by the option
     * @param file to be written; absent for standard output
     * @param about what messages call the matter
     * @return absent when the ending names no form that the command writes
     */
    public Optional<F> settled(
            Optional<F> asked, Optional<Path> file, Streams streams, SayingOption saying, String about) {
        Notices notices = new Notices();
        Optional<F> form = of(asked, file, notices);
        streams.err().print(saying.said(notices.sorted(), about, LengthUnit.INCH));
        return form;
    }

    private Optional<F> of(Optional<F> asked, Optional<Path> file, Notices notices) {
        String name = file.map(Path::toString).orElse("-");
        String ending = file.map(WrittenForm::ending).orElse("");
        boolean tells = TELLING.contains(ending);
        Optional<F> called =
                forms.stream().filter(form -> ending(form).equals(ending)).findFirst();
        Optional<F> form = asked.or(() -> called).or(() -> tells ? Optional.empty() : usual);
        boolean another = tells || (asked.isEmpty() && !ending.isEmpty());
        if (form.isEmpty()) {
            notices.add(FileNotices.NO_SUCH_ENDING
                    .with("file", name)
                    .with("command", command)
                    .with("endings", endings())
                    .with("option", option));
        } else if (another && !form.equals(called)) {
            notices.add(FileNotices.OTHER_ENDING
                    .with("file", name)
                    .with("form", form.get().name())
                    .with("ending", ending(form.get())));
        }
        return form;
    }

    private String endings() {
        List<String> all =
                new ArrayList<>(forms.stream().map(form -> "." + ending(form)).toList());
        String last = all.remove(all.size() - 1);
        return all.isEmpty() ? last : String.join(", ", all) + " or " + last;
    }

    private static <F extends Enum<F>> String ending(F form) {
        return ALIKE.getOrDefault(form.name(), form.name());
    }

    /** What follows the last dot of a name, in small letters and as it is mostly spelled; empty when there is none. */
    private static String ending(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        int dot = name.lastIndexOf('.');
        String ending = dot > 0 ? name.substring(dot + 1) : "";
        return ALIKE.getOrDefault(ending, ending);
    }
}
