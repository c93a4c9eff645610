package org.riseandgel.course;

import java.util.Map;
import java.util.UUID;

/**
 * Which stages are open to whom. The course asks; whoever knows how people practise answers, so that the course need not
 * know practice.
 */
public interface StageGates {
    /** The gate of every stage for this person, by the stage's id. */
    Map<String, StageGate> of(UUID person);

    /** Whether a stage is open to this person. Once it is, it stays so. */
    boolean isOpen(UUID person, String stage);
}
