package org.riseandgel.platform.start;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Keeps a data folder to one holder; the operating system lets go of it when the process ends. */
public final class FolderLock implements AutoCloseable {
    /**
     * The locks of this process. A channel that nobody refers to would be collected and its lock lost;
     * and a second channel on the same file, when closed, would take the lock of the first with it.
     */
    private static final Map<Path, FolderLock> HELD = new ConcurrentHashMap<>();

    private final Path folder;
    private final FileChannel channel;

    private FolderLock(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
    }

    static FolderLock take(Path folder) {
        return HELD.compute(folder, (path, held) -> {
            if (held != null) {
                throw taken(path);
            }
            return lock(path);
        });
    }

    @Override
    public void close() throws IOException {
        if (HELD.remove(folder, this)) {
            channel.close();
        }
    }

    private static FolderLock lock(Path folder) {
        try {
            FileChannel channel =
                    FileChannel.open(folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (channel.tryLock() == null) {
                channel.close();
                throw taken(folder);
            }
            return new FolderLock(folder, channel);
        } catch (IOException e) {
            throw StartFailure.because("The data folder " + folder + " cannot be locked: " + e, e);
        }
    }

    private static StartFailure taken(Path folder) {
        return StartFailure.alreadyRunning("Rise and Gel is already running on this folder (" + folder
                + "): stop it first, or name another folder with riseandgel.data-dir.");
    }
}
