package org.riseandgel.clearance.rule;

import java.util.UUID;

/**
 * Somebody wants to decide.
 *
 * @param pool the version of the pool of items that is current; null when it is not known, and then no sitting counts
 * @param countersigned whether an outside countersigner is named for a single-instructor decision
 */
public record Proposal(UUID person, UUID scope, UUID decider, String pool, boolean countersigned) {}
