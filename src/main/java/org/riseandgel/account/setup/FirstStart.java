package org.riseandgel.account.setup;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.start.StartSettings;

/** What happens when the program starts: with no school it fills in the demo, if asked to, or offers to set one up. */
@ApplicationScoped
class FirstStart {
    private final Founding founding;
    private final SetUpKey key;
    private final SchoolSettings settings;
    private final StartSettings start;

    FirstStart(Founding founding, SetUpKey key, SchoolSettings settings, StartSettings start) {
        this.founding = founding;
        this.key = key;
        this.settings = settings;
        this.start = start;
    }

    void atStart(@Observes StartupEvent event) {
        if (!founding.isFounded() && start.demo()) {
            founding.foundDemo();
        }
        if (!founding.isFounded()) {
            key.make();
        }
        settings.school();
    }
}
