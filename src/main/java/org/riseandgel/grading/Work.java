package org.riseandgel.grading;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One try of one person at a set, with what was drawn and answered so far. */
record Work(UUID id, UUID set, UUID person, int nth, Instant begunAt, Instant handedInAt, List<Item> items) {
    Work {
        items = List.copyOf(items);
    }

    /**
     * An item.
     *
     * @param number from 1
     * @param weight its points
     * @param answers the answers to its parts, in order; parts are answered in order
     * @param changes the newest change of each part whose mark was changed
     */
    record Item(
            int number,
            FrozenExercises.Exercise exercise,
            long seed,
            int weight,
            List<ItemAnswer> answers,
            List<MarkChange> changes) {
        Optional<ItemAnswer> answer(int part) {
            return answers.stream().filter(answer -> answer.part() == part).findFirst();
        }

        /** The change that stands; one that was made for an earlier answer does not. */
        Optional<MarkChange> change(int part) {
            return newest(part).filter(change -> change.isFor(answer(part)));
        }

        /** What whoever corrects a part has seen of it: which answer, and which change of its mark was the newest. */
        String seen(int part) {
            return MarkChange.savesOf(answer(part)) + "."
                    + newest(part).map(MarkChange::id).orElse(0L);
        }

        private Optional<MarkChange> newest(int part) {
            return changes.stream().filter(change -> change.part() == part).findFirst();
        }

        /** What of a part counts, in percent. */
        int credit(int part) {
            return change(part)
                    .map(MarkChange::credit)
                    .orElseGet(() ->
                            answer(part).filter(ItemAnswer::isRight).isPresent() ? MarkChange.ALL : MarkChange.NOTHING);
        }

        /** Names the item only: the seed must not slip into a log. */
        @Override
        public String toString() {
            return "item " + number;
        }
    }

    public boolean isOpen() {
        return handedInAt == null;
    }

    Optional<Item> item(int number) {
        return items.stream().filter(item -> item.number() == number).findFirst();
    }

    /** When the part that is asked next could first be seen: with the try, or with the answer before. */
    Instant lastActAt() {
        return items.stream()
                .flatMap(item -> item.answers().stream())
                .map(ItemAnswer::answeredAt)
                .reduce(begunAt, (one, other) -> one.isAfter(other) ? one : other);
    }

    @Override
    public String toString() {
        return "work " + id;
    }
}
