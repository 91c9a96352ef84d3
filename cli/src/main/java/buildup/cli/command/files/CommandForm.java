package buildup.cli.command.files;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.IGetter;
import picocli.CommandLine.Model.ISetter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The words and options that one command takes. They are named in code, not in annotations: Java makes the classes
 * through which annotations are read anew at every start, which takes a tenth of a whole report.
 */
public final class CommandForm {
    private final CommandSpec spec;

    private CommandForm(CommandSpec spec) {
        this.spec = spec;
    }

    /**
     * The form of a command, with the options for its help and for the version.
     *
     * @param description what it does, for its help
     * @param command what is asked once the words are read; a {@link Callable} that gives an {@link ExitCode}, or anything
     *     where only the commands below it can be asked
     */
    public static CommandForm of(String name, String description, Object command) {
        CommandSpec spec = CommandSpec.wrapWithoutInspection(command).name(name);
        spec.usageMessage().description(description);
        spec.addOption(flag("-h --help", "Show this help message and exit.", asked -> {})
                .usageHelp(true)
                .build());
        spec.addOption(flag("-V --version", "Print version information and exit.", asked -> {})
                .versionHelp(true)
                .build());
        return new CommandForm(spec);
    }

    /** The next word, which must be there. */
    public CommandForm word(String label, String description, Consumer<String> taker) {
        return add(next(label, description, taker).required(true));
    }

    /** The next word, which must be there and is one of a few. */
    public CommandForm oneOf(List<String> words, String label, String description, Consumer<String> taker) {
        return add(next(label, description, taker).required(true).completionCandidates(words));
    }

    /** The next word, which may be left out. */
    public CommandForm maybeWord(String label, String description, Consumer<String> taker) {
        return add(next(label, description, taker).arity("0..1"));
    }

    /** All words from here on, one at least. */
    public CommandForm words(String label, String description, Consumer<List<String>> taker) {
        Listed<String> listed = new Listed<>(taker);
        return add(PositionalParamSpec.builder()
                .index("0..*")
                .arity("1..*")
                .required(true)
                .paramLabel(label)
                .description(description)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .getter(listed)
                .setter(listed));
    }

    /** An option that takes no value. */
    public CommandForm flag(String name, String description, Runnable taker) {
        spec.addOption(flag(name, description, asked -> taker.run()).build());
        return this;
    }

    /**
     * An option with a value.
     *
     * @param names what it is called, a blank between them where it has several names
     */
    public <T> CommandForm option(Class<T> type, String names, String label, String description, Consumer<T> taker) {
        return add(valued(type, names, label, description, taker));
    }

    /** An option with a value that must be there. */
    public <T> CommandForm needed(Class<T> type, String name, String label, String description, Consumer<T> taker) {
        return add(valued(type, name, label, description, taker).required(true));
    }

    /** An option that may be repeated. */
    public <T> CommandForm repeated(
            Class<T> type, String name, String label, String description, Consumer<List<T>> taker) {
        return add(several(type, name, label, description, taker));
    }

    /** An option with values that stand between commas; it may be repeated too. */
    public <T> CommandForm list(Class<T> type, String name, String label, String description, Consumer<List<T>> taker) {
        return add(several(type, name, label, description, taker).splitRegex(","));
    }

    /** What several commands take alike. */
    public CommandForm with(Consumer<CommandForm> shared) {
        shared.accept(this);
        return this;
    }

    /** Lines below its help. */
    public CommandForm footer(String... lines) {
        spec.usageMessage().footer(lines);
        return this;
    }

    /** The command, ready to read words. */
    public CommandLine line() {
        return new CommandLine(spec);
    }

    private CommandForm add(OptionSpec.Builder option) {
        spec.addOption(option.build());
        return this;
    }

    private CommandForm add(PositionalParamSpec.Builder word) {
        spec.addPositional(word.build());
        return this;
    }

    private PositionalParamSpec.Builder next(String label, String description, Consumer<String> taker) {
        return PositionalParamSpec.builder()
                .index(Integer.toString(spec.positionalParameters().size()))
                .paramLabel(label)
                .description(description)
                .type(String.class)
                .setter(new Taken<>(String.class, taker));
    }

    private static OptionSpec.Builder flag(String names, String description, Consumer<Boolean> taker) {
        return OptionSpec.builder(names.split(" "))
                .description(description)
                .type(Boolean.class)
                .setter(new Taken<>(Boolean.class, taker));
    }

    private static <T> OptionSpec.Builder valued(
            Class<T> type, String names, String label, String description, Consumer<T> taker) {
        return OptionSpec.builder(names.split(" "))
                .paramLabel(label)
                .description(description)
                .type(type)
                .setter(new Taken<>(type, taker));
    }

    private static <T> OptionSpec.Builder several(
            Class<T> type, String name, String label, String description, Consumer<List<T>> taker) {
        Listed<T> listed = new Listed<>(taker);
        return OptionSpec.builder(name)
                .paramLabel(label)
                .description(description)
                .type(List.class)
                .auxiliaryTypes(type)
                .getter(listed)
                .setter(listed);
    }

    /**
     * Hands on what was read. A class and no lambda: the archive of classes cannot be laid down with a lambda for an
     * interface of that library. Before it reads any word, the library says of each that there is none.
     */
    private record Taken<T>(Class<T> type, Consumer<T> taker) implements ISetter {
        @Override
        public <X> X set(X value) {
            if (value != null) {
                taker.accept(type.cast(value));
            }
            return value;
        }
    }

    /** Hands on the list to which the library adds what it reads. */
    private static final class Listed<T> implements IGetter, ISetter {
        private final Consumer<List<T>> taker;
        private List<T> list = new ArrayList<>();

        Listed(Consumer<List<T>> taker) {
            this.taker = taker;
        }

        @Override
        @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"
        }) // as the library has it: it gets what it has set
        public <X> X get() {
            return (X) list;
        }

        @Override
        @SuppressWarnings("unchecked") // a list of the type that the library was told
        public <X> X set(X value) {
            if (value != null) {
                list = (List<T>) value;
                taker.accept(list);
            }
            return value;
        }
    }
}
