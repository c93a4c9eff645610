package org.riseandgel.platform.table;

/**
 * A column of a table that leaves the program.
 *
 * @param kind TEXT is whatever people may have typed; NUMBER is a number or nothing; both decide how a cell is written
 */
public record Column(String title, Kind kind) {
    /** How the cells of a column are written. */
    public enum Kind {
        TEXT,
        NUMBER
    }

    public static Column text(String title) {
        return new Column(title, Kind.TEXT);
    }

    public static Column number(String title) {
        return new Column(title, Kind.NUMBER);
    }
}
