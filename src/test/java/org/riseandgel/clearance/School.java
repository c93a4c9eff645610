package org.riseandgel.clearance;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.Roles;
import org.riseandgel.account.office.Enrolment;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Means;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.StepSeen;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;

/**
 * People, a scope and a sheet of a test's own within the demo school, and the way to a clearance through the services.
 * Everything is written down now, as people do; what happened before is entered late.
 */
@ApplicationScoped
public class School {

    private final Enrolment enrolment;
    private final EvidenceDesk evidence;
    private final SettingsDesk settings;
    private final Decisions decisions;
    private final Register register;
    private final Clock clock;

    School(
            Enrolment enrolment,
            EvidenceDesk evidence,
            SettingsDesk settings,
            Decisions decisions,
            Register register,
            Clock clock) {
        this.enrolment = enrolment;
        this.evidence = evidence;
        this.settings = settings;
        this.decisions = decisions;
        this.register = register;
        this.clock = clock;
    }

    /**
     * Who and what a test works with.
     *
     * @param lead a safety lead who is qualified for nothing
     */
    public record Cast(
            UUID learner,
            UUID trainer,
            UUID observer,
            UUID decider,
            UUID lead,
            Scope scope,
            UUID revision,
            Substance salt) {}

    /** Everybody qualified since now, of age but for the learner, whose age is not known; a scope of its own. */
    public Cast cast(Set<Task> tasks) {
        String mark = UUID.randomUUID().toString().substring(0, 8);
        Substance salt = new Substance("Sodium hexafluorosilicate", "16893-85-9", "Supplier " + mark);
        UUID learner = person(Roles.APPRENTICE);
        UUID trainer = person(Roles.INSTRUCTOR);
        UUID observer = person(Roles.INSTRUCTOR);
        UUID decider = person(Roles.SAFETY_LEAD);
        UUID lead = person(Roles.SAFETY_LEAD);
        qualify(trainer, Act.TRAIN);
        qualify(observer, Act.OBSERVE);
        qualify(decider, Act.DECIDE);
        UUID scope = settings.defineScope(
                lead, "Dispersion " + mark, salt, Form.DISPERSION, EnumSet.copyOf(tasks), "Room " + mark, false);
        UUID revision = sheet(lead, salt, "1.0", Set.of(), null);
        Scope defined = register.scopes().stream()
                .filter(one -> one.id().equals(scope))
                .findFirst()
                .orElseThrow();
        return new Cast(learner, trainer, observer, decider, lead, defined, revision, salt);
    }

    /** All that a grant needs: age, training, sittings, sheet, equipment, practicals. */
    public void evidence(Cast cast) {
        evidence.age(cast.lead(), cast.learner(), LocalDate.of(1995, 5, 14));
        training(cast, cast.trainer());
        sittings(cast);
        evidence.sheetRead(cast.learner(), cast.revision());
        equipment(cast);
        practicals(cast);
    }

    public UUID training(Cast cast, UUID trainer) {
        return evidence.training(
                cast.lead(), cast.learner(), trainer, cast.salt(), now(), "Hazards of the salt", means());
    }

    public void sittings(Cast cast) {
        SittingsForTests.handIn(cast.learner(), now().minus(Duration.ofHours(49)), 12, 0);
        SittingsForTests.handIn(cast.learner(), now().minus(Duration.ofHours(2)), 11, 0);
    }

    public void equipment(Cast cast) {
        evidence.equipment(
                cast.observer(),
                cast.learner(),
                Form.DISPERSION,
                cast.observer(),
                register.policy().orElseThrow().ppeFor(Form.DISPERSION).orElseThrow(),
                now(),
                means());
    }

    public void practicals(Cast cast) {
        Policy policy = register.policy().orElseThrow();
        for (Checklist list : policy.checklistsFor(cast.scope())) {
            UUID practical = practical(cast, list, StepSeen.Outcome.UNPROMPTED);
            evidence.acknowledge(cast.learner(), practical);
        }
    }

    public UUID practical(Cast cast, Checklist list, StepSeen.Outcome outcome) {
        return evidence.practical(
                cast.observer(),
                new EvidenceDesk.Practical(
                        cast.learner(),
                        cast.scope().id(),
                        cast.observer(),
                        now().minus(1, ChronoUnit.MICROS),
                        now(),
                        cast.scope().room(),
                        Evidence.ObservationRecorded.Material.STAND_IN,
                        list.id(),
                        list.steps().stream()
                                .map(step -> new StepSeen(step.id(), step.critical(), outcome))
                                .toList(),
                        "Steady hands.",
                        means()));
    }

    /** A cast whose learner is cleared. */
    public Cast cleared(Set<Task> tasks) {
        Cast cast = cast(tasks);
        evidence(cast);
        grant(cast);
        return cast;
    }

    public Decisions.Outcome grant(Cast cast) {
        Decisions.Outcome outcome =
                decisions.grant(cast.decider(), cast.learner(), cast.scope().id(), null);
        if (!outcome.given()) {
            throw new AssertionError("not granted: " + outcome.judgement().needs());
        }
        return outcome;
    }

    public UUID sheet(UUID lead, Substance salt, String label, Set<Integer> changed, LocalDate due) {
        byte[] content = (salt.supplier() + " " + label).getBytes(java.nio.charset.StandardCharsets.UTF_8);
        return settings.fileSheet(
                lead,
                new SettingsDesk.Sheet(
                        salt, label, LocalDate.of(2026, 1, 1), "sheet.txt", "text/plain", content, changed, due));
    }

    public void qualify(UUID person, Act act) {
        settings.qualify(DemoPeople.OFFICE, person, act, LocalDate.now(clock).plusDays(300), "For a test");
    }

    /** Somebody new with a role, of age unless a learner. */
    public UUID person(String role) {
        UUID id = UUID.randomUUID();
        QuarkusTransaction.joiningExisting()
                .run(() -> enrolment.add(List.of(new Enrolment.NewPerson(
                        id,
                        "r" + id.toString().substring(0, 12),
                        "Person " + id.toString().substring(0, 6),
                        "-",
                        null,
                        List.of(role),
                        null))));
        return id;
    }

    public static Means means() {
        return new Means(Means.How.DEMONSTRATION, null, "English", false);
    }

    /** Now, in the steps that the database keeps. */
    public Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
