package org.riseandgel.clearance.pages;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.rule.Decision;

/**
 * A line of the register as a page shows it.
 *
 * @param what its kind in words
 * @param people the names that stand in it
 * @param appealable whether it is a decision that its person may appeal
 */
public record LineView(
        long number,
        UUID id,
        String what,
        Instant effective,
        Instant recorded,
        String people,
        List<String> notes,
        String text,
        boolean corrected,
        boolean singleInstructor,
        boolean appealable) {
    static LineView of(PersonRecord.RecordLine line) {
        String words = line.kind().replace('-', ' ').replaceAll("\\bsds\\b", "SDS");
        return new LineView(
                line.number(),
                line.id(),
                words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1),
                line.effective(),
                line.recorded(),
                String.join(", ", line.names().values()),
                line.notes(),
                line.text(),
                line.corrected(),
                line.singleInstructor(),
                line.said() instanceof Decision && !(line.said() instanceof Decision.AppealLodged));
    }
}
