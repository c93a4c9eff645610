/**
 * The book of the register: how a line is written as text, sealed and chained, kept in the database, carried out as a file
 * and checked there. What the lines mean is the rule's business.
 */
package org.riseandgel.clearance.ledger;
