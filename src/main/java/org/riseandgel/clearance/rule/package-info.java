/**
 * The rule of the register: from what is on record to cleared, supervised only or not cleared. Plain Java: it knows no
 * framework, no clock and no database, so that page, door list, export and check all answer alike. docs/register.md says
 * the same in words.
 */
package org.riseandgel.clearance.rule;
