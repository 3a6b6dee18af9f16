/** Runs trials of all modes under common skies, in parallel, to the asked precision. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.study;
