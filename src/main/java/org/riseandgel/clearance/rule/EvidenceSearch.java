package org.riseandgel.clearance.rule;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;

/**
 * Looks for the evidence that a decision about one person in one scope needs at an instant. Only events that the given
 * test lets through count: all of them when a decision is being made, the named ones when it is judged again.
 */
final class EvidenceSearch {
    private final History history;
    private final Policy policy;
    private final UUID person;
    private final Scope scope;
    private final Instant at;
    private final Predicate<UUID> counts;
    private final Qualifications qualifications;

    EvidenceSearch(History history, Policy policy, UUID person, Scope scope, Instant at, Predicate<UUID> counts) {
        this.history = history;
        this.policy = policy;
        this.person = person;
        this.scope = scope;
        this.at = at;
        this.counts = counts;
        this.qualifications = new Qualifications(history);
    }

    NeedResult training() {
        Instant oldest = monthsBack(policy.periods().trainingMonths());
        Optional<Fact<Evidence.TrainingGiven>> own = newest(
                Evidence.TrainingGiven.class,
                f -> f.body().substance().equals(scope.substance())
                        && !f.effective().isBefore(oldest)
                        && qualified(f.body().trainer(), Act.TRAIN, f));
        if (own.isPresent()) {
            return NeedResult.met(Need.TRAINING, "Trained here.", own.get().id());
        }
        LocalDate first = history.days().of(at).minusMonths(policy.periods().earlierTrainingMonths());
        return newest(
                        Evidence.EarlierTraining.class,
                        f -> f.body().substance().equals(scope.substance())
                                && !f.body().on().isBefore(first)
                                && !person.equals(f.body().seenBy()))
                .map(f -> NeedResult.met(Need.TRAINING, "Trained elsewhere; the paper was seen.", f.id()))
                .orElse(NeedResult.unmet(
                        Need.TRAINING,
                        "No training on this substance by a trainer who was qualified on that day, not older than %d months."
                                .formatted(policy.periods().trainingMonths())));
    }

    /** Sittings after an instant, from the newest back, each handed in long enough before the next was begun. */
    NeedResult knowledge(String pool, Instant after) {
        Policy.Knowledge gate = policy.knowledge();
        List<Fact<Evidence.SittingNoted>> passed = facts(Evidence.SittingNoted.class).stream()
                .filter(f -> passes(f.body(), pool) && f.body().startedAt().isAfter(after))
                .sorted(Comparator.comparing(
                        (Fact<Evidence.SittingNoted> f) -> f.body().startedAt(), Comparator.reverseOrder()))
                .toList();
        Set<UUID> chosen = new HashSet<>();
        Instant next = null;
        for (Fact<Evidence.SittingNoted> one : passed) {
            Instant soonest = one.body().handedInAt().plus(Duration.ofHours(gate.hoursApart()));
            if (chosen.size() < gate.sittings() && (next == null || !soonest.isAfter(next))) {
                chosen.add(one.id());
                next = one.body().startedAt();
            }
        }
        return chosen.size() >= gate.sittings()
                ? new NeedResult(Need.KNOWLEDGE, true, "%d sittings passed.".formatted(chosen.size()), chosen)
                : NeedResult.unmet(
                        Need.KNOWLEDGE,
                        "%d of %d fresh sittings: each with %d of %d right, nothing critical wrong, on the current content, %d hours apart, not older than %d days."
                                .formatted(
                                        chosen.size(),
                                        gate.sittings(),
                                        gate.right(),
                                        gate.items(),
                                        gate.hoursApart(),
                                        gate.days()));
    }

    /** For each practical that the scope needs, the newest one after an instant has to be passed. */
    NeedResult observation(Instant after) {
        List<Checklist> needed = policy.checklistsFor(scope);
        Set<UUID> chosen = new HashSet<>();
        List<String> missing = new ArrayList<>();
        for (Checklist checklist : needed) {
            newest(
                            Evidence.ObservationRecorded.class,
                            f -> f.body().scope().equals(scope.id())
                                    && f.body().checklist().equals(checklist.id())
                                    && f.body().startedAt().isAfter(after))
                    .filter(f -> passes(f, checklist))
                    .ifPresentOrElse(f -> chosen.add(f.id()), () -> missing.add(checklist.title()));
        }
        if (needed.isEmpty()) {
            return NeedResult.unmet(Need.OBSERVATION, "The policy has no practical for this scope.");
        }
        return missing.isEmpty()
                ? new NeedResult(Need.OBSERVATION, true, "Practical passed and acknowledged.", chosen)
                : NeedResult.unmet(
                        Need.OBSERVATION,
                        "Not passed with all critical steps unprompted before a qualified observer, acknowledged, not older than %d days: %s."
                                .formatted(policy.periods().observationDays(), String.join(", ", missing)));
    }

