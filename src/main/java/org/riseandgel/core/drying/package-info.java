/** Drying a piece: how much water is in it, how long it takes, and how weighing tells that it is dry. */
package org.riseandgel.core.drying;
