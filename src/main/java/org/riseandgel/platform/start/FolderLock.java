package org.riseandgel.platform.start;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Keeps a data folder to one process; the operating system lets go of it when the process ends. */
public final class FolderLock implements AutoCloseable {
    /** A lock that nobody refers to any more would be collected and let go unnoticed. */
    private static final Set<FolderLock> HELD = ConcurrentHashMap.newKeySet();

    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    static FolderLock take(Path folder) {
        try {
            FolderLock lock = new FolderLock(
                    FileChannel.open(folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE));
            if (!lock.isTaken()) {
                lock.channel.close();
                throw StartFailure.alreadyRunning("Rise and Gel is already running on this folder (" + folder
                        + "): stop it first, or name another folder with riseandgel.data-dir.");
            }
            HELD.add(lock);
            return lock;
        } catch (IOException e) {
            throw StartFailure.because("The data folder " + folder + " cannot be locked: " + e, e);
        }
    }

    @Override
    public void close() throws IOException {
        HELD.remove(this);
        channel.close();
    }

    private boolean isTaken() throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }
}
