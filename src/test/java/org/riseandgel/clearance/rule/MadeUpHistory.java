package org.riseandgel.clearance.rule;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;

/**
 * A made-up history of a school, a move at a time. A move is a number; it says what happens next: days go by, somebody
 * learns, is granted, suspended, withdrawn, given back, something is entered late or corrected. Most of it is what a school
 * would do, some of it is wrong or done by the wrong people: decisions are written down whether or not they are allowed, since
 * what is on record has to be judged either way. The same moves make the same history.
 */
final class MadeUpHistory {
    static final UUID LEARNER = Story.LEA;
    static final UUID YOUNG = Story.id(7);
    static final UUID ALL_ROUND = Story.id(8);
    private static final List<ZoneId> ZONES = List.of(
            ZoneId.of("Europe/Berlin"),
            ZoneId.of("America/New_York"),
            ZoneId.of("Asia/Beirut"),
            ZoneId.of("America/Sao_Paulo"),
            ZoneId.of("Pacific/Auckland"));
    private static final Scope WIDE = new Scope(
            Story.id(23), "Powder, wide", Story.SALT, Form.POWDER, Set.of(Task.WEIGH, Task.DISPERSE), "Room 1", false);
    static final List<Scope> SCOPES = List.of(Story.POWDER, Story.MASKED, WIDE);
    private static final List<UUID> STAFF =
            List.of(Story.TRAINER, Story.OBSERVER, Story.DECIDER, ALL_ROUND, Story.LEAD);

    final ZoneId zone;
    final Map<UUID, LocalDate> born = new HashMap<>();
    final List<Event> events = new ArrayList<>();
    private final List<Instant> corrected = new ArrayList<>();
    private Instant now;
    private SplittableRandom chance;
    private Policy policy = Story.policy();
    private Setting.SdsFiled sheet = Story.sheet(Story.SHEET, "1.0", Set.of(), LocalDate.parse("2026-01-19"));
    private long ids = 1000;

    /** Whose evidence for the powder has just come together, if anybody's. */
    private UUID ready;

    MadeUpHistory(long beginning, List<Long> moves) {
        chance = new SplittableRandom(beginning);
        zone = ZONES.get(chance.nextInt(ZONES.size()));
        now = LocalDate.of(2027, 1, 4)
                .plusDays(chance.nextInt(400))
                .atTime(8, 0)
                .atZone(zone)
                .toInstant();
        school();
        for (long move : moves) {
            chance = new SplittableRandom(move);
            move();
        }
        chance = new SplittableRandom(beginning + 1);
        if (often(1, 6)) {
            ready = often(2, 3) ? LEARNER : YOUNG;
            evidence(ready, Story.POWDER);
        }
    }

    History history() {
        return History.of(events, zone, this::age);
    }

    Ages.Age age(UUID person, LocalDate day) {
        LocalDate birthday = born.get(person);
        if (birthday == null) {
            return Ages.Age.UNKNOWN;
        }
        return day.isBefore(Ages.adultFrom(birthday)) ? Ages.Age.UNDER_18 : Ages.Age.ADULT;
    }

    Instant now() {
        return now;
    }

    boolean hasCorrection() {
        return !corrected.isEmpty();
    }

    /** Mostly about what the history is about. */
    Question question() {
        Scope scope = one(SCOPES);
        UUID person = often(2, 3) ? LEARNER : YOUNG;
        Optional<Decision.Granted> granted = lastGrant();
        if (granted.isPresent() && often(9, 10)) {
            person = granted.get().person();
            scope = scope(granted.get().scope());
        }
        return often(1, 2)
                ? Question.about(person, scope)
                : Question.about(person, scope, one(List.copyOf(new java.util.TreeSet<>(scope.tasks()))));
    }

    /** Now, soon, long ago, or around an instant at which something may change. */
    Instant when() {
        switch (chance.nextInt(8)) {
            case 0, 1, 2, 3:
                return now.plusSeconds(60);
            case 4:
                return now.plus(Duration.ofDays(chance.nextInt(500)));
            case 5:
                return one(events).effective().plusSeconds(chance.nextInt(3) - 1);
            case 6:
                Instant from = events.get(0).effective();
                return from.plusSeconds((long)
                        (chance.nextDouble() * Duration.between(from, now).toSeconds()));
            default:
                LocalDate last = lastGrant()
                        .map(Decision.Granted::validThrough)
                        .orElse(now.atZone(zone).toLocalDate());
                return last.plusDays(chance.nextInt(2))
                        .atStartOfDay(zone)
                        .toInstant()
                        .plusSeconds(chance.nextInt(3) - 1);
        }
    }

