package runtrue.report.sheet;

/**
 * What stands in a workbook's properties and in the header and footer of every printed page.
 *
 * @param stamp time of creation, ISO 8601 with zone
 */
public record BookInfo(String title, String drop, String ruleSet, String program, String stamp) {}
