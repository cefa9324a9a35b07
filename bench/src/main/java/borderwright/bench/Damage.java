package borderwright.bench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** One garden, damaged one to four times in ways that people, programs and disks damage files. */
final class Damage {
    private static final List<String> STRANGE = List.of(
            "\t",
            "\0",
            "\"",
            "'",
            "[",
            "]",
            "{",
            "}",
            "&a ",
            "*a",
            "!!int ",
            ": ",
            "- ",
            "#",
            "|",
            ">",
            "%",
            "@",
            "`",
            "?",
            "\u00e9",
            "\ud83c\udf31",
            "\u2028",
            "\r",
            "\r\n",
            "\n",
            "---\n",
            "...\n",
            "\\x",
            "<<: ",
            "~",
            "null",
            "yes");
    private static final List<String> NUMBERS = List.of(
            "0",
            "-1",
            "1e999999999",
            ".inf",
            ".nan",
            "0x1F",
            "1_000",
            "1,850",
            "00",
            "999999999999999999999999",
            "0.0000001",
            "1/0",
            "1/3",
            "-",
            "1:30",
            "\u00bd",
            "4.8 m",
            "6' 4 1/2\"",
            "90 deg");

    private final List<byte[]> gardens;
    private final Random random;

    Damage(List<byte[]> gardens, long seed) {
        this.gardens = gardens;
        this.random = new Random(seed);
    }

    byte[] document() {
        byte[] bytes = gardens.get(random.nextInt(gardens.size()));
        for (int times = 1 + random.nextInt(4); times > 0; times--) {
            bytes = random.nextInt(8) == 0
                    ? flipped(bytes)
                    : edited(text(bytes)).getBytes(StandardCharsets.UTF_8);
        }
        return bytes;
    }

    private byte[] flipped(byte[] bytes) {
        byte[] copy = bytes.clone();
        if (copy.length > 0) {
            copy[random.nextInt(copy.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return copy;
    }

    private String edited(String text) {
        int at = random.nextInt(text.length() + 1);
        return switch (random.nextInt(10)) {
            case 0 -> text.substring(0, at) + text.substring(Math.min(text.length(), at + 1 + random.nextInt(20)));
            case 1 -> text.substring(0, at) + one(STRANGE) + text.substring(at);
            case 2 -> random.nextInt(4) == 0 ? text.substring(0, at) : withLines(text, 0);
            case 3 -> withLines(text, 1);
            case 4 -> withLines(text, 2);
            case 5 -> withLines(text, 3);
            case 6 -> withToken(text, one(NUMBERS));
            case 7 -> withToken(text, tokenOf(text(gardens.get(random.nextInt(gardens.size())))));
            case 8 -> withToken(text, "");
            default -> withNumber(text);
        };
    }

    /** A line doubled, taken out, swapped with another, or indented otherwise. */
    private String withLines(String text, int way) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        switch (way) {
            case 0 -> lines.add(random.nextInt(lines.size()), lines.get(at));
            case 1 -> lines.remove(at);
            case 2 -> Collections.swap(lines, at, random.nextInt(lines.size()));
            default ->
                lines.set(at, " ".repeat(random.nextInt(6)) + lines.get(at).strip());
        }
        return String.join("\n", lines);
    }

    /** Some word, number or mark replaced. */
    private String withToken(String text, String by) {
        int[] token = token(text);
        return text.substring(0, token[0]) + by + text.substring(token[1]);
    }

    private String tokenOf(String text) {
        int[] token = token(text);
        return text.substring(token[0], token[1]);
    }

    /** Start and end of the word around a place chosen at random. */
    private int[] token(String text) {
        int at = random.nextInt(text.length() + 1);
        int from = at;
        while (from > 0 && isWord(text.charAt(from - 1))) {
            from--;
        }
        int to = at;
        while (to < text.length() && isWord(text.charAt(to))) {
            to++;
        }
        return new int[] {from, to};
    }

    private static boolean isWord(char c) {
        return Character.isLetterOrDigit(c) || c == '.' || c == '-';
    }

    /** Some digit changed, doubled or made very many. */
    private String withNumber(String text) {
        int at = random.nextInt(text.length() + 1);
        while (at < text.length() && !Character.isDigit(text.charAt(at))) {
            at++;
        }
        if (at >= text.length()) {
            return text;
        }
        String digits = String.valueOf(random.nextInt(10)).repeat(random.nextInt(6) == 0 ? random.nextInt(400) : 1);
        return text.substring(0, at) + digits + text.substring(at + random.nextInt(2));
    }

    private String one(List<String> of) {
        return of.get(random.nextInt(of.size()));
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
