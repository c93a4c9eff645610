package org.riseandgel.exercise;

/**
 * A drawing that an exercise shows.
 *
 * @param alt the words that say the same
 */
public record Picture(Figure figure, String alt) {}
