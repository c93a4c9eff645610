package org.riseandgel.clearance.rule;

import java.util.UUID;

/**
 * What a piece of evidence was based on, so that it can be judged again later.
 *
 * @param content hash of the content shown
 * @param pool version of the pool of items, or of the checklist
 * @param sds the safety data sheet's revision in force then; null when there was none
 * @param core version of the computation core
 */
public record Versions(String content, String pool, UUID sds, String core) {}
