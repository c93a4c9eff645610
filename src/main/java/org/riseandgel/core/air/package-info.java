/**
 * What a fluorosilicate is made of and how dust of it spreads in a room. Teaching estimates: they measure nothing and
 * clear nobody.
 */
package org.riseandgel.core.air;
