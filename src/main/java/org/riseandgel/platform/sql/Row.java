package org.riseandgel.platform.sql;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;

/** One row of a query's result, read by column name. */
public final class Row {
    private final ResultSet at;

    Row(ResultSet at) {
        this.at = at;
    }

    public UUID uuid(String column) throws SQLException {
        return at.getObject(column, UUID.class);
    }

    public String text(String column) throws SQLException {
        return at.getString(column);
    }

    public int number(String column) throws SQLException {
        return at.getInt(column);
    }

    /** The number in the column, or null. */
    public Integer numberOrNull(String column) throws SQLException {
        int value = at.getInt(column);
        return at.wasNull() ? null : value;
    }

    public long longNumber(String column) throws SQLException {
        return at.getLong(column);
    }

    public double decimal(String column) throws SQLException {
        return at.getDouble(column);
    }

    /** The date in the column, or null. */
    public LocalDate date(String column) throws SQLException {
        return at.getObject(column, LocalDate.class);
    }

    /** The day and time of day in the column, or null. */
    public LocalDateTime dateTime(String column) throws SQLException {
        return at.getObject(column, LocalDateTime.class);
    }

    public boolean flag(String column) throws SQLException {
        return at.getBoolean(column);
    }

    /** The flag in the column, or null. */
    public Boolean flagOrNull(String column) throws SQLException {
        boolean value = at.getBoolean(column);
        return at.wasNull() ? null : value;
    }

    /** The moment in the column, or null. */
    public Instant instant(String column) throws SQLException {
        OffsetDateTime value = at.getObject(column, OffsetDateTime.class);
        return value == null ? null : value.toInstant();
    }

    /** The texts of an array column; empty for a null array. */
    public List<String> texts(String column) throws SQLException {
        Array array = at.getArray(column);
        return array == null ? List.of() : List.of((String[]) array.getArray());
    }
}
