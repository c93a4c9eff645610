package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The register's page (docs/register.md) read a second time, for tests: the same answers by other means. The rule works out
 * from when on each reason stands; this looks at one instant only, asks each sentence of the page of the whole list of lines,
 * and steps through time where the page speaks of "any instant". It is slow and shares nothing with the rule but the events.
 */
final class SecondOpinion {
    private static final Comparator<Line> OLDEST_FIRST =
            Comparator.comparing(Line::when).thenComparing(Line::number);

    private static final Predicate<Line> ANY = line -> true;

    /** An event after its newest correction. */
    record Line(long number, UUID id, Instant when, Body said) {
        boolean undoes(Line other) {
            return !when.isBefore(other.when) || number > other.number;
        }

        boolean knewOf(Line other) {
            return when.isAfter(other.when) && number > other.number;
        }
    }

    /** What stands against a question; nothing, when it may be done. */
    record Opinion(Status status, NavigableSet<Reason> reasons) {
        static Opinion not(Reason... reasons) {
            return new Opinion(Status.NOT_CLEARED, new TreeSet<>(List.of(reasons)));
        }

        Optional<Reason> first() {
            return reasons.isEmpty() ? Optional.empty() : Optional.of(reasons.first());
        }
    }

    private final List<Line> lines = new ArrayList<>();
    private final ZoneId zone;
    private final Map<UUID, LocalDate> born;
    private final boolean contradicting;

    SecondOpinion(Collection<Event> all, Instant known, ZoneId zone, Map<UUID, LocalDate> born) {
        this.zone = zone;
        this.born = born;
        List<Event> events = all.stream()
                .filter(event -> !event.recorded().isAfter(known))
                .sorted(Comparator.comparing(Event::number))
                .toList();
        boolean bad = false;
        Set<Long> numbers = new HashSet<>();
        Map<UUID, Event> before = new HashMap<>();
        Map<UUID, Keeping.Corrected> newest = new HashMap<>();
        for (Event event : events) {
            bad |= !numbers.add(event.number());
            if (event.body() instanceof Keeping.Corrected correction) {
                Event wrong = before.get(correction.event());
                bad |= wrong == null || !allowed(wrong.body(), correction);
                newest.put(correction.event(), correction);
            }
            bad |= before.put(event.id(), event) != null;
        }
        this.contradicting = bad;
        for (Event event : events) {
            Keeping.Corrected correction = newest.get(event.id());
            if (correction == null) {
                lines.add(new Line(event.number(), event.id(), event.effective(), event.body()));
            } else if (correction.replacement() != null) {
                lines.add(new Line(event.number(), event.id(), correction.effective(), correction.replacement()));
            }
        }
    }

    private static boolean allowed(Body wrong, Keeping.Corrected correction) {
        Optional<UUID> about = wrong.subject();
        if (correction.by() == null
                || correction.confirmedBy() == null
                || correction.by().equals(correction.confirmedBy())
                || about.filter(correction.by()::equals).isPresent()
                || about.filter(correction.confirmedBy()::equals).isPresent()) {
            return false;
        }
        boolean annulled = correction.replacement() == null && correction.effective() == null;
        boolean replaced = correction.replacement() != null
                && correction.effective() != null
                && correction.replacement().getClass() == wrong.getClass()
                && correction.replacement().subject().equals(about);
        if (wrong instanceof Evidence
                || wrong instanceof Setting.QualificationGiven
                || wrong instanceof Setting.DeltaAsked
                || wrong instanceof Setting.SdsFiled) {
            return annulled || replaced;
        }
        return annulled
                && (wrong instanceof Decision.Granted
                        || wrong instanceof Decision.Reinstated
                        || wrong instanceof Decision.AppealDecided);
    }

    // What is asked

    Opinion ask(Question question, Instant at) {
        return ask(question, at, new HashSet<>());
    }

    private Opinion ask(Question question, Instant at, Set<UUID> asking) {
        if (contradicting || policy(at) == null) {
            return Opinion.not(Reason.UNREADABLE);
        }
        List<Opinion> opinions = scopes(at)
                .filter(scope -> covers(scope, question))
                .filter(scope -> isOpen(scope.id(), at))
                .map(scope -> inScope(scope, question, at, asking))
                .toList();
        return opinions.stream()
                .max(Comparator.comparing((Opinion one) -> -one.status().ordinal())
                        .thenComparing(one -> one.first().map(Enum::ordinal).orElse(-1)))
                .orElse(Opinion.not(Reason.NO_SUCH_SCOPE));
    }

