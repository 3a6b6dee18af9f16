package org.ionohaul.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes texts that are nearly scenarios: takes one that is and changes a few of its values, units, lines and characters, so
 * that much of what comes out is still read to the end. Knows nothing of which keys mean what.
 */
final class TextMutator {
    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");
    private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z0-9-]*");
    private static final Pattern CELL = Pattern.compile("(?<=[,;])[^,;]*");
    private static final int MOST_CHANGES = 3;

    private static final List<String> NUMBERS = List.of(
            "0",
            "1",
            "-1",
            "0.000000001",
            "3",
            "255",
            "256",
            "300",
            "4096",
            "65536",
            "999999",
            "1000000",
            "2147483647",
            "2147483648",
            "9223372036854775807",
            "9223372036854775808",
            "99999999999999999999",
            "1e308",
            "1e-308",
            "nan",
            "inf",
            "1/99999999999999999999",
            "0.1",
            "1440",
            "86400");

    private static final List<String> UNITS = List.of(
            "ns", "us", "ms", "s", "min", "h", "B", "kB", "MB", "dB", "dBm", "Hz", "kHz", "Bd", "km", "%", "/h", "W");

    private static final List<String> CELLS = List.of(
            "",
            "8,3",
            "-0.0",
            "24:00",
            "23:59:59",
            "=1+1",
            "\"a\nb\"",
            "\u001b[2J",
            "9 dB ± 0 dB",
            "15 kB",
            "1 min up",
            "2031-02-30",
            "delivered",
            "broken-off",
            "never-linked",
            "1000 h",
            "0 s",
            "0 B",
            "near.snr",
            "label.x",
            "trials",
            "modes");

    private static final List<String> VALUES = List.of(
            "\"\"",
            "[]",
            "[[]]",
            "{}",
            "true",
            "\"S9+60\"",
            "\"S\"",
            "\"1 dB ± 0 dB\"",
            "\"1 dB .. 9 dB\"",
            "\"3/0\"",
            "\"1 h 30 min\"",
            "\"23:59:59\"",
            "\"=1+1\"",
            "\"\\u001b[2J\"",
            "\"\\u202Etxt\"",
            "\"../../../../x\"",
            "\"con\"",
            "[{ value = \"1 dB\", weight = 2 }]",
            "1979-05-27",
            "'''x'''",
            "\"0 dB: 50 %\"",
            "[\"1 dB: 90 %\", \"2 dB: 1 %\"]",
            "\"1e3 s\"",
            "\"0.1 ms\"",
            "\"1000 h\"",
            "\"999999 /h\"",
            "\"1 GB\"",
            "\"1000 MB\"",
            "\"omniscient\"",
            "\"4-fsk\"",
            "\"9 dB over noise\"",
            "\"S3 .. S9\"",
            "\"mid-latitude\"",
            "\"notch\"",
            "\"blanker\"",
            "{ file = \"orchard-evening.csv\" }",
            "\"orchard-net.csv\"");

    private static final List<String> PIECES = List.of(
            "\"",
            "'",
            "\"\"\"",
            "[",
            "]",
            "{",
            "}",
            "=",
            ".",
            ",",
            "#",
            "\\",
            "\n",
            "\r",
            "\u0000",
            "\u001b",
            "\u202e",
            "\ufeff",
            "\ud83d\ude00",
            "é",
            " ",
            "\t",
            "-",
            "±",
            "..",
            "/",
            ":",
            "[[transfer]]\n",
            "[near]\n",
            "[[near.interference]]\n",
            "[rate-policy]\n",
            "[sky.drop-outs]\n",
            "[near.tuning]\n",
            "[sky.sporadic-e]\n",
            "[near.impulses]\n",
            "[near.measured]\n",
            "[sky.ground-wave]\nover-ground = \"9 km\"\n",
            "day-to-day = \"high-latitude\"\n",
            "[[rate]]\n",
            "x = 1\n");

    private final List<String> texts;
    private final Random chance;

    /**
     * Makes a mutator.
     *
     * @param texts what to begin with
     * @param seed the same seed makes the same texts
     */
    TextMutator(List<String> texts, long seed) {
        this.texts = texts.stream().map(TextMutator::withoutComments).toList();
        this.chance = new Random(seed);
    }

    /** Comments cost time and hide no fault. */
    private static String withoutComments(String text) {
        return text.replaceAll("(?m)^#(?!###).*\\n", "");
    }

    /** Returns another text. */
    String next() {
        List<String> lines = new ArrayList<>(List.of(one(texts).split("\n", -1)));
        for (int changes = 1 + chance.nextInt(1 + chance.nextInt(MOST_CHANGES)); changes > 0; changes--) {
            change(lines);
        }
        return String.join("\n", lines);
    }

    private void change(List<String> lines) {
        int at = chance.nextInt(lines.size());
        String line = lines.get(at);
        switch (chance.nextInt(12)) {
            case 0, 1, 2 -> lines.set(at, replaced(NUMBER, line, one(NUMBERS)));
            case 3 -> lines.set(at, replaced(WORD, line, one(UNITS)));
            case 4, 5 ->
                lines.set(
                        at,
                        line.contains("=")
                                ? line.replaceFirst("=.*", Matcher.quoteReplacement("= " + one(VALUES)))
                                : replaced(CELL, line, one(CELLS)));
            case 6 -> lines.set(at, replaced(NUMBER, line, String.valueOf(chance.nextInt(100))));
            case 7 -> lines.add(at, one(List.of(one(texts).split("\n"))));
            case 8 -> lines.set(at, one(List.of(one(texts).split("\n"))));
            case 9 ->
                lines.addAll(at, List.copyOf(lines.subList(at, Math.min(lines.size(), at + 1 + chance.nextInt(8)))));
            case 10 -> {
                if (lines.size() > 1) {
                    lines.remove(at);
                }
            }
            default -> {
                int column = chance.nextInt(line.length() + 1);
                int end = Math.min(line.length(), column + chance.nextInt(3));
                lines.set(at, line.substring(0, column) + one(PIECES) + line.substring(end));
            }
        }
    }

    /** Returns a line with one of the matches of a pattern replaced. */
    private String replaced(Pattern pattern, String line, String by) {
        List<MatchResult> matches = pattern.matcher(line).results().toList();
        if (matches.isEmpty()) {
            return line;
        }
        MatchResult match = one(matches);
        return line.substring(0, match.start()) + by + line.substring(match.end());
    }

    private <T> T one(List<T> many) {
        return many.get(chance.nextInt(many.size()));
    }
}
