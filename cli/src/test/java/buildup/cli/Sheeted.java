package buildup.cli;

import java.util.ArrayList;
import java.util.List;

/** A file of several sheets for a spreadsheet, read as RFC 4180 has it. */
public final class Sheeted {
    private Sheeted() {}

    /** One sheet: its title, headings and rows. */
    public record Block(String title, List<String> headings, List<List<String>> rows) {
        /** What stands under a heading. */
        public String cell(int row, String heading) {
            if (!headings.contains(heading)) {
                throw new AssertionError("no '" + heading + "' in " + headings);
            }
            return rows.get(row).get(headings.indexOf(heading));
        }
    }

    /** The titles in order. */
    public static List<String> titles(String csv) {
        return blocks(csv).stream().map(Block::title).toList();
    }

    /** The sheet with that title. */
    public static Block block(String csv, String title) {
        return blocks(csv).stream()
                .filter(block -> block.title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no sheet '" + title + "' in " + titles(csv)));
    }

    /** All sheets; an empty line stands between them. */
    public static List<Block> blocks(String csv) {
        List<Block> blocks = new ArrayList<>();
        List<List<String>> lines = new ArrayList<>();
        for (List<String> line : lines(csv)) {
            if (line.equals(List.of(""))) {
                blocks.add(block(lines));
                lines.clear();
            } else {
                lines.add(line);
            }
        }
        blocks.add(block(lines));
        return blocks;
    }

    private static Block block(List<List<String>> lines) {
        Block block = new Block(lines.get(0).get(0), lines.get(1), List.copyOf(lines.subList(2, lines.size())));
        block.rows().forEach(row -> {
            if (row.size() != block.headings().size()) {
                throw new AssertionError(row + " does not fit " + block.headings());
            }
        });
        return block;
    }

    /** The cells of each line. */
    public static List<List<String>> lines(String csv) {
        List<List<String>> lines = new ArrayList<>();
        List<String> line = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < csv.length(); i++) {
            char letter = csv.charAt(i);
            if (quoted && letter == '"' && i + 1 < csv.length() && csv.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (letter == '"') {
                quoted = !quoted;
            } else if (!quoted && (letter == ',' || letter == '\r')) {
                line.add(cell.toString());
                cell.setLength(0);
                if (letter == '\r') {
                    lines.add(List.copyOf(line));
                    line.clear();
                    i++;
                }
            } else {
                cell.append(letter);
            }
        }
        return lines;
    }
}
