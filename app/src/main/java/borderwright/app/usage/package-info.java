/**
 * What is said where the command line itself is wrong, or the computer gives up.
 *
 * <p><b>Settles</b> the sentence for an unknown command or option, for one that is missing, for a value that is no number, and for files
 * that cannot be read or written.
 *
 * <p><b>Takes</b> what the library that reads options throws, and what the file system throws; <b>gives</b> one sentence and an exit
 * code.
 *
 * <p><b>Start reading</b> at {@link borderwright.app.usage.WrongUse}.
 */
@NullMarked
package borderwright.app.usage;

import org.jspecify.annotations.NullMarked;
