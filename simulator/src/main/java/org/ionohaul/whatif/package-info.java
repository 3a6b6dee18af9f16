/** Tells what changes when keys of a scenario are varied: curves, maps and tornadoes as text, CSV and a page. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.whatif;
