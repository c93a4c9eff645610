/** Files and folders that only their owner may read. */
package org.riseandgel.platform.files;
