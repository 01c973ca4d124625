/**
 * The file grammars: CSV tables and YAML pages in, a kitchen and eaters out, with every problem of every file named at once.
 */
@NullMarked
package batchwright.files;

import org.jspecify.annotations.NullMarked;
