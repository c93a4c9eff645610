package org.riseandgel.clearance;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Judgement;
import org.riseandgel.clearance.rule.Means;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Proposal;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.clearance.rule.StepSeen;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.clearance.rule.Versions;
import org.riseandgel.exercise.CoreVersion;

/** What happens to one person after another on the way to a clearance in the demo school. */
final class DemoStory {
    private static final String POOL = "demo";
    private static final UUID SHEET = DemoRegister.id(211);
    private static final String SHEET_TEXT = "Invented for the demo school. The supplier's own sheet belongs here.\n";

    private final DemoScribe scribe;
    private final Policy policy;
    private final Scope scope;

    DemoStory(DemoScribe scribe, Policy policy, Scope scope) {
        this.scribe = scribe;
        this.policy = policy;
        this.scope = scope;
    }

    /**
     * Who has which part.
     *
     * @param countersigner null when the decider took no other part
     */
    record Course(UUID trainer, UUID observer, UUID decider, String countersigner) {}

    LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, scribe.zone());
    }

    void fileSheet(Instant at) {
        String sha256 = scribe.file("sheet-1.txt", sheet(), at);
        scribe.write(
                DemoPeople.SAFETY_LEAD,
                at,
                new Setting.SdsFiled(
                        SHEET,
                        scope.substance(),
                        "1.0",
                        day(at).minusDays(30),
                        sha256,
                        Set.of(),
                        day(at).plusDays(14)));
    }

    void born(UUID person, LocalDate day, Instant at) {
        scribe.born(DemoPeople.SAFETY_LEAD, person, day, at);
    }

    void training(UUID person, Course course, Instant at) {
        scribe.write(
                course.trainer(),
                at,
                new Evidence.TrainingGiven(
                        person,
                        course.trainer(),
                        scope.substance(),
                        scribe.note(person, "Hazards of the salt, first aid, work with the dispersion.", at),
                        new Means(Means.How.ORAL, null, "English", false),
                        versions(policy.version())));
    }

    void sitting(UUID person, int right, Instant at) {
        scribe.write(
                null,
                at,
                new Evidence.SittingNoted(
                        person,
                        UUID.randomUUID(),
                        policy.knowledge().check(),
                        Evidence.SittingNoted.Kind.GATE,
                        at.minus(Duration.ofMinutes(25)),
                        at,
                        policy.knowledge().items(),
                        right,
                        0,
                        versions(POOL)));
    }

    void sheetRead(UUID person, Instant at) {
        scribe.write(person, at, new Evidence.SdsRead(person, SHEET, org.riseandgel.clearance.ledger.Seal.of(sheet())));
    }

    void equipment(UUID person, Course course, Instant at) {
        scribe.write(
                course.observer(),
                at,
                new Evidence.PpeShown(
                        person,
                        scope.form(),
                        course.observer(),
                        policy.ppeFor(scope.form()).orElseThrow(),
                        demonstration(),
                        versions(policy.version())));
    }

    void practicals(UUID person, Course course, Instant at) {
        Instant end = at;
        for (Checklist list : policy.checklistsFor(scope)) {
            UUID practical = scribe.write(
                            course.observer(),
                            end,
                            new Evidence.ObservationRecorded(
                                    person,
                                    scope.id(),
                                    course.observer(),
                                    end.minus(Duration.ofMinutes(20)),
                                    end,
                                    scope.room(),
                                    Evidence.ObservationRecorded.Material.STAND_IN,
                                    1,
                                    list.id(),
                                    steps(list),
                                    null,
                                    demonstration(),
                                    versions(list.version())))
                    .id();
            scribe.write(person, end.plusSeconds(60), new Evidence.ObservationAcknowledged(person, practical));
            end = end.plus(Duration.ofMinutes(30));
        }
    }

    void grant(UUID person, Course course, Instant at) {
        boolean countersigned = course.countersigner() != null;
        Judgement judgement = scribe.rule(person, course.decider(), at)
                .mayGrant(new Proposal(person, scope.id(), course.decider(), POOL, countersigned), at);
        if (!judgement.isAllowed()) {
            throw new IllegalStateException("the demo's clearance is not granted: " + judgement.needs());
        }
        scribe.write(
                course.decider(),
                at,
                new Decision.Granted(
                        person,
                        scope.id(),
                        course.decider(),
                        judgement.evidence(),
                        judgement.validThrough(),
                        judgement.sdsRevision(),
                        POOL,
                        judgement.policy(),
                        judgement.supervisor() != null,
                        countersigned ? scribe.note(person, course.countersigner(), at) : null,
                        judgement.renews()));
    }

    void handled(UUID person, Instant at) {
        scribe.write(DemoPeople.INSTRUCTOR, at, new Evidence.Handled(person, scope.id(), Task.WEIGH));
    }

    private static List<StepSeen> steps(Checklist list) {
        return list.steps().stream()
                .map(step -> new StepSeen(step.id(), step.critical(), StepSeen.Outcome.UNPROMPTED))
                .toList();
    }

    private static Means demonstration() {
        return new Means(Means.How.DEMONSTRATION, null, "English", false);
    }

    private static Versions versions(String pool) {
        return new Versions(POOL, pool, SHEET, CoreVersion.CURRENT);
    }

    private static byte[] sheet() {
        return SHEET_TEXT.getBytes(StandardCharsets.UTF_8);
    }
}
