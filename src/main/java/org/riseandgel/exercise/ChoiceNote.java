package org.riseandgel.exercise;

/**
 * What is said, after the answer, of one thing that was shown.
 *
 * @param mark its letter or number on the page
 * @param picture its drawing; null when it has none
 * @param yours what the answer made of it, in words
 * @param right what is right for it, in words
 * @param agrees whether the two agree
 * @param why why it is so
 */
public record ChoiceNote(
        String mark, String text, Picture picture, String yours, String right, boolean agrees, String why) {}