    /** Everything, or what was known by some instant. */
    Instant known(Instant at) {
        return switch (chance.nextInt(6)) {
            case 0 -> at;
            case 1 -> one(events).recorded();
            default -> now.plus(Duration.ofDays(9999));
        };
    }

    Proposal proposal() {
        return new Proposal(
                ready != null ? ready : often(3, 4) ? LEARNER : YOUNG,
                ready != null ? Story.POWDER.id() : one(SCOPES).id(),
                often(3, 4) ? Story.DECIDER : one(STAFF),
                pool(),
                often(1, 8));
    }

    private void school() {
        UUID[] everybody = {LEARNER, Story.TRAINER, Story.OBSERVER, Story.DECIDER, Story.LEAD, ALL_ROUND};
        for (UUID person : everybody) {
            born.put(person, LocalDate.of(1990, 5, 1));
        }
        // Of age within the history, some of them born on a leap day.
        born.put(YOUNG, often(1, 4) ? LocalDate.of(2012, 2, 29).minusYears(4L * chance.nextInt(2)) : youngBirthday());
        if (often(1, 40)) {
            born.remove(one(List.of(LEARNER, YOUNG, LEARNER)));
        }
        add(new Setting.PolicyInForce(policy));
        for (Scope scope : SCOPES) {
            add(new Setting.ScopeDefined(scope));
        }
        add(sheet);
        qualify(Story.TRAINER, Act.TRAIN);
        qualify(Story.OBSERVER, Act.OBSERVE);
        qualify(Story.DECIDER, Act.DECIDE);
        for (Act act : Act.values()) {
            qualify(ALL_ROUND, act);
        }
        if (often(3, 4)) {
            qualify(LEARNER, Act.OBSERVE);
        }
    }

    private LocalDate youngBirthday() {
        return LocalDate.ofInstant(now, zone).minusYears(18).plusDays(100L + chance.nextInt(900));
    }

    private void move() {
        if (lastGrant().isPresent() && often(1, 3)) {
            forward(Duration.ofDays(chance.nextInt(30)));
        }
        int pick = chance.nextInt(100);
        if (lastGrant().isEmpty() && often(3, 4)) {
            pick = 20;
        }
        if (pick < 14) {
            pass();
        } else if (pick < 38) {
            prepareAndGrant(often(1, 2) ? LEARNER : YOUNG, often(3, 5) ? Story.POWDER : one(SCOPES));
        } else if (pick < 48) {
            work();
        } else if (pick < 54) {
            renew();
        } else if (pick < 61) {
            takeAway();
        } else if (pick < 71) {
            giveBack();
        } else if (pick < 77) {
            change();
        } else if (pick < 83) {
            correct();
        } else if (pick < 87) {
            late();
        } else if (pick < 91) {
            grant(person(), one(SCOPES));
        } else {
            something(person(), one(SCOPES));
        }
    }

    private void pass() {
        switch (chance.nextInt(6)) {
            case 0 -> forward(Duration.ofMinutes(chance.nextInt(90)));
            case 1 -> forward(Duration.ofHours(chance.nextInt(48)));
            case 2 -> midnight();
            case 3 -> forward(Duration.ofDays(60L + chance.nextInt(120)));
            default -> forward(Duration.ofDays(chance.nextInt(40)));
        }
    }

    /** To the first instant of the next day, or a second before it. */
    private void midnight() {
        now = now.atZone(zone)
                .toLocalDate()
                .plusDays(1)
                .atStartOfDay(zone)
                .toInstant()
                .minusSeconds(chance.nextInt(2));
    }

    private void prepareAndGrant(UUID person, Scope scope) {
        if (person.equals(YOUNG) && often(3, 4)) {
            supervisor(scope);
        }
        evidence(person, scope);
        grant(person, scope);
    }

