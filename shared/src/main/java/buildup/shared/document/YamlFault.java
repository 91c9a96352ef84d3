package buildup.shared.document;

import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** A fault of the YAML itself, in words for somebody who does not write YAML for a living. */
final class YamlFault {

    private YamlFault() {}

    static Notice notice(String file, String text, YamlEngineException fault) {
        if (!(fault instanceof MarkedYamlEngineException marked)) {
            return error(
                            "This is not YAML 1.2: " + firstLine(String.valueOf(fault.getMessage())) + ".",
                            "Save it as YAML 1.2.")
                    .at(new Mark(file, 1, 1));
        }
        Mark mark = marked.getProblemMark()
                .or(marked::getContextMark)
                .map(place -> mark(file, place))
                .orElse(new Mark(file, 1, 1));
        Optional<Mark> tab = tabIndent(file, text, mark.line());
        String problem = String.valueOf(marked.getProblem());
        if (tab.isPresent() || problem.contains("(TAB)")) {
            return Notice.refusal("tab-in-yaml", "A tab stands where the line is indented.")
                    .at(tab.orElse(mark))
                    .cure("Use blanks.");
        }
        return worded(String.valueOf(marked.getContext()), problem, marked, file)
                .at(mark);
    }

    private static Notice worded(String context, String problem, MarkedYamlEngineException fault, String file) {
        String opened = fault.getContextMark()
                .map(place -> " in line " + mark(file, place).line())
                .orElse("");
        if (context.contains("quoted scalar") && problem.contains("unexpected end")) {
            return error("A quote is opened" + opened + " and never closed.", "Close the quote.");
        }
        if (context.contains("flow")) {
            return error(
                    "A bracket is opened" + opened + " and not closed, or a comma is missing.",
                    "Close the bracket or put the comma.");
        }
        if (problem.contains("mapping values are not allowed")) {
            return error(
                    "A colon stands where none can be.",
                    "Line the key up with its neighbours, or put quotes round a text that holds a colon.");
        }
        if (problem.contains("could not find expected ':'")) {
            return error("A key has no colon behind it.", "Put a colon and a blank behind the key.");
        }
        if (problem.contains("<block end>")) {
            return error("This line is not indented like its neighbours.", "Line it up with them.");
        }
        if (problem.contains("cannot start any token") || context.contains("scanning a directive")) {
            return error("A text cannot begin with this character.", "Put quotes round the text.");
        }
        return error("This is not YAML: " + firstLine(problem) + ".", "Compare with the lines around it.");
    }

    private static Notice error(String message, String cure) {
        return Notice.refusal("yaml-error", message).cure(cure);
    }

    private static String firstLine(String message) {
        return message.lines().findFirst().orElse("");
    }

    static Mark mark(String file, org.snakeyaml.engine.v2.exceptions.Mark place) {
        return new Mark(file, place.getLine() + 1, place.getColumn() + 1);
    }

    static Mark place(String file, String text, int at) {
        String before = text.substring(0, at);
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        return new Mark(file, line, at - before.lastIndexOf('\n'));
    }

    /** A tab before the first word of the faulty line or of the one above it, where the parser may stop too late. */
    private static Optional<Mark> tabIndent(String file, String text, int faulty) {
        List<String> lines = text.lines().limit(faulty).toList();
        for (int number = Math.max(1, faulty - 1); number <= lines.size(); number++) {
            String line = lines.get(number - 1);
            int tab = line.indexOf('\t');
            if (tab >= 0 && !line.isBlank() && line.substring(0, tab).isBlank()) {
                return Optional.of(new Mark(file, number, tab + 1));
            }
        }
        return Optional.empty();
    }
}