    private Opinion inScope(Scope scope, Question question, Instant at, Set<UUID> asking) {
        UUID person = question.person();
        NavigableSet<Reason> stands = new TreeSet<>();
        if (isSuspended(question, at)) {
            stands.add(Reason.SUSPENDED);
        }
        Line line = newest(at, Decision.Granted.class, isGrant(person, scope));
        if (line == null) {
            stands.add(Reason.NEVER_GRANTED);
            return new Opinion(Status.NOT_CLEARED, stands);
        }
        Decision.Granted grant = (Decision.Granted) line.said();
        if (any(
                at,
                Decision.Withdrawn.class,
                gone -> withdrawal(gone, Question.about(person, scope)) && gone.undoes(line))) {
            stands.add(Reason.WITHDRAWN);
        }
        if (hasLostParty(line, question, at)) {
            stands.add(Reason.PARTY_WITHDRAWN);
        }
        if (scope.respirator() && hasLapsed(line, question, at)) {
            stands.add(Reason.RESPIRATOR_LAPSED);
        }
        if (hasOverdueSheet(line, scope, question, at)) {
            stands.add(Reason.SDS_DELTA_OVERDUE);
        }
        if (!wouldBeGivenAgain(line, scope, asking)) {
            stands.add(Reason.EVIDENCE_FELL);
        }
        addAge(stands, grant, question, at, asking);
        if (!isFit(person, scope, at, ANY)) {
            stands.add(Reason.NOT_FIT_FOR_TASK);
        }
        if (hasOverdueDelta(line, scope, question, at)) {
            stands.add(Reason.DELTA_OVERDUE);
        }
        if (any(at, Setting.RenewalAsked.class, asked -> {
            Setting.RenewalAsked renewal = (Setting.RenewalAsked) asked.said();
            return renewal.grant().equals(line.id()) && day(at).isAfter(renewal.due());
        })) {
            stands.add(Reason.RENEWAL_OVERDUE);
        }
        if (day(at).isAfter(lastDay(line, scope))) {
            stands.add(Reason.EXPIRED);
        }
        Status good = grant.supervised() ? Status.SUPERVISED_ONLY : Status.CLEARED;
        return new Opinion(stands.isEmpty() ? good : Status.NOT_CLEARED, stands);
    }

    /** The last day on which a grant holds, never beyond the caps. */
    LocalDate lastDay(Line line, Scope scope) {
        Decision.Granted grant = (Decision.Granted) line.said();
        LocalDate from = day(line.when());
        Stream<LocalDate> caps = Stream.of(
                grant.validThrough(),
                months(from, 36),
                scope.respirator() ? months(from, 12) : LocalDate.MAX,
                grant.countersigner() != null ? months(from, 6) : LocalDate.MAX);
        return caps.min(Comparator.naturalOrder()).orElseThrow();
    }

    // Who is suspended

    private boolean isSuspended(Question question, Instant at) {
        return suspensions(question, at).anyMatch(one -> !isLifted(one, question, at));
    }

    private Stream<Line> suspensions(Question question, Instant at) {
        return until(at).filter(line -> {
            if (line.said() instanceof Decision.Suspended suspended) {
                return suspended.person().equals(question.person()) && touches(suspended.scope(), question);
            }
            return line.said() instanceof Evidence.SittingNoted sitting
                    && sitting.person().equals(question.person())
                    && sitting.kind() == Evidence.SittingNoted.Kind.RECALL
                    && sitting.criticalWrong() > 0;
        });
    }

    private boolean isLifted(Line suspension, Question question, Instant at) {
        return reinstatements(question, at)
                .anyMatch(line -> line.knewOf(suspension) && isSound(line, suspension.when(), question.person()));
    }

    private Stream<Line> reinstatements(Question question, Instant at) {
        return until(at)
                .filter(line -> line.said() instanceof Decision.Reinstated back
                        && back.person().equals(question.person())
                        && scope(back.scope())
                                .filter(scope -> covers(scope, question))
                                .isPresent());
    }

