/** Sitting a check: drawing its items, keeping each answer, marking at the end, and what others may read of it. */
package org.riseandgel.sitting;
