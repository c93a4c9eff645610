package org.riseandgel.exercise;

import java.util.Optional;

/**
 * An answer that was judged, of whatever kind.
 *
 * @param slip the id of the slip that was recognised or, of a choice, the short name of the mistake
 * @param feedback what is said about it
 */
public record Judged(Verdict verdict, Optional<String> slip, FeedbackView feedback) {}
