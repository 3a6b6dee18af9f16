/** Gives each purpose in each trial its own addressed random stream. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.random;
