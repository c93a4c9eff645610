package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.web.Problem;

/** Corrects marks by hand. What was judged stays; a correction is added to it, with its reason. */
@ApplicationScoped
class Corrections {
    private final WorkStore works;
    private final AuditLog audit;
    private final Clock clock;

    Corrections(WorkStore works, AuditLog audit, Clock clock) {
        this.works = works;
        this.audit = audit;
        this.clock = clock;
    }

    /** What became of a correction: it is kept, something typed is wrong, or it was made for what is not there any more,
     * or for one's own work. */
    enum Done {
        KEPT,
        WRONG,
        MOVED,
        OWN
    }

    /** What is wrong with what was typed. */
    static List<Problem> problems(String credit, String reason) {
        List<Problem> problems = new ArrayList<>();
        if (percent(credit).isEmpty()) {
            problems.add(new Problem("credit", "Write what of the part counts as a whole number from 0 to 100."));
        }
        problems.addAll(Reasons.problems("reason", reason));
        return problems;
    }

    private static Optional<Integer> percent(String credit) {
        String typed = credit.strip().replace("%", "").strip();
        return Optional.of(typed)
                .filter(text -> text.matches("[0-9]{1,3}"))
                .map(Integer::valueOf)
                .filter(number -> number <= MarkChange.ALL);
    }

    /** Lets so many percent of a part count, where answer and mark are still those that were seen. */
    @Transactional
    Done correct(UUID id, int number, int part, Correction typed, UUID by) {
        if (!problems(typed.credit(), typed.reason()).isEmpty()) {
            return Done.WRONG;
        }
        works.hold(id);
        Work work = works.find(id).orElseThrow();
        if (work.person().equals(by)) {
            return Done.OWN;
        }
        Work.Item item = work.item(number).orElseThrow();
        int counts = percent(typed.credit()).orElseThrow();
        if (!typed.seen().equals(item.seen(part))) {
            return isSecondPress(item.change(part), counts, typed.reason(), by) ? Done.KEPT : Done.MOVED;
        }
        works.change(corrected(work, item, part, counts, typed.reason().strip(), by));
        audit.note(
                by,
                "graded-mark-corrected",
                work.id().toString(),
                "item %d, part %d: %d %% → %d %%".formatted(item.number(), part + 1, item.credit(part), counts));
        return Done.KEPT;
    }

    /**
     * A correction as it is typed.
     *
     * @param seen what was seen of the part, see {@link Work.Item#seen}
     */
    record Correction(String seen, String credit, String reason) {}

    /** Whether the same person has written just that by another press of the same button. */
    private static boolean isSecondPress(Optional<MarkChange> last, int counts, String reason, UUID by) {
        return last.filter(change -> change.kind() == MarkChange.Kind.CORRECTION
                        && change.by().equals(by)
                        && change.credit() == counts
                        && change.reason().equals(reason.strip()))
                .isPresent();
    }

    /** The correction carries on what was judged last. */
    private MarkChange corrected(Work work, Work.Item item, int part, int credit, String reason, UUID by) {
        Optional<MarkChange> before = item.change(part);
        Optional<ItemAnswer> answer = item.answer(part);
        boolean changed = before.map(MarkChange::verdict).isPresent();
        return new MarkChange(
                0,
                work.id(),
                item.number(),
                part,
                MarkChange.Kind.CORRECTION,
                credit,
                changed
                        ? before.get().verdict()
                        : answer.map(one -> one.verdict().name()).orElse(null),
                changed ? before.get().slip() : answer.map(ItemAnswer::slip).orElse(null),
                changed
                        ? before.get().expected()
                        : answer.map(ItemAnswer::expected).orElse(null),
                reason,
                by,
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                null,
                null,
                MarkChange.savesOf(answer));
    }
}
