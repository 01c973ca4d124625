package org.eclipse.jetty.util.log;

/** The checker of pages reads JSON by a part of an older Jetty than the page is served by; that asks for this class, which newer ones lack. */
public final class Log {
    private Log() {}

    public static Logger getLogger(Class<?> of) {
        return (message, arguments) -> {};
    }
}
