package batchwright.cli;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * Ctrl-C during a search: the first time it is only noted, the second time it ends the program. Where Java offers no
 * way to hear of it, the first time ends the program as usual.
 *
 * <p>Java has no documented way: a shutdown hook hears of the first time only. The class that has one, {@code sun.misc.Signal}, is
 * in each JDK, but a compiler warns of it; so it is called by name.
 */
final class Interruption implements AutoCloseable {
    private static final String NAME = "INT";

    private final AtomicInteger times = new AtomicInteger();
    private final Runnable beforeTheEnd;
    private final @Nullable Object previous;

    /** @param beforeTheEnd what to do before the second time ends the program */
    Interruption(Runnable beforeTheEnd) {
        this.beforeTheEnd = beforeTheEnd;
        this.previous = listen(handler());
    }

    /** Whether it was pressed. */
    boolean asked() {
        return times.get() > 0;
    }

    /** From now on it ends the program at once, as before. */
    @Override
    public void close() {
        if (previous != null) {
            listen(previous);
        }
    }

    private void pressed() {
        if (times.incrementAndGet() > 1) {
            beforeTheEnd.run();
            Runtime.getRuntime().halt(ExitCode.INTERRUPTED.code());
        }
    }

    private @Nullable Object handler() {
        InvocationHandler call = (proxy, method, args) -> switch (method.getName()) {
            case "handle" -> {
                pressed();
                yield null;
            }
            case "hashCode" -> System.identityHashCode(proxy);
            case "equals" -> proxy == args[0];
            default -> "Ctrl-C";
        };
        try {
            Class<?> type = Class.forName("sun.misc.SignalHandler");
            return Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, call);
        } catch (ClassNotFoundException | RuntimeException notOffered) {
            return null;
        }
    }

    /** The handler before; none where nothing is offered. */
    private static @Nullable Object listen(@Nullable Object handler) {
        if (handler == null) {
            return null;
        }
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> type = Class.forName("sun.misc.SignalHandler");
            Object interrupt = signal.getConstructor(String.class).newInstance(NAME);
            return signal.getMethod("handle", signal, type).invoke(null, interrupt, handler);
        } catch (ReflectiveOperationException | RuntimeException notOffered) {
            return null;
        }
    }
}
