package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.clearance.ledger.BirthDates;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Fact;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Means;
import org.riseandgel.clearance.rule.Note;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.clearance.rule.StepSeen;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;

/**
 * Where evidence is entered. Each entry is one line in one transaction; what cannot count, since who trained or watched was
 * not qualified at that time, is refused at once. Nothing here clears anybody.
 */
@ApplicationScoped
public class EvidenceDesk {
    private static final String WHEN = "when";

    private final Scribe scribe;
    private final BirthDates births;
    private final EvidenceVersions versions;

    EvidenceDesk(Scribe scribe, BirthDates births, EvidenceVersions versions) {
        this.scribe = scribe;
        this.births = births;
        this.versions = versions;
    }

    /** Training on a substance; the trainer was qualified to train then, and is not the learner. */
    @Transactional
    public UUID training(
            UUID actor, UUID person, UUID trainer, Substance substance, Instant when, String topic, Means means) {
        Instant at = begin(actor, person, when, "trainer");
        Histories.Known known = scribe.known(person, trainer);
        needQualified(known, trainer, person, Act.TRAIN, at, "trainer");
        Note note = scribe.note(person, "topic", topic);
        return write(
                actor,
                at,
                new Evidence.TrainingGiven(
                        person,
                        trainer,
                        substance,
                        note,
                        needMeans(means),
                        versions.ofContent(known.history(), substance, at)));
    }

    /** Training that was had elsewhere, on a day; whoever saw the paper enters it. */
    @Transactional
    public UUID earlierTraining(UUID actor, UUID person, Substance substance, LocalDate on, String where) {
        Instant at = begin(actor, person, null);
        needOther(actor, person, "person");
        if (on == null || on.isAfter(scribe.known(person).history().days().of(at))) {
            throw RegisterProblem.with("on", "Give the day of the training; it has passed.");
        }
        return write(
                actor,
                at,
                new Evidence.EarlierTraining(person, substance, on, actor, scribe.note(person, "where", where)));
    }

    /** The person says that the current sheet was read. */
    @Transactional
    public UUID sheetRead(UUID actor, UUID revision) {
        Instant at = scribe.now();
        Histories.Known known = scribe.known(actor);
        Setting.SdsFiled sheet = known.history().general(Setting.SdsFiled.class, at).stream()
                .map(Fact::body)
                .filter(filed -> filed.revision().equals(revision))
                .findFirst()
                .orElseThrow(() -> RegisterProblem.with("revision", "There is no such safety data sheet."));
        scribe.needPerson(actor, "person");
        return write(actor, at, new Evidence.SdsRead(actor, revision, sheet.sha256()));
    }

    /**
     * A practical as it was watched.
     *
     * @param steps the outcome for every step of the checklist
     */
    public record Practical(
            UUID person,
            UUID scope,
            UUID observer,
            Instant startedAt,
            Instant endedAt,
            String place,
            Evidence.ObservationRecorded.Material material,
            String checklist,
            List<StepSeen> steps,
            String comment,
            Means means) {}

    /** Writes a practical down; the observer was qualified then, is not the learner, and every step has its word. */
    @Transactional
    public UUID practical(UUID actor, Practical seen) {
        Instant at = begin(actor, seen.person(), seen.endedAt(), "observer");
        Histories.Known known = scribe.known(seen.person(), seen.observer());
        Scope scope = needScope(known, seen.scope());
        needQualified(known, seen.observer(), seen.person(), Act.OBSERVE, at, "observer");
        if (seen.startedAt() == null || seen.startedAt().isAfter(at)) {
            throw RegisterProblem.with("startedAt", "Give a beginning before the end.");
        }
        if (seen.place() == null || seen.place().isBlank()) {
            throw RegisterProblem.with("place", "Write where it was.");
        }
        if (seen.material() == null) {
            throw RegisterProblem.with("material", "Say whether it was a stand-in or the salt.");
        }
        Checklist list = needChecklist(known, seen.checklist(), scope, at);
        List<StepSeen> steps = stepsOf(list, seen.steps());
        int attempt = 1
                + (int) known.history().about(seen.person(), Evidence.ObservationRecorded.class, at).stream()
                        .filter(f -> f.body().scope().equals(scope.id())
                                && f.body().checklist().equals(list.id()))
                        .count();
        return write(
                actor,
                at,
                new Evidence.ObservationRecorded(
                        seen.person(),
                        scope.id(),
                        seen.observer(),
                        seen.startedAt(),
                        at,
                        seen.place().strip(),
                        seen.material(),
                        attempt,
                        list.id(),
                        steps,
                        scribe.optionalNote(seen.person(), "comment", seen.comment()),
                        needMeans(seen.means()),
                        versions.ofChecklist(known.history(), scope, list, at)));
    }

