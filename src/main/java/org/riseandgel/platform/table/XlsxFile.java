package org.riseandgel.platform.table;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes a table as a sheet of Office Open XML (ISO/IEC 29500). Texts are written as texts and never as formulas, so
 * nothing in them can be worked out.
 */
public final class XlsxFile {
    private static final int FLUSH_EVERY = 500;

    private XlsxFile() {}

    /** Writes the table and closes its rows. */
    public static void write(Table table, OutputStream out) {
        try (var rows = table.rows();
                Workbook book = new Workbook(out, "Rise and Gel", "1.0")) {
            Worksheet sheet = book.newWorksheet(table.name());
            for (int i = 0; i < table.columns().size(); i++) {
                sheet.value(0, i, table.columns().get(i).title());
            }
            sheet.range(0, 0, 0, table.columns().size() - 1).style().bold().set();
            sheet.freezePane(0, 1);
            fill(table, sheet, rows.iterator());
            sheet.finish();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void fill(Table table, Worksheet sheet, Iterator<List<Object>> rows) throws IOException {
        for (int at = 1; rows.hasNext(); at++) {
            List<Object> row = rows.next();
            table.check(row);
            for (int i = 0; i < row.size(); i++) {
                if (row.get(i) instanceof Number number) {
                    sheet.value(at, i, number);
                } else if (row.get(i) instanceof String text) {
                    sheet.value(at, i, text);
                }
            }
            if (at % FLUSH_EVERY == 0) {
                sheet.flush();
            }
        }
    }
}
