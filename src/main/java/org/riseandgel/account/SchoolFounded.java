package org.riseandgel.account;

/**
 * The school has just been set up, in the same transaction. Features fill in what they own when it is the demo school;
 * observers run in the order of their priority, people before their work.
 */
public record SchoolFounded(boolean demo) {}
