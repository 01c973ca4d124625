/** Pictures, drawn as lists of shapes ({@code Svg}). */
@NullMarked
package batchwright.report.html.chart;

import org.jspecify.annotations.NullMarked;
