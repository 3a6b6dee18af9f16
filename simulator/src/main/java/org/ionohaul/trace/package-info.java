/** Tells the story of one session, over by over: as text, CSV, JSON lines and a ladder diagram. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.trace;
