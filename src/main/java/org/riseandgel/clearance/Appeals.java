package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.Keeping;

/** The appeals that wait for somebody who was not in the decision that they are against. */
@ApplicationScoped
public class Appeals {
    private final Ledger ledger;

    Appeals(Ledger ledger) {
        this.ledger = ledger;
    }

    /**
     * An appeal that nobody has decided yet.
     *
     * @param against the line of the decision
     */
    public record Waiting(UUID id, Instant at, UUID person, UUID against) {}

    /** All that wait, oldest first. */
    public List<Waiting> open() {
        List<Event> events = Histories.events(ledger.ofKinds("appeal-lodged", "appeal-decided", "corrected"));
        Set<UUID> annulled = new HashSet<>();
        Set<UUID> decided = new HashSet<>();
        for (Event event : events) {
            if (event.body() instanceof Keeping.Corrected said && said.replacement() == null) {
                annulled.add(said.event());
            }
        }
        for (Event event : events) {
            if (event.body() instanceof Decision.AppealDecided said && !annulled.contains(event.id())) {
                decided.add(said.appeal());
            }
        }
        return events.stream()
                .filter(event -> event.body() instanceof Decision.AppealLodged && !decided.contains(event.id()))
                .map(event -> {
                    Decision.AppealLodged said = (Decision.AppealLodged) event.body();
                    return new Waiting(event.id(), event.recorded(), said.person(), said.against());
                })
                .toList();
    }

    /** The one with this id, if it still waits. */
    public Optional<Waiting> open(UUID appeal) {
        return open().stream().filter(one -> one.id().equals(appeal)).findFirst();
    }
}
