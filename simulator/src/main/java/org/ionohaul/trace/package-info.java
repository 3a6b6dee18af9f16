/** Tells the story of one session, over by over: as a page, text, CSV and JSON lines. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.trace;
