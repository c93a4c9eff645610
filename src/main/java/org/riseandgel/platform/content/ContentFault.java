package org.riseandgel.platform.content;

/** A file that was not read: its path below the content folder, why, and what would be right. */
public record ContentFault(String path, String message) {}
