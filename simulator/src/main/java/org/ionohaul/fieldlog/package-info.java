/** Tells what was really sent on the air, as read and checked from a log. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.fieldlog;
