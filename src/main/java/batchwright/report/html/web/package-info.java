/** What stands on the pages that a browser shows: views for the templates in {@code src/main/jte/web}. */
@NullMarked
package batchwright.report.html.web;

import org.jspecify.annotations.NullMarked;