    /** The learner has seen what the observer wrote. */
    @Transactional
    public UUID acknowledge(UUID actor, UUID practical) {
        Instant at = scribe.now();
        Evidence.ObservationRecorded seen =
                scribe.known(actor).history().about(actor, Evidence.ObservationRecorded.class, at).stream()
                        .filter(f -> f.id().equals(practical))
                        .map(Fact::body)
                        .findFirst()
                        .orElseThrow(() -> RegisterProblem.with("practical", "There is no such practical of yours."));
        return write(actor, at, new Evidence.ObservationAcknowledged(seen.person(), practical));
    }

    /**
     * Protective equipment put on, used and taken off before an observer.
     *
     * @param items what was shown; more than the form asks for is kept too, since it was seen
     */
    @Transactional
    public UUID equipment(
            UUID actor, UUID person, Form form, UUID observer, Set<String> items, Instant when, Means means) {
        Instant at = begin(actor, person, when, "observer");
        Histories.Known known = scribe.known(person, observer);
        needQualified(known, observer, person, Act.OBSERVE, at, "observer");
        Policy policy = policy(known, at);
        if (items.isEmpty() || !allItems(policy).containsAll(items)) {
            throw RegisterProblem.with(
                    "items",
                    "Tick what was shown; asked for are %s."
                            .formatted(String.join(
                                    ", ", new TreeSet<>(policy.ppeFor(form).orElse(Set.of())))));
        }
        return write(
                actor,
                at,
                new Evidence.PpeShown(
                        person, form, observer, items, needMeans(means), versions.ofPolicy(known.history(), at)));
    }

    /** A safety lead saw a paper with the date of birth; only the date's seal goes into the register. */
    @Transactional
    public UUID age(UUID actor, UUID person, LocalDate born) {
        scribe.needSafetyLead(actor);
        scribe.needPerson(person, "person");
        Instant at = scribe.now();
        LocalDate today = scribe.known(person).history().days().of(at);
        if (born == null || !born.isBefore(today) || born.isBefore(today.minusYears(120))) {
            throw RegisterProblem.with("born", "Give the date of birth, such as 2008-05-14.");
        }
        BirthDates.Sealed sealed = births.seal(born);
        Event event = scribe.write(actor, at, new Evidence.AgeSeen(person, actor, sealed.commitment()));
        births.keep(event.id(), person, sealed, event.recorded());
        return event.id();
    }

    /** Somebody under 18 may learn this under a named supervisor. */
    @Transactional
    public UUID ageException(
            UUID actor, UUID person, UUID supervisor, LocalDate through, String legalBasis, String riskAssessment) {
        scribe.needSafetyLead(actor);
        scribe.needPerson(person, "person");
        scribe.needPerson(supervisor, "supervisor");
        needOther(supervisor, person, "supervisor");
        needOther(actor, person, "person");
        Instant at = scribe.now();
        needFuture(through, scribe.known(person).history().days().of(at), "through");
        return write(
                actor,
                at,
                new Evidence.AgeException(
                        person,
                        supervisor,
                        through,
                        actor,
                        scribe.note(person, "legalBasis", legalBasis),
                        scribe.note(person, "riskAssessment", riskAssessment)));
    }

    /** A fit test of a respirator. */
    @Transactional
    public UUID fitTest(UUID actor, UUID person, boolean passed, String respirator, String tester, Instant when) {
        Instant at = begin(actor, person, when, "respirator");
        if (respirator == null || respirator.isBlank() || respirator.length() > 200) {
            throw RegisterProblem.with("respirator", "Write type, make, model and size.");
        }
        return write(
                actor,
                at,
                new Evidence.FitTested(person, passed, respirator.strip(), scribe.note(person, "tester", tester)));
    }

    /** Training on the respirator. */
    @Transactional
    public UUID respiratorTraining(UUID actor, UUID person, UUID trainer, Instant when, Means means) {
        Instant at = begin(actor, person, when, "trainer");
        needQualified(scribe.known(person, trainer), trainer, person, Act.TRAIN, at, "trainer");
        return write(actor, at, new Evidence.RespiratorTrained(person, trainer, needMeans(means)));
    }

    /** Fit for the task or not, and who said so; nothing else about anybody's health. */
    @Transactional
    public UUID fitForTask(UUID actor, UUID person, boolean fit, String by, Instant when) {
        Instant at = begin(actor, person, when, "by");
        return write(actor, at, new Evidence.FitForTask(person, fit, scribe.note(person, "by", by)));
    }

