/**
 * What pages are made of: tables, figures, ticks, links, and the document around them, each with a template of its name in
 * {@code src/main/jte}. It knows no plan.
 */
@NullMarked
package batchwright.report.html.part;

import org.jspecify.annotations.NullMarked;