    /** Whether giving back was right, for something that happened at an instant. */
    private boolean isSound(Line line, Instant happened, UUID person) {
        Decision.Reinstated back = (Decision.Reinstated) line.said();
        Policy policy = policy(line.when());
        Scope scope = scope(back.scope()).orElseThrow();
        return policy != null
                && policy.version().equals(back.policy())
                && Stream.of(ANY, named(back.evidence()))
                        .allMatch(which -> practicals(person, scope, line.when(), happened, policy, which)
                                && (!scope.respirator() || isMasked(person, line.when(), which))
                                && isFit(person, scope, line.when(), which))
                && mayDecide(back.decider(), person, back.countersigner() != null, policy, line.when());
    }

    private boolean hasLostParty(Line grant, Question question, Instant at) {
        Instant since = start(day(grant.when()).minusMonths(24));
        return until(at)
                .filter(act -> party(act, question.person()).isPresent())
                .filter(act -> !act.when().isBefore(since))
                .anyMatch(act -> losses(party(act, question.person()).orElseThrow(), at)
                        .anyMatch(loss -> loss.undoes(grant)
                                && !loss.when().isBefore(act.when())
                                && !isLifted(loss, question, at)));
    }

    private Stream<Line> losses(UUID person, Instant at) {
        return until(at)
                .filter(line -> line.said() instanceof Decision.Withdrawn gone
                                && gone.forCause()
                                && gone.person().equals(person)
                        || line.said() instanceof Setting.QualificationEnded ended
                                && ended.forCause()
                                && ended.person().equals(person));
    }

    /** Who trained or observed the learner in this line. */
    private static Optional<UUID> party(Line line, UUID learner) {
        Body said = line.said();
        if (!said.subject().equals(Optional.of(learner))) {
            return Optional.empty();
        }
        if (said instanceof Evidence.TrainingGiven training) {
            return Optional.of(training.trainer());
        }
        if (said instanceof Evidence.RespiratorTrained training) {
            return Optional.of(training.trainer());
        }
        if (said instanceof Evidence.DeltaDone training) {
            return Optional.of(training.trainer());
        }
        if (said instanceof Evidence.ObservationRecorded practical) {
            return Optional.of(practical.observer());
        }
        if (said instanceof Evidence.PpeShown shown) {
            return Optional.of(shown.observer());
        }
        return Optional.empty();
    }

    // Respirators

    /** Steps through every instant at which papers begin or end. */
    private boolean hasLapsed(Line grant, Question question, Instant at) {
        UUID person = question.person();
        Instant from = grant.when();
        while (true) {
            Instant gap = firstGap(person, from, at);
            if (gap == null) {
                return false;
            }
            Optional<Instant> back = reinstatements(question, at)
                    .filter(line -> line.when().isAfter(gap))
                    .filter(line -> isSound(line, gap, person))
                    .map(Line::when)
                    .min(Comparator.naturalOrder());
            if (back.isEmpty()) {
                return true;
            }
            from = back.get();
        }
    }

    private Instant firstGap(UUID person, Instant from, Instant to) {
        TreeSet<Instant> steps = new TreeSet<>(List.of(from, to));
        until(to)
                .filter(line ->
                        line.said() instanceof Evidence.FitTested || line.said() instanceof Evidence.RespiratorTrained)
                .forEach(line -> {
                    steps.add(line.when());
                    steps.add(start(months(day(line.when()), 12).plusDays(1)));
                });
        return steps.subSet(from, true, to, true).stream()
                .filter(step -> !isMasked(person, step, ANY))
                .findFirst()
                .orElse(null);
    }

    private boolean isMasked(UUID person, Instant at, Predicate<Line> named) {
        Line test = newest(
                at,
                Evidence.FitTested.class,
                line -> named.test(line)
                        && ((Evidence.FitTested) line.said()).person().equals(person));
        Line training = newest(at, Evidence.RespiratorTrained.class, line -> {
            Evidence.RespiratorTrained said = (Evidence.RespiratorTrained) line.said();
            return named.test(line)
                    && said.person().equals(person)
                    && !said.trainer().equals(person)
                    && isQualified(said.trainer(), Act.TRAIN, line.when());
        });
        return test != null
                && ((Evidence.FitTested) test.said()).passed()
                && training != null
                && !day(at).isAfter(months(day(test.when()), 12))
                && !day(at).isAfter(months(day(training.when()), 12));
    }

