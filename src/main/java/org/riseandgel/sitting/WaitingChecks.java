package org.riseandgel.sitting;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.riseandgel.course.Check;
import org.riseandgel.course.CourseContent;

/**
 * The checks that wait for a person, for their first page: begun and not handed in, or a recall check that has come. Kept
 * for half a minute, so that the page stays quick; what was begun or handed in here is seen at once.
 */
@ApplicationScoped
public class WaitingChecks {
    private static final int PEOPLE_KEPT = 5_000;
    private static final Duration KEPT = Duration.ofSeconds(30);

    private final CourseContent content;
    private final SittingStore store;
    private final Recalls recalls;
    private final Cache<UUID, List<Waiting>> kept = Caffeine.newBuilder()
            .maximumSize(PEOPLE_KEPT)
            .expireAfterWrite(KEPT)
            .build();

    WaitingChecks(CourseContent content, SittingStore store, Recalls recalls) {
        this.content = content;
        this.store = store;
        this.recalls = recalls;
    }

    /** A check that waits, how many items it has, and whether it was begun. */
    public record Waiting(String check, String title, int items, boolean begun) {}

    /** What waits for the person, in the order of the course. */
    public List<Waiting> of(UUID person) {
        return kept.get(person, this::find);
    }

    /** To be called when a sitting of the person was begun or handed in. */
    void forget(UUID person) {
        kept.invalidate(person);
    }

    private List<Waiting> find(UUID person) {
        List<SittingStore.Begun> begun = store.begun(person);
        return content.current().checks().stream()
                .filter(check -> isOpen(check, begun) || hasCome(check, person, begun))
                .map(check -> new Waiting(check.id(), check.title(), check.items(), isOpen(check, begun)))
                .toList();
    }

    private static boolean isOpen(Check check, List<SittingStore.Begun> begun) {
        return begun.stream().anyMatch(one -> one.open() && one.check().equals(check.id()));
    }

    private boolean hasCome(Check check, UUID person, List<SittingStore.Begun> begun) {
        List<Instant> ofCheck = begun.stream()
                .filter(one -> one.check().equals(check.id()))
                .map(SittingStore.Begun::at)
                .toList();
        return check.isRecall() && recalls.waitingSince(check, person, ofCheck).isPresent();
    }
}