    /** Somebody has to be cleared before somebody young can be supervised. */
    private void supervisor(Scope scope) {
        if (events.stream()
                .noneMatch(event -> event.body() instanceof Decision.Granted grant
                        && grant.person().equals(LEARNER)
                        && grant.scope().equals(scope.id()))) {
            evidence(LEARNER, scope);
            grant(LEARNER, scope);
        }
    }

    private void evidence(UUID person, Scope scope) {
        List<Runnable> parts = new ArrayList<>();
        parts.add(() -> add(training(person)));
        parts.add(() -> {
            sit(person);
            forward(Duration.ofMinutes(24 * 60 + 20 + (often(1, 40) ? -1 : chance.nextInt(3000))));
            sit(person);
        });
        parts.add(() -> add(new Evidence.SdsRead(person, sheet.revision(), often(1, 60) ? "another" : sheet.sha256())));
        parts.add(() -> add(Story.ppe(person, observer(), scope.form())));
        parts.add(() -> practical(person, scope));
        if (scope.respirator()) {
            parts.add(() -> add(new Evidence.FitTested(person, !often(1, 30), "half mask", null)));
            parts.add(() -> add(new Evidence.RespiratorTrained(person, trainer(), Story.means())));
            parts.add(() -> add(new Evidence.FitForTask(person, true, null)));
        }
        if (person.equals(YOUNG)) {
            parts.add(() -> exception(person));
        }
        for (Runnable part : parts) {
            if (!often(1, 90)) {
                part.run();
                forward(Duration.ofMinutes(30 + chance.nextInt(600)));
            }
        }
    }

    private void sit(UUID person) {
        boolean bad = often(1, 90);
        forward(Duration.ofMinutes(20));
        add(new Evidence.SittingNoted(
                person,
                id(),
                "safe-handling-check",
                Evidence.SittingNoted.Kind.GATE,
                now.minus(Duration.ofMinutes(20)),
                now,
                12,
                bad ? 10 : 11,
                often(1, 120) ? 1 : 0,
                Story.versions(often(1, 120) ? "pool-0" : pool())));
    }

    private UUID practical(UUID person, Scope scope) {
        forward(Duration.ofMinutes(30));
        boolean good = !often(1, 60);
        UUID practical = add(new Evidence.ObservationRecorded(
                person,
                scope.id(),
                observer(),
                now.minus(Duration.ofMinutes(30)),
                now,
                scope.room(),
                Evidence.ObservationRecorded.Material.STAND_IN,
                1,
                "weigh-out",
                List.of(
                        new StepSeen("gloves", true, good ? StepSeen.Outcome.UNPROMPTED : StepSeen.Outcome.PROMPTED),
                        new StepSeen(often(1, 80) ? "other" : "card", false, StepSeen.Outcome.NOT_SEEN)),
                null,
                Story.means(),
                Story.versions(policy.checklists().get(0).version())));
        forward(Duration.ofMinutes(5));
        if (!often(1, 80)) {
            add(new Evidence.ObservationAcknowledged(person, practical));
        }
        return practical;
    }

    private void exception(UUID person) {
        LocalDate through = now.atZone(zone).toLocalDate().plusDays(often(1, 10) ? 5 : 400);
        add(new Evidence.AgeException(
                person, often(1, 40) ? one(STAFF) : LEARNER, through, often(1, 40) ? person : Story.LEAD, null, null));
    }

    private void grant(UUID person, Scope scope) {
        LocalDate today = now.atZone(zone).toLocalDate();
        boolean countersigned = often(1, 12);
        Optional<Decision.Granted> before = lastGrant()
                .filter(one -> one.person().equals(person) && one.scope().equals(scope.id()));
        LocalDate from = before.map(Decision.Granted::validThrough)
                .filter(last -> !today.isBefore(last.minusDays(60)) && !today.isAfter(last))
                .orElse(today);
        LocalDate through = from.plusMonths(often(1, 20) ? 40 : 12);
        add(new Decision.Granted(
                person,
                scope.id(),
                decider(),
                evidenceOf(person),
                through,
                sheet.revision(),
                pool(),
                often(1, 60) ? "policy-0" : policy.version(),
                !often(1, 60) == (age(person, today) == Ages.Age.UNDER_18),
                countersigned ? new Note(Story.id(99), "sealed") : null,
                null));
        forward(Duration.ofMinutes(1 + chance.nextInt(100)));
    }

