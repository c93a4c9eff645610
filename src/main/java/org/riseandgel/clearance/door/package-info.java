/** The question at the store-room door: may this person do this task here, now? */
package org.riseandgel.clearance.door;
