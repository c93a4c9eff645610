package org.riseandgel.sitting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.course.Check;
import org.riseandgel.course.CourseContent;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.sitting.SittingViews.Summary;

/** A person's sittings and the talks about them, for those who teach that person or look after safety. */
@ApplicationScoped
class PersonSittings {
    private final SittingStore store;
    private final TalkStore talks;
    private final SittingViews views;
    private final People people;
    private final CourseContent content;
    private final AuditLog audit;
    private final Clock clock;

    PersonSittings(
            SittingStore store,
            TalkStore talks,
            SittingViews views,
            People people,
            CourseContent content,
            AuditLog audit,
            Clock clock) {
        this.store = store;
        this.talks = talks;
        this.views = views;
        this.people = people;
        this.content = content;
        this.audit = audit;
        this.clock = clock;
    }

    /** A check that a person has sat: the sittings, the talks, and whether a talk is waited for. */
    record OfCheck(String id, String title, List<Summary> sittings, List<TalkLine> talks, boolean talkFirst) {}

    /** A talk that was noted. */
    record TalkLine(String by, Instant at, String words) {}

    /** The checks that the person has begun at least once; those of the course in its order, then others. */
    List<OfCheck> of(UUID person) {
        List<StoredSitting> sittings = store.of(person);
        List<TalkStore.Talk> noted = talks.of(person);
        return sittings.stream()
                .map(StoredSitting::check)
                .distinct()
                .sorted((one, other) -> Integer.compare(place(one), place(other)))
                .map(check -> ofCheck(
                        check,
                        sittings.stream()
                                .filter(sitting -> sitting.check().equals(check))
                                .toList(),
                        noted.stream()
                                .filter(talk -> talk.check().equals(check))
                                .toList()))
                .toList();
    }

    private int place(String check) {
        List<String> ids = content.current().checks().stream().map(Check::id).toList();
        return ids.contains(check) ? ids.indexOf(check) : ids.size();
    }

    private OfCheck ofCheck(String check, List<StoredSitting> sittings, List<TalkStore.Talk> noted) {
        return new OfCheck(
                check,
                content.current()
                        .check(check)
                        .map(Check::title)
                        .orElse(sittings.get(0).title()),
                sittings.stream().map(Summary::of).toList(),
                noted.stream().map(this::line).toList(),
                talkFirst(check, sittings, noted));
    }

    private boolean talkFirst(String check, List<StoredSitting> sittings, List<TalkStore.Talk> noted) {
        int failed = TryRule.failedInRow(
                sittings.stream().map(StoredSitting::asPast).toList(),
                noted.stream().map(TalkStore.Talk::notedAt).findFirst());
        return content.current()
                .check(check)
                .filter(found -> failed >= found.talkAfterFailed())
                .isPresent();
    }

    private TalkLine line(TalkStore.Talk talk) {
        String by = people.find(talk.notedBy()).map(PersonView::displayName).orElse("");
        return new TalkLine(by, talk.notedAt(), talk.words());
    }

    /** A handed-in sitting of the person; an open one is nobody's business but theirs. */
    Optional<SittingViews.Marked> marked(UUID person, UUID sitting) {
        return store.load(person, sitting).filter(one -> !one.isOpen()).map(views::marked);
    }

    /** Notes a talk about a check that the person has sat; false when they have not. */
    @Transactional
    boolean noteTalk(UUID person, String check, UUID notedBy, String words) {
        if (store.of(person, check).isEmpty()) {
            return false;
        }
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        talks.add(new TalkStore.Talk(UUID.randomUUID(), person, check, notedBy, now, words));
        audit.note(notedBy, "sitting-talk-noted", person.toString(), check);
        return true;
    }
}
