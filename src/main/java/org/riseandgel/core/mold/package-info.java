/** Molds: how much foam a cavity takes, and how it is filled. */
package org.riseandgel.core.mold;
