package org.benchleaf;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.CopyOption;
import java.nio.file.FileSystem;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.Arrays;
import java.util.Set;
import org.apache.lucene.tests.mockfile.FilterFileChannel;
import org.apache.lucene.tests.mockfile.FilterFileSystemProvider;
import org.apache.lucene.tests.mockfile.FilterOutputStream2;

/** A disk in front of another one that can be told to fail, or to go dead, at any single operation. */
public final class FailingDisk extends FilterFileSystemProvider {

    private final FileSystem behind;
    private Trouble trouble = (operation, path) -> { };
    private boolean twoDisks;

    /** Stands in front of a disk that works. */
    public FailingDisk(FileSystem behind) {
        super("failing://", behind);
        this.behind = behind;
    }

    /** What is done to a file. */
    public enum Operation {
        /** Opened to be read. */
        READ,
        /** Made, or opened to be written. */
        OPEN,
        /** Given bytes. */
        WRITE,
        /** A folder made. */
        FOLDER,
        /** Given another place. */
        MOVE,
        /** Taken away. */
        DELETE;

        /** Whether it takes room on the disk. */
        public boolean fills() {
            return this == OPEN || this == WRITE || this == FOLDER;
        }
    }

    /** Decides what goes wrong. */
    public interface Trouble {

        /** Returns if the operation may go on, and throws what it meets if not. */
        void before(Operation operation, Path path) throws IOException;
    }

    /** Says what goes wrong from now on. */
    public void meets(Trouble next) {
        this.trouble = next;
    }

    /** Makes it impossible to move anything in one stroke from one top folder to another, as between two disks. */
    public void isReallyTwoDisks() {
        this.twoDisks = true;
    }

    /** A path of this disk. */
    public Path path(String path) {
        return wrapPath(behind.getPath(path));
    }

    /** The same path where nothing fails. */
    public Path behind(Path path) {
        return toDelegate(path);
    }

    @Override
    public void createDirectory(Path path, FileAttribute<?>... attributes) throws IOException {
        trouble.before(Operation.FOLDER, path);
        super.createDirectory(path, attributes);
    }

    @Override
    public void delete(Path path) throws IOException {
        trouble.before(Operation.DELETE, path);
        super.delete(path);
    }

    @Override
    public boolean deleteIfExists(Path path) throws IOException {
        trouble.before(Operation.DELETE, path);
        return super.deleteIfExists(path);
    }

    @Override
    public void move(Path from, Path to, CopyOption... options) throws IOException {
        if (twoDisks && Arrays.asList(options).contains(StandardCopyOption.ATOMIC_MOVE) && !sameDisk(from, to)) {
            throw new AtomicMoveNotSupportedException(from.toString(), to.toString(), "Invalid cross-device link");
        }
        trouble.before(Operation.MOVE, to);
        super.move(from, to, options);
    }

    private static boolean sameDisk(Path from, Path to) {
        return from.getName(1).equals(to.getName(1));
    }

    @Override
    public void copy(Path from, Path to, CopyOption... options) throws IOException {
        trouble.before(Operation.OPEN, to);
        super.copy(from, to, options);
    }

    @Override
    public InputStream newInputStream(Path path, OpenOption... options) throws IOException {
        trouble.before(Operation.READ, path);
        return super.newInputStream(path, options);
    }

    @Override
    public SeekableByteChannel newByteChannel(Path path, Set<? extends OpenOption> options,
            FileAttribute<?>... attributes) throws IOException {
        trouble.before(options.contains(StandardOpenOption.WRITE) ? Operation.OPEN : Operation.READ, path);
        return super.newByteChannel(path, options, attributes);
    }

    @Override
    public OutputStream newOutputStream(Path path, OpenOption... options) throws IOException {
        trouble.before(Operation.OPEN, path);
        return new FilterOutputStream2(super.newOutputStream(path, options)) {
            @Override
            public void write(byte[] bytes) throws IOException {
                write(bytes, 0, bytes.length);
            }

            @Override
            public void write(byte[] bytes, int from, int count) throws IOException {
                super.write(bytes, from, count / 2);
                trouble.before(Operation.WRITE, path);
                super.write(bytes, from + count / 2, count - count / 2);
            }
        };
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        trouble.before(Operation.OPEN, path);
        return new FilterFileChannel(super.newFileChannel(path, options, attributes)) {
            @Override
            public int write(ByteBuffer bytes) throws IOException {
                ByteBuffer half = bytes.duplicate();
                half.limit(bytes.position() + bytes.remaining() / 2);
                int first = super.write(half);
                bytes.position(bytes.position() + first);
                trouble.before(Operation.WRITE, path);
                return first + super.write(bytes);
            }
        };
    }
}
