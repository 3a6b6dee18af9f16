/** Estimates chances that are too small to be counted, by splitting trials that come near. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.rare;
