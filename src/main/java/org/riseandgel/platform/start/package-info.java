/** What happens before the program answers: the data folder, its keys, the database, the settings. */
package org.riseandgel.platform.start;
