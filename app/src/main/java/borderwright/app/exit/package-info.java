/** What the command line answers to the shell: one exit code for each way that a run can end. */
@NullMarked
package borderwright.app.exit;

import org.jspecify.annotations.NullMarked;