    /**
     * A delta training was had.
     *
     * @param asked the line that asked for it; null after a long time without handling
     */
    @Transactional
    public UUID delta(UUID actor, UUID person, UUID asked, UUID trainer, Instant when, Means means) {
        Instant at = begin(actor, person, when, "trainer");
        Histories.Known known = scribe.known(person, trainer);
        needQualified(known, trainer, person, Act.TRAIN, at, "trainer");
        boolean known1 = asked == null
                || known.history()
                        .fact(asked)
                        .filter(f -> f.body() instanceof Setting.DeltaAsked || f.body() instanceof Setting.SdsFiled)
                        .isPresent();
        if (!known1) {
            throw RegisterProblem.with("asked", "Choose what the training was for.");
        }
        return write(actor, at, new Evidence.DeltaDone(person, asked, trainer, needMeans(means)));
    }

    /** The person did a task of a scope. */
    @Transactional
    public UUID handled(UUID actor, UUID person, UUID scope, Task task, Instant when) {
        Instant at = begin(actor, person, when);
        Scope known = needScope(scribe.known(person), scope);
        if (task == null || !known.tasks().contains(task)) {
            throw RegisterProblem.with("task", "Choose a task of this scope.");
        }
        return write(actor, at, new Evidence.Handled(person, scope, task));
    }

    /** Nobody writes down what was seen of themselves, whoever is named as having seen it. */
    private Instant begin(UUID actor, UUID person, Instant when, String field) {
        Instant at = begin(actor, person, when);
        needOther(actor, person, field);
        return at;
    }

    private Instant begin(UUID actor, UUID person, Instant when) {
        scribe.needStaff(actor);
        scribe.needPerson(person, "person");
        return scribe.happened(when, WHEN);
    }

    private UUID write(UUID actor, Instant at, Evidence said) {
        return scribe.write(actor, at, said).id();
    }

    private static void needQualified(
            Histories.Known known, UUID who, UUID learner, Act act, Instant at, String field) {
        needOther(who, learner, field);
        if (who == null || !new ClearanceRule(known.history()).isQualified(who, act, at)) {
            throw RegisterProblem.with(
                    field,
                    act == Act.TRAIN
                            ? "This trainer had no qualification to train at that time."
                            : "This observer had no qualification to observe at that time.");
        }
    }

    private static void needOther(UUID who, UUID learner, String field) {
        if (learner.equals(who)) {
            throw RegisterProblem.with(field, "Nobody does this for themselves; choose somebody else.");
        }
    }

    private static Means needMeans(Means means) {
        return Optional.ofNullable(means)
                .orElseThrow(() -> RegisterProblem.with("how", "Say how it was seen that the person had understood."));
    }

    static Scope needScope(Histories.Known known, UUID scope) {
        return Optional.ofNullable(scope)
                .flatMap(id -> known.history().scope(id))
                .orElseThrow(() -> RegisterProblem.with("scope", "Choose a scope."));
    }

    static void needFuture(LocalDate day, LocalDate today, String field) {
        if (day == null || day.isBefore(today)) {
            throw RegisterProblem.with(field, "Give the last day; it is not before today.");
        }
    }

    private static Policy policy(Histories.Known known, Instant at) {
        return known.history()
                .policy(at)
                .orElseThrow(
                        () -> RegisterProblem.with("policy", "No policy is in force; a safety lead puts it in force."));
    }

    private static Set<String> allItems(Policy policy) {
        return policy.ppe().stream().flatMap(one -> one.items().stream()).collect(Collectors.toSet());
    }

    private static Checklist needChecklist(Histories.Known known, String id, Scope scope, Instant at) {
        return policy(known, at)
                .checklist(id)
                .filter(list -> list.isFor(scope))
                .orElseThrow(() -> RegisterProblem.with("checklist", "Choose a practical of this scope."));
    }

    /** The steps in the order of the list, critical ones as the list says, one word for each. */
    private static List<StepSeen> stepsOf(Checklist list, List<StepSeen> seen) {
        List<StepSeen> steps = new ArrayList<>();
        List<org.riseandgel.platform.web.Problem> missing = new ArrayList<>();
        for (Checklist.Step step : list.steps()) {
            seen.stream()
                    .filter(one -> one.step().equals(step.id()) && one.outcome() != null)
                    .findFirst()
                    .ifPresentOrElse(
                            one -> steps.add(new StepSeen(step.id(), step.critical(), one.outcome())),
                            () -> missing.add(new org.riseandgel.platform.web.Problem(
                                    "step-" + step.id(), "Say how this step went: %s.".formatted(step.text()))));
        }
        if (!missing.isEmpty()) {
            throw new RegisterProblem(missing);
        }
        return steps;
    }
}