    private boolean isFit(UUID person, Scope scope, Instant at, Predicate<Line> named) {
        Line word = newest(
                at,
                Evidence.FitForTask.class,
                line -> named.test(line)
                        && ((Evidence.FitForTask) line.said()).person().equals(person));
        return word == null ? !scope.respirator() : ((Evidence.FitForTask) word.said()).fit();
    }

    // Delta trainings

    private Stream<Line> unknownSheets(Line grant, Scope scope, Instant at) {
        return until(at)
                .filter(line -> line.said() instanceof Setting.SdsFiled filed
                        && filed.substance().equals(scope.substance())
                        && !filed.revision().equals(((Decision.Granted) grant.said()).sdsRevision())
                        && line.undoes(grant));
    }

    private Optional<Line> training(UUID person, UUID asked, Instant at) {
        return until(at)
                .filter(line -> line.said() instanceof Evidence.DeltaDone done
                        && done.person().equals(person)
                        && Objects.equals(done.asked(), asked)
                        && !done.trainer().equals(person)
                        && isQualified(done.trainer(), Act.TRAIN, line.when()))
                .min(OLDEST_FIRST);
    }

    private boolean hasOverdueSheet(Line grant, Scope scope, Question question, Instant at) {
        return unknownSheets(grant, scope, at)
                .filter(line -> ((Setting.SdsFiled) line.said())
                        .sectionsChanged().stream().anyMatch(section -> section == 2 || section == 8))
                .anyMatch(line -> {
                    Instant over =
                            start(((Setting.SdsFiled) line.said()).deltaDue().plusDays(1));
                    Optional<Line> had = training(question.person(), line.id(), at);
                    if (at.isBefore(over)
                            || had.filter(one -> one.when().isBefore(over)).isPresent()) {
                        return false;
                    }
                    return reinstatements(question, at)
                            .noneMatch(back -> had.isPresent()
                                    && !back.when().isBefore(had.get().when())
                                    && back.when().isAfter(over)
                                    && isSound(back, over, question.person()));
                });
    }

    private boolean hasOverdueDelta(Line grant, Scope scope, Question question, Instant at) {
        UUID person = question.person();
        boolean sheets = unknownSheets(grant, scope, at)
                .filter(line -> ((Setting.SdsFiled) line.said())
                        .sectionsChanged().stream().noneMatch(section -> section == 2 || section == 8))
                .anyMatch(line -> day(at).isAfter(((Setting.SdsFiled) line.said()).deltaDue())
                        && training(person, line.id(), at).isEmpty());
        boolean asked = until(at)
                .anyMatch(line -> line.said() instanceof Setting.DeltaAsked delta
                        && (delta.person() == null || delta.person().equals(person))
                        && touches(delta.scope(), question)
                        && line.undoes(grant)
                        && day(at).isAfter(delta.due())
                        && training(person, line.id(), at).isEmpty());
        return sheets || asked || isOutOfPractice(grant, scope, question, at);
    }

    /** Counts the days from each beginning to the next, as a person with a calendar would. */
    private boolean isOutOfPractice(Line grant, Scope scope, Question question, Instant at) {
        UUID person = question.person();
        Policy policy = policy(at);
        Instant count = Stream.concat(
                        Stream.of(grant.when()),
                        Stream.concat(
                                reinstatements(question, at)
                                        .filter(line -> isSound(line, Instant.MIN, person))
                                        .map(Line::when),
                                until(at)
                                        .filter(line -> line.said() instanceof Evidence.DeltaDone done
                                                && done.person().equals(person)
                                                && done.asked() == null
                                                && !done.trainer().equals(person)
                                                && isQualified(done.trainer(), Act.TRAIN, line.when()))
                                        .map(Line::when)))
                .max(Comparator.naturalOrder())
                .orElseThrow();
        List<Instant> handled = until(at)
                .filter(line -> line.said() instanceof Evidence.Handled done
                        && done.person().equals(person)
                        && done.scope().equals(scope.id()))
                .map(Line::when)
                .sorted()
                .toList();
        for (Instant one : handled) {
            if (one.isAfter(count)
                    && !day(one).isAfter(day(count).plusDays(policy.periods().idleDays()))) {
                count = one;
            }
        }
        return day(at).isAfter(day(count)
                .plusDays(policy.periods().idleDays())
                .plusDays(policy.periods().deltaDueDays()));
    }

