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

    /** Lets so many percent of a part count, or says what is wrong with what was typed. */
    @Transactional
    List<Problem> correct(Work work, Work.Item item, int part, String credit, String reason, UUID by) {
        List<Problem> problems = new ArrayList<>();
        String typed = credit.strip().replace("%", "").strip();
        boolean percent = typed.matches("[0-9]{1,3}") && Integer.parseInt(typed) <= MarkChange.ALL;
        if (!percent) {
            problems.add(new Problem("credit", "Write what of the part counts as a whole number from 0 to 100."));
        }
        problems.addAll(Reasons.problems("reason", reason));
        if (!problems.isEmpty()) {
            return problems;
        }
        int counts = Integer.parseInt(typed);
        works.change(corrected(work, item, part, counts, reason.strip(), by));
        audit.note(
                by,
                "graded-mark-corrected",
                work.id().toString(),
                "item %d, part %d: %d %% → %d %%".formatted(item.number(), part + 1, item.credit(part), counts));
        return List.of();
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
                null);
    }
}
