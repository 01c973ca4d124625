/**
 * The report: one HTML file that needs nothing else, with a page for each moment: the plan, the shop, the kitchen, the labels.
 */
@NullMarked
package batchwright.report.html;

import org.jspecify.annotations.NullMarked;
