package buildup.cli.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import buildup.cli.command.CommandTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.StreamSupport;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The words of one command and what it reads, drawn from the commands as they are. A new command, a new view and a new form are
 * asked as soon as the help tells them; a new option that takes a value of its own, or a new thing to read, needs a line in
 * {@link Values}.
 */
final class CommandWords {
    private static final SortedMap<String, CommandSpec> COMMANDS = CommandTree.commands();

    /**
     * How often each command is asked; one that is not in the list as often as {@link #USUAL_SHARE}. All answers to one question
     * take as long as a dozen edits, pages of drawings or a page that follows its file as long as a hundred. So a third of the
     * questions goes to what asks everything, a hundredth to what draws all of it, and a million can be asked in a day.
     */
    private static final Map<String, Integer> SHARES = Map.ofEntries(
            Map.entry("report", 160),
            Map.entry("check", 140),
            Map.entry("draw", 130),
            Map.entry("cuts", 130),
            Map.entry("set", 150),
            Map.entry("fmt", 140),
            Map.entry("quote", 25),
            Map.entry("trace", 15),
            Map.entry("profile", 60),
            Map.entry("watch", 4),
            Map.entry("sheets", 3),
            Map.entry("search", 6),
            Map.entry("schema", 5),
            Map.entry("new", 10));

    private static final int USUAL_SHARE = 30;

    /** What takes as long as hundreds of other questions is asked seldom: searches among all profiles, two stacks. */
    private static final Map<String, Double> SELDOM = Map.of(
            "profile --nearest", 0.002,
            "profile --rotate", 0.002,
            "profile --scale", 0.002,
            "trace --layer", 0.02,
            "trace --width", 0.05,
            "trace --height", 0.05,
            "-o", 0.1,
            "OTHER", 0.12,
            "STACK", 0.2);

    private static final int MOST_FILES = 3;

    /** The search behind it takes seconds unless it is told to be short. */
    private static final List<String> ALWAYS = List.of("cuts --steps", "search --tries");

    /** Views of the run along the walls. */
    private static final List<String> PLANNED = List.of("plan", "walls", "sticks");

    private static final double USUALLY = 0.2;

    /** Of the documents in files. */
    private static final double ARCHIVES = 0.2;

    private final Chance chance;
    private final String command;
    private final Values values;
    private final List<String> words = new ArrayList<>();
    private final Map<String, byte[]> files = new TreeMap<>();
    private byte[] input = {};
    private boolean inputTaken;

    private CommandWords(Chance chance, String command) {
        this.chance = chance;
        this.command = command;
        this.values = new Values(chance);
    }

    /** A command by chance. */
    static Asked any(Chance chance) {
        int all = COMMANDS.keySet().stream().mapToInt(CommandWords::share).sum();
        int left = chance.below(all);
        for (String command : COMMANDS.keySet()) {
            left -= share(command);
            if (left < 0) {
                return of(chance, command);
            }
        }
        throw new IllegalStateException("no command");
    }

    private static int share(String command) {
        return SHARES.getOrDefault(command, USUAL_SHARE);
    }

    /** That command. */
    static Asked of(Chance chance, String command) {
        return command.equals("watch") ? saves(chance) : new CommandWords(chance, command).asked();
    }

    /** A page that follows a file runs until it is ended; what it shows after each save can be asked without. */
    private static Asked saves(Chance chance) {
        Map<String, byte[]> files = new TreeMap<>();
        files.put("1.yaml", Stacks.of(chance, false).getBytes(UTF_8));
        files.put("2.yaml", Stacks.of(chance, false).getBytes(UTF_8));
        return new Asked(List.of(Runner.SAVES), Stacks.of(chance, false).getBytes(UTF_8), files);
    }

