package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.UUID;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Corrections;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Keeping;

/** Corrections: a new line that names the wrong one. The wrong one stays as it is. */
@ApplicationScoped
public class CorrectionDesk {
    private final Scribe scribe;

    CorrectionDesk(Scribe scribe) {
        this.scribe = scribe;
    }

    /**
     * Corrects a line.
     *
     * @param by who corrects
     * @param confirmedBy who has looked at it too; both are instructors or safety leads, and the line is about neither
     * @param wrong the line
     * @param when when it really happened; null when it did not happen
     * @param right what really happened; null when nothing did
     */
    @Transactional
    public UUID correct(UUID by, UUID confirmedBy, UUID wrong, Instant when, Body right, String reason) {
        scribe.needStaff(by);
        scribe.needStaff(confirmedBy);
        Instant at = scribe.now();
        Histories.Known known = scribe.all();
        Event event = known.events().stream()
                .filter(one -> one.id().equals(wrong))
                .findFirst()
                .orElseThrow(() -> RegisterProblem.with("event", "There is no such line."));
        if (event.body() instanceof Evidence.AgeSeen) {
            throw RegisterProblem.with("event", "A wrong date of birth is put right by entering the right one.");
        }
        if (when != null && when.isAfter(at)) {
            throw RegisterProblem.with("when", "This has not happened yet; give a time that has passed.");
        }
        if (right instanceof Evidence.ObservationRecorded seen
                        && !seen.endedAt().equals(when)
                || right instanceof Evidence.SittingNoted sitting
                        && !sitting.handedInAt().equals(when)) {
            throw RegisterProblem.with("when", "Give the instant at which it ended; the line has that time.");
        }
        UUID about = event.body().subject().orElse(null);
        Keeping.Corrected tried = new Keeping.Corrected(wrong, by, confirmedBy, when, right, null);
        Corrections.problem(tried, event).ifPresent(problem -> {
            throw RegisterProblem.with("event", problem);
        });
        return scribe.write(
                        by,
                        at,
                        new Keeping.Corrected(
                                wrong, by, confirmedBy, when, right, scribe.note(about, "reason", reason)))
                .id();
    }
}
