/**
 * The report: one HTML file that needs nothing else, with a page for each moment: the plan, the shop, the kitchen, the labels. Classes here
 * are views: what a page shows, worked out and worded. How it is put together stands in the template of the view's name in
 * {@code src/main/jte}.
 */
@NullMarked
package batchwright.report.html;

import org.jspecify.annotations.NullMarked;