    // Age

    private void addAge(Set<Reason> stands, Decision.Granted grant, Question question, Instant at, Set<UUID> asking) {
        UUID person = question.person();
        Boolean adult = isAdult(person, day(at));
        if (adult == null) {
            stands.add(Reason.AGE_UNKNOWN);
            return;
        }
        if (adult) {
            if (grant.supervised()) {
                stands.add(Reason.TURNED_18);
            }
            return;
        }
        Evidence.AgeException exception = exception(person, at, ANY);
        if (!grant.supervised() || exception == null) {
            stands.add(Reason.UNDER_18);
        }
        if (grant.supervised() && exception != null && !canSupervise(exception.supervisor(), question, at, asking)) {
            stands.add(Reason.SUPERVISOR_NOT_CLEARED);
        }
    }

    private boolean canSupervise(UUID supervisor, Question question, Instant at, Set<UUID> asking) {
        if (!Boolean.TRUE.equals(isAdult(supervisor, day(at))) || !asking.add(supervisor)) {
            return false;
        }
        boolean can = ask(question.by(supervisor), at, asking).status() == Status.CLEARED;
        asking.remove(supervisor);
        return can;
    }

    private Evidence.AgeException exception(UUID person, Instant at, Predicate<Line> named) {
        Line line = newest(
                at,
                Evidence.AgeException.class,
                one -> ((Evidence.AgeException) one.said()).person().equals(person) && named.test(one));
        if (line == null) {
            return null;
        }
        Evidence.AgeException exception = (Evidence.AgeException) line.said();
        return day(at).isAfter(exception.through())
                        || exception.by().equals(person)
                        || exception.supervisor().equals(person)
                ? null
                : exception;
    }

    /** From the 18th birthday on; null when nobody knows. */
    private Boolean isAdult(UUID person, LocalDate on) {
        LocalDate birthday = born.get(person);
        if (birthday == null) {
            return null;
        }
        int years = on.getYear() - birthday.getYear();
        boolean hadBirthday = on.getMonthValue() > birthday.getMonthValue()
                || on.getMonthValue() == birthday.getMonthValue() && on.getDayOfMonth() >= birthday.getDayOfMonth();
        return hadBirthday ? years >= 18 : years > 18;
    }

    // What a grant needs

    private boolean wouldBeGivenAgain(Line line, Scope scope, Set<UUID> asking) {
        Decision.Granted grant = (Decision.Granted) line.said();
        Policy policy = policy(line.when());
        Boolean adult = isAdult(grant.person(), day(line.when()));
        return policy != null
                && policy.version().equals(grant.policy())
                && (!Boolean.FALSE.equals(adult) || grant.supervised())
                && Stream.of(ANY, named(grant.evidence())).allMatch(which -> needs(
                                new Proposal(
                                        grant.person(),
                                        grant.scope(),
                                        grant.decider(),
                                        grant.pool(),
                                        grant.countersigner() != null),
                                scope,
                                policy,
                                line,
                                which,
                                asking)
                        .isEmpty());
    }

    /** What is missing for a decision at an instant; empty, when it may be made. */
    Set<Need> missing(Proposal proposal, Instant at) {
        Policy policy = policy(at);
        Optional<Scope> scope = scope(proposal.scope());
        if (contradicting || policy == null || scope.isEmpty() || !isInUse(scope.get(), at)) {
            return EnumSet.of(Need.SCOPE_OPEN);
        }
        Line now = new Line(Long.MAX_VALUE, null, at, null);
        Set<Need> needs = needs(proposal, scope.get(), policy, now, ANY, new HashSet<>());
        if (standsSuspended(proposal.person(), scope.get(), at)) {
            needs.add(Need.NOT_SUSPENDED);
        }
        return needs;
    }

    private boolean standsSuspended(UUID person, Scope scope, Instant at) {
        Question question = Question.about(person, scope);
        if (isSuspended(question, at)) {
            return true;
        }
        Line line = newest(at, Decision.Granted.class, isGrant(person, scope));
        return line != null
                && !day(at).isAfter(lastDay(line, scope))
                && !any(at, Decision.Withdrawn.class, gone -> withdrawal(gone, question) && gone.undoes(line))
                && (hasLostParty(line, question, at)
                        || scope.respirator() && hasLapsed(line, question, at)
                        || hasOverdueSheet(line, scope, question, at));
    }

