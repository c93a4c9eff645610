package org.riseandgel.platform.database;

import java.nio.file.Path;

/**
 * Where a server keeps what is its own.
 *
 * @param binaries the unpacked server programs, one folder for each version and kind of computer
 * @param cluster the data of the database server
 * @param logs what the server writes about its work
 */
public record ServerFolders(Path binaries, Path cluster, Path logs) {}
