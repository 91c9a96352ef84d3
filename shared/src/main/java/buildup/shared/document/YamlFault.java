package buildup.shared.document;

import buildup.shared.figure.Figure;
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
            return DocumentNotices.NOT_YAML_1_2
                    .with("fault", firstLine(String.valueOf(fault.getMessage())))
                    .at(new Mark(file, 1, 1));
        }
        Mark mark = marked.getProblemMark()
                .or(marked::getContextMark)
                .map(place -> mark(file, place))
                .orElse(new Mark(file, 1, 1));
        Optional<Mark> tab = tabIndent(file, text, mark.line());
        String problem = String.valueOf(marked.getProblem());
        if (tab.isPresent() || problem.contains("(TAB)")) {
            return DocumentNotices.TAB.notice().at(tab.orElse(mark));
        }
        return worded(String.valueOf(marked.getContext()), problem, marked, file)
                .at(mark);
    }

    private static Notice worded(String context, String problem, MarkedYamlEngineException fault, String file) {
        Optional<Figure> opened = fault.getContextMark()
                .map(place -> Figure.count(mark(file, place).line()));
        if (context.contains("quoted scalar") && problem.contains("unexpected end")) {
            return opened.map(line -> DocumentNotices.OPEN_QUOTE_IN_LINE.with("line", line))
                    .orElseGet(DocumentNotices.OPEN_QUOTE::notice);
        }
        if (context.contains("flow")) {
            return opened.map(line -> DocumentNotices.OPEN_BRACKET_IN_LINE.with("line", line))
                    .orElseGet(DocumentNotices.OPEN_BRACKET::notice);
        }
        if (problem.contains("mapping values are not allowed")) {
            return DocumentNotices.STRAY_COLON.notice();
        }
        if (problem.contains("could not find expected ':'")) {
            return DocumentNotices.NO_COLON.notice();
        }
        if (problem.contains("<block end>")) {
            return DocumentNotices.INDENTED.notice();
        }
        if (problem.contains("cannot start any token") || context.contains("scanning a directive")) {
            return DocumentNotices.STRANGE_START.notice();
        }
        return DocumentNotices.NOT_YAML.with("fault", firstLine(problem));
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
