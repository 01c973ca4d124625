package batchwright.report.html.web;

/**
 * What is wrong with a form.
 *
 * @param field the id of the field it is about
 */
public record Trouble(String field, String says) {}
