/**
 * The file grammars: CSV tables and YAML pages in, a kitchen and eaters out, with every problem of every file named at once. Each
 * subject has a folder of its own; this one puts the kitchen together.
 */
@NullMarked
package batchwright.files;

import org.jspecify.annotations.NullMarked;
