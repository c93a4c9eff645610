package org.riseandgel.clearance;

import io.quarkus.test.Mock;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Versions;

/** Sittings that tests hand in without anybody sitting for twenty minutes. */
@Mock
@ApplicationScoped
public class SittingsForTests implements KnowledgeEvidence {
    public static final String CHECK = "safe-handling-check";
    public static final String POOL = "pool-of-the-tests";

    private static final Map<UUID, List<Evidence.SittingNoted>> HANDED_IN = new ConcurrentHashMap<>();

    /** Hands a sitting in. */
    public static void handIn(UUID person, Instant end, int right, int criticalWrong) {
        handIn(person, end, right, criticalWrong, Evidence.SittingNoted.Kind.GATE);
    }

    /** Hands a sitting of a kind in. */
    public static void handIn(UUID person, Instant end, int right, int criticalWrong, Evidence.SittingNoted.Kind kind) {
        HANDED_IN
                .computeIfAbsent(person, one -> new CopyOnWriteArrayList<>())
                .add(new Evidence.SittingNoted(
                        person,
                        UUID.randomUUID(),
                        CHECK,
                        kind,
                        end.minus(Duration.ofMinutes(20)),
                        end,
                        12,
                        right,
                        criticalWrong,
                        new Versions("content", POOL, null, "core")));
    }

    @Override
    public List<Evidence.SittingNoted> handedIn(UUID person) {
        return HANDED_IN.getOrDefault(person, List.of());
    }

    @Override
    public Optional<String> currentPool(String check) {
        return Optional.of(POOL);
    }
}
