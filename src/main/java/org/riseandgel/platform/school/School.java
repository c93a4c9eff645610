package org.riseandgel.platform.school;

import java.time.ZoneId;
import org.riseandgel.core.quantity.DecimalMark;

/** What the whole school shares: its name, its clock, its decimal mark and whom to call. */
public record School(String name, ZoneId zone, DecimalMark decimalMark, String emergency, boolean demo) {}
