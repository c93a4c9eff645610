package org.riseandgel.clearance.pages;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.rule.Keeping;

/**
 * A correction that waits for a second person.
 *
 * @param line the line that is said to be wrong
 * @param by who asked for it
 * @param name the name of who asked
 * @param right when it really happened; null when it did not happen
 * @param reasons what was given as the reason
 */
public record WaitingView(LineView line, UUID by, String name, Instant at, Instant right, List<String> reasons) {
    static WaitingView of(PersonRecord.RecordLine asked, LineView line) {
        Keeping.CorrectionAsked said = (Keeping.CorrectionAsked) asked.said();
        return new WaitingView(
                line,
                said.by(),
                asked.names().getOrDefault(said.by(), "Unknown person"),
                asked.recorded(),
                said.replacement() == null ? null : said.effective(),
                asked.notes());
    }
}