    /** All that is on record, at times without some piece. */
    private Set<UUID> evidenceOf(UUID person) {
        List<UUID> all = new ArrayList<>();
        for (Event event : events) {
            if (event.body() instanceof Evidence evidence && evidence.person().equals(person)) {
                all.add(event.id());
            }
        }
        if (!all.isEmpty() && often(1, 50)) {
            all.remove(chance.nextInt(all.size()));
        }
        return Set.copyOf(all);
    }

    /** Months at the bench, so that a clearance lives until it expires. */
    private void work() {
        Optional<Decision.Granted> grant = lastGrant();
        int times = 1 + chance.nextInt(7);
        for (int i = 0; i < times; i++) {
            forward(Duration.ofDays(20L + chance.nextInt(often(1, 12) ? 90 : 60)));
            for (Scope scope : SCOPES) {
                if (grant.isPresent() && grant.get().scope().equals(scope.id())) {
                    add(new Evidence.Handled(grant.get().person(), scope.id(), Task.WEIGH));
                    if (grant.get().person().equals(YOUNG)) {
                        add(new Evidence.Handled(LEARNER, scope.id(), Task.WEIGH));
                    }
                }
            }
        }
    }

    /** Works until the end comes near and goes through all of it again. */
    private void renew() {
        Optional<Decision.Granted> grant = lastGrant();
        if (grant.isEmpty()) {
            return;
        }
        Instant target = grant.get()
                .validThrough()
                .minusDays(chance.nextInt(80) - 8L)
                .atTime(LocalTime.of(7, 30))
                .atZone(zone)
                .toInstant();
        while (now.isBefore(target)) {
            Duration left = Duration.between(now, target);
            forward(left.compareTo(Duration.ofDays(70)) > 0 ? Duration.ofDays(70) : left.plusMinutes(1));
            add(new Evidence.Handled(grant.get().person(), grant.get().scope(), Task.WEIGH));
        }
        evidence(grant.get().person(), scope(grant.get().scope()));
        grant(grant.get().person(), scope(grant.get().scope()));
    }

    private void takeAway() {
        UUID person = person();
        UUID scope = often(1, 2) ? null : one(SCOPES).id();
        switch (chance.nextInt(6)) {
            case 0, 1 -> add(new Decision.Suspended(person, scope, Story.LEAD, Trigger.UNSAFE_ACT, null));
            case 2 -> {
                add(Story.recall(person, now.atZone(zone).toLocalDateTime(), 1));
            }
            case 3 -> add(new Decision.Withdrawn(person, scope, Story.LEAD, often(1, 2), null));
            case 4 -> add(new Decision.Withdrawn(one(STAFF), scope, Story.LEAD, often(2, 3), null));
            default ->
                add(new Setting.QualificationEnded(
                        one(STAFF), one(List.of(Act.values())), often(1, 2), Story.LEAD, null));
        }
        forward(Duration.ofMinutes(chance.nextInt(3000)));
    }

    private void giveBack() {
        Optional<Event> suspended = events.stream()
                .filter(event -> event.body() instanceof Decision.Suspended)
                .reduce((first, second) -> second);
        Optional<Decision.Granted> grant = lastGrant();
        if (grant.isEmpty() || suspended.isEmpty() && often(1, 2)) {
            if (grant.isPresent()) {
                add(new Decision.Suspended(grant.get().person(), null, Story.LEAD, Trigger.NEAR_MISS, null));
                forward(Duration.ofMinutes(5 + chance.nextInt(5000)));
            } else {
                return;
            }
        }
        UUID person = suspended
                .map(event -> ((Decision.Suspended) event.body()).person())
                .orElse(grant.get().person());
        Scope scope = often(1, 8) ? one(SCOPES) : scope(grant.get().scope());
        if (!often(1, 20)) {
            practical(person, scope);
        }
        forward(Duration.ofMinutes(chance.nextInt(500)));
        add(new Decision.Reinstated(
                person,
                scope.id(),
                decider(),
                evidenceOf(person),
                often(1, 40) ? "policy-0" : policy.version(),
                often(1, 15) ? new Note(Story.id(98), "sealed") : null,
                null));
        forward(Duration.ofMinutes(chance.nextInt(500)));
    }

