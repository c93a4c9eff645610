package org.riseandgel.practice;

import java.time.Instant;
import java.util.UUID;

/**
 * What one exercise leaves to do, or has left lately.
 *
 * @param held why it is held; null when it is not
 * @param lastHeld why it was held the last time, also when it is free again; null when it never was
 * @param heldAt when that began; null when it never was
 * @param sureWrong what is left to do about an answer that was sure and wrong; null when nothing is
 * @param draw the draw of that answer; null when there is none
 * @param part the part of that answer, from 0
 */
public record ToDo(
        String exercise,
        String skill,
        Held held,
        Held lastHeld,
        Instant heldAt,
        SureWrong sureWrong,
        UUID draw,
        int part) {
    private static final int FIELDS = 8;

    /** As SQL writes it into an array of texts; ids have no bar in them. */
    static final String TEXT =
            """
            concat_ws('|', exercise_id, skill, coalesce(held, ''), coalesce(last_held, ''),
                coalesce(to_char(held_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"'), ''),
                coalesce(sure_wrong, ''), coalesce(sure_wrong_draw::text, ''), sure_wrong_part)
            """;

    /** Which rows of the exercises' standings are worth it. */
    static final String WORTH_IT = "(held_at IS NOT NULL OR sure_wrong IS NOT NULL)";

    static ToDo of(String text) {
        String[] field = text.split("\\|", FIELDS);
        return new ToDo(
                field[0],
                field[1],
                DrawRows.named(Held.class, orNull(field[2])),
                DrawRows.named(Held.class, orNull(field[3])),
                field[4].isEmpty() ? null : Instant.parse(field[4]),
                DrawRows.named(SureWrong.class, orNull(field[5])),
                field[6].isEmpty() ? null : UUID.fromString(field[6]),
                Integer.parseInt(field[7]));
    }

    private static String orNull(String text) {
        return text.isEmpty() ? null : text;
    }

    /** Whether the exercise is held now. */
    public boolean isHeld() {
        return held != null;
    }

    /** Whether an answer that was sure and wrong is still open. */
    public boolean isSureWrong() {
        return sureWrong != null;
    }

    /** Whether its explanation has still to be looked at. */
    public boolean isToLookAt() {
        return sureWrong == SureWrong.LOOK;
    }
}
