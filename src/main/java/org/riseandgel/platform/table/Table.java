package org.riseandgel.platform.table;

import java.util.List;
import java.util.stream.Stream;

/**
 * A table that leaves the program, row by row, so that it need not fit into memory.
 *
 * @param name of the sheet, at most 31 letters
 * @param rows as many cells as there are columns: {@link String} in a column of text, {@link Number} in one of numbers,
 *     or null for nothing
 */
public record Table(String name, List<Column> columns, Stream<List<Object>> rows) {
    public Table {
        columns = List.copyOf(columns);
    }

    /** Refuses a row that does not fit its columns: a number must never leave as text, nor text as a number. */
    void check(List<Object> row) {
        if (row.size() != columns.size()) {
            throw new IllegalArgumentException("a row of " + row.size() + " cells for " + columns.size() + " columns");
        }
        for (int i = 0; i < row.size(); i++) {
            Object cell = row.get(i);
            Class<?> wanted = columns.get(i).kind() == Column.Kind.NUMBER ? Number.class : String.class;
            if (cell != null && !wanted.isInstance(cell)) {
                throw new IllegalArgumentException("column " + columns.get(i).title() + " does not take "
                        + cell.getClass().getSimpleName());
            }
        }
    }
}
