/** Describes what to simulate, as read and checked from files. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.scenario;
