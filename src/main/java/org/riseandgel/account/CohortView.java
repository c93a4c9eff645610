package org.riseandgel.account;

import java.util.UUID;

/** A cohort as other features may see it. */
public record CohortView(UUID id, String name, int learners) {}