    private Asked asked() {
        CommandSpec spec = COMMANDS.get(command);
        List<String> options = new ArrayList<>();
        spec.options().stream()
                .filter(option -> !option.usageHelp() && !option.versionHelp())
                .filter(this::wanted)
                .forEach(option -> add(option, options));
        boolean planned = command.equals("cuts") || PLANNED.stream().anyMatch(options::contains);
        words.add(command);
        spec.positionalParameters().forEach(parameter -> add(parameter, planned));
        words.addAll(options);
        return new Asked(words, input, files);
    }

    private boolean wanted(OptionSpec option) {
        String name = option.longestName();
        String full = command + " " + name;
        return option.required()
                || ALWAYS.contains(full)
                || chance.of(
                        choices(option).isEmpty()
                                ? SELDOM.getOrDefault(full, SELDOM.getOrDefault(name, USUALLY))
                                : 0.75);
    }

    private void add(OptionSpec option, List<String> options) {
        String name = option.longestName();
        List<String> choices = choices(option);
        options.add(name);
        if (!choices.isEmpty()) {
            options.add(chance.of(0.01) ? chance.odd("x") : choice(choices));
        } else if (name.equals("-o")) {
            options.add(Asked.FOLDER + "out." + ending(options));
        } else if (name.equals("--catalog")) {
            files.put("own.yaml", Papers.catalog(chance).getBytes(UTF_8));
            options.add(Asked.FOLDER + "own.yaml");
        } else if (values.isDocument(name)) {
            files.put("old.yaml", values.document(name, false).getBytes(UTF_8));
            options.add(Asked.FOLDER + "old.yaml");
        } else if (option.arity().max() > 0) {
            options.add(values.of(name));
        }
    }

    /** What an argument may be, where the help lists it. */
    static List<String> choices(ArgSpec argument) {
        Iterable<String> listed = argument.completionCandidates();
        return listed == null || argument.arity().max() == 0
                ? List.of()
                : StreamSupport.stream(listed.spliterator(), false).toList();
    }

    /** Pictures in dots take longest. */
    private String choice(List<String> choices) {
        String choice = chance.any(choices);
        return choice.equals("png") && !chance.of(0.03) || choice.equals("pdf") && !chance.of(0.3)
                ? choices.get(0)
                : choice;
    }

    /** A file is called as the form in which it is written; a picture without a form gets it by its name. */
    private String ending(List<String> options) {
        for (String form : List.of("--format", "--to")) {
            int at = options.indexOf(form);
            if (at >= 0) {
                return options.get(at + 1).matches("[a-z]+") ? options.get(at + 1) : "out";
            }
        }
        if (command.equals("sheets")) {
            return chance.any("pdf", "pdf", "html", "zip");
        }
        return command.equals("draw") ? chance.any("svg", "dxf", "svg", "dxf", "pdf") : "out";
    }

    private void add(PositionalParamSpec parameter, boolean planned) {
        List<String> choices = choices(parameter);
        String called = command + " " + parameter.paramLabel();
        for (int i = count(parameter); i > 0; i--) {
            words.add(
                    !choices.isEmpty()
                            ? chance.odd(chance.any(choices))
                            : values.isDocument(called)
                                    ? document(values.document(called, planned))
                                    : values.of(called));
        }
    }

    /** How many words stand for it: what may be left out is, now and then. */
    private int count(PositionalParamSpec parameter) {
        int least = parameter.arity().min();
        int most = Math.min(MOST_FILES, parameter.arity().max());
        boolean more = most > least && chance.of(SELDOM.getOrDefault(parameter.paramLabel(), 0.9));
        return more ? least + 1 + chance.below(most - least) : least;
    }

    /** The first document comes on standard input, mostly; the others lie in files. */
    private String document(String text) {
        if (!inputTaken && chance.of(0.9)) {
            inputTaken = true;
            input = text.getBytes(UTF_8);
            return "-";
        }
        boolean packed = chance.of(ARCHIVES);
        String name = files.size() + 1 + (packed ? ".zip" : ".yaml");
        files.put(name, packed ? Archives.of(chance, text) : text.getBytes(UTF_8));
        return Asked.FOLDER + name;
    }
}
