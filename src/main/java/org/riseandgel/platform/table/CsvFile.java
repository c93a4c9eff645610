package org.riseandgel.platform.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes a table as comma-separated values (RFC 4180, UTF-8).
 *
 * <p>A text that a spreadsheet would take for a formula begins with =, +, −, @ (also in their wide forms), a tab or an end of
 * a line; it gets an apostrophe in front (OWASP, "CSV Injection"). Numbers are numbers by their column and stay as they
 * are, −3 included.
 */
public final class CsvFile {
    private static final String FORMULA_BEGINS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20\t\r\n\0";

    private CsvFile() {}

    /** Writes the table and closes its rows. */
    public static void write(Table table, Writer out) {
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
                var rows = table.rows()) {
            printer.printRecord(table.columns().stream().map(Column::title).toList());
            rows.forEach(row -> print(printer, table, row));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void print(CSVPrinter printer, Table table, List<Object> row) {
        table.check(row);
        List<Object> cells = new ArrayList<>(row.size());
        row.forEach(cell -> cells.add(cell(cell)));
        try {
            printer.printRecord(cells);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Object cell(Object value) {
        if (value instanceof String text) {
            return harmless(text);
        }
        return value instanceof Number number ? plain(number) : value;
    }

    /** The text, with an apostrophe in front where a spreadsheet would work it out. */
    static String harmless(String text) {
        return !text.isEmpty() && FORMULA_BEGINS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String plain(Number number) {
        return number instanceof Double || number instanceof Float
                ? BigDecimal.valueOf(number.doubleValue()).stripTrailingZeros().toPlainString()
                : number.toString();
    }
}
