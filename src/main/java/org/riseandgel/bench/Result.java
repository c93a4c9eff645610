package org.riseandgel.bench;

import org.riseandgel.core.quantity.Unit;

/**
 * One thing that comes out: its stable name, its label, the unit it is shown in, and the readability of the instrument
 * with which it would be weighed, marked or read, in that unit. A null unit follows the inputs (conversions): the
 * outcome then names it. A readability of 0 means that no instrument sets one: it is written to significant figures.
 */
public record Result(String name, String label, Unit unit, double readability) {}