    private Set<Need> needs(
            Proposal proposal, Scope scope, Policy policy, Line now, Predicate<Line> named, Set<UUID> asking) {
        UUID person = proposal.person();
        Instant at = now.when();
        LocalDate today = day(at);
        Set<Need> missing = EnumSet.noneOf(Need.class);
        if (!isInUse(scope, at)) {
            missing.add(Need.SCOPE_OPEN);
        }
        if (!Boolean.TRUE.equals(isAdult(person, today))) {
            Evidence.AgeException exception = exception(person, at, named);
            if (isAdult(person, today) == null
                    || exception == null
                    || !canSupervise(exception.supervisor(), Question.about(person, scope), at, asking)) {
                missing.add(Need.AGE);
            }
        }
        if (!isTrained(person, scope, policy, at, named)) {
            missing.add(Need.TRAINING);
        }
        Instant lastGrant = lines.stream()
                .filter(isGrant(person, scope))
                .filter(line -> OLDEST_FIRST.compare(line, now) < 0)
                .max(OLDEST_FIRST)
                .map(Line::when)
                .orElse(Instant.MIN);
        if (!hasSat(person, policy, proposal.pool(), at, lastGrant, named)) {
            missing.add(Need.KNOWLEDGE);
        }
        if (!practicals(person, scope, at, lastGrant, policy, named)) {
            missing.add(Need.OBSERVATION);
        }
        if (!hasShownPpe(person, scope.form(), policy, at, named)) {
            missing.add(Need.PPE);
        }
        Line sheet = newest(at, Setting.SdsFiled.class, line -> ((Setting.SdsFiled) line.said())
                .substance()
                .equals(scope.substance()));
        if (sheet == null
                || until(at)
                        .filter(named)
                        .noneMatch(line -> line.said() instanceof Evidence.SdsRead read
                                && read.person().equals(person)
                                && read.revision().equals(((Setting.SdsFiled) sheet.said()).revision())
                                && read.sha256().equals(((Setting.SdsFiled) sheet.said()).sha256()))) {
            missing.add(Need.SDS_READ);
        }
        if (scope.respirator() && !isMasked(person, at, named)) {
            missing.add(Need.RESPIRATOR);
        }
        if (!isFit(person, scope, at, named)) {
            missing.add(Need.FIT_FOR_TASK);
        }
        if (proposal.decider().equals(person) || !isQualified(proposal.decider(), Act.DECIDE, at)) {
            missing.add(Need.DECIDER_QUALIFIED);
        }
        if (!keepsApart(proposal.decider(), person, proposal.countersigned(), policy, at)) {
            missing.add(Need.SEPARATION);
        }
        return missing;
    }

    private boolean mayDecide(UUID decider, UUID person, boolean countersigned, Policy policy, Instant at) {
        return !decider.equals(person)
                && isQualified(decider, Act.DECIDE, at)
                && keepsApart(decider, person, countersigned, policy, at);
    }

    private boolean keepsApart(UUID decider, UUID person, boolean countersigned, Policy policy, Instant at) {
        Instant since = start(day(at).minusMonths(policy.periods().separationMonths()));
        return !decider.equals(person)
                && (countersigned && policy.singleInstructor()
                        || until(at)
                                .filter(line -> !line.when().isBefore(since))
                                .noneMatch(line -> party(line, person).equals(Optional.of(decider))));
    }

    private boolean isTrained(UUID person, Scope scope, Policy policy, Instant at, Predicate<Line> named) {
        LocalDate today = day(at);
        Instant since = start(today.minusMonths(policy.periods().trainingMonths()));
        LocalDate elsewhere = today.minusMonths(policy.periods().earlierTrainingMonths());
        return until(at)
                .filter(named)
                .anyMatch(line -> line.said() instanceof Evidence.TrainingGiven had
                                && had.person().equals(person)
                                && had.substance().equals(scope.substance())
                                && !line.when().isBefore(since)
                                && counts(had.trainer(), Act.TRAIN, person, line, at)
                        || line.said() instanceof Evidence.EarlierTraining earlier
                                && earlier.person().equals(person)
                                && earlier.substance().equals(scope.substance())
                                && !earlier.on().isBefore(elsewhere)
                                && !earlier.seenBy().equals(person));
    }

