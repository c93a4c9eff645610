/** Blank forms of the register, for the day on which no screen is at hand. */
package org.riseandgel.clearance.paper;
