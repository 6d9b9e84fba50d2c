package org.benchleaf.pack;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.benchleaf.message.EditionMessages;

/** Holds a site for one run; the system lets go of it however the run ends. */
final class RunLock implements AutoCloseable {

    private final FileChannel channel;

    private RunLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Takes hold.
     *
     * @throws EditionStopped if another run has it
     */
    static RunLock take(Path file, Path site) {
        FileChannel channel = Disk.writing(file,
                () -> FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE));
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return new RunLock(channel);
            }
        } catch (OverlappingFileLockException heldInThisProgram) {
            // answered below, as for a lock held by another program
        } catch (IOException refused) {
            close(channel);
            throw new EditionStopped(EditionMessages.CANNOT_WRITE.at(Disk.place(file), "reason",
                    Disk.reason(refused), "remedy", Disk.remedy(refused)), refused);
        }
        close(channel);
        throw new EditionStopped(EditionMessages.ANOTHER_RUN.at(Disk.place(site)));
    }

    @Override
    public void close() {
        close(channel);
    }

    private static void close(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException nothingToBeDone) {
            // the system lets go of the lock when the program ends
        }
    }
}
