/** How far a foam rises with whipping, learned from readings of the volume stick. */
package org.riseandgel.core.rise;
