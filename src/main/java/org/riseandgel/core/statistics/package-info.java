/** Fits, intervals and item statistics that the other calculations rest on. Numbers here have no unit of their own. */
package org.riseandgel.core.statistics;
