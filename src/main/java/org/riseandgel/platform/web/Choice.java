package org.riseandgel.platform.web;

/** One entry of a list to pick from: what is sent and what is read. */
public record Choice(String value, String label) {}
