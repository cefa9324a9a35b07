package borderwright.pack.tables;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * One table: a head with the unit in each name, rows of as many cells.
 *
 * <p>UTF-8 with a byte order mark, without which the common spreadsheets take it for another encoding.
 */
final class CsvWriter {
    private static final String BYTE_ORDER_MARK = "\ufeff";

    /** A plain number may begin with a minus; anything else that begins like a formula may not. */
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    private final List<String> head;
    private final List<List<String>> rows = new ArrayList<>();

    CsvWriter(String... head) {
        this.head = List.of(head);
    }

    CsvWriter row(String... cells) {
        if (cells.length != head.size()) {
            throw new IllegalArgumentException("a row needs " + head.size() + " cells, got " + cells.length);
        }
        List<String> safe = new ArrayList<>();
        for (String cell : cells) {
            safe.add(safe(cell));
        }
        rows.add(safe);
        return this;
    }

    /** A row of which only some columns are known, by their heads; the others stay empty. */
    CsvWriter sparseRow(Map<String, String> cells) {
        if (!head.containsAll(cells.keySet())) {
            throw new IllegalArgumentException("columns are " + head + ", got " + cells.keySet());
        }
        return row(head.stream().map(column -> cells.getOrDefault(column, "")).toArray(String[]::new));
    }

    /** A cell that no spreadsheet takes for a formula. */
    static String safe(String cell) {
        String plain = cell.replace("\u0000", "");
        if (plain.isEmpty() || NUMBER.matcher(plain).matches()) {
            return plain;
        }
        // Full-width forms of the same signs are taken for formulas by some programs too.
        return "=+-@\t\r\n\uff1d\uff0b\uff0d\uff20".indexOf(plain.charAt(0)) >= 0 ? "'" + plain : plain;
    }

    byte[] bytes() {
        List<List<String>> all = new ArrayList<>();
        all.add(head);
        all.addAll(rows);
        CsvMapper mapper = CsvMapper.csvBuilder()
                .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
                .build();
        CsvSchema schema = CsvSchema.emptySchema().withLineSeparator("\r\n");
        try {
            String text = mapper.writer(schema).writeValueAsString(all);
            return (BYTE_ORDER_MARK + text).getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a table of texts cannot fail to be written", e);
        }
    }
}
