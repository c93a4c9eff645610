/** The program's own PostgreSQL server: unpacked, set up, started, taken up again, stopped. */
package org.riseandgel.platform.database;
