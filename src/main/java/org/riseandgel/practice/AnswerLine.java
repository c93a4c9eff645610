package org.riseandgel.practice;

import java.time.Instant;
import java.util.UUID;

/**
 * One answer in a list of answers.
 *
 * @param part the number of the part, from 0
 * @param exercise title of the exercise
 * @param prompt the question, with its numbers
 * @param read the number and unit that were read from what was typed
 * @param slip title of the slip; empty unless the verdict names one
 */
public record AnswerLine(
        UUID draw,
        int part,
        String skill,
        String exercise,
        String prompt,
        String typed,
        String read,
        String expected,
        VerdictWords verdict,
        String slip,
        int hints,
        Instant at) {}