    /** Tries every set of sittings that is large enough, pair by pair. */
    private boolean hasSat(UUID person, Policy policy, String pool, Instant at, Instant after, Predicate<Line> named) {
        Policy.Knowledge gate = policy.knowledge();
        List<Evidence.SittingNoted> passed = until(at)
                .filter(named)
                .filter(line -> line.said() instanceof Evidence.SittingNoted)
                .map(line -> (Evidence.SittingNoted) line.said())
                .filter(one -> one.person().equals(person)
                        && one.kind() == Evidence.SittingNoted.Kind.GATE
                        && one.check().equals(gate.check())
                        && one.items() == gate.items()
                        && one.right() >= gate.right()
                        && one.criticalWrong() == 0
                        && one.versions().pool().equals(pool)
                        && one.startedAt().isAfter(after)
                        && !one.handedInAt().isAfter(at)
                        && !day(one.handedInAt()).isBefore(day(at).minusDays(gate.days())))
                .toList();
        return passed.stream().anyMatch(first -> chain(first, passed, gate) >= gate.sittings());
    }

    private static int chain(Evidence.SittingNoted first, List<Evidence.SittingNoted> all, Policy.Knowledge gate) {
        return 1
                + all.stream()
                        .filter(next ->
                                !next.startedAt().isBefore(first.handedInAt().plusSeconds(3600L * gate.hoursApart())))
                        .mapToInt(next -> chain(next, all, gate))
                        .max()
                        .orElse(0);
    }

    private boolean practicals(
            UUID person, Scope scope, Instant at, Instant after, Policy policy, Predicate<Line> named) {
        List<Checklist> needed = policy.checklists().stream()
                .filter(list -> list.forms().contains(scope.form())
                        && scope.tasks().stream().anyMatch(list.tasks()::contains))
                .toList();
        return !needed.isEmpty()
                && needed.stream().allMatch(list -> {
                    Line line = newest(at, Evidence.ObservationRecorded.class, one -> {
                        Evidence.ObservationRecorded said = (Evidence.ObservationRecorded) one.said();
                        return said.person().equals(person)
                                && said.scope().equals(scope.id())
                                && said.checklist().equals(list.id())
                                && said.startedAt().isAfter(after)
                                && named.test(one);
                    });
                    return line != null && passes(line, list, person, policy, at);
                });
    }

    private boolean passes(Line line, Checklist list, UUID person, Policy policy, Instant at) {
        Evidence.ObservationRecorded said = (Evidence.ObservationRecorded) line.said();
        Map<String, StepSeen.Outcome> words = new HashMap<>();
        said.steps().forEach(step -> words.put(step.step(), step.outcome()));
        return said.versions().pool().equals(list.version())
                && list.steps().stream()
                        .allMatch(step -> step.critical()
                                ? words.get(step.id()) == StepSeen.Outcome.UNPROMPTED
                                : words.get(step.id()) != null)
                && !day(said.endedAt())
                        .isBefore(day(at).minusDays(policy.periods().observationDays()))
                && counts(said.observer(), Act.OBSERVE, person, line, at)
                && until(at)
                        .anyMatch(one -> one.said() instanceof Evidence.ObservationAcknowledged seen
                                && seen.person().equals(person)
                                && seen.observation().equals(line.id()));
    }

    private boolean hasShownPpe(UUID person, Form form, Policy policy, Instant at, Predicate<Line> named) {
        Line line = newest(at, Evidence.PpeShown.class, one -> {
            Evidence.PpeShown said = (Evidence.PpeShown) one.said();
            return said.person().equals(person) && said.form() == form && named.test(one);
        });
        if (line == null) {
            return false;
        }
        Evidence.PpeShown said = (Evidence.PpeShown) line.said();
        List<Policy.Ppe> lists =
                policy.ppe().stream().filter(one -> one.form() == form).toList();
        return !lists.isEmpty()
                && said.items().containsAll(lists.get(0).items())
                && !day(line.when()).isBefore(day(at).minusDays(policy.periods().ppeDays()))
                && counts(said.observer(), Act.OBSERVE, person, line, at);
    }

