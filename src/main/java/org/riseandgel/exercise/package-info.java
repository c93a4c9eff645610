/** Exercises: reading and checking their files, drawing numbers, judging answers and explaining them. */
package org.riseandgel.exercise;
