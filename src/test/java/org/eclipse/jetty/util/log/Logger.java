package org.eclipse.jetty.util.log;

/** What {@link Log} gives: all that the older part calls. */
public interface Logger {
    void warn(String message, Object... arguments);
}
