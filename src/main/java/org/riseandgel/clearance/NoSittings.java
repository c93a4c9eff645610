package org.riseandgel.clearance;

import io.quarkus.arc.DefaultBean;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.clearance.rule.Evidence;

/** As long as nobody keeps sittings, there are none, and no knowledge gate is passed. */
@DefaultBean
@ApplicationScoped
class NoSittings implements KnowledgeEvidence {
    @Override
    public List<Evidence.SittingNoted> handedIn(UUID person) {
        return List.of();
    }

    @Override
    public Optional<String> currentPool(String check) {
        return Optional.empty();
    }
}
