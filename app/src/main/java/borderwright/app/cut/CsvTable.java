package borderwright.app.cut;

import borderwright.engine.message.Message;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * One CSV file read row by row: a byte order mark, semicolons or tabs, quoted cells and decimal commas are understood.
 *
 * <p>Whether commas are decimal commas is decided once for the file, by its first number that holds a comma or a point.
 */
final class CsvTable {
    /** Called for each row; the cells are asked for by column name. */
    interface RowReader {
        void read(Row row);
    }

    private final Path path;
    private final String name;
    private final CutFaults faults;
    private final Map<String, Integer> columns = new HashMap<>();
    private char decimalMark;
    private long decimalMarkLine;

    CsvTable(Path path, CutFaults faults) {
        this.path = path;
        this.name = path.getFileName() == null
                ? path.toString()
                : path.getFileName().toString();
        this.faults = faults;
    }

    String name() {
        return name;
    }

    boolean has(String column) {
        return columns.containsKey(column);
    }

    /** The columns whose name is {@code length_} and a unit. */
    List<String> lengthColumns() {
        return columns.keySet().stream()
                .filter(c -> c.startsWith("length_"))
                .sorted()
                .toList();
    }

    /**
     * Reads the file.
     *
     * @param onHeader asked once the columns are known; says whether the rows are worth reading
     * @param onRow called for each row that is not empty
     */
    void read(BooleanSupplier onHeader, RowReader onRow) {
        try {
            String header = header();
            if (header.isBlank()) {
                faults.file(name, CutFaultMessage.FILE_EMPTY.of());
                return;
            }
            CsvMapper mapper =
                    CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
            CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator(header));
            try (MappingIterator<String[]> rows =
                    mapper.readerFor(String[].class).with(schema).readValues(Files.newBufferedReader(path))) {
                readRows(rows, onHeader, onRow);
            }
        } catch (NoSuchFileException e) {
            faults.file(name, CutFaultMessage.FILE_MISSING.of());
        } catch (CharacterCodingException e) {
            faults.file(name, CutFaultMessage.FILE_NOT_UTF8.of());
        } catch (JsonProcessingException e) {
            long line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            faults.file(name, CutFaultMessage.CSV_LINE_NOT_READ.of(line));
        } catch (IOException | RuntimeException e) {
            if (e instanceof RuntimeException r && !(e.getCause() instanceof IOException)) {
                throw r;
            }
            faults.file(name, CutFaultMessage.FILE_NOT_READ.of(String.valueOf(e.getMessage())));
        }
        if (decimalMark == ',') {
            faults.remark(name, CutFaultMessage.DECIMAL_COMMAS.of(decimalMarkLine));
        }
    }

    private String header() throws IOException {
        try (BufferedReader reader = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
            String line = reader.readLine();
            return line == null ? "" : withoutMark(line);
        }
    }

    private static String withoutMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** The separator that the header holds most of. */
    private static char separator(String header) {
        long semicolons = header.chars().filter(c -> c == ';').count();
        long tabs = header.chars().filter(c -> c == '\t').count();
        long commas = header.chars().filter(c -> c == ',').count();
        return semicolons > commas && semicolons >= tabs ? ';' : tabs > commas ? '\t' : ',';
    }

    private void readRows(MappingIterator<String[]> rows, BooleanSupplier onHeader, RowReader onRow)
            throws IOException {
        String[] header = rows.nextValue();
        for (int c = 0; c < header.length; c++) {
            String column = withoutMark(header[c]).trim().toLowerCase(Locale.ROOT);
            if (!column.isEmpty() && columns.putIfAbsent(column, c) != null) {
                faults.file(name, CutFaultMessage.COLUMN_TWICE.of(column));
            }
        }
        if (!onHeader.getAsBoolean()) {
            return;
        }
        while (true) {
            long line = rows.getParser().currentLocation().getLineNr();
            if (!rows.hasNextValue()) {
                return;
            }
            String[] cells = rows.nextValue();
            if (Arrays.stream(cells).anyMatch(cell -> !cell.isBlank())) {
                onRow.read(new Row(this, cells, line));
            }
        }
    }

    /** Whether a number written with this mark fits the rest of the file; the first one decides. */
    private boolean agrees(char mark, long line) {
        if (decimalMark == 0) {
            decimalMark = mark;
            decimalMarkLine = line;
        }
        return decimalMark == mark;
    }

    /** One row. */
    static final class Row {
        private final CsvTable table;
        private final String[] cells;
        private final long line;
        private boolean bad;

        Row(CsvTable table, String[] cells, long line) {
            this.table = table;
            this.cells = cells;
            this.line = line;
        }

        /** The cell of that column without blanks around it; empty when the row or the file lacks it. */
        String text(String column) {
            Integer c = table.columns.get(column);
            return c == null || c >= cells.length ? "" : cells[c].trim();
        }

        boolean isBad() {
            return bad;
        }

        void fault(Message message) {
            bad = true;
            table.faults.row(table.name, line, message);
        }

        /** A number as text with a decimal point, or empty when it breaks the rules (a fault is noted). */
        String number(String column, String what) {
            String text = text(column);
            boolean comma = text.indexOf(',') >= 0;
            boolean point = text.indexOf('.') >= 0;
            if (comma && point) {
                fault(CutFaultMessage.COMMA_AND_POINT.of(what, text));
                return "";
            }
            if ((comma || point) && !table.agrees(comma ? ',' : '.', line)) {
                fault(CutFaultMessage.DECIMAL_MARKS_DIFFER.of(
                        what, text, comma ? "comma" : "point", table.decimalMarkLine));
                return "";
            }
            return comma ? text.replace(',', '.') : text;
        }
    }
}
