package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;

/**
 * A register written down event by event, for tests of the rule: a school with one scope for powder and one for the
 * dispersion, qualified people, and everything that Lea needs for her grant on 4 March 2027 at 10:00. Tests leave something
 * out, change it or go on from there. Times are those of the school's zone.
 */
final class Story {
    static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    static final Substance SALT = new Substance("Sodium fluorosilicate", "16893-85-9", "Supplier A");
    static final UUID LEA = id(1);
    static final UUID TRAINER = id(2);
    static final UUID OBSERVER = id(3);
    static final UUID DECIDER = id(4);
    static final UUID LEAD = id(5);
    static final UUID OTHER = id(6);
    static final String POOL = "pool-1";
    static final Checklist WEIGH_OUT = new Checklist(
            "weigh-out",
            "Weigh-out",
            "list-1",
            Set.of(Form.POWDER, Form.DISPERSION),
            Set.of(Task.WEIGH, Task.DOSE, Task.DISPERSE),
            "made up",
            List.of(
                    new Checklist.Step("gloves", "Gloves on", true, List.of()),
                    new Checklist.Step("card", "Fill in the card", false, List.of())));
    static final Set<String> EQUIPMENT = Set.of("gloves", "goggles");
    static final Scope POWDER = new Scope(
            id(21),
            "Powder, weighing room",
            SALT,
            Form.POWDER,
            Set.of(Task.STORE, Task.WEIGH, Task.DOSE),
            "Room 1",
            false);
    static final Scope MASKED =
            new Scope(id(22), "Powder, mask", SALT, Form.POWDER, Set.of(Task.WEIGH, Task.DISPERSE), "Room 2", true);
    static final UUID SHEET = id(31);
    static final LocalDateTime GRANT_DAY = LocalDateTime.parse("2027-03-04T10:00");

    private final List<Event> events = new ArrayList<>();
    private final Map<UUID, LocalDate> born = new HashMap<>();
    private long lastNumber;

    private Story() {}

    static UUID id(int number) {
        return new UUID(0, number);
    }

    static Instant at(String local) {
        return at(LocalDateTime.parse(local));
    }

    static Instant at(LocalDateTime local) {
        return local.atZone(ZONE).toInstant();
    }

    /** The school's part: scopes, policy, sheet, people. */
    static Story school() {
        Story story = new Story();
        LocalDateTime start = LocalDateTime.parse("2026-01-05T08:00");
        story.add(start, new Setting.PolicyInForce(policy()));
        story.add(start, new Setting.ScopeDefined(POWDER));
        story.add(start, new Setting.ScopeDefined(MASKED));
        story.add(start, sheet(SHEET, "1.0", Set.of(), LocalDate.parse("2026-01-19")));
        story.qualify(start, TRAINER, Act.TRAIN, "2030-12-31");
        story.qualify(start, OBSERVER, Act.OBSERVE, "2030-12-31");
        story.qualify(start, DECIDER, Act.DECIDE, "2030-12-31");
        for (UUID person : List.of(LEA, TRAINER, OBSERVER, DECIDER, LEAD, OTHER)) {
            story.born(person, "1990-05-01");
        }
        return story;
    }

    /** With all the evidence of Lea's for the scope of the powder; nothing is decided. */
    static Story ready() {
        return school().evidence(LEA, POWDER, GRANT_DAY);
    }

    /** With Lea cleared for the powder on 4 March 2027 at 10:00. */
    static Story cleared() {
        Story story = ready();
        story.grant(LEA, POWDER, DECIDER, GRANT_DAY);
        return story;
    }

    static Policy policy() {
        return new Policy(
                "policy-1",
                new Policy.Knowledge("safe-handling-check", 2, 12, 11, 24, 60),
                periods(12),
                true,
                List.of(new Policy.Ppe(Form.POWDER, EQUIPMENT), new Policy.Ppe(Form.DISPERSION, EQUIPMENT)),
                List.of(),
                List.of(WEIGH_OUT));
    }

