package org.riseandgel.account.setup;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.riseandgel.account.Roles;
import org.riseandgel.account.SchoolFounded;
import org.riseandgel.account.office.Enrolment;
import org.riseandgel.account.office.Enrolment.NewPerson;
import org.riseandgel.account.password.Passwords;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.school.School;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.sql.Sql;

/**
 * Sets the school up, once, and erases the demo school. Erasing is a function of the database, called by SQL, because
 * the application itself has no right to delete.
 */
@ApplicationScoped
public class Founding {
    private static final String DEMO_EMERGENCY =
            "In this demo nobody is on call. A real school writes its number here.";

    private final SchoolSettings settings;
    private final Enrolment enrolment;
    private final Passwords passwords;
    private final AuditLog audit;
    private final Event<SchoolFounded> founded;
    private final Sql sql;
    private final String host;

    Founding(
            SchoolSettings settings,
            Enrolment enrolment,
            Passwords passwords,
            AuditLog audit,
            Event<SchoolFounded> founded,
            Sql sql,
            @ConfigProperty(name = "quarkus.http.host", defaultValue = "127.0.0.1") String host) {
        this.settings = settings;
        this.enrolment = enrolment;
        this.passwords = passwords;
        this.audit = audit;
        this.founded = founded;
        this.sql = sql;
        this.host = host;
    }

    /** The first account of a school. */
    record FirstAccount(String displayName, String signInName, String password) {}

    /** Whether there is a school, asked of the database itself. */
    public boolean isFounded() {
        return settings.isFounded();
    }

    /** Whether the demo school may be shown: only to this computer. */
    boolean mayBeDemo() {
        return Loopback.is(host);
    }

    /** Sets up a school with one account for the office; a second school is refused by the database. */
    @Transactional
    void found(School school, FirstAccount first) {
        settings.found(school);
        UUID id = UUID.randomUUID();
        enrolment.add(List.of(new NewPerson(
                id,
                first.signInName(),
                first.displayName(),
                passwords.hash(first.password()),
                null,
                List.of(Roles.OFFICE),
                null)));
        founded.fire(new SchoolFounded(false));
        audit.note(id, "school-founded", id.toString(), school.name());
    }

    /** Fills in the demo school. */
    @Transactional
    public void foundDemo() {
        if (!mayBeDemo()) {
            throw new IllegalStateException(
                    "The demo school is shown on this computer only, and the program listens on " + host
                            + ". Set quarkus.http.host to 127.0.0.1, or start without the demo.");
        }
        settings.found(new School(
                "Kiln Lane Workshop School (demo)", ZoneId.systemDefault(), DecimalMark.POINT, DEMO_EMERGENCY, true));
        founded.fire(new SchoolFounded(true));
        audit.note(null, "demo-filled", "school", "");
    }

    /** Erases the demo school with everybody and everything in it; refused for any other school. */
    @Transactional
    public void eraseDemo() {
        sql.first("SELECT erase_demo() IS NULL AS done", row -> true);
        settings.forget();
    }
}
