package org.riseandgel.clearance.pages;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.riseandgel.clearance.Appeals;
import org.riseandgel.clearance.PersonRecord;

/**
 * An appeal that waits.
 *
 * @param name whose it is
 * @param reasons what the person wrote
 * @param against the decision; null when it was erased
 */
public record AppealView(UUID id, UUID person, String name, Instant at, List<String> reasons, LineView against) {
    static AppealView of(Appeals.Waiting waiting, PersonRecord records) {
        PersonRecord.RecordLine own = records.line(waiting.id()).orElseThrow();
        return new AppealView(
                waiting.id(),
                waiting.person(),
                own.names().getOrDefault(waiting.person(), "Unknown person"),
                waiting.at(),
                own.notes(),
                records.line(waiting.against()).map(LineView::of).orElse(null));
    }
}
