package buildup.cli.command.odd;

import java.util.ArrayList;
import java.util.List;

/** What nobody means to write, and everybody writes once: pieces of YAML that may stand behind any key. */
final class OddValue {
    private static final int LONG = 10_240;

    private OddValue() {}

    /** All of them; {@code KEY} in one stands for the last word of the key behind which it is put. */
    static List<String> all() {
        List<String> all = new ArrayList<>(nothings());
        all.addAll(numbers());
        all.addAll(words());
        all.addAll(structures());
        marks().forEach(mark -> all.add("\"ze" + mark + "bra\""));
        return all;
    }

    private static List<String> nothings() {
        return List.of("", "null", "~", "''", "'   '", "[]", "{}", "[[]]", "[[1, [2]]]", "{ a: { b: c } }", "[{}, []]");
    }

    private static List<String> numbers() {
        return List.of(
                "-1",
                "0",
                "-0",
                "1e308",
                "-1e308",
                "1e-308",
                "1e999",
                "nan",
                "NaN",
                "inf",
                "-inf",
                ".nan",
                ".inf",
                "0x10",
                "0b11",
                "1_000",
                "1/0",
                "0/0",
                "1/-3",
                "-1/3",
                "1/3/3",
                "5'-",
                "5'6",
                "1'13\"",
                "'",
                "\"5\\\"\"",
                "99999999999999999999",
                "9".repeat(LONG),
                "0." + "0".repeat(LONG) + "1",
                "1/" + "9".repeat(400),
                "3.5 mm mm",
                "3 parsecs",
                "1,5",
                "1.2.3",
                "+-3",
                "--3",
                "½½",
                "\uFF11/\uFF12",
                "\u0663",
                "100 %",
                "101 %",
                "-5 %",
                "1e5 C",
                "-300 C",
                "25:61",
                "90°",
                "2 in 0",
                "between 1 and 0 by 0, now 5",
                "between 0 and 1e9 by 1e-9",
                "one of [], now",
                "one of [a, b]",
                "3 x",
                "x 3",
                "3 x 4 x 5 x 6");
    }

    private static List<String> words() {
        return List.of(
                "true",
                "no",
                "2026-02-30",
                "31 February",
                "x".repeat(LONG),
                "'" + "a b ".repeat(LONG / 4) + "'",
                "a",
                "b",
                "nobody",
                "wall",
                "floor",
                "touch",
                "a.face",
                "a.face.face",
                "b.top + b.top",
                "'a + b'",
                "'.'",
                "'...'",
                "'a.'",
                "KEY",
                "../../x",
                "'<b>&amp;</b>'",
                "'\"><script>'",
                "'%s%n%x'",
                "'=1+1'",
                "'${x}'",
                "'\\'",
                "\"\\\\0\"",
                "🪚📐",
                "'מידה שלום'",
                "'مرحبا'",
                "\"e\\u0301\\u0301\\u0323\"",
                "'# no comment'",
                "- - -",
                "\"\\uFFFF\"",
                "'a, b'");
    }

    private static List<String> structures() {
        return List.of(
                "1\nKEY: 2",
                "&x 1",
                "*x",
                "&x [*x]",
                "&x { KEY: *x }",
                "{ <<: *x }",
                "{ <<: { name: b } }",
                "&a1 [1, 2]",
                "!!java.lang.Runtime x",
                "!!javax.script.ScriptEngineManager [x]",
                "!!int 3",
                "!!float x",
                "!!binary aGk=",
                "!!null ''",
                "!!map []",
                "!own 3",
                "!<tag:x,2026:y> 3",
                "|\n  two\n  lines",
                ">-\n  folded\n  lines",
                "|2\n    deep",
                "? a\n: b",
                "[a",
                "{ a: 1",
                "\"open",
                "\t1",
                "%TAG",
                "@at",
                "`tick`",
                "---",
                "...",
                "{ a: 1, a: 2 }",
                "[" + "[".repeat(60) + "]".repeat(61),
                "{ \"\": 1 }",
                "{ ? [1, 2] : 3 }");
    }

    /** As YAML escapes them within quotes, all control characters in one; halves of a letter pair among them. */
    static List<String> marks() {
        List<String> marks = new ArrayList<>();
        StringBuilder controls = new StringBuilder();
        for (int control = 0; control < 0x20; control++) {
            controls.append("\\x%02X".formatted(control));
        }
        marks.add(controls.toString());
        marks.addAll(List.of(
                "\\x7F",
                "\\x85",
                "\\x9B31m",
                "\\u202E",
                "\\u202A",
                "\\u2028",
                "\\u2029",
                "\\u200B",
                "\\u2060",
                "\\uFEFF",
                "\\u2066",
                "\\xAD",
                "\\uD800",
                "\\uDC00",
                "\\U000E0041",
                "\\u3164",
                "\\u115F",
                "\\U0001D173",
                "\\x1B]0;x\\x07"));
        return marks;
    }
}
