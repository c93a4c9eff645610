/** The policy of the school as it stands in {@code lessons/clearance.yaml}: read, checked and given its version. */
package org.riseandgel.clearance.policy;
