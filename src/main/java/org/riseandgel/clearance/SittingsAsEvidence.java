package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Versions;
import org.riseandgel.sitting.SittingRecord;
import org.riseandgel.sitting.Sittings;

/** The sittings of the checks that are for the register: before a clearance, and unannounced while cleared. */
@ApplicationScoped
class SittingsAsEvidence implements KnowledgeEvidence {
    private final Sittings sittings;

    SittingsAsEvidence(Sittings sittings) {
        this.sittings = sittings;
    }

    @Override
    public List<Evidence.SittingNoted> handedIn(UUID person) {
        List<Evidence.SittingNoted> all = new ArrayList<>();
        add(person, "clearance", Evidence.SittingNoted.Kind.GATE, all);
        add(person, "recall", Evidence.SittingNoted.Kind.RECALL, all);
        return all;
    }

    @Override
    public Optional<String> currentPool(String check) {
        return Optional.of(sittings.currentPoolVersion(check)).filter(version -> !version.isEmpty());
    }

    private void add(UUID person, String purpose, Evidence.SittingNoted.Kind kind, List<Evidence.SittingNoted> all) {
        for (String check : sittings.checksFor(purpose)) {
            sittings.of(person, check).stream()
                    .map(sitting -> noted(sitting, kind))
                    .forEach(all::add);
        }
    }

    private static Evidence.SittingNoted noted(SittingRecord sitting, Evidence.SittingNoted.Kind kind) {
        return new Evidence.SittingNoted(
                sitting.person(),
                sitting.id(),
                sitting.check(),
                kind,
                sitting.startedAt(),
                sitting.handedInAt(),
                sitting.items(),
                sitting.right(),
                sitting.criticalWrong(),
                new Versions(sitting.contentHash(), sitting.poolVersion(), null, sitting.coreVersion()));
    }
}
