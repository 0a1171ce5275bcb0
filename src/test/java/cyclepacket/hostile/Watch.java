package cyclepacket.hostile;

import java.io.FileDescriptor;
import java.net.InetAddress;
import java.nio.file.Path;
import java.security.Permission;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Notes and forbids every file outside the allowed folders, every connection and every program that is started. */
@SuppressWarnings("removal")
final class Watch extends SecurityManager {
    private final List<Path> readable;
    private final Path writable;
    private final Demo demo;
    private final Queue<String> seen = new ConcurrentLinkedQueue<>();

    /** @param demo whose files only the harness may write */
    Watch(List<Path> readable, Path writable, Demo demo) {
        this.readable = readable;
        this.writable = writable;
        this.demo = demo;
    }

    /** What was tried since the last call. */
    List<String> takeSeen() {
        List<String> all = List.copyOf(seen);
        seen.removeAll(all);
        return all;
    }

    @Override
    public void checkPermission(Permission permission) {
        // Files, sockets and programs come through the checks below; nothing else is watched.
    }

    @Override
    public void checkPermission(Permission permission, Object context) {
        checkPermission(permission);
    }

    @Override
    public void checkRead(String file) {
        Path path = path(file);
        if (!path.startsWith(writable) && readable.stream().noneMatch(path::startsWith)) {
            forbid("read " + file);
        }
    }

    @Override
    public void checkRead(FileDescriptor open) {
        // Opened through one of the other checks.
    }

    @Override
    public void checkWrite(String file) {
        Path path = path(file);
        if (!path.startsWith(writable) && !(demo.isWriting() && path.startsWith(demo.folder()))) {
            forbid("write " + file);
        }
    }

    @Override
    public void checkDelete(String file) {
        checkWrite(file);
    }

    @Override
    public void checkExec(String program) {
        forbid("start " + program);
    }

    @Override
    public void checkConnect(String host, int port) {
        forbid("connect to " + host + ":" + port);
    }

    @Override
    public void checkConnect(String host, int port, Object context) {
        checkConnect(host, port);
    }

    @Override
    public void checkListen(int port) {
        forbid("listen at " + port);
    }

    @Override
    public void checkAccept(String host, int port) {
        forbid("let in " + host);
    }

    @Override
    public void checkMulticast(InetAddress group) {
        forbid("send to " + group);
    }

    private void forbid(String what) {
        seen.add(what);
        throw new SecurityException(what);
    }

    private static Path path(String file) {
        return Path.of(file).toAbsolutePath().normalize();
    }
}
