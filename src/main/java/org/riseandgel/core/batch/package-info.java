/** Formulas in parts per hundred of base, batches made from them, and the density of the foam they give. */
package org.riseandgel.core.batch;
