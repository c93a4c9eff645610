package org.riseandgel.grading;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.UUID;

/**
 * A graded set as it is stored.
 *
 * @param revision rises with every save of the draft
 * @param tries how often a person may work it, each time with fresh numbers; the best one counts
 * @param opensLocal as typed, in the school's zone; null while a draft has none
 * @param opensAt the moment, fixed when the set was published; null before
 * @param withdrawnReason null unless withdrawn
 */
record GradedSet(
        UUID id,
        UUID cohort,
        String title,
        String note,
        SetState state,
        int revision,
        int tries,
        Policy feedback,
        LocalDateTime opensLocal,
        LocalDateTime closesLocal,
        Instant opensAt,
        Instant closesAt,
        UUID changedBy,
        Instant changedAt,
        Instant publishedAt,
        Instant withdrawnAt,
        String withdrawnReason,
        List<Line> lines) {
    GradedSet {
        lines = List.copyOf(lines);
    }

    public boolean isDraft() {
        return state == SetState.DRAFT;
    }

    public boolean isPublished() {
        return state == SetState.PUBLISHED;
    }

    /** Whether it was put away as a draft, so that it never went out. */
    public boolean isDropped() {
        return state == SetState.WITHDRAWN && publishedAt == null;
    }

    /** Points of all its items together. */
    public int outOf() {
        return lines.stream().mapToInt(line -> line.items() * line.weight()).sum();
    }

    public int items() {
        return lines.stream().mapToInt(Line::items).sum();
    }

    GradedSet with(List<Line> its) {
        return new GradedSet(
                id,
                cohort,
                title,
                note,
                state,
                revision,
                tries,
                feedback,
                opensLocal,
                closesLocal,
                opensAt,
                closesAt,
                changedBy,
                changedAt,
                publishedAt,
                withdrawnAt,
                withdrawnReason,
                its);
    }
}
