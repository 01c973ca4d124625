/**
 * The page on this computer: a door beside the command line, with the same files, book and use cases. It computes nothing of its own.
 * What a page holds is a view in {@code report.html.web}, and how it looks a template in {@code src/main/jte/web}.
 */
@NullMarked
package batchwright.page;

import org.jspecify.annotations.NullMarked;
