/** Runs scheduled actions in order of simulated time. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.engine;
