package org.riseandgel.bench;

import java.util.List;
import java.util.Optional;

/**
 * One piece of the core made usable from outside: by a bench sheet, a lesson's worked example and an exercise alike.
 *
 * <p>An implementation is stateless. It declares what goes in and what comes out, and works the numbers through a
 * {@link Work}, which records the steps as it goes. It computes nothing itself that belongs to the core.
 */
public interface Calculation {
    /** Stable name in files and addresses: "stick-marks". */
    String id();

    /** What a page calls it. */
    String title();

    /** One sentence: what it is for. */
    String purpose();

    /** The work it belongs to; the bench shows it there. */
    Task task();

    /** What must be given, in the order in which a person would measure it. */
    List<Input> inputs();

    /** What comes out, in the order in which it is shown. */
    List<Result> results();

    /** What comes out in words, shown before the results. */
    default List<Finding> findings() {
        return List.of();
    }

    /** Whether an input counts, with the choices that were made; one that does not may be left empty. */
    default boolean uses(String input, Given given) {
        return true;
    }

    /**
     * Works the numbers: steps, results, slips and notes go to the work.
     *
     * @throws org.riseandgel.core.quantity.OutOfRangeException when the inputs together make no sense
     */
    void work(Given given, Work work);

    /** A picture of the outcome as SVG text, where one helps; its numbers are written as the reader writes them. */
    default Optional<String> drawing(Given given, Outcome outcome, QuantityText text) {
        return Optional.empty();
    }

    /**
     * The input to look at when the core refuses the inputs together, by what it refused; null when it is none in
     * particular.
     */
    default String inputAt(String what) {
        return null;
    }

    /** The cautions that belong on every page that shows this calculation; empty where nothing can hurt. */
    default List<String> cautions() {
        return List.of();
    }
}
