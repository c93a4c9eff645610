package org.riseandgel.bench;

/** Something that comes out in words instead of a number, such as an advice: its stable name and its label. */
public record Finding(String name, String label) {}
