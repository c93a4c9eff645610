/** The pages of the register: who stands where, one person's record, and decisions with every precondition shown. */
package org.riseandgel.clearance.pages;
