/** Moves frames over a half-duplex link: ARQ, turnarounds, speed policies. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.link;
