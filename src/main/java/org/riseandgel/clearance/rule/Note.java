package org.riseandgel.clearance.rule;

import java.util.UUID;

/**
 * A free text that belongs to an event. The text itself is kept beside the chain, so that it can be erased when a leaver
 * is anonymised; the event holds only what proves it.
 *
 * @param commitment SHA-256 over a random salt and the text, in hexadecimal
 */
public record Note(UUID id, String commitment) {}
