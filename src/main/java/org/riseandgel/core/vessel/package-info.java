/** Vessels: how high a volume stands in them, and where the marks of a volume stick go. */
package org.riseandgel.core.vessel;