    NeedResult ppe() {
        Optional<Set<String>> needed = policy.ppeFor(scope.form());
        return newest(Evidence.PpeShown.class, f -> f.body().form() == scope.form())
                .filter(f -> needed.isPresent()
                        && f.body().items().containsAll(needed.get())
                        && days(f.effective()) <= policy.periods().ppeDays()
                        && qualified(f.body().observer(), Act.OBSERVE, f))
                .map(f -> NeedResult.met(Need.PPE, "Protective equipment shown.", f.id()))
                .orElse(NeedResult.unmet(
                        Need.PPE,
                        "All protective equipment put on and taken off before a qualified observer, not older than %d days."
                                .formatted(policy.periods().ppeDays())));
    }

    NeedResult sheetRead() {
        Optional<Fact<Setting.SdsFiled>> sheet = history.sheet(scope.substance(), at);
        return sheet.flatMap(filed -> newest(
                        Evidence.SdsRead.class,
                        f -> f.body().revision().equals(filed.body().revision())
                                && f.body().sha256().equals(filed.body().sha256())))
                .map(f -> NeedResult.met(Need.SDS_READ, "The current safety data sheet was read.", f.id()))
                .orElse(NeedResult.unmet(
                        Need.SDS_READ,
                        sheet.isPresent()
                                ? "The current revision of the safety data sheet has not been read."
                                : "No safety data sheet is on file for this substance."));
    }

    NeedResult respirator() {
        if (!scope.respirator()) {
            return NeedResult.met(Need.RESPIRATOR, "Not needed in this scope.");
        }
        Respirator state = new Respirator(history, policy, person, counts);
        return state.heldUntil(at, at).isAfter(at)
                ? new NeedResult(Need.RESPIRATOR, true, "Fit test and training are current.", state.newest(at))
                : NeedResult.unmet(Need.RESPIRATOR, "Fit test passed and respirator training, each not run out.");
    }

    NeedResult fit() {
        Optional<Fact<Evidence.FitForTask>> said = newest(Evidence.FitForTask.class, f -> true);
        if (said.isPresent() ? said.get().body().fit() : !scope.respirator()) {
            return new NeedResult(
                    Need.FIT_FOR_TASK,
                    true,
                    said.isPresent() ? "Fit for the task." : "Nothing was asked.",
                    said.map(f -> Set.of(f.id())).orElse(Set.of()));
        }
        return NeedResult.unmet(
                Need.FIT_FOR_TASK,
                said.isPresent() ? "Not fit for the task." : "A respirator needs “fit for the task”.");
    }

    private boolean passes(Evidence.SittingNoted sitting, String pool) {
        Policy.Knowledge gate = policy.knowledge();
        return sitting.kind() == Evidence.SittingNoted.Kind.GATE
                && sitting.check().equals(gate.check())
                && sitting.items() == gate.items()
                && sitting.right() >= gate.right()
                && sitting.right() <= sitting.items()
                && sitting.criticalWrong() == 0
                && !sitting.handedInAt().isAfter(at)
                && !sitting.handedInAt().isBefore(sitting.startedAt())
                && days(sitting.handedInAt()) <= gate.days()
                && pool != null
                && Objects.equals(sitting.versions().pool(), pool);
    }

    private boolean passes(Fact<Evidence.ObservationRecorded> seen, Checklist checklist) {
        Evidence.ObservationRecorded practical = seen.body();
        return checklist.version().equals(practical.versions().pool())
                && checklist.isPassedBy(practical.steps())
                && Math.max(days(seen.effective()), days(practical.endedAt()))
                        <= policy.periods().observationDays()
                && qualified(practical.observer(), Act.OBSERVE, seen)
                && history.about(person, Evidence.ObservationAcknowledged.class, at).stream()
                        .anyMatch(f -> f.body().observation().equals(seen.id()));
    }

    /** Qualified on the day of the act, and not found out for cause since. */
    private boolean qualified(UUID other, Act act, Fact<?> then) {
        return !person.equals(other)
                && qualifications.holds(other, act, then.effective())
                && qualifications.losses(other, at).stream().noneMatch(loss -> loss.undoes(then));
    }

    private long days(Instant then) {
        return history.days().between(then, at);
    }

    private Instant monthsBack(int months) {
        return history.days().start(history.days().of(at).minusMonths(months));
    }

    private <T extends Evidence> Optional<Fact<T>> newest(Class<T> kind, Predicate<Fact<T>> which) {
        return History.last(facts(kind).stream().filter(which).toList());
    }

    private <T extends Evidence> List<Fact<T>> facts(Class<T> kind) {
        return history.about(person, kind, at).stream()
                .filter(f -> counts.test(f.id()))
                .toList();
    }
}
