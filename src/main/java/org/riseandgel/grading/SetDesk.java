package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.riseandgel.account.CohortView;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Problem;

/** Drafting, publishing and withdrawing graded sets. Each act is one transaction with its audit entry. */
@ApplicationScoped
class SetDesk {
    private final SetStore store;
    private final WorkStore works;
    private final PublishCheck check;
    private final CourseContent content;
    private final SchoolSettings school;
    private final AuditLog audit;
    private final Clock clock;

    SetDesk(
            SetStore store,
            WorkStore works,
            PublishCheck check,
            CourseContent content,
            SchoolSettings school,
            AuditLog audit,
            Clock clock) {
        this.store = store;
        this.works = works;
        this.check = check;
        this.content = content;
        this.school = school;
        this.audit = audit;
        this.clock = clock;
    }

    /** What became of something that was done to a draft. */
    sealed interface Done {
        /** It is stored. */
        record Stored(UUID set) implements Done {}

        /** Something is wrong with it; nothing is stored. */
        record Wrong(List<Problem> problems) implements Done {}

        /** Somebody else saved or published it meanwhile; nothing is stored. */
        record Moved() implements Done {}
    }

    /** Makes a new draft of what was typed. Lines of another set come along where it names one. */
    @Transactional
    Done add(SetForm form, List<Line> lines, List<CohortView> cohorts, UUID by) {
        UUID id = UUID.randomUUID();
        DraftReader.Read read = DraftReader.read(form, blank(id, copies(lines)), now(), zone(), cohorts);
        if (!read.problems().isEmpty()) {
            return new Done.Wrong(read.problems());
        }
        store.add(read.draft(), by, instant());
        audit.note(by, "graded-set-drafted", id.toString(), read.draft().title());
        return new Done.Stored(id);
    }

    /** Copies a set into a new draft for a cohort, with its ranges and times. */
    @Transactional
    UUID copy(GradedSet set, UUID cohort, UUID by) {
        UUID id = UUID.randomUUID();
        GradedSet draft = new GradedSet(
                id,
                cohort,
                set.title(),
                set.note(),
                SetState.DRAFT,
                1,
                set.tries(),
                set.feedback(),
                set.opensLocal(),
                set.closesLocal(),
                null,
                null,
                by,
                instant(),
                null,
                null,
                null,
                copies(set.lines()));
        store.add(draft, by, instant());
        audit.note(by, "graded-set-copied", id.toString(), "from " + set.id());
        return id;
    }

    /** Saves a draft over the revision that the form was made from. */
    @Transactional
    Done save(GradedSet stored, SetForm form, List<CohortView> cohorts, UUID by) {
        if (!stored.isDraft() || form.seenRevision() != stored.revision()) {
            return new Done.Moved();
        }
        DraftReader.Read read = DraftReader.read(form, stored, now(), zone(), cohorts);
        if (!read.problems().isEmpty()) {
            return new Done.Wrong(read.problems());
        }
        return store.save(read.draft(), by, instant()) ? new Done.Stored(stored.id()) : new Done.Moved();
    }

    /** Gives a line narrower ranges. */
    @Transactional
    Done narrow(GradedSet stored, Line line, String ranges, UUID by) {
        List<Line> lines = stored.lines().stream()
                .map(one -> one.id().equals(line.id()) ? one.narrowed(ranges) : one)
                .toList();
        return store.save(stored.with(lines), by, instant()) ? new Done.Stored(stored.id()) : new Done.Moved();
    }

    /** What still keeps the draft from being published. */
    List<Problem> toMend(GradedSet draft) {
        return check.problems(draft, zone(), instant());
    }

    /**
     * Publishes the revision that was looked at: its exercises are frozen in today's version, and its times become
     * moments by today's rules of the school's zone.
     */
    @Transactional
    Done publish(GradedSet draft, int seenRevision, UUID by) {
        if (!draft.isDraft() || seenRevision != draft.revision()) {
            return new Done.Moved();
        }
        List<Problem> problems = toMend(draft);
        if (!problems.isEmpty()) {
            return new Done.Wrong(problems);
        }
        Instant now = instant();
        SetStore.Publication out = new SetStore.Publication(
                zone(),
                SchoolMoments.opening(draft.opensLocal(), zone()),
                SchoolMoments.closing(draft.closesLocal(), zone()));
        // First, because it makes a second press wait: it then finds the set published and freezes nothing twice.
        if (!store.publish(draft, out, by, now)) {
            return new Done.Moved();
        }
        Content current = now();
        for (Line line : draft.lines()) {
            Pools.candidates(line, draft.lines(), current.exercises())
                    .forEach(template -> store.freeze(line.id(), template, now));
        }
        audit.note(by, "graded-set-published", draft.id().toString(), draft.title());
        return new Done.Stored(draft.id());
    }

    /** Puts a draft away over the revision that was seen; false, and nothing done, when there is a newer one. */
    @Transactional
    boolean discard(GradedSet draft, int seenRevision, UUID by) {
        boolean done = store.discard(draft.id(), seenRevision, by, instant());
        if (done) {
            audit.note(by, "graded-set-discarded", draft.id().toString(), draft.title());
        }
        return done;
    }

    /** Takes a set back that is out. */
    @Transactional
    boolean withdraw(GradedSet set, String reason, UUID by) {
        boolean done = store.withdraw(set.id(), reason, by, instant());
        if (done) {
            audit.note(by, "graded-set-withdrawn", set.id().toString(), reason);
        }
        return done;
    }

    /**
     * Gives one person more time. Where the set had closed for them and right answers were told, an open try is ended, and
     * one more with fresh numbers can be begun: nobody goes on with answers that they have read.
     */
    @Transactional
    void extend(GradedSet set, UUID person, Instant closesAt, String reason, UUID by) {
        List<SetStore.Extension> before = store.extensions(set.id());
        boolean fresh = TryRule.knowsAnswers(set, before, person, instant())
                && works.endOpen(set.id(), person, TryRule.closes(set, before, person));
        store.extend(set.id(), new SetStore.Extension(person, closesAt, reason, by, instant(), fresh));
        audit.note(by, "graded-set-extended", set.id().toString(), person + " until " + closesAt + ": " + reason);
    }

    private static List<Line> copies(List<Line> lines) {
        return lines.stream().map(line -> line.copy(UUID.randomUUID())).toList();
    }

    private GradedSet blank(UUID id, List<Line> lines) {
        return new GradedSet(
                id,
                null,
                "",
                "",
                SetState.DRAFT,
                1,
                1,
                Policy.EACH,
                null,
                null,
                null,
                null,
                null,
                instant(),
                null,
                null,
                null,
                lines);
    }

    private Content now() {
        return content.current();
    }

    private ZoneId zone() {
        return school.zone();
    }

    private Instant instant() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