    /** Whether what a trainer or observer did still counts. */
    private boolean counts(UUID party, Act act, UUID learner, Line done, Instant at) {
        return !party.equals(learner)
                && isQualified(party, act, done.when())
                && losses(party, at).noneMatch(loss -> loss.undoes(done));
    }

    boolean isQualified(UUID person, Act act, Instant at) {
        Line line = newest(at, Setting.QualificationGiven.class, one -> {
            Setting.QualificationGiven given = (Setting.QualificationGiven) one.said();
            return given.person().equals(person) && given.act() == act;
        });
        if (line == null) {
            return false;
        }
        Setting.QualificationGiven given = (Setting.QualificationGiven) line.said();
        return !given.by().equals(person)
                && !day(at).isAfter(given.through())
                && until(at)
                        .noneMatch(one -> one.undoes(line)
                                && (one.said() instanceof Setting.QualificationEnded ended
                                                && ended.person().equals(person)
                                                && ended.act() == act
                                        || one.said() instanceof Decision.Withdrawn gone
                                                && gone.forCause()
                                                && gone.person().equals(person)));
    }

    // The words of the page

    private Stream<Line> until(Instant at) {
        return lines.stream().filter(line -> !line.when().isAfter(at));
    }

    private Line newest(Instant at, Class<? extends Body> kind, Predicate<Line> which) {
        return until(at)
                .filter(line -> kind.isInstance(line.said()))
                .filter(which)
                .max(OLDEST_FIRST)
                .orElse(null);
    }

    private boolean any(Instant at, Class<? extends Body> kind, Predicate<Line> which) {
        return until(at).filter(line -> kind.isInstance(line.said())).anyMatch(which);
    }

    private static Predicate<Line> named(Set<UUID> ids) {
        return line -> ids.contains(line.id());
    }

    private static Predicate<Line> isGrant(UUID person, Scope scope) {
        return line -> line.said() instanceof Decision.Granted grant
                && grant.person().equals(person)
                && grant.scope().equals(scope.id());
    }

    private boolean withdrawal(Line line, Question question) {
        Decision.Withdrawn gone = (Decision.Withdrawn) line.said();
        return gone.person().equals(question.person()) && touches(gone.scope(), question);
    }

    private Policy policy(Instant at) {
        Line line = newest(at, Setting.PolicyInForce.class, one -> true);
        return line == null ? null : ((Setting.PolicyInForce) line.said()).policy();
    }

    private Stream<Scope> scopes(Instant at) {
        return until(at)
                .filter(line -> line.said() instanceof Setting.ScopeDefined)
                .map(line -> ((Setting.ScopeDefined) line.said()).scope());
    }

    private Optional<Scope> scope(UUID id) {
        return scopes(Instant.MAX).filter(scope -> scope.id().equals(id)).findFirst();
    }

    private boolean isInUse(Scope scope, Instant at) {
        return scopes(at).anyMatch(scope::equals) && isOpen(scope.id(), at);
    }

    private boolean isOpen(UUID scope, Instant at) {
        return until(at)
                .noneMatch(line -> line.said() instanceof Setting.ScopeClosed closed
                        && closed.scope().equals(scope));
    }

    private static boolean samePlace(Scope scope, Question question) {
        return scope.substance().equals(question.substance())
                && scope.form() == question.form()
                && scope.room().equals(question.room());
    }

    private static boolean covers(Scope scope, Question question) {
        return samePlace(scope, question) && scope.tasks().containsAll(question.tasks());
    }

    private boolean touches(UUID id, Question question) {
        return id == null
                || scope(id)
                        .filter(scope -> samePlace(scope, question)
                                && question.tasks().stream().anyMatch(scope.tasks()::contains))
                        .isPresent();
    }

    private LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, zone);
    }

    private Instant start(LocalDate day) {
        return day.atStartOfDay(zone).toInstant();
    }

    /** The same day of the month so many months later, or the last one of a shorter month. */
    private static LocalDate months(LocalDate from, int months) {
        LocalDate first = from.withDayOfMonth(1).plusMonths(months);
        return first.withDayOfMonth(Math.min(from.getDayOfMonth(), first.lengthOfMonth()));
    }
}
