package batchwright.report.html.part;

import batchwright.report.html.chart.Svg;
import java.util.Optional;

/**
 * A picture with its heading and its meaning in one sentence above it.
 *
 * @param look a class of the style sheet
 * @param table the figures of the picture, folded away where there is no room for both
 */
public record Figure(String look, String heading, String says, Optional<Svg> picture, Optional<Table> table) {}
