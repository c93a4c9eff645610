package org.riseandgel.sitting;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.course.Check;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;

/** What other features may read of sittings: those that were handed in, which never change. */
@ApplicationScoped
public class Sittings {
    private final SittingStore store;
    private final CourseContent content;

    Sittings(SittingStore store, CourseContent content) {
        this.store = store;
        this.content = content;
    }

    /** The handed-in sittings of a person at a check, the one handed in last first. */
    public List<SittingRecord> of(UUID person, String check) {
        return store.of(person, check).stream()
                .filter(sitting -> !sitting.isOpen())
                .map(Sittings::evidence)
                .sorted((one, other) -> other.handedInAt().compareTo(one.handedInAt()))
                .toList();
    }

    /** The version that a sitting begun now would carry; empty text when there is no such check, which no sitting has. */
    public String currentPoolVersion(String check) {
        Content now = content.current();
        return now.check(check)
                .map(found -> Digests.poolVersion(found, now.exercises()))
                .orElse("");
    }

    /**
     * The ids of the exercises that are in an open sitting of the person. Whoever shows them elsewhere, with answers or
     * without, gives the sitting away.
     */
    public Set<String> askedNow(UUID person) {
        return store.askedNow(person);
    }

    /** The ids of the checks that serve a purpose, "clearance" or "recall", in the order of the course. */
    public List<String> checksFor(String purpose) {
        return content.current().checks().stream()
                .filter(check -> check.purpose().equals(purpose))
                .map(Check::id)
                .toList();
    }

    private static SittingRecord evidence(StoredSitting sitting) {
        StoredSitting.Result result = sitting.result();
        return new SittingRecord(
                sitting.id(),
                sitting.person(),
                sitting.check(),
                sitting.startedAt(),
                result.handedInAt(),
                sitting.items().size(),
                result.right(),
                result.criticalWrong(),
                result.passed(),
                sitting.pool(),
                result.contentHash(),
                result.coreVersion());
    }
}
