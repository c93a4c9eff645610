/** Graded sets: drafted and published by instructors, worked by apprentices, marked, corrected and told. */
package org.riseandgel.grading;
