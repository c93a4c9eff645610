package org.riseandgel.grading;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jboss.logging.Logger;

/**
 * Does the jobs that judge again, in the background and a few answers at a time. What is done is stored with each few;
 * a node that starts goes on with what another left.
 */
@ApplicationScoped
class RegradeWorker {
    private static final Logger LOG = Logger.getLogger(RegradeWorker.class);
    private static final int AT_ONCE = 25;

    private final RegradeStore store;
    private final Regrades regrades;
    private final Set<UUID> atWork = ConcurrentHashMap.newKeySet();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread made = new Thread(work, "judging-again");
        made.setDaemon(true);
        return made;
    });

    RegradeWorker(RegradeStore store, Regrades regrades) {
        this.store = store;
        this.regrades = regrades;
    }

    void goOn(@Observes StartupEvent started) {
        store.atWork().forEach(job -> goOn(job.id()));
    }

    /** Goes on with a job, unless this node is at it already. */
    void goOn(UUID job) {
        if (atWork.add(job)) {
            thread.execute(() -> work(job));
        }
    }

    private void work(UUID job) {
        try {
            while (QuarkusTransaction.requiringNew().call(() -> step(job))) {
                // Each turn is a transaction of its own.
            }
        } catch (RuntimeException e) {
            LOG.errorf(e, "Judging again stopped; it goes on when its page is opened or the program starts: %s", job);
        } finally {
            atWork.remove(job);
        }
    }

    private boolean step(UUID job) {
        return store.find(job)
                .filter(RegradeStore.Job::isAtWork)
                .map(found -> regrades.step(found, AT_ONCE))
                .orElse(false);
    }

    @PreDestroy
    void stop() {
        thread.shutdownNow();
    }
}