    static Policy.Periods periods(int months) {
        return new Policy.Periods(months, 12, 6, 60, 60, 60, 24, 12, 12, 12, 24, 14, 90, 30, 6);
    }

    static Setting.SdsFiled sheet(UUID revision, String label, Set<Integer> changed, LocalDate due) {
        return new Setting.SdsFiled(
                revision, SALT, label, LocalDate.parse("2026-01-01"), "hash-" + label, changed, due);
    }

    /** Everything that a grant in a scope needs, in the days before it. */
    Story evidence(UUID person, Scope scope, LocalDateTime day) {
        add(day.minusDays(20), training(person, TRAINER));
        add(day.minusDays(10), sitting(person, day.minusDays(10), 12, 0, POOL));
        add(day.minusDays(8), sitting(person, day.minusDays(8), 11, 0, POOL));
        add(day.minusDays(7), new Evidence.SdsRead(person, SHEET, "hash-1.0"));
        add(day.minusDays(6), ppe(person, OBSERVER, scope.form()));
        UUID practical = add(day.minusDays(5), practical(person, scope, OBSERVER, day.minusDays(5), true));
        add(day.minusDays(5).plusMinutes(10), new Evidence.ObservationAcknowledged(person, practical));
        return this;
    }

    static Evidence.TrainingGiven training(UUID person, UUID trainer) {
        return new Evidence.TrainingGiven(person, trainer, SALT, null, means(), versions("text"));
    }

    static Evidence.SittingNoted sitting(UUID person, LocalDateTime end, int right, int critical, String pool) {
        return new Evidence.SittingNoted(
                person,
                UUID.randomUUID(),
                "safe-handling-check",
                Evidence.SittingNoted.Kind.GATE,
                at(end.minusMinutes(20)),
                at(end),
                12,
                right,
                critical,
                versions(pool));
    }

    static Evidence.SittingNoted recall(UUID person, LocalDateTime end, int critical) {
        return new Evidence.SittingNoted(
                person,
                UUID.randomUUID(),
                "recall",
                Evidence.SittingNoted.Kind.RECALL,
                at(end.minusMinutes(5)),
                at(end),
                4,
                4 - critical,
                critical,
                versions(POOL));
    }

    static Evidence.PpeShown ppe(UUID person, UUID observer, Form form) {
        return new Evidence.PpeShown(person, form, observer, EQUIPMENT, means(), versions("text"));
    }

    static Evidence.ObservationRecorded practical(
            UUID person, Scope scope, UUID observer, LocalDateTime end, boolean unprompted) {
        return new Evidence.ObservationRecorded(
                person,
                scope.id(),
                observer,
                at(end.minusMinutes(30)),
                at(end),
                "Room 1",
                Evidence.ObservationRecorded.Material.STAND_IN,
                1,
                "weigh-out",
                List.of(
                        new StepSeen(
                                "gloves", true, unprompted ? StepSeen.Outcome.UNPROMPTED : StepSeen.Outcome.PROMPTED),
                        new StepSeen("card", false, StepSeen.Outcome.PROMPTED)),
                null,
                means(),
                versions("list-1"));
    }

    static Means means() {
        return new Means(Means.How.DEMONSTRATION, null, "en", false);
    }

    static Versions versions(String pool) {
        return new Versions("content", pool, SHEET, "core");
    }

    Story born(UUID person, String day) {
        born.put(person, LocalDate.parse(day));
        return this;
    }

    void qualify(LocalDateTime when, UUID person, Act act, String through) {
        add(when, new Setting.QualificationGiven(person, act, LocalDate.parse(through), LEAD, null));
    }

    /** Writes down what happens now. */
    UUID add(LocalDateTime when, Body body) {
        return addLate(when, when, body);
    }

    UUID add(String when, Body body) {
        return add(LocalDateTime.parse(when), body);
    }

