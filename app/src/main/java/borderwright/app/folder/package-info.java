/**
 * The folder that results are written into.
 *
 * <p><b>Settles</b> that a set of files is replaced all or none: new files are written beside the old ones and exchanged for them only when
 * all are there; what a killed run left behind is put right by the next.
 *
 * <p><b>Takes</b> files by name; <b>gives</b> nothing but what lies in the folder.
 *
 * <p><b>Start reading</b> at {@link borderwright.app.folder.ResultFolder}.
 */
@NullMarked
package borderwright.app.folder;

import org.jspecify.annotations.NullMarked;
