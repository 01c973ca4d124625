/** Entering a profile and changing it line by line, whatever the door; how an answer is understood that is typed without its unit. */
@NullMarked
package batchwright.app.profile;

import org.jspecify.annotations.NullMarked;
