/**
 * The command line, the reading of documents and the writing of files: the only room with input and output.
 */
@NullMarked
package borderwright.app;

import org.jspecify.annotations.NullMarked;
