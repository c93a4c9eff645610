package org.riseandgel.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.TestTransaction;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.riseandgel.MutableClock;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.People;
import org.riseandgel.account.Roles;
import org.riseandgel.clearance.School.Cast;
import org.riseandgel.clearance.ledger.Verification;
import org.riseandgel.clearance.policy.OtherPolicy;
import org.riseandgel.clearance.policy.PolicyFile;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.DeltaKind;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Judgement;
import org.riseandgel.clearance.rule.Keeping;
import org.riseandgel.clearance.rule.Need;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.StepSeen;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.clearance.rule.Trigger;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.sitting.SittingHandedIn;

/**
 * The register through its services, on the real database. What moves the clock runs in a transaction that is rolled back:
 * lines of a day to come would leave every other test with a clock that is behind.
 */
@QuarkusTest
class RegisterTest {
    private static final Set<Task> SOME = Set.of(Task.STORE, Task.CLEAN);

    @Inject
    School school;

    @Inject
    Decisions decisions;

    @Inject
    EvidenceDesk evidence;

    @Inject
    SettingsDesk settings;

    @Inject
    CorrectionDesk corrections;

    @Inject
    Register register;

    @Inject
    RegisterCheck check;

    @Inject
    RegisterBook book;

    @Inject
    PersonRecord records;

    @Inject
    Leaving leaving;

    @Inject
    Reminders reminders;

    @Inject
    WhatIf whatIf;

    @Inject
    People people;

    @Inject
    Scribe scribe;

    @Inject
    SittingWatch watch;

    @Inject
    SittingsAsEvidence realSittings;

    @Inject
    Event<SittingHandedIn> handedIn;

    @Inject
    SchoolSettings settingsOfSchool;

    @AfterEach
    void realTime() {
        MutableClock.reset();
    }

    @Test
    void cr01_aClearanceIsForItsTasksFormAndRoomAlone() {
        Cast cast = school.cleared(SOME);
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
        assertThat(ask(cast, Task.WEIGH).reason()).isEqualTo(Reason.NO_SUCH_SCOPE);
        Place powder = new Place(cast.salt(), Form.POWDER, cast.scope().room());
        assertThat(check.ask(null, cast.learner(), powder, Task.CLEAN).isYes()).isFalse();
        Place elsewhere = new Place(cast.salt(), Form.DISPERSION, "another room");
        assertThat(check.ask(null, cast.learner(), elsewhere, Task.CLEAN).isYes())
                .isFalse();
    }