    private void change() {
        LocalDate due = now.atZone(zone).toLocalDate().plusDays(14);
        switch (chance.nextInt(8)) {
            case 0, 1 -> {
                sheet = Story.sheet(id(), "r" + ids, sections(), due);
                add(sheet);
            }
            case 2, 3 ->
                add(new Setting.DeltaAsked(
                        often(1, 2) ? null : person(),
                        often(1, 2) ? null : one(SCOPES).id(),
                        DeltaKind.NEW_PPE,
                        due,
                        null));
            case 4 -> {
                policy = new Policy(
                        "policy-" + ids++,
                        policy.knowledge(),
                        Story.periods(often(1, 2) ? 12 : 6),
                        often(1, 2),
                        policy.ppe(),
                        policy.respirator(),
                        policy.checklists());
                add(new Setting.PolicyInForce(policy));
            }
            case 5 ->
                events.stream()
                        .filter(event -> event.body() instanceof Decision.Granted)
                        .reduce((first, second) -> second)
                        .ifPresent(event -> add(new Setting.RenewalAsked(
                                ((Decision.Granted) event.body()).person(), event.id(), due, policy.version())));
            case 6 -> qualify(one(STAFF), one(List.of(Act.values())));
            default -> {
                if (often(1, 10)) {
                    add(new Setting.ScopeClosed(one(SCOPES).id(), Story.LEAD, null));
                }
            }
        }
    }

    private Set<Integer> sections() {
        return one(List.of(Set.of(2), Set.of(8, 3), Set.of(3), Set.of(1, 15), Set.of(2, 3)));
    }

    private void correct() {
        Event wrong = one(events.subList(Math.max(0, events.size() - 25), events.size()));
        Body body = wrong.body();
        boolean replaceable = body instanceof Evidence
                || body instanceof Setting.QualificationGiven
                || body instanceof Setting.DeltaAsked
                || body instanceof Setting.SdsFiled;
        boolean annullable = body instanceof Decision.Granted || body instanceof Decision.Reinstated || replaceable;
        if (!annullable && !often(1, 60)) {
            return;
        }
        boolean annul = !replaceable || often(1, 3);
        Instant when = wrong.effective().minus(Duration.ofMinutes(often(1, 2) ? 0 : chance.nextInt(5000)));
        UUID second = often(1, 80) ? Story.LEAD : Story.OTHER;
        add(new Keeping.Corrected(
                wrong.id(), Story.LEAD, second, annul ? null : when, annul ? null : replaced(body, when), null));
        corrected.add(now);
        forward(Duration.ofMinutes(chance.nextInt(100)));
    }

    private Body replaced(Body body, Instant when) {
        if (body instanceof Evidence.SittingNoted said) {
            return new Evidence.SittingNoted(
                    said.person(),
                    said.sitting(),
                    said.check(),
                    said.kind(),
                    when.minus(Duration.between(said.startedAt(), said.handedInAt())),
                    when,
                    said.items(),
                    often(2, 3) ? said.right() : 9,
                    often(1, 6) ? 1 - Math.min(1, said.criticalWrong()) : said.criticalWrong(),
                    said.versions());
        }
        if (body instanceof Evidence.ObservationRecorded said) {
            return new Evidence.ObservationRecorded(
                    said.person(),
                    said.scope(),
                    often(1, 4) ? one(STAFF) : said.observer(),
                    when.minus(Duration.between(said.startedAt(), said.endedAt())),
                    when,
                    said.place(),
                    said.material(),
                    said.attempt(),
                    said.checklist(),
                    said.steps(),
                    said.comment(),
                    said.means(),
                    said.versions());
        }
        if (body instanceof Evidence.TrainingGiven said) {
            return Story.training(said.person(), often(1, 2) ? said.trainer() : one(STAFF));
        }
        if (body instanceof Evidence.FitTested said) {
            return new Evidence.FitTested(said.person(), often(1, 2), said.respirator(), null);
        }
        if (body instanceof Setting.QualificationGiven said) {
            LocalDate through = often(1, 2)
                    ? said.through()
                    : now.atZone(zone).toLocalDate().minusDays(3);
            return new Setting.QualificationGiven(said.person(), said.act(), through, said.by(), null);
        }
        return body;
    }

