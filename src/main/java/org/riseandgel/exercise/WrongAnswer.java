package org.riseandgel.exercise;

import org.riseandgel.bench.Slip;

/**
 * The answer somebody gets by making a slip.
 *
 * @param line why it goes wrong
 * @param band the values taken for this answer, in the base unit
 */
public record WrongAnswer(Slip slip, String line, Band band) {}
