package org.riseandgel.clearance;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Status;

/**
 * Answers and their beginnings as a short text, a row for each, so that a question at a door reads only the row that it
 * needs. What cannot be read is no answer, and then nobody is cleared.
 */
final class KeptPieces {
    private static final String NONE = "-";
    private static final String BETWEEN = " ";
    private static final int FIELDS = 9;

    private KeptPieces() {}

    static String write(List<ClearanceRule.Piece> pieces) {
        return String.join("\n", pieces.stream().map(KeptPieces::row).toList());
    }

    /** The answer at an instant; empty before the first, and when the text is not what was written. */
    static Optional<Standing> at(String text, Instant when) {
        String found = null;
        for (String row : text.split("\n")) {
            int end = row.indexOf(BETWEEN);
            if (end < 0 || Instant.parse(row.substring(0, end)).isAfter(when)) {
                break;
            }
            found = row;
        }
        return Optional.ofNullable(found).map(KeptPieces::standing);
    }

    private static String row(ClearanceRule.Piece piece) {
        Standing standing = piece.standing();
        List<String> reasons = standing.reasons().stream().map(Reason::name).toList();
        return String.join(
                BETWEEN,
                piece.from().toString(),
                standing.status().name(),
                reasons.isEmpty() ? NONE : String.join(",", reasons),
                text(standing.scope()),
                text(standing.grant()),
                text(standing.validThrough()),
                text(standing.holdsUntil()),
                text(standing.singleInstructor()),
                text(standing.supervisor()));
    }

    private static Standing standing(String row) {
        String[] fields = row.split(BETWEEN, -1);
        if (fields.length != FIELDS) {
            throw new IllegalArgumentException("A kept answer has %d fields.".formatted(fields.length));
        }
        List<Reason> reasons = new ArrayList<>();
        if (!fields[2].equals(NONE)) {
            Arrays.stream(fields[2].split(",")).map(Reason::valueOf).forEach(reasons::add);
        }
        return new Standing(
                Status.valueOf(fields[1]),
                reasons,
                read(fields[3], UUID::fromString),
                read(fields[4], UUID::fromString),
                read(fields[5], LocalDate::parse),
                read(fields[6], Instant::parse),
                fields[7].equals("true"),
                read(fields[8], UUID::fromString));
    }

    private static String text(Object value) {
        return value == null ? NONE : value.toString();
    }

    private static <T> T read(String text, Function<String, T> reader) {
        return text.equals(NONE) ? null : reader.apply(text);
    }
}