    /** Something from before is entered now. */
    private void late() {
        Instant then = now.minus(Duration.ofMinutes(chance.nextInt(200_000)));
        UUID person = person();
        Body body =
                switch (chance.nextInt(8)) {
                    case 0 -> Story.training(person, one(STAFF));
                    case 1 -> new Decision.Suspended(person, null, Story.LEAD, Trigger.INCIDENT, null);
                    case 2 ->
                        new Decision.Withdrawn(often(1, 2) ? person : one(STAFF), null, Story.LEAD, often(1, 2), null);
                    case 3 ->
                        new Setting.QualificationEnded(
                                one(STAFF), one(List.of(Act.values())), often(1, 2), Story.LEAD, null);
                    case 4 -> new Evidence.FitTested(person, often(2, 3), "half mask", null);
                    case 5 -> new Evidence.Handled(person, one(SCOPES).id(), Task.WEIGH);
                    case 6 ->
                        Story.sheet(
                                id(),
                                "l" + ids,
                                sections(),
                                LocalDate.ofInstant(then, zone).plusDays(14));
                    default -> new Evidence.FitForTask(person, often(1, 2), null);
                };
        events.add(new Event(events.size() + 1L, id(), then, now, Story.LEAD, body));
    }

    private void something(UUID person, Scope scope) {
        Body body =
                switch (chance.nextInt(9)) {
                    case 0 -> new Evidence.FitTested(person, !often(1, 6), "half mask", null);
                    case 1 -> new Evidence.RespiratorTrained(person, trainer(), Story.means());
                    case 2 -> new Evidence.FitForTask(person, !often(1, 4), null);
                    case 3, 4 -> new Evidence.DeltaDone(person, delta(), trainer(), Story.means());
                    case 5 ->
                        new Evidence.EarlierTraining(
                                person,
                                Story.SALT,
                                now.atZone(zone).toLocalDate().minusDays(chance.nextInt(400)),
                                one(STAFF),
                                null);
                    case 6 -> training(person);
                    case 7 ->
                        new Evidence.PpeShown(
                                person,
                                scope.form(),
                                observer(),
                                often(1, 4) ? Set.of("gloves") : Story.EQUIPMENT,
                                Story.means(),
                                Story.versions("text"));
                    default -> new Evidence.SdsRead(person, sheet.revision(), sheet.sha256());
                };
        add(body);
    }

    private UUID delta() {
        List<UUID> asked = events.stream()
                .filter(event -> event.body() instanceof Setting.DeltaAsked || event.body() instanceof Setting.SdsFiled)
                .map(Event::id)
                .toList();
        return often(1, 3) ? null : asked.get(asked.size() - 1);
    }

    private Evidence.TrainingGiven training(UUID person) {
        return Story.training(person, trainer());
    }

    private UUID trainer() {
        return often(1, 50) ? one(STAFF) : Story.TRAINER;
    }

    private UUID observer() {
        return often(1, 50) ? one(STAFF) : often(1, 150) ? LEARNER : Story.OBSERVER;
    }

    private UUID decider() {
        return often(1, 50) ? one(STAFF) : Story.DECIDER;
    }

    private UUID person() {
        Optional<Decision.Granted> grant = lastGrant();
        return grant.isPresent() && often(3, 4) ? grant.get().person() : often(2, 3) ? LEARNER : YOUNG;
    }

    private String pool() {
        return Story.POOL;
    }

    private void qualify(UUID person, Act act) {
        LocalDate through = LocalDate.ofInstant(now, zone).plusDays(often(1, 20) ? 100 : 1500);
        add(new Setting.QualificationGiven(person, act, through, often(1, 80) ? person : Story.LEAD, null));
    }

    private Optional<Decision.Granted> lastGrant() {
        for (int i = events.size() - 1; i >= 0; i--) {
            if (events.get(i).body() instanceof Decision.Granted grant) {
                return Optional.of(grant);
            }
        }
        return Optional.empty();
    }

    private static Scope scope(UUID id) {
        return SCOPES.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    private UUID add(Body body) {
        UUID id = id();
        events.add(new Event(events.size() + 1L, id, now, now, Story.LEAD, body));
        return id;
    }

    private UUID id() {
        return new UUID(1, ids++);
    }

    private void forward(Duration time) {
        now = now.plus(time);
    }

    private boolean often(int share, int of) {
        return chance.nextInt(of) < share;
    }

    private <T> T one(List<T> list) {
        return list.get(chance.nextInt(list.size()));
    }
}
