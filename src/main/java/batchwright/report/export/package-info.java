/**
 * A plan as files for other programs: the shopping list as a table (RFC 4180) and as plain text for a phone, the days as a
 * calendar (RFC 5545). The same answer gives the same bytes.
 */
@NullMarked
package batchwright.report.export;

import org.jspecify.annotations.NullMarked;
