package batchwright.report.html.web;

import java.util.Optional;

/**
 * What lies on the desk: the part of the page that comes by itself.
 *
 * @param frame of the page it is part of
 * @param stamp rises with everything that is shown
 * @param mark that it is not the last word; empty when it is
 * @param mayKeep whether it is a plan that can be kept
 * @param mayFind whether more can be found out about it now
 */
public record DeskShown(
        Frame frame, int stamp, Optional<String> mark, DeskAnswer answer, boolean mayKeep, boolean mayFind) {}
