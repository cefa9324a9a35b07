/**
 * Pegs, chalk marks and strings: where each corner of a box goes on the ground.
 *
 * <p><b>Settles</b> which tapes set each corner out, and how the strings run.
 *
 * <p><b>Takes</b> the outline and the footprints; <b>gives</b> one {@link borderwright.engine.settingout.SettingOut}.
 *
 * <p><b>Units.</b> Millimetres.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.settingout.SettingOut}.
 */
@NullMarked
package borderwright.engine.settingout;

import org.jspecify.annotations.NullMarked;