    /** Writes down later what happened earlier. */
    UUID addLate(LocalDateTime when, LocalDateTime recorded, Body body) {
        UUID id = UUID.randomUUID();
        events.add(new Event(++lastNumber, id, at(when), at(recorded), LEAD, body));
        return id;
    }

    /** Grants if the rule allows it, and fails the test if not. */
    UUID grant(UUID person, Scope scope, UUID decider, LocalDateTime when) {
        return grant(new Proposal(person, scope.id(), decider, POOL, false), when);
    }

    UUID grant(Proposal proposal, LocalDateTime when) {
        Judgement judgement = judge(proposal, when);
        if (!judgement.isAllowed()) {
            throw new AssertionError("not granted: " + judgement.needs());
        }
        return add(
                when,
                new Decision.Granted(
                        proposal.person(),
                        proposal.scope(),
                        proposal.decider(),
                        judgement.evidence(),
                        judgement.validThrough(),
                        judgement.sdsRevision(),
                        POOL,
                        judgement.policy(),
                        judgement.supervisor() != null,
                        judgement.singleInstructor() ? new Note(id(99), "sealed") : null,
                        judgement.renews()));
    }

    UUID suspend(LocalDateTime when, UUID person, Scope scope) {
        return add(
                when,
                new Decision.Suspended(person, scope == null ? null : scope.id(), OBSERVER, Trigger.UNSAFE_ACT, null));
    }

    /** A new practical and the decision to give back, if the rule allows it. */
    UUID reinstate(UUID person, Scope scope, UUID decider, LocalDateTime when) {
        UUID practical = add(when.minusHours(1), practical(person, scope, OBSERVER, when.minusHours(1), true));
        add(when.minusMinutes(30), new Evidence.ObservationAcknowledged(person, practical));
        Judgement judgement = mayReinstate(person, scope, decider, when);
        if (!judgement.isAllowed()) {
            throw new AssertionError("not reinstated: " + judgement.needs());
        }
        return add(
                when,
                new Decision.Reinstated(
                        person, scope.id(), decider, judgement.evidence(), judgement.policy(), null, null));
    }

    Judgement judge(UUID person, Scope scope, UUID decider, LocalDateTime when) {
        return judge(new Proposal(person, scope.id(), decider, POOL, false), when);
    }

    Judgement judge(Proposal proposal, LocalDateTime when) {
        return new ClearanceRule(history()).mayGrant(proposal, at(when));
    }

    Judgement mayReinstate(UUID person, Scope scope, UUID decider, LocalDateTime when) {
        return new ClearanceRule(history())
                .mayReinstate(new Proposal(person, scope.id(), decider, null, false), at(when));
    }

    /** Takes out every event that the test names, as if it had never been written. */
    Story without(Predicate<Body> which) {
        events.removeIf(event -> which.test(event.body()));
        return this;
    }

    static boolean observersQualification(Body body) {
        return body instanceof Setting.QualificationGiven given && given.act() == Act.OBSERVE;
    }

    List<Event> events() {
        return List.copyOf(events);
    }

    History history() {
        return History.of(events, ZONE, this::age);
    }

    Ages.Age age(UUID person, LocalDate day) {
        LocalDate birthday = born.get(person);
        if (birthday == null) {
            return Ages.Age.UNKNOWN;
        }
        return day.isBefore(Ages.adultFrom(birthday)) ? Ages.Age.UNDER_18 : Ages.Age.ADULT;
    }

    void forgetAge(UUID person) {
        born.remove(person);
    }

    Standing standing(UUID person, Scope scope, String when) {
        return standing(Question.about(person, scope), at(when));
    }

    Standing standing(Question question, Instant when) {
        return new ClearanceRule(history()).standing(question, when);
    }

    /** Lea's answer for the powder. */
    Standing lea(String when) {
        return standing(LEA, POWDER, when);
    }
}
