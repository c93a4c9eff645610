package org.riseandgel.sitting;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.course.Check;
import org.riseandgel.course.CourseContent;
import org.riseandgel.sitting.SittingViews.Summary;

/** The checks of the course as one person finds them: what each is, whether it may be sat now, and earlier sittings. */
@ApplicationScoped
class Checks {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private final CourseContent content;
    private final SittingStore store;
    private final TalkStore talks;
    private final SittingDesk desk;

    Checks(CourseContent content, SittingStore store, TalkStore talks, SittingDesk desk) {
        this.content = content;
        this.store = store;
        this.talks = talks;
        this.desk = desk;
    }

    /**
     * A check as one person finds it.
     *
     * @param open the sitting to go on with; null when there is none
     * @param openSince when that was begun; null when there is none
     * @param waiting why none may be begun now, in words; empty when one may, or is open
     * @param earlier sittings that were handed in, the latest first
     * @param talks the talks that were noted about it, the latest first
     */
    record Sheet(
            Check check,
            UUID open,
            Instant openSince,
            String waiting,
            List<Summary> earlier,
            List<TalkStore.Talk> talks) {
        public boolean mayBegin() {
            return open == null && waiting.isEmpty();
        }

        public boolean passedBefore() {
            return earlier.stream().anyMatch(Summary::passed);
        }

        public boolean forClearance() {
            return check.purpose().equals(Check.CLEARANCE);
        }

        /** A recall check is not there before it comes. */
        public boolean isShown() {
            return !check.isRecall() || open != null || mayBegin() || !earlier.isEmpty();
        }
    }

    /** The check of that id. */
    Optional<Check> find(String check) {
        return content.current().check(check);
    }

    /** All checks as this person finds them. */
    List<Sheet> of(UUID person) {
        List<StoredSitting> all = store.of(person);
        List<TalkStore.Talk> allTalks = talks.of(person);
        return content.current().checks().stream()
                .map(check -> sheet(person, check, ofCheck(all, check.id()), allTalks))
                .filter(Sheet::isShown)
                .toList();
    }

    /** One check as this person finds it. */
    Optional<Sheet> of(UUID person, String check) {
        return find(check)
                .map(found -> sheet(person, found, store.of(person, check), talks.of(person)))
                .filter(Sheet::isShown);
    }

    private Sheet sheet(UUID person, Check check, List<StoredSitting> past, List<TalkStore.Talk> allTalks) {
        List<TalkStore.Talk> noted = allTalks.stream()
                .filter(talk -> talk.check().equals(check.id()))
                .toList();
        Optional<StoredSitting> open =
                past.stream().filter(StoredSitting::isOpen).findFirst();
        return new Sheet(
                check,
                open.map(StoredSitting::id).orElse(null),
                open.map(StoredSitting::startedAt).orElse(null),
                waiting(desk.mayBegin(person, check, past, noted)),
                past.stream()
                        .filter(sitting -> !sitting.isOpen())
                        .map(Summary::of)
                        .toList(),
                noted);
    }

    private static List<StoredSitting> ofCheck(List<StoredSitting> all, String check) {
        return all.stream().filter(sitting -> sitting.check().equals(check)).toList();
    }

    private static String waiting(TryRule.Answer answer) {
        if (answer instanceof TryRule.Answer.NotToday notToday) {
            return "Today’s try is used. The next one is possible on %s.".formatted(words(notToday.next()));
        }
        if (answer instanceof TryRule.Answer.NotCalled) {
            return "This check comes unannounced while you are cleared. There is nothing to sit now.";
        }
        if (answer instanceof TryRule.Answer.TalkFirst talk) {
            return "%d sittings in a row did not pass. Talk it over with your instructor, who notes the talk here; then you can try again."
                    .formatted(talk.failed());
        }
        return "";
    }

    private static String words(LocalDate day) {
        return DAY.format(day);
    }
}
