package batchwright.report.html.web;

import java.util.List;

/** What the profile of an eater says, each answer to be changed. */
public record EaterPage(Frame frame, String eater, List<CheckPage.Line> answers) {}
