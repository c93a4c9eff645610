package org.riseandgel.platform.content;

/** One file of the course: its path below the content folder, with "/" between the parts, and its text. */
public record ContentFile(String path, String text) {}
