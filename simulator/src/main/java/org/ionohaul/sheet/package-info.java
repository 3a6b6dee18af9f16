/** Sheets on what a session is made of: the sky between two stations, and the card of a mode. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.sheet;
