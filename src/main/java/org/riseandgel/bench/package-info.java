/** The catalogue of calculations over the core: inputs, results, working and slips, and the sheets that show them. */
package org.riseandgel.bench;
