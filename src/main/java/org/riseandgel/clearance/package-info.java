/**
 * The register of who may handle the gelling salt. Pages and other features ask the services here and get view records;
 * {@code rule} is the rule itself, {@code ledger} the book it works from, {@code policy} the file of the school's choices.
 */
package org.riseandgel.clearance;