    @Test
    void cr02_nothingIsGrantedWithoutEvidenceAndTheRefusalIsOnRecord() {
        Cast cast = school.cast(SOME);
        Decisions.Outcome outcome =
                decisions.grant(cast.decider(), cast.learner(), cast.scope().id(), null);
        assertThat(outcome.given()).isFalse();
        assertThat(outcome.judgement().unmet())
                .containsExactly(Need.AGE, Need.TRAINING, Need.KNOWLEDGE, Need.OBSERVATION, Need.PPE, Need.SDS_READ);
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.NEVER_GRANTED);
        assertThat(records.of(cast.learner()).get(0).said()).isInstanceOf(Decision.GrantRefused.class);
        school.evidence(cast);
        assertThat(decisions
                        .mayGrant(cast.decider(), cast.learner(), cast.scope().id(), false)
                        .isAllowed())
                .as("sittings that are not written down yet are seen")
                .isTrue();
        school.grant(cast);
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
    }

    @Test
    void cr04_neitherObserverNorTrainerNorLearnerDecides() {
        Cast cast = school.cast(SOME);
        school.evidence(cast);
        for (UUID one : List.of(cast.observer(), cast.trainer())) {
            school.qualify(one, Act.DECIDE);
            assertThat(decisions
                            .grant(one, cast.learner(), cast.scope().id(), null)
                            .judgement()
                            .unmet())
                    .contains(Need.SEPARATION);
        }
        assertThatThrownBy(() -> decisions.grant(
                        cast.learner(), cast.learner(), cast.scope().id(), null))
                .isInstanceOf(RegisterDenied.class);
    }

    @Test
    void cr05_aSingleInstructorDecisionIsMarkedWhereverItIsRead() {
        Cast cast = school.cast(SOME);
        school.evidence(cast);
        school.qualify(cast.observer(), Act.DECIDE);
        Decisions.Outcome outcome =
                decisions.grant(cast.observer(), cast.learner(), cast.scope().id(), "R. Outside, neighbouring school");
        assertThat(outcome.given()).isTrue();
        assertThat(outcome.judgement().singleInstructor()).isTrue();
        assertThat(outcome.judgement().validThrough()).isEqualTo(today().plusMonths(6));
        assertThat(ask(cast, Task.CLEAN).singleInstructor()).isTrue();
        assertThat(register.standings(cast.learner()).get(0).standing().singleInstructor())
                .isTrue();
        assertThat(register.doorList(cast.scope().room()).lines().get(0).singleInstructor())
                .isTrue();
        PersonRecord.RecordLine line = records.of(cast.learner()).get(0);
        assertThat(line.singleInstructor()).isTrue();
        assertThat(line.notes()).contains("R. Outside, neighbouring school");
    }

    @Test
    void cr06_oneTakesAwayAtOnceAndTwoGiveBack() {
        Cast cast = school.cleared(SOME);
        decisions.suspend(cast.trainer(), cast.learner(), null, Trigger.UNSAFE_ACT, "Gloves off too early");
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.SUSPENDED);
        Decisions.Outcome none =
                decisions.reinstate(cast.decider(), cast.learner(), cast.scope().id(), null, "Seen again");
        assertThat(none.judgement().unmet()).containsExactly(Need.OBSERVATION);
        school.practicals(cast);
        school.qualify(cast.observer(), Act.DECIDE);
        assertThat(decisions
                        .reinstate(cast.observer(), cast.learner(), cast.scope().id(), null, "Seen again")
                        .judgement()
                        .unmet())
                .containsExactly(Need.SEPARATION);
        assertThat(decisions
                        .reinstate(cast.decider(), cast.learner(), cast.scope().id(), null, "Seen again")
                        .given())
                .isTrue();
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
    }

    @Test
    void cr07_everyStepHasItsWordAndOnePromptedCriticalStepIsNotEnough() {
        Cast cast = school.cast(SOME);
        school.evidence(cast);
        Checklist list =
                register.policy().orElseThrow().checklistsFor(cast.scope()).get(0);
        UUID prompted = school.practical(cast, list, StepSeen.Outcome.PROMPTED);
        evidence.acknowledge(cast.learner(), prompted);
        assertThat(decisions
                        .mayGrant(cast.decider(), cast.learner(), cast.scope().id(), false)
                        .unmet())
                .containsExactly(Need.OBSERVATION);
        assertThatThrownBy(() -> evidence.practical(
                        cast.observer(),
                        new EvidenceDesk.Practical(
                                cast.learner(),
                                cast.scope().id(),
                                cast.observer(),
                                school.now().minusSeconds(60),
                                school.now(),
                                "Bench 2",
                                Evidence.ObservationRecorded.Material.SALT,
                                list.id(),
                                List.of(),
                                null,
                                School.means())))
                .isInstanceOfSatisfying(RegisterProblem.class, problem -> assertThat(problem.problems())
                        .hasSameSizeAs(list.steps())
                        .allSatisfy(one -> assertThat(one.field()).startsWith("step-")));
        Evidence.ObservationRecorded second = (Evidence.ObservationRecorded) said(cast, prompted);
        assertThat(second.attempt()).isEqualTo(2);
    }

    @Test
    @TestTransaction
    void cr04_whoWroteDownWhatOthersSawDoesNotDecideOnIt() {
        Cast cast = school.cast(SOME);
        school.evidence(cast);
        UUID alone = evidence.equipment(
                cast.decider(),
                cast.learner(),
                Form.DISPERSION,
                cast.observer(),
                register.policy().orElseThrow().ppeFor(Form.DISPERSION).orElseThrow(),
                null,
                School.means());
        assertThat(alone).isNotNull();
        assertThat(judge(cast).unmet()).containsExactly(Need.SEPARATION);
        assertThat(decisions
                        .grant(cast.decider(), cast.learner(), cast.scope().id(), null)
                        .given())
                .isFalse();
        school.qualify(cast.lead(), Act.DECIDE);
        assertThat(decisions
                        .mayGrant(cast.lead(), cast.learner(), cast.scope().id(), false)
                        .unmet())
                .as("this one wrote down the training")
                .containsExactly(Need.SEPARATION);
        school.equipment(cast);
        assertThat(decisions
                        .grant(cast.decider(), cast.learner(), cast.scope().id(), null)
                        .given())
                .as("with equipment that the observer wrote down")
                .isTrue();
    }

    @Test
    @TestTransaction
    void cr18_nobodyOfTheSchoolWritesDownTheirOwnEvidence() {
        Cast cast = school.cast(SOME);
        UUID own = cast.observer();
        for (org.assertj.core.api.ThrowableAssert.ThrowingCallable entry :
                List.<org.assertj.core.api.ThrowableAssert.ThrowingCallable>of(
                        () -> evidence.training(own, own, cast.trainer(), cast.salt(), null, "Hazards", School.means()),
                        () -> evidence.fitTest(own, own, true, "Half mask, size M", "A tester", null),
                        () -> evidence.respiratorTraining(own, own, cast.trainer(), null, School.means()),
                        () -> evidence.fitForTask(own, own, true, "The school's doctor", null),
                        () -> evidence.delta(own, own, null, cast.trainer(), null, School.means()))) {
            assertThatThrownBy(entry)
                    .isInstanceOf(RegisterProblem.class)
                    .hasMessageContaining("Nobody does this for themselves");
        }
    }

    @Test
    void cr08_meansAreAsked() {
        Cast cast = school.cast(SOME);
        assertThatThrownBy(() -> evidence.training(
                        cast.lead(), cast.learner(), cast.trainer(), cast.salt(), school.now(), "Hazards", null))
                .isInstanceOf(RegisterProblem.class)
                .hasMessageContaining("how it was seen");
    }

    @Test
    @TestTransaction
    void cr10_expiryNeedsNoJobAndComesWithTheEndOfTheDay() {
        Cast cast = school.cleared(SOME);
        LocalDate last = ask(cast, Task.CLEAN).validThrough();
        assertThat(last).isEqualTo(today().plusMonths(12));
        handledAllTheTime(cast, last);
        ZoneId zone = settingsOfSchool.zone();
        MutableClock.moveTo(last.plusDays(1).atStartOfDay(zone).toInstant().minusSeconds(30));
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
        MutableClock.moveTo(last.plusDays(1).atStartOfDay(zone).toInstant());
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.EXPIRED);
    }

    @Test
    void cr10_aClockThatIsBehindClearsNobody() {
        Cast cast = school.cleared(SOME);
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
        MutableClock.advance(Duration.ofHours(-1));
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.UNREADABLE);
        MutableClock.reset();
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
    }

    /** A line was written while the clock ran ahead; then it was set right, which is behind that line. */
    @Test
    @TestTransaction
    void cr10_aClockThatRanAheadAndWasSetBackClearsNobodyUntilItHasCaughtUp() {
        Cast cast = school.cleared(SOME);
        Cast other = school.cleared(SOME);
        assertThat(ask(cast, Task.CLEAN).isYes()).as("this answer is kept").isTrue();
        Duration ahead = Duration.ofHours(2);
        MutableClock.advance(ahead);
        UUID early = decisions.suspend(other.trainer(), other.learner(), null, Trigger.OTHER, "By a clock ahead");
        MutableClock.reset();
        assertThat(ask(cast, Task.CLEAN).reason())
                .as("the kept answer is older than the line, but not the clock")
                .isEqualTo(Reason.UNREADABLE);
        assertThat(check.look(cast.learner(), Place.of(cast.scope()), Task.CLEAN)
                        .isYes())
                .isFalse();
        assertThat(register.board(null, null).readable()).isFalse();
        assertThat(register.board(null, null).rows()).isEmpty();
        assertThat(register.doorList(cast.scope().room()).lines()).isEmpty();
        assertThat(register.standings(cast.learner()))
                .extracting(row -> row.standing().reasons())
                .containsExactly(List.of(Reason.UNREADABLE));
        assertThat(reminders.eventsFor(cast.learner())).isEmpty();
        UUID late = decisions.suspend(cast.trainer(), cast.learner(), null, Trigger.OTHER, "Taking away does not wait");
        assertThat(records.line(late).orElseThrow().recorded())
                .as("at the newest line's time, never before it")
                .isEqualTo(records.line(early).orElseThrow().recorded());
        assertThat(book.verify().findings()).isEmpty();
        MutableClock.advance(ahead.plusMinutes(1));
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.SUSPENDED);
        assertThat(register.board(null, null).readable()).isTrue();
        Cast next = school.cleared(SOME);
        assertThat(ask(next, Task.CLEAN).isYes()).as("all is as before").isTrue();
    }

    @Test
    void cr11_incidentsNearMissesAndUnsafeActsSuspendAtOnce() {
        for (Trigger trigger : List.of(Trigger.INCIDENT, Trigger.NEAR_MISS, Trigger.UNSAFE_ACT)) {
            Cast cast = school.cleared(SOME);
            decisions.suspend(cast.observer(), cast.learner(), cast.scope().id(), trigger, "As it was told");
            assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.SUSPENDED);
        }
    }

    @Test
    void cr11_aRecallCheckWithACriticalItemWrongSuspendsWhenItIsHandedIn() {
        Cast cast = school.cleared(SOME);
        assertThat(watch.clearedSince(cast.learner())).isPresent();
        SittingsForTests.handIn(cast.learner(), school.now(), 11, 0, Evidence.SittingNoted.Kind.RECALL);
        handIn(cast);
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
        SittingsForTests.handIn(cast.learner(), school.now(), 11, 1, Evidence.SittingNoted.Kind.RECALL);
        handIn(cast);
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.SUSPENDED);
        assertThat(watch.clearedSince(cast.learner())).isEmpty();
        assertThat(records.of(cast.learner()).stream()
                        .filter(line -> line.kind().equals("sitting-noted")))
                .as("each is written down once")
                .hasSize(4);
    }

    @Test
    void cr03_realSittingsAreReadAsTheyWereHandedIn() {
        List<Evidence.SittingNoted> handedIn = realSittings.handedIn(DemoPeople.BASTIAN);
        assertThat(handedIn).isNotEmpty().allSatisfy(sitting -> {
            assertThat(sitting.kind()).isEqualTo(Evidence.SittingNoted.Kind.GATE);
            assertThat(sitting.check()).isEqualTo(SittingsForTests.CHECK);
            assertThat(sitting.items()).isEqualTo(12);
            assertThat(sitting.versions().pool())
                    .isEqualTo(realSittings.currentPool(SittingsForTests.CHECK).orElseThrow());
        });
        assertThat(realSittings.currentPool("no-such-check")).isEmpty();
    }

    @Test
    void cr11_anObserverWhoLosesTheRightForCauseSuspendsThoseWhoWereObserved() {
        Cast cast = school.cleared(SOME);
        settings.endQualification(cast.lead(), cast.observer(), Act.OBSERVE, true, "Looked away");
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.PARTY_WITHDRAWN);
    }

    @Test
    @TestTransaction
    void cr11_cr12_aChangedSheetAsksForTrainingAndSuspendsWhenItIsLate() {
        Cast cast = school.cleared(SOME);
        school.sheet(cast.lead(), cast.salt(), "2.0", Set.of(8), null);
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
        MutableClock.advance(Duration.ofDays(16));
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.SDS_DELTA_OVERDUE);
    }

    @Test
    @TestTransaction
    void cr12_anAskedTrainingIsHadInTimeOrTheClearanceWaitsForIt() {
        Cast cast = school.cleared(SOME);
        UUID asked = settings.askDelta(
                cast.trainer(), null, cast.scope().id(), DeltaKind.NEW_PPE, null, "New gloves from now on");
        MutableClock.advance(Duration.ofDays(16));
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.DELTA_OVERDUE);
        evidence.delta(cast.trainer(), cast.learner(), asked, cast.trainer(), null, School.means());
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
    }

    @Test
    void cr13_cr15_aBackDatedCorrectionGivesTwoAnswers() throws InterruptedException {
        Cast cast = school.cleared(SOME);
        Cast other = school.cleared(SOME);
        Instant then = school.now();
        assertThat(status(cast, then, then)).isEqualTo(Status.CLEARED);
        UUID training = lineOf(cast, "training-given");
        assertThatThrownBy(
                        () -> corrections.correct(cast.lead(), cast.lead(), training, null, null, "Never took place"))
                .isInstanceOf(RegisterProblem.class);
        Thread.sleep(5);
        corrections.correct(cast.lead(), cast.decider(), training, null, null, "Never took place");
        Instant later = school.now();
        assertThat(status(cast, then, then)).as("as known then").isEqualTo(Status.CLEARED);
        assertThat(status(cast, then, later)).as("as known now").isEqualTo(Status.NOT_CLEARED);
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.EVIDENCE_FELL);
        assertThat(ask(other, Task.CLEAN).isYes())
                .as("nobody else is concerned")
                .isTrue();
        assertThat(records.of(cast.learner()))
                .filteredOn(line -> line.id().equals(training))
                .singleElement()
                .satisfies(line -> assertThat(line.corrected()).isTrue());
    }

    @Test
    void cr14_theBookOfThisSchoolChecksOutFromItsExportAlone() {
        Cast cast = school.cleared(SOME);
        RegisterBook.Export export = book.export(cast.lead());
        Verification.Report report = book.verifyFile(export.text());
        assertThat(report.findings()).isEmpty();
        assertThat(report.lines()).isPositive();
        assertThat(book.verify().isSound()).isTrue();
        assertThat(export.text()).doesNotContain("Steady hands").doesNotContain("1995-05-14");
        assertThat(book.export(cast.lead())).isEqualTo(export);
        String flipped = export.text().replaceFirst("STAND_IN", "STAND_ON");
        assertThat(book.verifyFile(flipped).findings().get(0).toString()).startsWith("Line ");
        assertThatThrownBy(() -> book.export(cast.learner())).isInstanceOf(RegisterDenied.class);
    }

    @Test
    @TestTransaction
    void cr16_under18IsSupervisedOnlyUntilTheBirthday() {
        Cast cast = school.cleared(SOME);
        UUID supervisor = cast.learner();
        UUID young = school.person(Roles.APPRENTICE);
        Cast again = new Cast(
                young,
                cast.trainer(),
                cast.observer(),
                cast.decider(),
                cast.lead(),
                cast.scope(),
                cast.revision(),
                cast.salt());
        evidenceOfYoung(again);
        assertThat(judge(again).unmet()).containsExactly(Need.AGE);
        evidence.ageException(
                cast.lead(), young, supervisor, today().plusDays(60), "Vocational training", "Risk assessment 3");
        school.grant(again);
        assertThat(ask(again, Task.CLEAN).status()).isEqualTo(Status.SUPERVISED_ONLY);
        assertThat(ask(again, Task.CLEAN).supervisor()).isEqualTo(supervisor);
        assertThat(ask(again, Task.CLEAN).isYes()).isFalse();
        MutableClock.moveTo(
                today().plusDays(30).atStartOfDay(settingsOfSchool.zone()).toInstant());
        assertThat(ask(again, Task.CLEAN).reason()).isEqualTo(Reason.TURNED_18);
    }

    @Test
    void cr16_theDateOfBirthIsForTheSafetyLeadAndWhoAskedIsWrittenDown() {
        Cast cast = school.cleared(SOME);
        assertThat(register.birthDate(cast.lead(), cast.learner())).contains(LocalDate.of(1995, 5, 14));
        assertThatThrownBy(() -> register.birthDate(cast.trainer(), cast.learner()))
                .isInstanceOf(RegisterDenied.class);
        assertThatThrownBy(() -> evidence.age(cast.trainer(), cast.learner(), LocalDate.of(1995, 5, 14)))
                .isInstanceOf(RegisterDenied.class);
    }

    @Test
    void cr18_whoIsNotQualifiedAtThatTimeIsRefused() {
        Cast cast = school.cast(SOME);
        assertThatThrownBy(() -> school.training(cast, cast.observer()))
                .isInstanceOf(RegisterProblem.class)
                .hasMessageContaining("trainer");
        settings.endQualification(cast.lead(), cast.trainer(), Act.TRAIN, false, "Left the team");
        assertThatThrownBy(() -> school.training(cast, cast.trainer())).isInstanceOf(RegisterProblem.class);
        assertThatThrownBy(() -> settings.qualify(cast.lead(), cast.lead(), Act.DECIDE, today(), "Myself"))
                .isInstanceOf(RegisterProblem.class);
    }

    @Test
    void cr19_evidenceTellsWhatItIsBasedOn() {
        Cast cast = school.cast(SOME);
        UUID training = school.training(cast, cast.trainer());
        Evidence.TrainingGiven given = (Evidence.TrainingGiven) said(cast, training);
        assertThat(given.versions().content()).matches("[0-9a-f]{64}");
        assertThat(given.versions().sds()).isEqualTo(cast.revision());
        assertThat(given.versions().core()).isNotBlank();
    }

    @Test
    void cr21_anAppealIsDecidedBySomebodyElseAndBothStay() {
        Cast cast = school.cleared(SOME);
        UUID suspended = decisions.suspend(cast.trainer(), cast.learner(), null, Trigger.OTHER, "A doubt");
        UUID appeal = decisions.appeal(cast.learner(), suspended, "I did it by the sheet.");
        assertThatThrownBy(() -> decisions.appeal(cast.learner(), suspended, "The button was pressed twice"))
                .hasMessageContaining("on record already");
        assertThatThrownBy(() -> decisions.decideAppeal(cast.trainer(), cast.learner(), appeal, false, "No"))
                .isInstanceOf(RegisterProblem.class);
        decisions.decideAppeal(cast.decider(), cast.learner(), appeal, true, "The learner is right.");
        assertThat(records.of(cast.learner()))
                .extracting(PersonRecord.RecordLine::kind)
                .startsWith("appeal-decided", "appeal-lodged", "suspended");
        assertThat(ask(cast, Task.CLEAN).reason())
                .as("nothing changes by it alone")
                .isEqualTo(Reason.SUSPENDED);
        assertThatThrownBy(() -> decisions.appeal(cast.trainer(), suspended, "For somebody else"))
                .isInstanceOf(RegisterProblem.class);
    }

    @Test
    void cr22_theDoorListTellsNamesScopesDaysAndItsOwnTime() {
        Cast cast = school.cleared(SOME);
        Register.DoorList list = register.doorList(cast.scope().room());
        assertThat(list.lines()).hasSize(1);
        assertThat(list.lines().get(0).validThrough()).isEqualTo(today().plusMonths(12));
        assertThat(list.lines().get(0).nextReview()).isBefore(today().plusMonths(12));
        assertThat(list.printedAt()).isNotNull();
        decisions.suspend(cast.trainer(), cast.learner(), null, Trigger.OTHER, "A doubt");
        assertThat(register.doorList(cast.scope().room()).lines()).isEmpty();
    }

    @Test
    void cr23_everyQuestionIsWrittenDownWithItsAnswer() {
        Cast cast = school.cleared(SOME);
        check.ask(cast.trainer(), cast.learner(), Place.of(cast.scope()), Task.CLEAN);
        check.ask(null, cast.learner(), Place.of(cast.scope()), Task.WEIGH);
        assertThat(book.asked(cast.learner(), 10))
                .extracting(RegisterBook.Asked::status, RegisterBook.Asked::reason)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("NOT_CLEARED", "NO_SUCH_SCOPE"),
                        org.assertj.core.groups.Tuple.tuple("CLEARED", null));
        assertThat(book.compare()).as("kept answers are what the lines say").isEmpty();
    }

    @Test
    void cr24_aLeaverIsAnonymisedAndTheChainHolds() {
        Cast cast = school.cleared(SOME);
        UUID learner = cast.learner();
        assertThatThrownBy(() -> leaving.anonymise(cast.lead(), learner)).isInstanceOf(RegisterProblem.class);
        leaving.end(cast.lead(), learner, today());
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.WITHDRAWN);
        leaving.hold(cast.lead(), learner, true, "A court asks");
        assertThatThrownBy(() -> leaving.anonymise(cast.lead(), learner)).isInstanceOf(RegisterProblem.class);
        leaving.hold(cast.lead(), learner, false, "It asks no more");
        assertThat(leaving.anonymise(cast.lead(), learner)).isPositive();
        assertThat(people.find(learner).orElseThrow().displayName()).startsWith("Former member");
        assertThat(people.find(learner).orElseThrow().isDisabled()).isTrue();
        assertThat(records.of(learner)).isNotEmpty().allSatisfy(line -> assertThat(line.notes())
                .isEmpty());
        assertThat(book.verify().findings()).isEmpty();
        assertThat(ask(cast, Task.CLEAN).isYes()).isFalse();
    }

    @Test
    @TestTransaction
    void cr24_afterTheSchoolsYearsTheLinesAreErasedAndTheChainHolds() {
        Cast cast = school.cleared(SOME);
        Cast held = school.cleared(SOME);
        Cast stays = school.cleared(SOME);
        UUID read = lineOf(cast, "sds-read");
        UUID correction = corrections.correct(cast.lead(), cast.decider(), read, null, null, "Was somebody else");
        for (Cast one : List.of(cast, held)) {
            leaving.end(cast.lead(), one.learner(), today());
        }
        leaving.hold(cast.lead(), held.learner(), true, "A court asks");
        assertThat(leaving.due()).isEmpty();
        MutableClock.advance(Duration.ofDays(6 * 366));
        assertThat(leaving.due()).contains(cast.learner()).doesNotContain(held.learner(), stays.learner());
        int before = records.of(cast.learner()).size();
        int erased = leaving.purge(cast.lead());
        assertThat(erased).isGreaterThanOrEqualTo(before);
        assertThat(records.of(cast.learner())).isEmpty();
        assertThat(records.line(correction)).as("the correction goes too").isEmpty();
        assertThat(records.of(held.learner())).isNotEmpty();
        assertThat(ask(stays, Task.CLEAN).reason()).as("read as before").isNotEqualTo(Reason.UNREADABLE);
        assertThat(book.verify().findings()).isEmpty();
        assertThat(register.board(null, null).readable()).isTrue();
        PersonRecord.RecordLine purge = records.search(null, "purged", 1, 0).get(0);
        assertThat(((Keeping.Purged) purge.said()).count()).isEqualTo(erased);
        assertThat(purge.names()).doesNotContainKey(cast.learner());
    }

    @Test
    @TestTransaction
    void cr24_aLateCorrectionIsKeptForItsYearsTooAndSoIsWhatItCorrects() {
        Cast cast = school.cleared(SOME);
        UUID read = lineOf(cast, "sds-read");
        UUID shown = lineOf(cast, "ppe-shown");
        leaving.end(cast.lead(), cast.learner(), today());
        MutableClock.advance(Duration.ofDays(3 * 366));
        corrections.correct(cast.lead(), cast.decider(), read, null, null, "Was somebody else");
        UUID asked = corrections.ask(cast.lead(), shown, null, "Was somebody else");
        MutableClock.advance(Duration.ofDays(3 * 366));
        assertThat(leaving.due()).doesNotContain(cast.learner());
        MutableClock.advance(Duration.ofDays(3 * 366));
        assertThat(leaving.due()).contains(cast.learner());
        leaving.purge(cast.lead());
        assertThat(records.of(cast.learner())).isEmpty();
        assertThat(records.line(asked)).as("what was asked goes too").isEmpty();
        assertThat(book.verify().findings()).isEmpty();
    }

    @Test
    void cr18_whoLeavesIsQualifiedForNothingAnyMoreAndTakesNobodyAlong() {
        Cast cast = school.cleared(SOME);
        assertThat(register.qualified()).anyMatch(one -> one.person().equals(cast.observer()));
        leaving.end(cast.lead(), cast.observer(), today());
        assertThat(register.qualified()).noneMatch(one -> one.person().equals(cast.observer()));
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
    }

    @Test
    @TestTransaction
    void cr25_endsAreToldSixtyThirtyAndSevenDaysBefore() {
        Cast cast = school.cleared(SOME);
        LocalDate last = ask(cast, Task.CLEAN).validThrough();
        assertThat(reminders.eventsFor(cast.learner()))
                .filteredOn(event -> event.title().contains("Clearance ends"))
                .extracting(event -> event.day().orElseThrow())
                .containsExactly(last.minusDays(60), last.minusDays(30), last.minusDays(7), last);
        assertThat(reminders.of(cast.learner(), last.minusDays(61))).isEmpty();
        assertThat(reminders.of(cast.learner(), last.minusDays(60)))
                .singleElement()
                .satisfies(ending -> assertThat(ending.daysLeft()).isEqualTo(60));
    }

    @Test
    void cr27_noAnswerSaysCertifiedOrLicensed() {
        for (Reason reason : Reason.values()) {
            assertThat(Words.of(reason))
                    .isNotBlank()
                    .doesNotContainIgnoringCase("certif")
                    .doesNotContainIgnoringCase("licen");
        }
        for (Need need : Need.values()) {
            assertThat(Words.of(need)).isNotBlank();
        }
    }

    @Test
    void cr28_thePolicyInForceFellsNobody() {
        school.cleared(SOME);
        WhatIf.Preview preview = whatIf.preview();
        assertThat(preview.problems()).isEmpty();
        assertThat(preview.fallen()).isEmpty();
        assertThat(preview.isNew()).isFalse();
        assertThatThrownBy(() -> settings.putPolicyInForce(DemoPeople.SAFETY_LEAD))
                .isInstanceOf(RegisterProblem.class)
                .hasMessageContaining("in force already");
    }

    @Test
    void cr28_aStricterPolicyListsEveryClearanceThatItWouldNotGrantWithADay() {
        Cast cast = school.cleared(SOME);
        Policy now = register.policy().orElseThrow();
        Policy stricter = new Policy(
                "stricter",
                new Policy.Knowledge(SittingsForTests.CHECK, 2, 12, 12, 24, 60),
                now.periods(),
                now.singleInstructor(),
                now.ppe(),
                now.respirator(),
                now.checklists());
        assertThat(whatIf.of(scribe.all(), now, school.now()))
                .extracting(WhatIf.NoLonger::person)
                .doesNotContain(cast.learner());
        assertThat(whatIf.of(scribe.all(), stricter, school.now()))
                .filteredOn(one -> one.person().equals(cast.learner()))
                .singleElement()
                .satisfies(one -> assertThat(one.due())
                        .isEqualTo(today().plusDays(now.periods().renewalDueDays())));
    }

    /** What holds goes on until the day that the new policy gives, is renewed under it or ends, and is told as that. */
    @Test
    @TestTransaction
    void cr28_puttingAStricterPolicyInForceAsksForARenewalByItsDay(@TempDir Path folder) throws IOException {
        Cast cast = school.cleared(SOME);
        QuarkusMock.installMockForType(OtherPolicy.in(folder, "right: 11", "right: 12"), PolicyFile.class);
        String before = register.policy().orElseThrow().version();
        assertThat(settings.putPolicyInForce(cast.lead()))
                .extracting(WhatIf.NoLonger::person)
                .contains(cast.learner());
        assertThat(register.policy().orElseThrow().version()).isNotEqualTo(before);
        assertThat(ask(cast, Task.CLEAN).isYes()).as("until the day").isTrue();
        LocalDate due = today().plusDays(30);
        ZoneId zone = settingsOfSchool.zone();
        MutableClock.moveTo(due.plusDays(1).atStartOfDay(zone).toInstant().minusSeconds(30));
        assertThat(ask(cast, Task.CLEAN).isYes()).isTrue();
        MutableClock.moveTo(due.plusDays(1).atStartOfDay(zone).toInstant());
        assertThat(ask(cast, Task.CLEAN).reason()).isEqualTo(Reason.RENEWAL_OVERDUE);
    }

    @Test
    void theDemoSchoolHasPeopleInEveryState() {
        List<Register.BoardRow> rows = register.board(null, null).rows();
        assertThat(demo(rows, DemoPeople.ANOUK).standing().status()).isEqualTo(Status.CLEARED);
        assertThat(demo(rows, DemoPeople.BASTIAN).standing().status()).isEqualTo(Status.CLEARED);
        assertThat(reminders.of(DemoPeople.BASTIAN, today())).isNotEmpty();
        assertThat(demo(rows, DemoPeople.CELESTE).standing().firstReason()).contains(Reason.SUSPENDED);
        assertThat(demo(rows, DemoPeople.DARIUS).standing().status()).isEqualTo(Status.SUPERVISED_ONLY);
        assertThat(demo(rows, DemoPeople.ESME).stage()).isEqualTo(Register.Stage.IN_TRAINING);
        assertThat(demo(rows, DemoPeople.INSTRUCTOR).standing().singleInstructor())
                .isTrue();
        assertThat(register.sheets()).isNotEmpty();
        assertThat(book.sheetFile(register.sheets()
                        .get(register.sheets().size() - 1)
                        .body()
                        .sha256()))
                .isPresent();
        assertThat(register.qualified()).extracting(Register.Qualified::person).contains(DemoPeople.INSTRUCTOR);
        assertThat(register.readings()).isNotEmpty();
    }

    private static Register.BoardRow demo(List<Register.BoardRow> rows, UUID person) {
        return rows.stream()
                .filter(row -> row.person().equals(person) && row.scope().room().equals(DemoRegister.FOAMING_ROOM))
                .findFirst()
                .orElseThrow();
    }

    private RegisterCheck.CheckAnswer ask(Cast cast, Task task) {
        return check.ask(null, cast.learner(), Place.of(cast.scope()), task);
    }

    private Judgement judge(Cast cast) {
        return decisions.mayGrant(cast.decider(), cast.learner(), cast.scope().id(), false);
    }

    private Status status(Cast cast, Instant at, Instant known) {
        return register.board(at, known).rows().stream()
                .filter(row -> row.person().equals(cast.learner()))
                .findFirst()
                .orElseThrow()
                .standing()
                .status();
    }

    private org.riseandgel.clearance.rule.Body said(Cast cast, UUID line) {
        return records.of(cast.learner()).stream()
                .filter(one -> one.id().equals(line))
                .findFirst()
                .orElseThrow()
                .said();
    }

    private void handIn(Cast cast) {
        QuarkusTransaction.requiringNew()
                .run(() -> handedIn.fire(new SittingHandedIn(cast.learner(), UUID.randomUUID())));
    }

    private UUID lineOf(Cast cast, String kind) {
        return records.of(cast.learner()).stream()
                .filter(line -> line.kind().equals(kind))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private void evidenceOfYoung(Cast cast) {
        evidence.age(cast.lead(), cast.learner(), today().plusDays(30).minusYears(18));
        school.training(cast, cast.trainer());
        school.sittings(cast);
        evidence.sheetRead(cast.learner(), cast.revision());
        school.equipment(cast);
        school.practicals(cast);
    }

    /** Works every two months until a day, so that the clearance does not wait for a training. */
    private void handledAllTheTime(Cast cast, LocalDate until) {
        for (LocalDate day = today().plusDays(60); day.isBefore(until); day = day.plusDays(60)) {
            MutableClock.moveTo(
                    day.atTime(10, 0).atZone(settingsOfSchool.zone()).toInstant());
            evidence.handled(cast.trainer(), cast.learner(), cast.scope().id(), Task.CLEAN, null);
        }
        MutableClock.reset();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(school.now(), settingsOfSchool.zone());
    }
}
