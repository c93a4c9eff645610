/** Simulated practice: work played through scene by scene, with what each choice would lead to; every choice is kept. */
package org.riseandgel.simulation;
