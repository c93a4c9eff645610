package org.riseandgel.exercise;

import java.util.List;

/**
 * What a form needs to ask for a choice. It knows places only: nothing in it tells one option from another but its words.
 *
 * @param kind the kind of exercise by its name in files
 * @param instruction how it is answered
 * @param picture the drawing that is asked about, or null
 * @param rows what is shown, in the order shown
 * @param entries what can be chosen for a row; empty where the rows themselves are chosen
 */
public record ChoiceView(String kind, String instruction, Picture picture, List<Row> rows, List<Entry> entries) {
    public ChoiceView {
        rows = List.copyOf(rows);
        entries = List.copyOf(entries);
    }

    /** One thing shown: its letter or number on the page, its words, and its drawing, or null. */
    public record Row(String mark, String text, Picture picture) {}

    /** Something that can be chosen for a row: its letter or number, and its words, which may be the same. */
    public record Entry(String mark, String text) {}

    static ChoiceView of(ExerciseKind kind, List<Row> rows, List<Entry> entries) {
        return new ChoiceView(kind.id(), kind.instruction(), null, rows, entries);
    }

    ChoiceView about(Picture drawing) {
        return new ChoiceView(kind, instruction, drawing, rows, entries);
    }

    /** Whether exactly one row is chosen. */
    public boolean isOne() {
        return kind.equals(ExerciseKind.CHOOSE_ONE.id());
    }

    /** Whether any number of rows is chosen. */
    public boolean isAll() {
        return kind.equals(ExerciseKind.CHOOSE_ALL.id());
    }

    /** Whether a row is chosen in an answer as it was sent. */
    public boolean isChosen(Row row, String typed) {
        return Places.of(typed).contains(row.mark());
    }

    /** The entry that an answer as it was sent chooses for a row; empty when it chooses none. */
    public String entryFor(Row row, String typed) {
        return Places.entry(Places.of(typed), rows.indexOf(row)).orElse("");
    }
}
