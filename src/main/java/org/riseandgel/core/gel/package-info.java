/** How long foam takes to gel, learned from a school's own batches, and the clock that follows from it. */
package org.riseandgel.core.gel;
