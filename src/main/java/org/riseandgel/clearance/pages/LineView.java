package org.riseandgel.clearance.pages;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.riseandgel.clearance.CorrectionDesk;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.rule.Decision;

/**
 * A line of the register as a page shows it.
 *
 * @param what its kind in words
 * @param readable whether what it says is there and can be read
 * @param people the names that stand in it
 * @param appealable whether it is a decision that its person may appeal
 * @param correctable whether a correction of it may be asked for
 */
public record LineView(
        long number,
        UUID id,
        String what,
        boolean readable,
        Instant effective,
        Instant recorded,
        String people,
        List<String> notes,
        String text,
        boolean corrected,
        boolean singleInstructor,
        boolean appealable,
        boolean correctable) {
    static LineView of(PersonRecord.RecordLine line) {
        return new LineView(
                line.number(),
                line.id(),
                words(line.kind()),
                line.said() != null,
                line.effective(),
                line.recorded(),
                String.join(", ", line.names().values()),
                line.notes(),
                line.text(),
                line.corrected(),
                line.singleInstructor(),
                line.said() instanceof Decision && !(line.said() instanceof Decision.AppealLodged),
                CorrectionDesk.mayCorrect(line.said()));
    }

    /** A kind of line in words. */
    static String words(String kind) {
        if (kind.equals(PersonRecord.ERASED)) {
            return "Erased when its time was over";
        }
        if (kind.equals(PersonRecord.UNREADABLE)) {
            return "Cannot be trusted: it does not match its hashes or cannot be read";
        }
        String words = kind.replace('-', ' ').replaceAll("\\bsds\\b", "SDS").replaceAll("\\bppe\\b", "PPE");
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
