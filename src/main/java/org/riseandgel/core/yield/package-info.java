/** What a batch comes to: how much pieces shrink, and what a good one costs. */
package org.riseandgel.core.yield;
