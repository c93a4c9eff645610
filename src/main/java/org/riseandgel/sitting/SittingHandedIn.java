package org.riseandgel.sitting;

import java.util.UUID;

/** A sitting has just been handed in and marked, in the same transaction. */
public record SittingHandedIn(UUID person, UUID sitting) {}
